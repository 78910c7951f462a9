package courseworthy.course;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Reads what is said of the ground: keys of a stretch in a profile, or {@code key=value} pairs of {@code --ground}. */
public final class GroundReader {

    /** Values of the OpenStreetMap key {@code tracktype}, firmest first. */
    public static final List<String> TRACKTYPES = List.of("grade1", "grade2", "grade3", "grade4", "grade5");

    private static final List<String> SURFACES = Surface.tags();
    private static final List<String> SMOOTHNESSES = Smoothness.tags();
    private static final String PAIRS = "key=value pairs with commas between, such as surface=gravel, smoothness=bad";

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> TRACKTYPE = DECLARED.others("surface", "smoothness").word("tracktype", "OpenStreetMap tracktype", TRACKTYPES);
    private static final FileKey<Boolean> SHARP_STONES = DECLARED.others("mtb:scale").yesNo("sharp stones", "");
    private static final FileKey<Boolean> RUTS = DECLARED.yesNo("ruts", "");
    private static final FileKey<Boolean> ROOTS = DECLARED.yesNo("roots", "");
    private static final FileKey<Boolean> SAND = DECLARED.yesNo("sand", "");
    private static final FileKey<Boolean> MUD_WHEN_WET = DECLARED.yesNo("mud when wet", "");
    private static final FileKey<Integer> WATER_CROSSINGS = DECLARED.whole("water crossings", "Fords", 0, 100);
    private static final FileKey<Double> LEDGE_HEIGHT =
            DECLARED.amount("ledge height", "Highest ledge that must be ridden", Dimension.LENGTH, 0, 5, "a height from 0 m to 5 m");
    private static final FileKey<Double> TURNS_PER_KM =
            DECLARED.amount("turns per km", "Turns that must be braked for", Dimension.NUMBER, 0, 100, "a number from 0 to 100");

    /** The keys that describe the ground, with the forms of their values; those with yes or no are what measures of a stretch are about. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.all();
    /** Their names, as a profile and {@code --ground} take them. */
    public static final List<String> KEYS = DECLARED.names();

    /** From here {@code mtb:scale} speaks of what no pavement has, less the third that a minus takes. */
    private static final double HARD = 1.5;
    private static final int SOFT_TRACK = 4;

    private GroundReader() {
    }

    /** Reads the ground keys of a block; what is not written or is at fault stays unknown. */
    static Ground read(FieldReader fields) {
        Surface surface = Surface.of(fields.word("surface", SURFACES));
        Smoothness smoothness = Smoothness.of(fields.word("smoothness", SMOOTHNESSES));
        String trackType = TRACKTYPE.read(fields);
        Integer trackGrade = trackType == null ? null : Integer.valueOf(TRACKTYPES.indexOf(trackType) + 1);
        Ground ground = Ground.builder().surface(surface).smoothness(smoothness).trackGrade(trackGrade).mtbScale(mtbScale(fields))
                .sharpStones(SHARP_STONES.read(fields)).ruts(RUTS.read(fields)).roots(ROOTS.read(fields)).sand(SAND.read(fields))
                .mudWhenWet(MUD_WHEN_WET.read(fields)).waterCrossings(WATER_CROSSINGS.read(fields)).ledgeHeight(LEDGE_HEIGHT.read(fields))
                .turnsPerKm(TURNS_PER_KM.read(fields)).build();
        believable(fields, ground);
        return ground;
    }

    /**
     * The key that says what no ground is at once with the others, or null, by the definitions of the OpenStreetMap wiki: {@code mtb:scale} is for paths, and from 2 on for rocks, steps
     * and hairpins that no pavement has; {@code tracktype} 4 and 5 are soft; {@code smoothness=excellent} and {@code good} are for skates and
     * racing bikes.
     */
    static String contradiction(Ground ground) {
        boolean paved = ground.surface() != null && ground.surface().family() == Surface.Family.PAVED;
        boolean even = ground.smoothness() != null && ground.smoothness().ordinal() <= Smoothness.GOOD.ordinal();
        boolean soft = ground.surface() == Surface.SAND || ground.surface() == Surface.MUD;
        if (ground.mtbScale() != null && ground.mtbScale() >= HARD && (paved || even)) {
            return "mtb:scale";
        }
        if (paved && ground.trackGrade() != null && ground.trackGrade() >= SOFT_TRACK) {
            return "tracktype";
        }
        if (paved && Boolean.TRUE.equals(ground.mudWhenWet())) {
            return "mud when wet";
        }
        return soft && even ? "smoothness" : null;
    }

