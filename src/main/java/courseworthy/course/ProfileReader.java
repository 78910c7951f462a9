package courseworthy.course;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads a course profile: what is written, not yet laid over a track. */
public final class ProfileReader {

    /** A ferry takes so long at least and at most, s (judgement). */
    private static final double SHORTEST_FERRY = 60;
    private static final double LONGEST_FERRY = 86_400;
    private static final String STRETCHES = "a list of stretches, each with a length";
    private static final String HEIGHT = "a height from 0 m to 9000 m";
    private static final double SHORTEST_STRETCH = 1;
    private static final double LONGEST_STRETCH = 2_000_000;
    private static final double MOST_HEIGHT = 9000;
    private static final int LONGEST_LINE = 200;
    /** Climbing and descending together over length: nobody carries a bike up or down more than that on average (judgement). */
    private static final double STEEPEST = 0.6;
    /** Shorter pieces may be steps, m (judgement). */
    private static final double LONG_ENOUGH = 50;
    /** Of a ford, m: no more of them fit into a stretch (judgement). */
    private static final double SHORTEST_FORD = 2;

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<Double> LENGTH =
            DECLARED.amount("length", "How long it is", Dimension.LENGTH, SHORTEST_STRETCH, LONGEST_STRETCH, "a length from 1 m to 2000 km");
    private static final FileKey<Double> ASCENT = DECLARED.others("to").amount("ascent", "Climbed on it", Dimension.LENGTH, 0, MOST_HEIGHT, HEIGHT);
    private static final FileKey<Double> DESCENT = DECLARED.amount("descent", "Descended on it", Dimension.LENGTH, 0, MOST_HEIGHT, HEIGHT);
    private static final FileKey<Double> STEEPEST_GRADIENT =
            DECLARED.amount("steepest", "Its steepest gradient", Dimension.SHARE, 0, 1, "a gradient from 0 % to 100 %");
    private static final FileKey<Boolean> ON_FOOT = DECLARED.yesNo("on foot", "Whether the bike is pushed or carried");
    private static final FileKey<Double> FERRY = DECLARED.amount("ferry", "How long a ferry takes, without waiting", Dimension.TIME, SHORTEST_FERRY, LONGEST_FERRY,
            "a time from 1 min to 24 h");

    /** The keys of a stretch besides those of its ground, with the forms of their values. */
    static final List<FileKey<?>> STRETCH_FORMS = DECLARED.all();
    /** Their names. */
    static final List<String> STRETCH_KEYS = DECLARED.names();

    private final String shown;
    private final Faults faults;
    private final List<Stretch> stretches = new ArrayList<>();
    /** Where the next stretch starts, m; NaN once a length is at fault. */
    private double end;

    private ProfileReader(String shown, Faults faults) {
        this.shown = shown;
        this.faults = faults;
    }

    /**
     * A profile as written.
     *
     * @param name           may be empty
     * @param track          the track's path as written, null where there is none
     * @param attribution    who must be named in what is made from it; may be empty
     * @param trackLine      the line of {@code track}
     * @param startHeight    m; null where not written
     * @param start          null where not written
     * @param stretches      empty where a track stands alone
     * @param stretchesLine  the line of {@code stretches}
     */
    public record Profile(String name, String summary, String attribution, String track, int trackLine, Double startHeight, GeoPoint start, List<Stretch> stretches, int stretchesLine) {
    }

    /** @return what could be read, or null where the file could not be read at all */
    public static Profile read(Path path, String shown, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        return tree == null ? null : new ProfileReader(shown, faults).profile(new FieldReader(shown, tree, faults));
    }

    private Profile profile(FieldReader fields) {
        String name = line(fields, "name");
        String summary = line(fields, "summary");
        String track = fields.prose("track");
        String attribution = line(fields, "attribution");
        Amount startHeight = fields.amount("start height", Dimension.LENGTH, -450, MOST_HEIGHT, "a height from -450 m to 9000 m");
        Amount latitude = fields.amount("latitude", Dimension.ANGLE, -90, 90, "an angle from -90 deg to 90 deg");
        Amount longitude = fields.amount("longitude", Dimension.ANGLE, -180, 180, "an angle from -180 deg to 180 deg");
        bothOrNeither(fields);
        stretches(fields, track != null);
        fields.done();
        return new Profile(name, summary, attribution, track, fields.lineOf("track"), startHeight == null ? null : Double.valueOf(startHeight.inBase()),
                latitude == null || longitude == null ? null : new GeoPoint(latitude.inBase(), longitude.inBase()), List.copyOf(stretches),
                fields.lineOf("stretches"));
    }

    private void bothOrNeither(FieldReader fields) {
        boolean latitude = fields.has("latitude");
        boolean longitude = fields.has("longitude");
        if (latitude != longitude) {
            String missing = latitude ? "longitude" : "latitude";
            faults.add(shown, fields.lineOf(latitude ? "latitude" : "longitude"), missing, "nothing",
                    "both latitude and longitude, or neither", "Add a line \"" + missing + ": 47.1 deg\".");
        }
    }

    /** A text on one line, empty where absent. */
    private String line(FieldReader fields, String key) {
        String text = fields.line(key, LONGEST_LINE);
        return text == null ? "" : text;
    }

