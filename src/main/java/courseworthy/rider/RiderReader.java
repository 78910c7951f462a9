package courseworthy.rider;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads a rider's file. Bounds are what riders are, wide (judgement, no source): they catch slips, they judge nobody. */
public final class RiderReader {

    private static final double HOUR = 3600;

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> NAME = DECLARED.line("name", "", FieldReader.LONGEST_NAME);
    private static final FileKey<Double> MASS = DECLARED.amount("mass", "Body mass", Dimension.MASS, 30, 200, "a mass from 30 kg to 200 kg");
    private static final FileKey<Double> HEIGHT =
            DECLARED.amount("height", "Standing, without shoes", Dimension.LENGTH, 1.2, 2.3, "a height from 1.2 m to 2.3 m");
    private static final FileKey<Double> KIT =
            DECLARED.amount("kit", "Clothing, helmet, shoes and what is carried, without water", Dimension.MASS, 0, 30, "a mass from 0 kg to 30 kg");
    private static final FileKey<Double> HELD_FOR = DECLARED.others("power")
            .amount("held for", "How long that power was held", Dimension.TIME, 5, 24 * HOUR, "a time from 5 s to 24 h");
    private static final FileKey<String> SKILL = DECLARED.word("skill", "Skill on rough ground", Rider.SKILLS);
    private static final FileKey<Double> CLIMBING_CADENCE = DECLARED.amount("climbing cadence", "Lowest cadence turned for long on a climb",
            Dimension.CADENCE, 30, 110, "a cadence from 30 rpm to 110 rpm");
    private static final FileKey<Double> HIGHEST_CADENCE =
            DECLARED.amount("highest cadence", "Highest cadence turned on the flat", Dimension.CADENCE, 60, 160, "a cadence from 60 rpm to 160 rpm");
    private static final FileKey<Double> PLUG_STOP = stop("plug stop", "Time a puncture costs that a plug mends");
    private static final FileKey<Double> TUBE_STOP = stop("tube stop", "Time a puncture costs that takes a tube");
    private static final FileKey<Double> LOST_GROUP = stop("lost group", "Time lost by riding on alone after a stop");
    private static final FileKey<Integer> RACES_A_YEAR = DECLARED.whole("races a year", "On this bike", 0, 200);
    private static final FileKey<Double> SWEAT_RATE =
            DECLARED.amount("sweat rate", "Known sweat loss in an hour", Dimension.VOLUME, 0.1, 4, "litres an hour, from 0.1 L to 4 L");
    private static final FileKey<Double> BAR_WIDTH =
            DECLARED.amount("bar width", "The width the rider is used to", Dimension.LENGTH, 0.3, 0.9, "a width from 300 mm to 900 mm");
    private static final FileKey<Double> SHOULDER_WIDTH = DECLARED.amount("shoulder width", "Across the bony points at the tips of the shoulders",
            Dimension.LENGTH, 0.25, 0.55, "a width from 250 mm to 550 mm");
    private static final FileKey<String> HAND_STRENGTH = DECLARED.word("hand strength", "For pulling brake levers all day", Rider.HAND_STRENGTHS);
    /** Years in which riders may have been born (judgement). */
    private static final FileKey<Integer> YEAR_OF_BIRTH = DECLARED.whole("year of birth", "By which age groups of events go", 1900, 2100);
    private static final FileKey<String> PREFERENCE = DECLARED.others("injuries")
            .word("preference", "What to favour where comfort and speed pull apart", Rider.PREFERENCES);
    private static final FileKey<List<String>> TAGS = DECLARED.names("tags", "What the rider belongs to, for sheets to ask for");
    /** Longest notes, in characters: they stand at the head of a brief (judgement). */
    private static final int LONGEST_NOTES = 1000;
    private static final FileKey<String> NOTES = DECLARED.line("notes", "What to keep in mind of the rider, for the brief", LONGEST_NOTES);

    /** The keys of a rider's file, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.others("bike", "constraints").all();
    /** Their names. */
    public static final List<String> KEYS = DECLARED.names();

    /** The keys of a best effort in the list {@code power}. */
    public static final List<String> EFFORT_KEYS = List.of("for", "power");

    /** Least power that is believed, W. */
    private static final double LEAST_POWER = 50;
    /**
     * Most power that is believed, W and W/kg, when held for at least so many seconds. An hour: 600 W and 8 W/kg; longer, what of it can be
     * held at the high end of the planning band of long rides (0.87 at 4 h, 0.75 at 12 h). All above any record (judgement, no source).
     */
    private static final double[][] MOST_POWER = {{12 * HOUR, 450, 6}, {4 * HOUR, 520, 7}, {HOUR, 600, 8}, {300, 900, 11}, {0, 2500, 35}};

