package courseworthy.rider;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.units.Dimension;
import courseworthy.units.UseCategory;
import java.util.List;

/** Reads a {@code bike:} block, of a rider's or an event's file. Bounds are what a bicycle can have, wide (judgement, no source). */
public final class BikeReader {

    /** Kinds of bike. */
    public static final List<String> KINDS =
            List.of("road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail");

    /** Marked intended-use categories that are understood: EN 17406 and ASTM F2043. */
    public static final List<String> CATEGORIES = UseCategory.words();
    private static final int MOST_CLICKS = 60;

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> KIND = DECLARED.word("kind", "", KINDS);
    private static final FileKey<Double> MASS =
            DECLARED.amount("mass", "Ready to ride, without water and kit", Dimension.MASS, 4, 40, "a mass from 4 kg to 40 kg");
    private static final FileKey<Double> RIM_INNER_WIDTH = DECLARED.amount("rim inner width", "", Dimension.LENGTH, 0.012, 0.060, "a width from 12 mm to 60 mm");
    private static final FileKey<Boolean> HOOKLESS = DECLARED.yesNo("hookless", "");
    private static final FileKey<Double> MARKED_TYRE_PRESSURE = pressure("marked tyre pressure", "Highest pressure marked on the tyre");
    private static final FileKey<Double> MARKED_RIM_PRESSURE = pressure("marked rim pressure", "Highest pressure marked on the rim");
    private static final FileKey<Double> TYRE_CLEARANCE = DECLARED.amount("tyre clearance", "Widest tyre that frame and fork take", Dimension.LENGTH, 0.018,
            0.130, "a width from 18 mm to 130 mm");
    private static final FileKey<Boolean> TUBELESS = DECLARED.yesNo("tubeless", "Whether rims and tyres are made to run tubeless");
    private static final FileKey<String> USE_CATEGORY = DECLARED.word("use category", "Marked intended-use category", CATEGORIES);
    private static final FileKey<Double> LEDGE_LIMIT =
            DECLARED.amount("ledge limit", "Highest ledge it is marked for", Dimension.LENGTH, 0, 5, "a height from 0 m to 5 m");
    private static final FileKey<Double> MASS_LIMIT =
            DECLARED.amount("mass limit", "Highest marked mass of rider, kit and bike", Dimension.MASS, 60, 300, "a mass from 60 kg to 300 kg");
    private static final FileKey<Double> MOST_FORK_TRAVEL = DECLARED.amount("most fork travel", "Longest fork travel the frame permits", Dimension.LENGTH,
            0.020, 0.250, "a travel from 20 mm to 250 mm");
    private static final FileKey<Double> LIGHTS =
            DECLARED.amount("lights", "Run time of the lights at the mode used", Dimension.TIME, 60, 360_000, "a run time from 1 min to 100 h");
    private static final FileKey<Double> MOST_ROTOR = DECLARED.amount("most rotor", "Largest rotor that frame and fork permit", Dimension.LENGTH, 0.120,
            0.250, "a diameter from 120 mm to 250 mm");
    private static final FileKey<Boolean> POWER_METER = DECLARED.yesNo("power meter", "");
    private static final FileKey<Integer> REBOUND_CLICKS = clicks("rebound clicks", "Of the fork, from closed to open");
    private static final FileKey<Integer> COMPRESSION_CLICKS = clicks("compression clicks", "Of the fork at low speed, from closed to open");
    private static final FileKey<Integer> SHOCK_REBOUND_CLICKS = clicks("shock rebound clicks", "From closed to open");
    private static final FileKey<Integer> SHOCK_COMPRESSION_CLICKS = clicks("shock compression clicks", "From closed to open");
    private static final FileKey<Double> SHOCK_STROKE =
            DECLARED.amount("shock stroke", "Stroke of the rear shock", Dimension.LENGTH, 0.020, 0.120, "a stroke from 20 mm to 120 mm");

    /** The keys of a bike block, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.all();
    /** Their names. */
    public static final List<String> KEYS = DECLARED.names();

    /** The keys that say something of one bike, and hold for no other; lights are taken from bike to bike. */
    public static final List<String> OF_ONE_BIKE = KEYS.stream().filter(key -> !key.equals("kind") && !key.equals("lights")).toList();

    private BikeReader() {
    }

    /** Reads a block; what is not written or is at fault is null. */
    public static Bike read(String file, Node.Mapping block, Faults faults) {
        FieldReader fields = new FieldReader(file, block, faults);
        Bike.Builder written = Bike.builder(KIND.read(fields)).mass(MASS.read(fields)).rimInnerWidth(RIM_INNER_WIDTH.read(fields))
                .hookless(HOOKLESS.read(fields)).markedTyrePressure(MARKED_TYRE_PRESSURE.read(fields)).markedRimPressure(MARKED_RIM_PRESSURE.read(fields))
                .tyreClearance(TYRE_CLEARANCE.read(fields)).tubeless(TUBELESS.read(fields));
        String category = USE_CATEGORY.read(fields);
        Bike bike = written.useCategory(category).ledgeLimit(ledgeLimit(LEDGE_LIMIT.read(fields), category)).massLimit(MASS_LIMIT.read(fields))
                .forkTravel(MOST_FORK_TRAVEL.read(fields)).lights(LIGHTS.read(fields)).mostRotor(MOST_ROTOR.read(fields))
                .powerMeter(POWER_METER.read(fields)).damping(damping(fields)).build();
        if (bike.rimInnerWidth() != null && bike.tyreClearance() != null && bike.rimInnerWidth() >= bike.tyreClearance()) {
            fields.fault("tyre clearance", fields.node("tyre clearance").describe() + " on a rim of " + fields.node("rim inner width").describe(),
                    "room for more than the rim", "Check both.");
        }
        fields.done();
        ofSomeKind(fields, faults);
        return bike;
    }

    /** Figures belong to the bike they are written for, so it must be told of which kind that is. */
    private static void ofSomeKind(FieldReader fields, Faults faults) {
        for (String key : fields.has("kind") ? List.<String>of() : OF_ONE_BIKE) {
            if (fields.has(key)) {
                faults.add(fields.file(), fields.lineOf(key), "kind", "\"" + key + "\" of a bike of no kind", "the kind of bike it belongs to: "
                        + String.join(", ", KINDS), "Add a line such as \"kind: " + KINDS.get(1) + "\" to this bike block.");
                return;
            }
        }
    }

    private static Bike.DampingSettings damping(FieldReader fields) {
        return new Bike.DampingSettings(REBOUND_CLICKS.read(fields), COMPRESSION_CLICKS.read(fields), SHOCK_REBOUND_CLICKS.read(fields),
                SHOCK_COMPRESSION_CLICKS.read(fields), SHOCK_STROKE.read(fields));
    }

    private static FileKey<Double> pressure(String key, String about) {
        return DECLARED.amount(key, about, Dimension.PRESSURE, 50_000, 1_500_000, "a pressure from 0.5 bar to 15 bar");
    }

    private static FileKey<Integer> clicks(String key, String about) {
        return DECLARED.whole(key, about, 1, MOST_CLICKS);
    }

    /** The lower of what is written and what the marked category allows. */
    private static Double ledgeLimit(Double written, String category) {
        double marked = category == null ? Double.POSITIVE_INFINITY : UseCategory.highestDrop(category);
        double least = written == null ? marked : Math.min(marked, written);
        return Double.isInfinite(least) ? null : Double.valueOf(least);
    }
}
