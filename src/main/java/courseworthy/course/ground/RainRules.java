package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.Surface;
import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The table of how rain turns the going, by ground.
 *
 * @param rules in order; the first that fits a ground decides, and the last fits any
 */
public record RainRules(List<Rule> rules) {

    private static final String FILE = "rules/ground/rain.yaml";
    private static final int LONGEST = 400;

    public RainRules {
        rules = List.copyOf(rules);
    }

    /**
     * What rain does to one kind of ground.
     *
     * @param surfaces those it is for; empty for any
     * @param mud      whether only for ground that turns to mud
     * @param damp     water from which it is damp, m
     * @param wet      water from which it is wet, m
     * @param holds    most water, m
     * @param drains   water that drains off and dries in an hour, m
     */
    public record Rule(String id, List<Surface> surfaces, boolean mud, double damp, double wet, double holds, double drains, String because) {

        public Rule {
            surfaces = List.copyOf(surfaces);
        }

        boolean fits(Ground ground) {
            return (surfaces.isEmpty() || ground.surface() != null && surfaces.contains(ground.surface())) && (!mud || Boolean.TRUE.equals(ground.mudWhenWet()));
        }

        /** Water on ground that is dry (0), damp (1) or wet (2), with nothing more known of it, m: none, half-way between damp and wet, all it holds. */
        public double water(int wetness) {
            return wetness == 0 ? 0 : wetness == 1 ? (damp + wet) / 2 : holds;
        }

        /** Water after so many hours of rain, m and m an hour. */
        public double after(double water, double rain, double hours) {
            return Math.max(0, Math.min(holds, water + (rain - drains) * hours));
        }

        /** Whether ground with so much water is dry (0), damp (1) or wet (2). */
        public int wetness(double water) {
            return water >= wet - LEAST ? 2 : water >= damp - LEAST ? 1 : 0;
        }

        /** m (computing). */
        private static final double LEAST = 1e-9;
    }

    /** The rule for a ground. */
    public Rule of(Ground ground) {
        for (Rule rule : rules) {
            if (rule.fits(ground)) {
                return rule;
            }
        }
        throw new IllegalStateException(FILE + " has no rule for any ground");
    }

    private static final class Holder {
        private static final RainRules SHIPPED = read();
    }

    /** The shipped table. @throws IllegalStateException where it is missing or spoilt, which is a fault of the build */
    public static RainRules shipped() {
        return Holder.SHIPPED;
    }

    private static RainRules read() {
        Faults faults = new Faults();
        try (InputStream in = RainRules.class.getResourceAsStream("rain.yaml")) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not in the build");
            }
            RainRules out = of(YamlReader.read(in.readAllBytes(), FILE, faults), faults);
            if (!faults.faults().isEmpty()) {
                throw new IllegalStateException(FaultList.text(faults.faults()));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RainRules of(Node.Mapping tree, Faults faults) {
        FieldReader fields = new FieldReader(FILE, tree, faults);
        fields.line("rain", LONGEST);
        fields.line("about", LONGEST);
        List<Rule> rules = new ArrayList<>();
        for (FieldReader row : fields.blocks("grounds")) {
            rules.add(new Rule(row.line("id", LONGEST), surfaces(row), Boolean.TRUE.equals(row.yesNo("mud when wet")), metres(row, "damp from"),
                    metres(row, "wet from"), metres(row, "holds"), metres(row, "drains"), row.line("because", LONGEST)));
            row.done();
        }
        fields.done();
        return new RainRules(rules);
    }

    private static List<Surface> surfaces(FieldReader row) {
        List<Surface> out = new ArrayList<>();
        for (String tag : row.texts("surfaces")) {
            Surface surface = Surface.of(tag);
            if (surface == null) {
                row.fault("surfaces", "\"" + tag + "\"", "one of: " + String.join(", ", Surface.tags()), "");
            } else {
                out.add(surface);
            }
        }
        return out;
    }

    private static double metres(FieldReader row, String key) {
        row.required(key, "an amount of water");
        Amount amount = row.amount(key, Dimension.LENGTH);
        return amount == null ? 0 : amount.inBase();
    }
}
