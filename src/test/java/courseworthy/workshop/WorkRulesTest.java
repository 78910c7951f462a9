package courseworthy.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.workshop.WorkRules.Precedence;
import courseworthy.workshop.WorkRules.SharePolicy;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of what is done before what, against the cases beside it: no kind of work, nothing shared and no wait in it without a case. */
class WorkRulesTest {

    private static final WorkRules SHIPPED = WorkRules.shipped();

    private record Case(String rule, String name, boolean holds, List<String> first, List<String> then, SharePolicy share, int pause) {
    }

    @Test
    void everyRowHoldsAgainstItsCases() {
        assertThat(SHIPPED.precedence().stream().flatMap(each -> failures(each).stream())).isEmpty();
        assertThat(SHIPPED.precedence().stream().map(Precedence::id)).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(
                cases().stream().map(Case::rule).distinct().toList());
    }

    @Test
    void aKindDroppedOrAWaitMovedIsNoticed() {
        for (Precedence row : SHIPPED.precedence()) {
            for (String kind : row.first()) {
                assertThat(failures(with(row, without(row.first(), kind), row.then(), row.share(), row.pause()))).as(row.id() + " " + kind).isNotEmpty();
            }
            for (String kind : row.then()) {
                assertThat(failures(with(row, row.first(), without(row.then(), kind), row.share(), row.pause()))).as(row.id() + " " + kind).isNotEmpty();
            }
            for (SharePolicy other : SharePolicy.values()) {
                assertThat(other == row.share() || !failures(with(row, row.first(), row.then(), other, row.pause())).isEmpty()).as(row.id() + " " + other).isTrue();
            }
            assertThat(failures(with(row, row.first(), row.then(), row.share(), row.pause() + 60))).as(row.id() + " wait").isNotEmpty();
        }
    }

    /** Words are kinds of parts, a wheel that goes out or in, or work that a row of the table makes; each row says why. */
    @Test
    void everyWordIsKnown() {
        List<String> known = new ArrayList<>(PartKind.partWords());
        known.remove("wheel");
        known.addAll(List.of("wheel out", "wheel in", "any", "hose opened", "cable opened"));
        SHIPPED.followUps().forEach(each -> known.add(each.job()));
        for (Precedence row : SHIPPED.precedence()) {
            assertThat(known).containsAll(row.first()).containsAll(row.then());
            assertThat(row.because()).endsWith(".");
        }
        SHIPPED.followUps().forEach(each -> {
            assertThat(known).containsAll(each.after());
            assertThat(each.because()).endsWith(".");
            assertThat(each.minutes()).isBetween(5, 60);
        });
        assertThat(known).containsAll(SHIPPED.wheelOut());
    }

    /** What follows from work on a bike comes after it on that bike, and on no other; a test ride comes after everything. */
    @Test
    void whatFollowsComesAfter() {
        assertThat(SHIPPED.wait("cassette", "index the gears", SharePolicy.BIKE)).isZero();
        assertThat(SHIPPED.wait("cassette", "index the gears", SharePolicy.NOTHING)).isEqualTo(-1);
        assertThat(SHIPPED.wait("saddle", "index the gears", SharePolicy.BIKE)).isEqualTo(-1);
        assertThat(SHIPPED.wait("saddle", "test ride", SharePolicy.BIKE)).isZero();
        assertThat(SHIPPED.wait("index the gears", "test ride", SharePolicy.BIKE)).isZero();
        assertThat(SHIPPED.wait("tyre", "test ride", SharePolicy.BIKE)).isEqualTo(12 * 60);
        assertThat(SHIPPED.wait("test ride", "test ride", SharePolicy.BIKE)).isEqualTo(-1);
    }

    private static List<String> without(List<String> all, String one) {
        return all.stream().filter(each -> !each.equals(one)).toList();
    }

    private static Precedence with(Precedence row, List<String> first, List<String> then, SharePolicy share, int wait) {
        return new Precedence(row.id(), first, then, share, wait, row.because());
    }

    /** What does not come out as the cases say. */
    private static List<String> failures(Precedence row) {
        List<String> out = new ArrayList<>();
        for (Case each : cases()) {
            for (String one : each.rule.equals(row.id()) ? each.first : List.<String>of()) {
                for (String other : each.then) {
                    boolean right = row.holds(one, other, each.share) == each.holds && (!each.holds || row.pause() == each.pause);
                    if (!right) {
                        out.add(each.rule + ", " + each.name + ": " + one + ", " + other);
                    }
                }
            }
        }
        return out;
    }

    private static List<Case> cases() {
        String file = "rules/stand/order.cases.yaml";
        Faults faults = new Faults();
        List<Case> out = new ArrayList<>();
        for (FieldReader rule : new FieldReader(file, YamlReader.read(Path.of(file), file, faults), faults).blocks("cases")) {
            String id = rule.line("rule", 100);
            for (String kind : List.of("holds", "free")) {
                for (Node.Entry each : rule.fields(kind).block().entries()) {
                    FieldReader fields = new FieldReader(file, (Node.Mapping) each.value(), faults);
                    int wait = kind.equals("holds") ? (int) Math.round(fields.amount("wait", Dimension.TIME).inBase() / 60) : 0;
                    out.add(new Case(id, each.key().text(), kind.equals("holds"), fields.texts("first"), fields.texts("then"),
                            WorkRules.share(fields.word("share", SharePolicy.WORDS)), wait));
                    fields.done();
                }
            }
            rule.done();
        }
        faults.throwIfAny();
        return out;
    }
}
