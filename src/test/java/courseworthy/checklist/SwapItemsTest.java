package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build;
import courseworthy.build.WearNote;
import courseworthy.build.Build.Swap;
import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import courseworthy.event.Event;
import courseworthy.report.ExampleBrief;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a build puts on the list: each swap in the order of work, and a ride on the bike as built a week ahead. */
class SwapItemsTest {

    private static final Part BIKE = part("Heron", PartKind.BIKE);
    private static final Swap TYRE = swap(MountingPlace.FRONT_TYRE, "slick 30", "block 45", 14.6, "Sealant in, spun on both sides", "Held overnight");
    private static final Swap SADDLE = swap(MountingPlace.SADDLE, "long saddle", "short saddle", 10, new String[0]);

    @Test
    void swapsStandInTheOrderOfWorkAndEachWaitsForThoseBefore() {
        List<PendingItem> items = SwapItems.of(build(List.of(TYRE, SADDLE), List.of(), List.of(), null));
        assertThat(items).extracting(each -> each.item().what()).containsExactly("Fit slick 30 in place of block 45", "Fit long saddle in place of short saddle",
                "Test-ride this exact build for 30 to 60 min, then check every bolt and axle");
        assertThat(items).extracting(PendingItem::due).containsOnly(Deadline.WEEK_BEFORE);
        assertThat(items).extracting(each -> each.after().size()).containsExactly(0, 1, 2);
        assertThat(items.get(1).after()).containsExactly(items.get(0).id());
        assertThat(items.get(2).after()).containsExactly(items.get(0).id(), items.get(1).id());
    }

    @Test
    void aSwapSaysWhatToFindAndHowLongItTakes() {
        List<PendingItem> items = SwapItems.of(build(List.of(TYRE, SADDLE), List.of(), List.of(), null));
        ChecklistItem tyre = items.get(0).item();
        assertThat(tyre.find()).isEqualTo("Sealant in, spun on both sides; Held overnight");
        assertThat(tyre.because()).isEqualTo("Part of the build (front tyre, about 15 min).");
        assertThat(tyre.critical()).isTrue();
        ChecklistItem saddle = items.get(1).item();
        assertThat(saddle.find()).isEqualTo("In its place and tight as marked");
        assertThat(saddle.critical()).isFalse();
    }

    @Test
    void whatOnlyComesOffIsLookedForOffTheBike() {
        Swap off = new Swap(BIKE, MountingPlace.SADDLE, part("long saddle", PartKind.SADDLE), null, List.of(), null, null, null,
                new Build.SwapWork(3, List.of(), List.of(), false), List.of());
        ChecklistItem item = SwapItems.of(build(List.of(off), List.of(), List.of(), null)).get(0).item();
        assertThat(item.what()).isEqualTo("Remove long saddle");
        assertThat(item.find()).isEqualTo("It and what held it are off; nothing hangs loose or rubs where it was");
    }

    @Test
    void whatComesFromAnotherBikeSaysFromWhich() {
        Swap borrowed = new Swap(BIKE, MountingPlace.SADDLE, null, part("light saddle", PartKind.SADDLE), List.of(), null, part("Crane", PartKind.BIKE), null,
                new Build.SwapWork(10, List.of(), List.of(), false), List.of());
        assertThat(SwapItems.of(build(List.of(borrowed), List.of(), List.of(), null)).get(0).item().what()).isEqualTo("Fit light saddle, from Crane");
    }

    @Test
    void aPositionCarriedOverIsSetAfterTheSwapsAndRidden() {
        PositionTransfer carried = carried();
        List<PendingItem> items = SwapItems.of(build(List.of(SADDLE), List.of(), List.of(), carried));
        assertThat(items).extracting(each -> each.item().what()).containsExactly("Fit long saddle in place of short saddle",
                "Set stem, spacers and saddle to your position on Heron", "Test-ride this exact build for 30 to 60 min, then check every bolt and axle");
        assertThat(items.get(1).after()).containsExactly(items.get(0).id());
        assertThat(items.get(2).after()).containsExactly(items.get(0).id(), items.get(1).id());
        assertThat(SwapItems.of(build(List.of(), List.of(), List.of(), carried))).extracting(each -> each.item().what())
                .containsExactly("Set stem, spacers and saddle to your position on Heron", "Test-ride this exact build for 30 to 60 min, then check every bolt and axle");
    }

