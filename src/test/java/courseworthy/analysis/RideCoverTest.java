package courseworthy.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Impact.Kind;
import courseworthy.analysis.Impact.ChangedRule;
import courseworthy.analysis.Impact.ImpactRide;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rides told in few words: what the words mean, spelt out again, is exactly the rides. */
class RideCoverTest {

    private static final Kind GRAVEL = new Kind("mostly of", "gravel", "");
    private static final List<ChangedRule> COURSES = List.of(named("a", GRAVEL), named("b", GRAVEL), named("c", GRAVEL), named("d"), named("e"), named("f"));
    private static final Kind JUNIORS = new Kind("tagged", "juniors", "");
    private static final List<ChangedRule> RIDERS = List.of(named("Ann", JUNIORS), named("Bo", JUNIORS), named("Cy", JUNIORS), named("Di"), named("Ed"));

    private static ChangedRule named(String name, Kind... kinds) {
        return new ChangedRule(name, List.of(kinds));
    }

    @Test
    void whatIsToldIsWhatIsMeant() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double share = random.nextDouble();
            Set<ImpactRide> rides = new LinkedHashSet<>();
            for (ChangedRule course : COURSES) {
                for (ChangedRule rider : RIDERS) {
                    if (random.nextDouble() < share) {
                        rides.add(new ImpactRide(course.name(), rider.name()));
                    }
                }
            }
            int times = 0;
            Set<ImpactRide> told = new LinkedHashSet<>();
            for (RideCover.CoverBlock block : RideCover.of(rides, RIDERS, COURSES).blocks()) {
                spelt(block.riders(), RIDERS).forEach(rider -> spelt(block.courses(), COURSES).forEach(course -> told.add(new ImpactRide(course, rider))));
                times += spelt(block.riders(), RIDERS).size() * spelt(block.courses(), COURSES).size();
            }
            assertThat(told).isEqualTo(rides);
            assertThat(times).as("each ride is told of once").isEqualTo(rides.size());
        }
    }

    private static List<String> spelt(GroupPhrase some, List<ChangedRule> all) {
        List<String> out = new ArrayList<>();
        for (ChangedRule each : all) {
            boolean meant = some.all() ? !some.but().contains(each.name())
                    : some.names().contains(each.name()) || some.kinds().stream().anyMatch(each.kinds()::contains);
            if (meant) {
                out.add(each.name());
            }
        }
        return out;
    }

    @Test
    void aBlockIsToldAsOne() {
        Set<ImpactRide> rides = new LinkedHashSet<>();
        List.of("a", "b", "c").forEach(course -> List.of("Di", "Ed").forEach(rider -> rides.add(new ImpactRide(course, rider))));
        RIDERS.forEach(rider -> rides.add(new ImpactRide("f", rider.name())));
        RideCover whom = RideCover.of(rides, RIDERS, COURSES);
        assertThat(whom.blocks()).containsExactlyInAnyOrder(
                new RideCover.CoverBlock(new GroupPhrase(true, List.of(), List.of(), List.of()), new GroupPhrase(false, List.of(), List.of(), List.of("f"))),
                new RideCover.CoverBlock(new GroupPhrase(false, List.of(), List.of(), List.of("Di", "Ed")), new GroupPhrase(false, List.of(), List.of(GRAVEL), List.of())));
    }

    @Test
    void mostOfThemAreAllButAFew() {
        assertThat(GroupPhrase.of(COURSES, Set.of("a", "c", "d", "e", "f"))).isEqualTo(new GroupPhrase(true, List.of("b"), List.of(), List.of()));
        assertThat(GroupPhrase.of(COURSES, Set.of("a", "b", "c", "e"))).isEqualTo(new GroupPhrase(false, List.of(), List.of(GRAVEL), List.of("e")));
        assertThat(GroupPhrase.of(List.of(named("one")), Set.of("one"))).isEqualTo(new GroupPhrase(false, List.of(), List.of(), List.of("one")));
    }
}