    private static void believable(FieldReader fields, Ground ground) {
        String key = contradiction(ground);
        if (key != null) {
            boolean onSmooth = ground.surface() == null || key.equals("mtb:scale") && ground.surface().family() != Surface.Family.PAVED;
            String there = onSmooth ? "smoothness " + ground.smoothness().tag() : "surface " + ground.surface().tag();
            fields.fault(key, fields.node(key).describe() + " with " + there, "ground there can be",
                    "Correct one of them, or write the piece as a stretch of its own.");
        }
    }

    /** A grade from 0 to 6; a {@code +} or {@code -} behind it moves it by a third, within 0 to 6. */
    private static Double mtbScale(FieldReader fields) {
        String expected = "a grade from 0 to 6, with + or - after it where needed";
        Node.Scalar value = fields.scalar("mtb:scale", expected);
        if (value == null) {
            return null;
        }
        String text = value.text();
        char digit = text.isEmpty() ? ' ' : text.charAt(0);
        boolean plus = text.length() == 2 && text.charAt(1) == '+';
        boolean minus = text.length() == 2 && text.charAt(1) == '-';
        if (digit < '0' || digit > '6' || !(text.length() == 1 || plus || minus)) {
            fields.fault("mtb:scale", value.describe(), expected, "");
            return null;
        }
        double third = plus ? 1.0 / 3 : minus ? -1.0 / 3 : 0;
        return Math.max(0, Math.min(6, digit - '0' + third));
    }

    /** Reads the pairs of {@code --ground}, or of a key that takes the same. */
    static Ground pairs(AssumedGround assumed, Faults faults) {
        List<Node.Entry> entries = new ArrayList<>();
        String text = assumed.text();
        int from = 0;
        while (from <= text.length()) {
            int comma = text.indexOf(',', from);
            int to = comma < 0 ? text.length() : comma;
            pair(text.substring(from, to).trim(), new Node.Scalar("", false, false, assumed.line(), from + 1), assumed, entries, faults);
            from = to + 1;
        }
        FieldReader fields = new FieldReader(assumed.file(), new Node.Mapping(List.copyOf(entries), assumed.line(), 1), faults);
        Ground ground = read(fields);
        fields.done();
        return ground;
    }

    private static void pair(String pair, Node.Scalar at, AssumedGround assumed, List<Node.Entry> entries, Faults faults) {
        int equals = pair.indexOf('=');
        String key = equals < 0 ? "" : pair.substring(0, equals).trim();
        String value = equals < 0 ? "" : pair.substring(equals + 1).trim();
        if (key.isEmpty() || value.isEmpty()) {
            Node.Scalar found = new Node.Scalar(pair, false, false, at.line(), at.column());
            faults.add(assumed.file(), assumed.line(), assumed.line() == 0 ? "" : assumed.key(), pair.isEmpty() ? "nothing" : found.describe(), PAIRS, keyOf(pair));
            return;
        }
        for (Node.Entry entry : entries) {
            if (entry.key().text().equals(key)) {
                faults.add(assumed.file(), assumed.line(), key, "the key a second time", "each key once", "");
                return;
            }
        }
        entries.add(new Node.Entry(new Node.Scalar(key, false, false, at.line(), at.column()), new Node.Scalar(value, false, false, at.line(), at.column())));
    }

    /** A mend for a value written without its key, or an empty string. */
    private static String keyOf(String value) {
        if (SURFACES.contains(value)) {
            return "Write \"surface=" + value + "\".";
        }
        return SMOOTHNESSES.contains(value) ? "Write \"smoothness=" + value + "\"." : "";
    }

    /** What a ground says under each key, as written in a profile, in the order of {@link #KEYS}; null where unknown. */
    static String[] said(Ground ground) {
        return new String[] {ground.surface() == null ? null : ground.surface().tag(),
            ground.smoothness() == null ? null : ground.smoothness().tag(),
            ground.trackGrade() == null ? null : TRACKTYPES.get(ground.trackGrade() - 1), grade(ground.mtbScale()),
            yesNo(ground.sharpStones()), yesNo(ground.ruts()), yesNo(ground.roots()), yesNo(ground.sand()), yesNo(ground.mudWhenWet()),
            ground.waterCrossings() == null ? null : ground.waterCrossings().toString(),
            ground.ledgeHeight() == null ? null : LengthPhrases.hundredths(ground.ledgeHeight()) + " m",
            ground.turnsPerKm() == null ? null : LengthPhrases.tenths(ground.turnsPerKm())};
    }

    private static String yesNo(Boolean truth) {
        return truth == null ? null : truth ? "yes" : "no";
    }

    private static String grade(Double scale) {
        if (scale == null) {
            return null;
        }
        long whole = Math.round(scale);
        double rest = scale - whole;
        return whole + (rest > 0.1 ? "+" : rest < -0.1 ? "-" : "");
    }
}
