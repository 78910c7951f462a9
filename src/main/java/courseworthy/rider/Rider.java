package courseworthy.rider;

import courseworthy.text.Node;
import java.util.List;

/**
 * The rider as written; null means not written (the demands then assume, and say so).
 *
 * @param name             may be empty
 * @param file             the path as typed, empty for no file
 * @param mass             body mass, kg
 * @param height           m
 * @param kit              mass of clothing, helmet, shoes and what is carried apart from water, kg
 * @param efforts          best efforts, shortest first; one is enough
 * @param skill            one of {@link #SKILLS}
 * @param climbingCadence  lowest cadence the rider will turn for long on a climb, per minute
 * @param highestCadence   highest cadence the rider will turn on the flat, per minute
 * @param racesAYear       races a year on this bike
 * @param sweatRate        known sweat loss, L/h
 * @param barWidth         the width the rider is used to, m
 * @param bike             the bike at hand
 * @param constraints      advice rows of the rider's own, as written; may be null
 * @param stops            what stops cost
 * @param tags             what the rider belongs to, in the coach's words
 * @param notes            what is to be kept in mind of the rider, in the coach's words; may be empty
 * @param body             what of the body bears on how a bike is set up, besides mass and height
 * @param preference       one of {@link #PREFERENCES}
 * @param shared           what was taken from the file that riders of a folder share
 */