    private void stretches(FieldReader fields, boolean track) {
        Node node = track ? fields.node("stretches") : fields.required("stretches", STRETCHES);
        if (node == null) {
            return;
        }
        if (!(node instanceof Node.Sequence list) || list.items().isEmpty()) {
            String found = node instanceof Node.Sequence ? "an empty list" : node.describe();
            faults.add(shown, node.line(), "stretches", found, STRETCHES, "Start each stretch with a dash: \"- length: 3 km\".");
            return;
        }
        if (list.items().size() > CourseReader.MOST_STRETCHES) {
            faults.add(shown, node.line(), "stretches", list.items().size() + " stretches", "at most " + CourseReader.MOST_STRETCHES,
                    "Join stretches that ride alike.");
            return;
        }
        for (Node item : list.items()) {
            FieldReader stretch = fields.fields("stretches", item);
            if (stretch != null) {
                stretches.add(stretch(stretch));
            } else {
                end = Double.NaN;
            }
        }
        if (end > CourseReader.LONGEST) {
            faults.add(shown, node.line(), "stretches", "a total of " + LengthPhrases.length(end), "at most 3000 km", "A profile is one lap.");
        }
    }

    private Stretch stretch(FieldReader fields) {
        double length = length(fields);
        Double ascent = ASCENT.read(fields);
        Double descent = DESCENT.read(fields);
        Double gradient = STEEPEST_GRADIENT.read(fields);
        Passage passage = passage(fields);
        Ground ground = GroundReader.read(fields);
        GroundOrigin origin = GroundOriginReader.origin(fields);
        List<Ground> alternatives = GroundOriginReader.alternatives(fields, ground, origin);
        fields.done();
        plausible(fields, length, ascent, descent, gradient);
        fits(fields, length, ground);
        return new Stretch(length, ascent, descent, gradient, ground, alternatives, origin, fields.line()).passed(passage);
    }

    /** How the stretch is passed; null where neither key is written. */
    private static Passage passage(FieldReader fields) {
        Boolean onFoot = ON_FOOT.read(fields);
        Double ferry = FERRY.read(fields);
        if (ferry != null && Boolean.TRUE.equals(onFoot)) {
            fields.fault("ferry", "a ferry on a stretch that is passed on foot", "one of them", "Write the ferry as a stretch of its own.");
        }
        return ferry != null ? Passage.ferry(ferry) : onFoot == null ? null : onFoot ? Passage.ON_FOOT : Passage.RIDDEN;
    }

    /** From {@code length}, or from where the stretch before ends to {@code to}; NaN where neither can be told. */
    private double length(FieldReader fields) {
        boolean byLength = fields.has("length");
        boolean byEnd = fields.has("to");
        if (byLength == byEnd) {
            String found = byLength ? "both length and to" : "neither length nor to";
            faults.add(shown, fields.line(), "stretches", found, "one of them: the stretch's length, or the distance from the start where it ends",
                    byLength ? "Remove one of them." : "Add a line \"length: 3 km\".");
        }
        double length = byLength ? written(fields) : byEnd ? untilEnd(fields) : Double.NaN;
        if (!byEnd) {
            end += length;
        }
        return length;
    }

    private double written(FieldReader fields) {
        Double length = LENGTH.read(fields);
        return length == null ? Double.NaN : length;
    }

    private double untilEnd(FieldReader fields) {
        double from = end;
        Amount to = fields.amount("to", Dimension.LENGTH);
        end = to == null ? Double.NaN : to.inBase();
        double length = end - from;
        if (length < SHORTEST_STRETCH || length > LONGEST_STRETCH) {
            fields.fault("to", fields.node("to").describe(), "a distance from the start that leaves the stretch 1 m to 2000 km; the stretch before ends at "
                    + LengthPhrases.length(from), "");
            return Double.NaN;
        }
        return length;
    }

    private static void fits(FieldReader fields, double length, Ground ground) {
        if (ground.waterCrossings() != null && ground.waterCrossings() * SHORTEST_FORD > length) {
            fields.fault("water crossings", fields.node("water crossings").describe() + " in " + LengthPhrases.length(length), "no more than fit into it", "");
        }
        if (ground.ledgeHeight() != null && ground.ledgeHeight() > length) {
            fields.fault("ledge height", fields.node("ledge height").describe() + " in " + LengthPhrases.length(length), "less than the stretch is long", "");
        }
    }

    private void plausible(FieldReader fields, double length, Double ascent, Double descent, Double steepest) {
        double up = ascent == null ? 0 : ascent;
        double down = descent == null ? 0 : descent;
        String key = ascent == null ? "descent" : "ascent";
        if (up + down > length) {
            fields.fault(key, LengthPhrases.metres(up) + " up and " + LengthPhrases.metres(down) + " down in " + LengthPhrases.length(length),
                    "less climbing and descending than the stretch is long", "Check the units of length, ascent and descent.");
        } else if (length >= LONG_ENOUGH && up + down > STEEPEST * length) {
            fields.fault(key, LengthPhrases.metres(up) + " up and " + LengthPhrases.metres(down) + " down in " + LengthPhrases.length(length), "at most 60 % on average",
                    "Check the units of length, ascent and descent.");
        } else if (steepest != null && Math.max(up, down) / length > steepest + 0.005) {
            fields.fault("steepest", fields.node("steepest").describe(), "at least the stretch's mean gradient, "
                    + LengthPhrases.tenths(Math.max(up, down) / length * 100) + " %", "Correct steepest, or length, ascent and descent.");
        }
    }
}
