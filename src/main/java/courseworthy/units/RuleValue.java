package courseworthy.units;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A figure that the shipped rules name and the code needs too. Its value, with its source or reason, stands in {@code rules/} alone; it is
 * packed when the tool is built.
 */
public enum RuleValue {

    /** The most that a tyre may be inflated to on a rim without hooks. */
    HOOKLESS_PRESSURE("hookless limit", Dimension.PRESSURE),
    /** The narrowest tyre that rims without hooks are approved for. */
    HOOKLESS_TYRE_WIDTH("narrowest hookless tyre", Dimension.LENGTH),
    /** How much wider than the inside of its rim a tyre is, at the least. */
    TYRE_OVER_RIM("tyre over its rim", Dimension.LENGTH),
    /** How far a tyre may measure over its marking. */
    TYRE_OVER_MARKING("tyre over its marking", Dimension.LENGTH),
    /** How far a valve stands out of its rim, at the least. */
    VALVE_OVER_RIM("valve over its rim", Dimension.LENGTH),
    /** The most steerer above the stem that spacers are put on. */
    STEERER_OVER_STEM("steerer over its stem", Dimension.LENGTH),
    /** How far front and rear travel may be apart. */
    TRAVEL_DIFFERENCE("difference in travel", Dimension.LENGTH),
    /** Highest ledge of road and gravel bikes. */
    CATEGORY_2_LEDGE("category 2 ledge", Dimension.LENGTH),
    /** Highest ledge of cross-country bikes. */
    CATEGORY_3_LEDGE("category 3 ledge", Dimension.LENGTH),
    /** Highest ledge of trail bikes. */
    CATEGORY_4_LEDGE("category 4 ledge", Dimension.LENGTH),
    /** Highest ledge of cross-country bikes, in the older classes. */
    CONDITION_3_LEDGE("condition 3 ledge", Dimension.LENGTH),
    /** Highest ledge of trail bikes, in the older classes. */
    CONDITION_4_LEDGE("condition 4 ledge", Dimension.LENGTH),
    /** Mass of bike, rider and luggage from which a load is heavy. */
    HEAVY_LOAD("heavy load", Dimension.MASS),
    /** Water that bottles and a pack hold. */
    BOTTLES_WITH_PACK("bottles with a pack", Dimension.VOLUME),
    /** Power that the standard's heat test puts through one brake. */
    BRAKE_HEAT_TEST("heat test", Dimension.POWER);

    /** The resource that has them, a line each: the name, a tab, and the figure as written. */
    public static final String RESOURCE = "rule-values.txt";

    private final String written;
    private final Dimension dimension;

    RuleValue(String written, Dimension dimension) {
        this.written = written;
        this.dimension = dimension;
    }

    /** Its name in the shipped rules. */
    public String written() {
        return written;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** In the base unit of its dimension. */
    public double inBase() {
        return PackedValues.VALUES[ordinal()];
    }

    /** As the rules write it, {@code 5 bar}. */
    public String text() {
        return PackedValues.TEXTS.get(written);
    }

    /** Read when first asked for: the code that packs them knows them by name alone. */
    private static final class PackedValues {

        static final Map<String, String> TEXTS = texts();
        static final double[] VALUES = values();

        private PackedValues() {
        }

        private static Map<String, String> texts() {
            Map<String, String> out = new LinkedHashMap<>();
            try (InputStream in = RuleValue.class.getResourceAsStream("/" + RESOURCE)) {
                if (in == null) {
                    throw new IllegalStateException("the values of the shipped rules are missing: " + RESOURCE);
                }
                for (String line : List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n"))) {
                    String[] parts = line.split("\t", 2);
                    out.put(parts[0], parts[1]);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return out;
        }

        private static double[] values() {
            double[] out = new double[RuleValue.values().length];
            for (RuleValue value : RuleValue.values()) {
                try {
                    out[value.ordinal()] = Amount.parse(TEXTS.get(value.written), value.dimension).inBase();
                } catch (Amount.NotAnAmount e) {
                    throw new IllegalStateException(value.written, e);
                }
            }
            return out;
        }
    }
}
