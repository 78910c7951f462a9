package courseworthy.debrief;

import courseworthy.claim.Verb;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.Topic;
import java.util.List;

/**
 * The brief that was given, as it was saved: what was told is held against, not what the tool would say today.
 *
 * @param file    its path as written
 * @param course  its name; empty where the brief does not say
 * @param event   may be empty
 * @param rider   may be empty
 * @param date    null where it was not known
 * @param sheets  coaches' sheets that were in force
 * @param time    of the ride; null where not given
 * @param attribution who must be named for the map it was made from; empty for nobody
 * @param weather it was given for
 * @param advice  one for each topic settled
 */
public record SavedBrief(String file, String course, String event, String rider, String date, List<SheetInForce> sheets, Time time,
        String attribution, SavedWeather weather, List<Advice> advice) {

    public SavedBrief {
        sheets = List.copyOf(sheets);
        advice = List.copyOf(advice);
    }

    /**
     * What a day was expected to be like.
     *
     * @param going   null where not known
     * @param coldest C; null where not known
     * @param hottest C; null where not known
     */
    public record SavedWeather(String going, Double coldest, Double hottest) {
    }

    public String going() {
        return weather.going();
    }

    public Double coldest() {
        return weather.coldest();
    }

    public Double hottest() {
        return weather.hottest();
    }

    /**
     * A time with its range, s.
     *
     * @param fast   its fast end
     * @param slow   its slow estimate
     */
    public record Time(double likely, double fast, double slow) {
    }

    /**
     * What was advised on one topic.
     *
     * @param value  in the topic's ticks or positions
     * @param text   as it was shown
     * @param built  what the build had, where a workshop was given and could not meet the advice; the advice itself where it could, or
     *               where none was given; null where it is not known
     * @param claims those for it, then those overruled or outvoted
     */
    public record Advice(Topic topic, long value, String text, Long built, List<SavedClaim> claims) {
        public Advice {
            claims = List.copyOf(claims);
        }
    }

    /**
     * What one rule said.
     *
     * @param rule    its id
     * @param limit   whether it is a limit
     * @param verb    how it said it
     * @param value   in the topic's ticks or positions; null where it is not one value
     * @param written as it was written
     * @param where   file and line
     * @param grounds the measures it rested on
     */
    public record SavedClaim(String rule, boolean limit, Verb verb, Long value, String written, String where, List<String> grounds) {
        public SavedClaim {
            grounds = List.copyOf(grounds);
        }
    }
}
