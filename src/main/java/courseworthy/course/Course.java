package courseworthy.course;

import java.util.List;

/**
 * The ground of one lap, ready to be judged.
 *
 * @param name      as written, or the file's name
 * @param summary   one line, may be empty
 * @param file      the path as the user typed it
 * @param stretches in order; at least one
 * @param track     null where the course is a profile alone
 * @param line      elevation along the course; null where no elevation is known
 * @param climbing  of one lap; null where unknown
 * @param start     null where unknown
 * @param repairs   what was mended while reading, in order
 * @param assumed   ground that was filled in from what the user assumed, in words, such as {@code surface gravel on 42.1 km}
 * @param attribution who must be named in all that is made from the course; empty for nobody
 * @param notes     what else the user should know (elevation not believable, rise of the profile passed over, start height given)
 */
public record Course(String name, String summary, String file, List<Stretch> stretches, Track track, ElevationLine line, Climbing climbing,
        GeoPoint start, List<TrackRepair> repairs, List<String> assumed, String attribution, List<String> notes) {

    public Course {
        stretches = List.copyOf(stretches);
        repairs = List.copyOf(repairs);
        assumed = List.copyOf(assumed);
        notes = List.copyOf(notes);
    }

    /** The same on ground that was filled in. */
    Course filled(List<Stretch> ground, List<String> filledIn, List<String> remarks) {
        return new Course(name, summary, file, ground, track, line, climbing, start, repairs, filledIn, attribution, remarks);
    }

    /** The same on other ground. */
    public Course with(List<Stretch> ground) {
        return new Course(name, summary, file, ground, track, line, climbing, start, repairs, assumed, attribution, notes);
    }

    /** The same on other ground, with what else the user should know of it. */
    public Course with(List<Stretch> ground, List<String> remarks) {
        return filled(ground, assumed, remarks);
    }

    /** Length of one lap in m. */
    public double length() {
        double sum = 0;
        for (Stretch stretch : stretches) {
            sum += stretch.length();
        }
        return sum;
    }

    public static Builder builder(String name, List<Stretch> stretches) {
        return new Builder(name, stretches);
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private final String name;
        private String summary = "";
        private String file = "";
        private final List<Stretch> stretches;
        private Track track;
        private ElevationLine line;
        private Climbing climbing;
        private GeoPoint start;
        private List<TrackRepair> repairs = List.of();
        private List<String> assumed = List.of();
        private String attribution = "";
        private List<String> notes = List.of();

        private Builder(String name, List<Stretch> stretches) {
            this.name = name;
            this.stretches = stretches;
        }

        public Builder summary(String value) {
            summary = value;
            return this;
        }

        public Builder file(String value) {
            file = value;
            return this;
        }

        public Builder track(Track value) {
            track = value;
            return this;
        }

        public Builder line(ElevationLine value) {
            line = value;
            return this;
        }

        public Builder climbing(Climbing value) {
            climbing = value;
            return this;
        }

        public Builder start(GeoPoint value) {
            start = value;
            return this;
        }

        public Builder repairs(List<TrackRepair> value) {
            repairs = value;
            return this;
        }

        public Builder assumed(List<String> value) {
            assumed = value;
            return this;
        }

        public Builder attribution(String value) {
            attribution = value;
            return this;
        }

        public Builder notes(List<String> value) {
            notes = value;
            return this;
        }

        public Course build() {
            return new Course(name, summary, file, stretches, track, line, climbing, start, repairs, assumed, attribution, notes);
        }
    }
}
