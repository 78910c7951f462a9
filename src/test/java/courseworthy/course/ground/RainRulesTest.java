package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Ground;
import courseworthy.course.Surface;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of rain, held to its cases. What it says is common practice, no source. */
class RainRulesTest {

    private static final List<String> WORDS = List.of("dry", "damp", "wet");
    private static final double HOUR = 3600;

    private record RainCase(String rule, String name, Ground ground, List<Double> rain, List<Double> hours, List<String> going) {

        boolean holds(RainRules.Rule with) {
            double water = with.water(0);
            for (int i = 0; i < rain.size(); i++) {
                water = with.after(water, rain.get(i), hours.get(i));
                if (!WORDS.get(with.wetness(water)).equals(going.get(i))) {
                    return false;
                }
            }
            return true;
        }
    }

    private static List<RainCase> cases() {
        Faults faults = new Faults();
        String file = "rules/ground/rain.cases.yaml";
        FieldReader fields = new FieldReader(file, YamlReader.read(Path.of(file), file, faults), faults);
        List<RainCase> out = new ArrayList<>();
        for (FieldReader rule : fields.blocks("cases")) {
            String id = rule.line("rule", 100);
            for (Node.Entry entry : rule.block().entries()) {
                if (entry.value() instanceof Node.Mapping block) {
                    FieldReader at = new FieldReader(file, block, faults);
                    String tag = at.line("surface", 100);
                    Ground ground = Ground.builder().surface(tag == null ? null : Surface.of(tag)).mudWhenWet(at.yesNo("mud when wet")).build();
                    out.add(new RainCase(id, entry.key().text(), ground, amounts(at, "rain", Dimension.LENGTH, 1),
                            amounts(at, "for", Dimension.TIME, HOUR), at.texts("going")));
                    at.done();
                }
            }
        }
        assertThat(faults.faults()).isEmpty();
        return out;
    }

    private static List<Double> amounts(FieldReader from, String key, Dimension dimension, double per) {
        return from.items(key).stream().map(item -> from.amount(key, (Node.Scalar) item, dimension).inBase() / per).toList();
    }

    @Test
    void everyCaseHolds() {
        List<RainCase> cases = cases();
        assertThat(cases).hasSizeGreaterThan(50);
        for (RainCase each : cases) {
            RainRules.Rule rule = RainRules.shipped().of(each.ground());
            assertThat(rule.id()).as(each.rule() + ", " + each.name()).isEqualTo(each.rule());
            assertThat(each.holds(rule)).as(each.rule() + ", " + each.name()).isTrue();
        }
    }

    /** A figure that is a quarter more or a fifth less is noticed by a case. */
    @Test
    void everyFigureOfEveryRowIsHeld() {
        List<RainCase> cases = cases();
        for (RainRules.Rule rule : RainRules.shipped().rules()) {
            List<RainCase> own = cases.stream().filter(each -> each.rule().equals(rule.id())).toList();
            for (double by : new double[] {0.8, 1.25}) {
                for (RainRules.Rule moved : List.of(moved(rule, by, 1, 1, 1), moved(rule, 1, by, 1, 1), moved(rule, 1, 1, by, 1), moved(rule, 1, 1, 1, by))) {
                    assertThat(own.stream().allMatch(each -> each.holds(moved))).as(moved.toString()).isFalse();
                }
            }
        }
    }

    private static RainRules.Rule moved(RainRules.Rule of, double damp, double wet, double holds, double drains) {
        return new RainRules.Rule(of.id(), of.surfaces(), of.mud(), of.damp() * damp, of.wet() * wet, of.holds() * holds, of.drains() * drains, of.because());
    }

    /** Fast on clay, slow on gravel (common practice, no source): in the same steady rain clay is wet first, and gravel is dry first after it. */
    @Test
    void clayIsWetLongBeforeGravelAndLongAfterIt() {
        RainRules.Rule clay = of(Surface.CLAY);
        RainRules.Rule gravel = of(Surface.GRAVEL);
        assertThat(clay.wetness(clay.after(0, 0.004, 0.5))).isEqualTo(2);
        assertThat(gravel.wetness(gravel.after(0, 0.004, 0.5))).isZero();
        assertThat(gravel.wetness(gravel.after(0, 0.004, 2))).isEqualTo(1);
        assertThat(gravel.wetness(gravel.after(gravel.water(2), 0, 9))).isZero();
        assertThat(clay.wetness(clay.after(clay.water(2), 0, 9))).isEqualTo(2);
    }

    @Test
    void everySurfaceThatRidersMeetHasARow() {
        for (Surface surface : Surface.values()) {
            boolean frozen = surface == Surface.SNOW || surface == Surface.ICE;
            assertThat(of(surface).id().equals("not-known")).as(surface.tag()).isEqualTo(frozen);
        }
        assertThat(RainRules.shipped().rules()).allSatisfy(rule -> {
            assertThat(rule.damp()).isLessThan(rule.wet());
            assertThat(rule.wet()).isLessThan(rule.holds());
            assertThat(rule.because()).isNotBlank();
        });
    }

    private static RainRules.Rule of(Surface surface) {
        return RainRules.shipped().of(Ground.builder().surface(surface).build());
    }
}