public record Rider(String name, String file, Double mass, Double height, Double kit, List<MaximalEffort> efforts, String skill,
        Double climbingCadence, Double highestCadence, Integer racesAYear, Double sweatRate, Double barWidth, Bike bike,
        Node constraints, StopCosts stops, List<String> tags, String notes, BodyMeasures body, String preference,
        SharedFile shared) {

    /** Words for skill on rough ground, least first. */
    public static final List<String> SKILLS = List.of("novice", "fair", "good", "expert");

    /** Words for what a rider would rather have where the two pull apart, most comfort first. */
    public static final List<String> PREFERENCES = List.of("comfort", "balanced", "speed");
    /** Words for the strength of the hands, least first. */
    public static final List<String> HAND_STRENGTHS = List.of("weak", "usual", "strong");
    /** What may be injured or sore and is spared by how a bike is set up. */
    public static final List<String> INJURIES = List.of("hands", "neck", "shoulders", "back", "knees", "seat");

    /** The rider nothing is known of. */
    public static final Rider UNKNOWN = builder().build();

    public Rider {
        efforts = List.copyOf(efforts);
        tags = List.copyOf(tags);
    }

    /**
     * What a stop costs this rider, as written; null means not written.
     *
     * @param plug      a puncture repaired with a plug, s
     * @param tube      a puncture repaired with a tube, s
     * @param lostGroup riding on alone after it, s
     */
    public record StopCosts(Double plug, Double tube, Double lostGroup) {
        public static final StopCosts UNKNOWN = new StopCosts(null, null, null);
    }

    /**
     * What of the body bears on how a bike is set up; null means not written.
     *
     * @param shoulderWidth across the bony points at the tips of the shoulders, m
     * @param handStrength  one of {@link #HAND_STRENGTHS}
     * @param yearOfBirth   by which age groups of events go
     * @param injuries      of {@link #INJURIES}, what is injured or sore; empty where nothing is written
     */
    public record BodyMeasures(Double shoulderWidth, String handStrength, Integer yearOfBirth, List<String> injuries) {
        public static final BodyMeasures UNKNOWN = new BodyMeasures(null, null, null, List.of());

        public BodyMeasures {
            injuries = List.copyOf(injuries);
        }

        public boolean injured(String part) {
            return injuries.contains(part);
        }

        /** The age that the rider reaches in a year, by which age groups go; null where the year of birth is not written. */
        public Integer ageIn(int year) {
            return yearOfBirth == null ? null : Integer.valueOf(year - yearOfBirth);
        }
    }

    /**
     * What a rider's own file leaves out and the file that riders of its folder share says.
     *
     * @param file as shown to the user; empty where nothing was taken from one
     * @param keys in the order of that file
     */
    public record SharedFile(String file, List<String> keys) {
        public static final SharedFile NONE = new SharedFile("", List.of());

        public SharedFile {
            keys = List.copyOf(keys);
        }
    }

    /**
     * The best power held for a time.
     *
     * @param seconds duration, s
     * @param watts   mean power, W
     */
    public record MaximalEffort(double seconds, double watts) {

        /** A shorter effort is a sprint and says nothing of an hour, s: power laws hold from about 3.5 min (Riegel 1981, Am. Scientist 69:285). */
        public static final double SHORTEST = 180;
        /** Up to here a power law holds, s (the same, to about 230 min); beyond it only the planning band of long rides says what an hour would be. */
        public static final double LONGEST_BY_LAW = 4 * 3600;

        public boolean sprint() {
            return seconds < SHORTEST;
        }

        public boolean beyondTheLaw() {
            return seconds > LONGEST_BY_LAW;
        }
    }

    /** The same rider by another name. */
    public Rider named(String other) {
        return new Rider(other, file, mass, height, kit, efforts, skill, climbingCadence, highestCadence, racesAYear, sweatRate, barWidth, bike, constraints,
                stops, tags, notes, body, preference, shared);
    }

    /** The same rider, some of which was taken from a shared file. */
    Rider sharing(SharedFile from) {
        return new Rider(name, file, mass, height, kit, efforts, skill, climbingCadence, highestCadence, racesAYear, sweatRate, barWidth, bike, constraints,
                stops, tags, notes, body, preference, from);
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private String name = "";
        private String file = "";
        private Double mass;
        private Double height;
        private Double kit;
        private List<MaximalEffort> efforts = List.of();
        private String skill;
        private Double climbingCadence;
        private Double highestCadence;
        private Integer racesAYear;
        private Double sweatRate;
        private Double barWidth;
        private Bike bike = Bike.UNKNOWN;
        private Node constraints;
        private StopCosts stops = StopCosts.UNKNOWN;
        private List<String> tags = List.of();
        private String notes = "";
        private BodyMeasures body = BodyMeasures.UNKNOWN;
        private String preference;

        private Builder() {
        }

        public Builder name(String value) {
            name = value;
            return this;
        }

        public Builder file(String value) {
            file = value;
            return this;
        }

        public Builder mass(Double value) {
            mass = value;
            return this;
        }

        public Builder height(Double value) {
            height = value;
            return this;
        }

        public Builder kit(Double value) {
            kit = value;
            return this;
        }

        public Builder efforts(List<MaximalEffort> value) {
            efforts = value;
            return this;
        }

        public Builder skill(String value) {
            skill = value;
            return this;
        }

        public Builder climbingCadence(Double value) {
            climbingCadence = value;
            return this;
        }

        public Builder highestCadence(Double value) {
            highestCadence = value;
            return this;
        }

        public Builder racesAYear(Integer value) {
            racesAYear = value;
            return this;
        }

        public Builder sweatRate(Double value) {
            sweatRate = value;
            return this;
        }

        public Builder barWidth(Double value) {
            barWidth = value;
            return this;
        }

        public Builder bike(Bike value) {
            bike = value;
            return this;
        }

        public Builder constraints(Node value) {
            constraints = value;
            return this;
        }

        public Builder stops(StopCosts value) {
            stops = value;
            return this;
        }

        public Builder tags(List<String> value) {
            tags = value;
            return this;
        }

        public Builder notes(String value) {
            notes = value;
            return this;
        }

        public Builder body(BodyMeasures value) {
            body = value;
            return this;
        }

        public Builder preference(String value) {
            preference = value;
            return this;
        }

        public Rider build() {
            return new Rider(name, file, mass, height, kit, efforts, skill, climbingCadence, highestCadence, racesAYear, sweatRate,
                    barWidth, bike, constraints, stops, tags, notes, body, preference, SharedFile.NONE);
        }
    }
}