    @Test
    void eachWornPartIsAnItemOfItsOwn() {
        List<PendingItem> items = SwapItems.of(build(List.of(), List.of(),
                List.of(new WearNote("long chain", "worn to its limit", "change it"), new WearNote("front pads", "less than 1.0 mm left", "change them")), null));
        assertThat(items).extracting(each -> each.item().what()).containsExactly("long chain: change it", "front pads: change them");
        assertThat(items).extracting(each -> each.item().because()).containsExactly("Worn to its limit.", "Less than 1.0 mm left.");
        assertThat(items).extracting(each -> each.item().critical()).containsOnly(true);
        assertThat(items).extracting(PendingItem::due).containsOnly(Deadline.WEEK_BEFORE);
    }

    @Test
    void afterTheRaceTheWorkIsUndoneAndTheBikeTriedOut() {
        List<PendingItem> items = SwapItems.of(build(List.of(), List.of(TYRE, SADDLE), List.of(), null));
        assertThat(items).extracting(each -> each.item().what()).containsExactly("Fit slick 30 in place of block 45, on Heron",
                "Fit long saddle in place of short saddle, on Heron", "Ride around the block, then check every bolt and axle");
        assertThat(items).extracting(PendingItem::due).containsOnly(Deadline.AFTER_THE_RACE);
        assertThat(items.get(0).item().because()).isEqualTo("As it was before (front tyre, about 15 min).");
        assertThat(items.get(1).after()).containsExactly(items.get(0).id());
        assertThat(items.get(2).after()).hasSize(2);
        assertThat(items).extracting(each -> each.item().critical()).containsOnly(false);
    }

    @Test
    void aBuildThatChangesNothingAddsNothing() {
        assertThat(SwapItems.of(build(List.of(), List.of(), List.of(), null))).isEmpty();
    }

    /** Eleven swaps stay in their order: names of items sort as their numbers do. */
    @Test
    void elevenSwapsStayInTheirOrderOnTheList() {
        List<Swap> swaps = new ArrayList<>();
        List<String> work = new ArrayList<>();
        for (int i = 1; i <= 11; i++) {
            swaps.add(swap(MountingPlace.SADDLE, "saddle " + i, "saddle " + (i - 1), 10, new String[0]));
            work.add("Fit saddle " + i + " in place of saddle " + (i - 1));
        }
        work.add("Test-ride this exact build for 30 to 60 min, then check every bolt and axle");
        Checklist checklist = ChecklistMaker.of(new ExampleBrief().call(), Event.UNKNOWN, build(swaps, List.of(), List.of(), null));
        assertThat(checklist.sections().stream().map(ChecklistSection::items).flatMap(List::stream)).extracting(ChecklistItem::what).containsExactlyElementsOf(work);
        assertThat(SwapItems.of(build(swaps, List.of(), List.of(), null))).extracting(PendingItem::id).isSorted();
    }

    /** The pressure that suits the build's own tyres stands on the list. */
    @Test
    void valuesOfTheBuildStandOnTheList() {
        ExampleBrief example = new ExampleBrief();
        example.task("shipped/p", "Pump", "Front {front tyre pressure}", Deadline.RACE_MORNING, 0, true, "tyres");
        Build build = Build.builder("", BIKE).set(Map.of("front tyre pressure", "1.8 bar")).build();
        assertThat(ChecklistMaker.of(example.call(), Event.UNKNOWN, build).sections().get(0).items()).extracting(ChecklistItem::find).containsExactly("Front 1.8 bar");
    }

    private static PositionTransfer carried() {
        Position position = Position.of(new Workshop("", "", List.of(BIKE), List.of(), Map.of()), BIKE);
        return new PositionTransfer(position, position, List.of(), null, null, List.of(), null, null, List.of(), List.of());
    }

    private static Build build(List<Swap> swaps, List<Swap> back, List<WearNote> wear, PositionTransfer position) {
        return Build.builder("", BIKE).swaps(swaps).back(back).wear(wear).position(position).build();
    }

    private static Swap swap(MountingPlace place, String on, String off, double minutes, String... after) {
        return new Swap(BIKE, place, part(off, place.kind()), part(on, place.kind()), List.of(), null, null, null,
                new Build.SwapWork(minutes, List.of(after), List.of(), false), List.of());
    }

    private static Part part(String name, PartKind kind) {
        return new Part(name, kind, 1, Map.of());
    }
}