    /** Mass over height squared, kg/m2: below and above it nobody rides (judgement; underweight starts at 18.5, WHO 1995). */
    private static final double LIGHTEST = 11;
    private static final double HEAVIEST = 75;
    private static final String A_TIME = "a time from 3 min to 24 h";
    private static final String SPRINT = "Power over less than 3 min says nothing of an hour: write a longer best effort, such as one of 20 min.";

    private final String shown;
    private final Faults faults;
    private final FieldReader fields;

    private RiderReader(String shown, Node.Mapping tree, Faults faults) {
        this.shown = shown;
        this.faults = faults;
        this.fields = new FieldReader(shown, tree, faults);
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return the rider, or null where the file could not be read at all; what is at fault in it is null
     */
    public static Rider read(Path path, String shown, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        return tree == null ? null : new RiderReader(shown, tree, faults).rider();
    }

    /** Reads what would stand in a rider's file from a block of another one. */
    public static Rider read(Node.Mapping block, String shown, Faults faults) {
        return new RiderReader(shown, block, faults).rider();
    }

    private Rider rider() {
        String name = NAME.read(fields);
        Double mass = MASS.read(fields);
        Double height = height(mass);
        Double kit = KIT.read(fields);
        List<Rider.MaximalEffort> efforts = efforts(mass);
        String skill = SKILL.read(fields);
        Double climbing = CLIMBING_CADENCE.read(fields);
        Double highest = HIGHEST_CADENCE.read(fields);
        if (climbing != null && highest != null && climbing >= highest) {
            fields.fault("climbing cadence", fields.node("climbing cadence").describe(), "less than the highest cadence", "");
        }
        Rider.StopCosts stops = new Rider.StopCosts(PLUG_STOP.read(fields), TUBE_STOP.read(fields), LOST_GROUP.read(fields));
        Rider rider = Rider.builder().name(name).file(shown).mass(mass).height(height).kit(kit).efforts(efforts).skill(skill)
                .climbingCadence(climbing).highestCadence(highest).stops(stops).racesAYear(RACES_A_YEAR.read(fields)).sweatRate(SWEAT_RATE.read(fields))
                .barWidth(BAR_WIDTH.read(fields)).body(body()).preference(PREFERENCE.read(fields)).tags(TAGS.read(fields)).notes(NOTES.read(fields))
                .bike(bike()).constraints(constraints()).build();
        fields.done();
        return rider;
    }

    private Double height(Double mass) {
        Double height = HEIGHT.read(fields);
        if (mass != null && height != null && (mass / (height * height) < LIGHTEST || mass / (height * height) > HEAVIEST)) {
            fields.fault("height", fields.node("height").describe() + " at a mass of " + fields.node("mass").describe(), "a body there can be",
                    "Check mass and height.");
        }
        return height;
    }

    private Rider.BodyMeasures body() {
        return new Rider.BodyMeasures(SHOULDER_WIDTH.read(fields), HAND_STRENGTH.read(fields), YEAR_OF_BIRTH.read(fields), injuries());
    }

    /** Each once; what the tool knows nothing of belongs into the notes. */
    private List<String> injuries() {
        List<String> out = new ArrayList<>();
        for (String each : fields.names("injuries")) {
            if (!Rider.INJURIES.contains(each)) {
                fields.fault("injuries", "\"" + each + "\"", "any of: " + String.join(", ", Rider.INJURIES),
                        (Spelling.didYouMean(each, Rider.INJURIES) + " Anything else belongs in notes.").strip());
            } else if (!out.contains(each)) {
                out.add(each);
            }
        }
        return out;
    }

    private static FileKey<Double> stop(String key, String about) {
        return DECLARED.amount(key, about, Dimension.TIME, 5, 4 * HOUR, "a time from 5 s to 4 h");
    }

    private Bike bike() {
        Node node = fields.node("bike");
        if (node instanceof Node.Mapping block) {
            return BikeReader.read(shown, block, faults);
        }
        fields.fields("bike");
        return Bike.UNKNOWN;
    }

    private Node constraints() {
        Node node = fields.node("constraints");
        if (node != null && !(node instanceof Node.Sequence)) {
            fields.fault("constraints", node.describe(), "a list of rows, as in a sheet's advice", "Start each row with a dash.");
            return null;
        }
        return node;
    }

    /** One power with the time it was held for, or a list of best efforts. */
    private List<Rider.MaximalEffort> efforts(Double mass) {
        Node node = fields.node("power");
        Double held = HELD_FOR.read(fields);
        if (node instanceof Node.Sequence list) {
            if (fields.has("held for")) {
                fields.fault("held for", "a time beside a list of powers", "the time inside each item, as for", "Remove held for.");
            }
            return listed(list, mass);
        }
        if (node == null) {
            if (fields.has("held for")) {
                fields.fault("held for", "a time without a power", "power beside it", "Add a line \"power: 240 W\".");
            }
            return List.of();
        }
        if (!fields.has("held for")) {
            fields.fault("power", node.describe() + " without a time", "the best power and the time it was held for",
                    "Add a line \"held for: 1:00 h\", or whatever the time was.");
        }
        Amount watts = fields.amount("power", Dimension.POWER);
        Rider.MaximalEffort effort = effort(fields, held, watts, mass);
        if (effort != null && effort.sprint()) {
            fields.fault("held for", fields.node("held for").describe(), A_TIME, SPRINT);
        }
        return effort == null ? List.of() : List.of(effort);
    }

    /** Says which of several efforts say nothing of an hour that others do not say better; where none does, that is a fault. */
    private void unused(List<FieldReader> written, List<Rider.MaximalEffort> efforts) {
        boolean byLaw = efforts.stream().anyMatch(each -> !each.sprint() && !each.beyondTheLaw());
        Rider.MaximalEffort lasting = efforts.stream().filter(Rider.MaximalEffort::beyondTheLaw).min(Comparator.comparingDouble(Rider.MaximalEffort::seconds)).orElse(null);
        for (int i = 0; i < efforts.size(); i++) {
            Rider.MaximalEffort effort = efforts.get(i);
            FieldReader at = written.get(i);
            String found = at.node("for").describe();
            if (effort.sprint() && !byLaw && lasting == null) {
                at.fault("for", found, A_TIME, SPRINT);
            } else if (effort.sprint()) {
                faults.add(Fault.warning(shown, at.lineOf("for"), "for", found, A_TIME, "It is not used. " + SPRINT));
            } else if (effort.beyondTheLaw() && (byLaw || effort != lasting)) {
                faults.add(Fault.warning(shown, at.lineOf("for"), "for", found + " beside a shorter effort", "efforts up to 4 h, or one alone",
                        "It is not used: the shorter one says more closely what an hour would be."));
            }
        }
    }

    private List<Rider.MaximalEffort> listed(Node.Sequence list, Double mass) {
        List<Rider.MaximalEffort> out = new ArrayList<>();
        List<FieldReader> written = new ArrayList<>();
        for (Node item : list.items()) {
            FieldReader each = fields.fields("power", item);
            if (each == null) {
                continue;
            }
            each.required("for", "the time the power was held for");
            each.required("power", "the best mean power over that time");
            Amount held = each.amount("for", Dimension.TIME, 5, 24 * HOUR, "a time from 5 s to 24 h");
            Rider.MaximalEffort effort = effort(each, held == null ? null : Double.valueOf(held.inBase()), each.amount("power", Dimension.POWER), mass);
            each.done();
            if (effort != null && falls(each, effort, out)) {
                out.add(effort);
                written.add(each);
            }
        }
        unused(written, out);
        out.sort(Comparator.comparingDouble(Rider.MaximalEffort::seconds));
        return out;
    }

    private Rider.MaximalEffort effort(FieldReader from, Double seconds, Amount watts, Double mass) {
        if (seconds == null || watts == null) {
            return null;
        }
        int row = 0;
        while (seconds < MOST_POWER[row][0]) {
            row++;
        }
        double most = MOST_POWER[row][1];
        if (watts.inBase() < LEAST_POWER || watts.inBase() > most) {
            from.fault("power", from.node("power").describe(), "a power from " + (int) LEAST_POWER + " W to " + (int) most + " W over that time",
                    "");
            return null;
        }
        if (mass != null && watts.inBase() > MOST_POWER[row][2] * mass) {
            from.fault("power", from.node("power").describe(), "at most " + (int) (MOST_POWER[row][2] * mass) + " W over that time at a mass of "
                    + fields.node("mass").describe() + ", " + (int) MOST_POWER[row][2] + " W/kg", "Check power, time and mass.");
            return null;
        }
        return new Rider.MaximalEffort(seconds, watts.inBase());
    }

    /** A best effort is never weaker than a longer one. */
    private static boolean falls(FieldReader at, Rider.MaximalEffort last, List<Rider.MaximalEffort> soFar) {
        for (Rider.MaximalEffort other : soFar) {
            boolean longer = last.seconds() > other.seconds();
            if (last.seconds() == other.seconds()) {
                at.fault("for", "the same time twice", "each time once", "");
            } else if (longer ? last.watts() > other.watts() : last.watts() < other.watts()) {
                at.fault("power", at.node("power").describe(), "less power the longer it is held",
                        "Another row holds " + (int) other.watts() + " W for " + clock(other.seconds()) + ".");
            } else {
                continue;
            }
            return false;
        }
        return true;
    }

    private static String clock(double seconds) {
        long whole = Math.round(seconds);
        if (whole < 60) {
            return whole + " s";
        }
        long minutes = whole / 60;
        return minutes < 60 ? minutes + " min" : minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60 + " h";
    }
}
