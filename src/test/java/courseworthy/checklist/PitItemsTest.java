package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import courseworthy.demand.DayDemands.PitPlace;
import courseworthy.ride.Range;
import courseworthy.worth.PitPlan;
import courseworthy.worth.PitPlan.PitChoice;
import courseworthy.worth.PitPlan.Kind;
import courseworthy.worth.PitPlan.PitPassage;
import courseworthy.worth.PitPlan.PitStop;
import courseworthy.worth.PitPlan.Wheels;
import courseworthy.worth.PitWorth;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What waits in the pits is on the list: an item for each kind of thing, with what it is. */
class PitItemsTest {

    private static final Range EXCHANGE = new Range(50, 80, 140);
    private static final PitStop START = new PitStop(new PitPlace(0, true, true, true, true), List.of(passage(2, true), passage(3, false), passage(4, true)));
    private static final PitStop TOP = new PitStop(new PitPlace(3200, false, true, false, false), List.of(passage(1, false)));

    private static PitPassage passage(int lap, boolean bottle) {
        return new PitPassage(lap, lap * 5000, new Range(0, 0, 0), bottle);
    }

    private static PitChoice choice(Kind kind, double minutes) {
        return new PitChoice(kind, EXCHANGE, minutes * 60, 5, EXCHANGE.times(0.2));
    }

    private static List<PendingItem> items(List<PitStop> stops, PitChoice... choices) {
        return PitItems.of(new PitPlan(stops, new Wheels("57 mm fast at 1.30 bar", "57 mm fast at 1.40 bar"), null, null, List.of(), List.of(choices),
                List.of("front tyre tread mud", "front tyre pressure 1.25 bar")));
    }

    @Test
    void wheelsForTheWetSayWhatIsOtherAndWhenTheyPay() {
        ChecklistItem wet = items(List.of(START), choice(Kind.WET_WHEELS, 90)).get(0).item();
        assertThat(wet.what()).isEqualTo("Get wheels for the wet ready for the pit at the start of the lap");
        assertThat(wet.find()).startsWith("Front tyre tread mud, front tyre pressure 1.25 bar; beads seated, pressure held overnight");
        assertThat(wet.because()).isEqualTo("If it turns, changing to them costs 80 s; it pays where they save 16 s a lap over the 5 laps left.");
        assertThat(wet.critical()).isTrue();
        assertThat(wet.minutes()).isEqualTo(90);
    }

    /** Where what the wet takes is less than the exchange, no grip pays for it by time. */
    @Test
    void wheelsThatCannotPayAreThereForControl() {
        Range slower = new Range(-12, -10, -8);
        for (double share : new double[] {0.6, 1.2}) {
            PitWorth worth = new PitWorth(new PitWorth.Wet(slower, EXCHANGE.times(1 / (5 * share)), share, share > 1 ? 0 : 3), null, null, null, null);
            ChecklistItem wet = items(List.of(START), new PitChoice(Kind.WET_WHEELS, EXCHANGE, 5400, 5, EXCHANGE.times(0.2), worth)).get(0).item();
            assertThat(wet.because()).isEqualTo("If it turns, changing to them costs 80 s; " + (share > 1
                    ? "by time they cannot pay for that on this course: they are there for control, or after a flat." : "it pays where they save 16 s a lap over the 5 laps left."));
        }
    }

    @Test
    void spareWheelsAndABikeHaveAnItemEach() {
        List<PendingItem> items = items(List.of(START, TOP), choice(Kind.SPARE_WHEELS, 30), choice(Kind.SECOND_BIKE, 120));
        assertThat(items).extracting(each -> each.item().what()).containsExactly("Get the spare wheels ready for the pit at the start of the lap",
                "Get the second bike ready for the pit at the start of the lap", "Fill the bottles for the pit at the start of the lap", "Fill the bottles for the pit at km 3.2 of the lap");
        assertThat(items).extracting(PendingItem::due).containsExactly(Deadline.TWO_DAYS_BEFORE, Deadline.TWO_DAYS_BEFORE, Deadline.RACE_MORNING, Deadline.RACE_MORNING);
        assertThat(items).extracting(PendingItem::id).doesNotHaveDuplicates();
        assertThat(items.get(0).item().find()).startsWith("Front 57 mm fast at 1.30 bar, rear 57 mm fast at 1.40 bar");
    }

    @Test
    void bottlesAreCountedWithOneInReserve() {
        List<PendingItem> items = items(List.of(START, TOP));
        assertThat(items).extracting(each -> each.item().find()).containsExactly("3 bottles of 0.5 L, marked for laps 2 and 4, and one in reserve", "1 bottle of 0.5 L, kept in reserve");
    }

    @Test
    void withoutPitsThereIsNothing() {
        assertThat(PitItems.of(PitPlan.NONE)).isEmpty();
    }
}
