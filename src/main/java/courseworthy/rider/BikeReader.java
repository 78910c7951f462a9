package courseworthy.rider;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.units.UseCategory;
import java.util.List;

/** Reads a {@code bike:} block, of a rider's or an event's file. Bounds are what a bicycle can have, wide (judgement, no source). */
public final class BikeReader {

    /** The keys of a bike block. */
    public static final List<String> KEYS = List.of("kind", "mass", "rim inner width", "hookless", "marked tyre pressure", "marked rim pressure",
            "tyre clearance", "tubeless", "use category", "ledge limit", "mass limit", "most fork travel", "lights", "most rotor",
            "power meter", "rebound clicks", "compression clicks", "shock rebound clicks", "shock compression clicks", "shock stroke");

    /** The keys that say something of one bike, and hold for no other; lights are taken from bike to bike. */
    public static final List<String> OF_ONE_BIKE = KEYS.stream().filter(key -> !key.equals("kind") && !key.equals("lights")).toList();

    /** Kinds of bike. */
    public static final List<String> KINDS =
            List.of("road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail");

    /** Marked intended-use categories that are understood: EN 17406 and ASTM F2043. */
    public static final List<String> CATEGORIES = UseCategory.words();
    private static final int MOST_CLICKS = 60;

    private BikeReader() {
    }

    /** Reads a block; what is not written or is at fault is null. */
    public static Bike read(String file, Node.Mapping block, Faults faults) {
        FieldReader fields = new FieldReader(file, block, faults);
        String kind = fields.word("kind", KINDS);
        String category = fields.word("use category", CATEGORIES);
        Double ledge = value(fields, "ledge limit", Dimension.LENGTH, 0, 5, "a height from 0 m to 5 m");
        Bike bike = Bike.builder(kind).mass(value(fields, "mass", Dimension.MASS, 4, 40, "a mass from 4 kg to 40 kg"))
                .rimInnerWidth(value(fields, "rim inner width", Dimension.LENGTH, 0.012, 0.060, "a width from 12 mm to 60 mm"))
                .hookless(fields.yesNo("hookless")).markedTyrePressure(pressure(fields, "marked tyre pressure")).markedRimPressure(pressure(fields, "marked rim pressure"))
                .tyreClearance(value(fields, "tyre clearance", Dimension.LENGTH, 0.018, 0.130, "a width from 18 mm to 130 mm"))
                .tubeless(fields.yesNo("tubeless")).ledgeLimit(ledgeLimit(ledge, category)).useCategory(category)
                .massLimit(value(fields, "mass limit", Dimension.MASS, 60, 300, "a mass from 60 kg to 300 kg"))
                .forkTravel(value(fields, "most fork travel", Dimension.LENGTH, 0.020, 0.250, "a travel from 20 mm to 250 mm"))
                .lights(value(fields, "lights", Dimension.TIME, 60, 360_000, "a run time from 1 min to 100 h"))
                .mostRotor(value(fields, "most rotor", Dimension.LENGTH, 0.120, 0.250, "a diameter from 120 mm to 250 mm"))
                .powerMeter(fields.yesNo("power meter")).damping(damping(fields)).build();
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
        return new Bike.DampingSettings(fields.whole("rebound clicks", 1, MOST_CLICKS), fields.whole("compression clicks", 1, MOST_CLICKS),
                fields.whole("shock rebound clicks", 1, MOST_CLICKS), fields.whole("shock compression clicks", 1, MOST_CLICKS),
                value(fields, "shock stroke", Dimension.LENGTH, 0.020, 0.120, "a stroke from 20 mm to 120 mm"));
    }

    private static Double pressure(FieldReader fields, String key) {
        return value(fields, key, Dimension.PRESSURE, 50_000, 1_500_000, "a pressure from 0.5 bar to 15 bar");
    }

    static Double value(FieldReader fields, String key, Dimension dimension, double least, double most, String range) {
        Amount amount = fields.amount(key, dimension, least, most, range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    /** The lower of what is written and what the marked category allows. */
    private static Double ledgeLimit(Double written, String category) {
        double marked = category == null ? Double.POSITIVE_INFINITY : UseCategory.highestDrop(category);
        double least = written == null ? marked : Math.min(marked, written);
        return Double.isInfinite(least) ? null : Double.valueOf(least);
    }
}
