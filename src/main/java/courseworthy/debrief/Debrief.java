package courseworthy.debrief;

import courseworthy.topic.Topic;
import java.util.List;
import java.util.Map;

/**
 * What really happened, as the rider wrote it.
 *
 * @param name    of the debrief
 * @param file    its path as typed
 * @param hours   s, from start to finish; null where not told
 * @param weather as it was
 * @param day     what happened, a line each, in the order of the keys
 * @param reported    what it says of topics
 * @param changed what was ridden instead of the advice, in the topics' ticks or positions
 * @param would   what the rider would ride the next time
 * @param repairs what punctures were repaired with, one each; those for which the debrief does not say are left out
 * @param notes   in the rider's words; may be empty
 */
public record Debrief(String name, String file, Double hours, ReportedWeather weather, List<DebriefLine> day, List<ReportedValue> reported, Map<Topic, Long> changed,
        Map<Topic, Long> would, List<String> repairs, String notes) {

    public Debrief {
        day = List.copyOf(day);
        repairs = List.copyOf(repairs);
        reported = List.copyOf(reported);
        changed = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(changed));
        would = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(would));
    }

    /**
     * The weather as it was; null where not told.
     *
     * @param going  dry, damp or wet
     * @param low    C, the coldest
     * @param high   C, the hottest
     */
    public record ReportedWeather(String going, Double low, Double high) {
        static final ReportedWeather UNKNOWN = new ReportedWeather(null, null, null);
    }

    /** One thing that happened. */
    public record DebriefLine(String what, String words) {
    }
}
