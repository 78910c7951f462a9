package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.SettledValue;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SetUpHistory.Entry;
import courseworthy.event.Travel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is said of a season by rider and by event, from rides made by hand. */
class SetUpHistoryTest {

    private static final LocalDate MAY = LocalDate.of(2026, 5, 2);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 6);
    private static final LocalDate JULY = LocalDate.of(2026, 7, 4);

    private static PlannedRide ride(int order, String rider, String event, LocalDate date, String... values) {
        List<SettledValue> call = new ArrayList<>();
        for (int i = 0; i < values.length; i += 2) {
            call.add(new SettledValue(values[i], values[i + 1]));
        }
        return new PlannedRide(order, rider, new EventDay(event, "fen", date, null, null, Travel.NONE, "race"), "cellar", call, Build.builder("cellar", null).build());
    }

    private static SeasonPlan season(PlannedRide... rides) {
        PartClash clash = new PartClash(JUNE, List.of("pedals"), List.of("Ida", "Joss"), List.of());
        return new SeasonPlan("", "", null, true, Map.of(), "", List.of(rides), List.of(clash), List.of(), SeasonWork.NONE);
    }

    @Test
    void aChangeIsOneSinceTheLastTimeTheTopicWasDecided() {
        SetUpHistory ida = SetUpHistory.of(season(
                ride(0, "Ida", "One", MAY, "rear tyre casing", "light", "front tyre width", "50 mm", "fork travel", "100 mm"),
                ride(1, "Ida", "Two", JUNE, "rear tyre casing", "heavy", "front tyre width", "50 mm"),
                ride(2, "Ida", "Three", JULY, "rear tyre casing", "heavy", "front tyre width", "50 mm", "fork travel", "120 mm"))).get(0);
        assertThat(ida.lines()).extracting(each -> each.topic().name()).as("in the order of the catalogue")
                .containsExactly("fork travel", "front tyre width", "rear tyre casing");
        assertThat(ida.lines().get(0).entries()).containsExactly(new Entry("100 mm", ""), new Entry("", ""), new Entry("120 mm", "100 mm"));
        assertThat(ida.lines().get(2).entries()).extracting(Entry::changed).containsExactly(false, true, false);
        assertThat(ida.lines()).extracting(SetUpHistory.HistoryLine::constant).containsExactly(false, true, false);
    }

    @Test
    void eachRiderHasOneHistoryAndEachEventItsRiders() {
        SeasonPlan season = season(ride(0, "Ida", "One", MAY), ride(1, "Joss", "Two", JUNE), ride(2, "Ida", "Two", JUNE), ride(3, "Joss", "Three", JULY));
        assertThat(SetUpHistory.of(season)).extracting(SetUpHistory::rider).containsExactly("Ida", "Joss");
        List<SeasonEvent> events = SeasonEvent.of(season);
        assertThat(events).extracting(SeasonEvent::name).containsExactly("One", "Two", "Three");
        assertThat(events.get(1).rides()).extracting(PlannedRide::rider).containsExactly("Joss", "Ida");
        assertThat(events.get(1).of("Ida").order()).isEqualTo(2);
        assertThat(events.get(2).of("Ida")).isNull();
        assertThat(events).extracting(each -> each.clashes().size()).as("those of the day").containsExactly(0, 1, 0);
    }
}
