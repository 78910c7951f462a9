package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build.Swap;
import courseworthy.problem.Faults;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.WorkRules;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A brake whose hose is opened is bled, in the order of a mechanic (common practice, no source). */
class OpenedHosesTest {

    @TempDir
    private Path folder;

    /** The example workshop with texts replaced by others. */
    private Workshop workshop(String... pairs) throws IOException {
        Path file = folder.resolve("cellar.yaml");
        String text = Files.readString(Path.of("docs/examples/workshops/cellar.yaml"));
        for (int i = 0; i < pairs.length; i += 2) {
            assertThat(text).contains(pairs[i]);
            text = text.replace(pairs[i], pairs[i + 1]);
        }
        Files.writeString(file, text);
        Faults faults = new Faults();
        Workshop out = WorkshopReader.read(file, "cellar.yaml", faults);
        faults.throwIfAny();
        return out;
    }

    /** The swaps that put a part of another name into a place of the hardtail. */
    private static List<Swap> swaps(Workshop workshop, MountingPlace place, String part) {
        Part bike = workshop.find("hardtail");
        MountingState before = MountingState.of(workshop);
        Map<MountingPlace, Part> build = new HashMap<>(before.places(bike));
        build.put(place, workshop.find(part));
        return WorkOrder.on(bike, workshop, before, before.with(bike, build));
    }

    private static List<String> jobs(Workshop workshop, List<Swap> swaps) {
        return WorkPlan.jobs(swaps, MountingState.of(workshop)).stream().map(job -> job.end() == null ? job.kind() : job.end() + " " + job.kind()).toList();
    }

    private Workshop withAnotherCaliper() throws IOException {
        return workshop("  # Lights and bags\n", "  - {name: spare caliper, kind: brake caliper, end: front, mass: 110 g, brake mount: post, hose length: 900 mm, pad shape: round pad}\n"
                + "  # Lights and bags\n");
    }

    @Test
    void anotherCaliperIsBledBeforeTheWheelGoesInAndBeddedInAfter() throws IOException {
        Workshop workshop = withAnotherCaliper();
        assertThat(jobs(workshop, swaps(workshop, MountingPlace.FRONT_CALIPER, "spare caliper")))
                .containsExactly("front wheel out", "front brake caliper", "front bleed the brake", "front wheel in", "bed in the brakes", "test ride");
    }

    /** Half an hour, and it stands an hour before it is ridden; a caliper without its hose joint is 20 min of work. */
    @Test
    void bleedingTakesHalfAnHourAndStandsAnHour() throws IOException {
        Workshop workshop = withAnotherCaliper();
        List<Swap> swaps = swaps(workshop, MountingPlace.FRONT_CALIPER, "spare caliper");
        WorkGraph graph = WorkGraph.of(swaps, MountingState.of(workshop), WorkRules.shipped());
        List<String> kinds = graph.jobs().stream().map(WorkJob::kind).toList();
        int bleed = kinds.indexOf("bleed the brake");
        assertThat(graph.jobs().get(bleed).minutes()).isEqualTo(30);
        assertThat(graph.jobs().get(bleed).what()).startsWith("Bleed the front brake with wheel and pads out");
        assertThat(graph.jobs().get(kinds.indexOf("brake caliper")).minutes()).isEqualTo(20);
        assertThat(graph.waits()[bleed][kinds.indexOf("test ride")]).isEqualTo(60);
        assertThat(graph.waits()[bleed][kinds.indexOf("bed in the brakes")]).isEqualTo(60);
        assertThat(graph.waits()[kinds.indexOf("brake caliper")][bleed]).isZero();
    }

    @Test
    void aBarThatTheHosesRunInsideOpensBoth() throws IOException {
        Workshop workshop = workshop("    headset fit: tall cups\n    pad shape", "    headset fit: tall cups\n    hoses through: [bar]\n    pad shape");
        List<Swap> swaps = swaps(workshop, MountingPlace.BAR, "old bar 740");
        assertThat(jobs(workshop, swaps)).contains("front bleed the brake", "rear bleed the brake").doesNotContain("bed in the brakes")
                .containsSubsequence("bar", "front bleed the brake", "front wheel in").containsSubsequence("front wheel out", "front bleed the brake").containsSubsequence("rear wheel out", "rear bleed the brake").containsSubsequence("bar", "rear bleed the brake", "rear wheel in");
        Swap bar = swaps.stream().filter(each -> each.place() == MountingPlace.BAR).findFirst().orElseThrow();
        assertThat(bar.work().along()).containsExactly("The brake hoses run inside it: they are opened, and both brakes are bled");
        assertThat(bar.work().needs()).contains("brake fluid and hose fittings, as the brake asks");
        assertThat(bar.work().mechanic()).isTrue();
    }

    @Test
    void aForkThatTheFrontHoseRunsInsideOpensTheFrontAlone() throws IOException {
        Workshop workshop = workshop("    headset fit: tall cups\n    pad shape", "    headset fit: tall cups\n    hoses through: [fork]\n    pad shape");
        List<Swap> swaps = swaps(workshop, MountingPlace.FORK, "slim fork 110");
        assertThat(jobs(workshop, swaps)).contains("front bleed the brake").doesNotContain("rear bleed the brake", "rear wheel out");
        Swap fork = swaps.stream().filter(each -> each.place() == MountingPlace.FORK).findFirst().orElseThrow();
        assertThat(fork.work().along()).contains("The front brake hose runs inside it: it is opened, and the brake is bled");
    }

    @Test
    void aHoseThatRunsOutsideStaysClosed() throws IOException {
        Workshop workshop = workshop("    headset fit: tall cups\n    pad shape", "    headset fit: tall cups\n    hoses through: [stem]\n    pad shape");
        assertThat(jobs(workshop, swaps(workshop, MountingPlace.FORK, "slim fork 110"))).doesNotContain("front bleed the brake");
        assertThat(jobs(workshop, swaps(workshop, MountingPlace.BAR, "old bar 740"))).containsExactly("bar", "test ride");
    }

    /** A caliper that is pulled by a cable has no fluid: its cable is set, the wheel in, before the brakes are bedded in. */
    @Test
    void aCablePulledCaliperIsSetAndNotBled() throws IOException {
        Workshop workshop = workshop("  # Lights and bags\n", "  - {name: spare caliper, kind: brake caliper, end: front, mass: 110 g, brake mount: post, hose length: 900 mm, "
                + "pad shape: round pad, braking: cable}\n  # Lights and bags\n");
        List<Swap> swaps = swaps(workshop, MountingPlace.FRONT_CALIPER, "spare caliper");
        assertThat(jobs(workshop, swaps)).containsExactly("front wheel out", "front brake caliper", "front wheel in", "front set the brake cable", "bed in the brakes", "test ride");
        assertThat(swaps.get(0).work().needs()).containsExactly("inner cable and housing, as the brake asks");
        assertThat(swaps(withAnotherCaliper(), MountingPlace.FRONT_CALIPER, "spare caliper").get(0).work().needs()).containsExactly("brake fluid and hose fittings, as the brake asks",
                "brake cleaner");
    }

    /** Through a bar run one cable and one hose: the front brake is set, the rear bled, and only the rear wheel is out for it. */
    @Test
    void aBarWithACableAndAHoseInside() throws IOException {
        Workshop workshop = workshop("    headset fit: tall cups\n    pad shape", "    headset fit: tall cups\n    hoses through: [bar]\n    pad shape",
                "{name: hardtail caliper front, kind: brake caliper, on: hardtail,", "{name: hardtail caliper front, kind: brake caliper, on: hardtail, braking: cable,");
        List<Swap> swaps = swaps(workshop, MountingPlace.BAR, "old bar 740");
        assertThat(jobs(workshop, swaps)).containsExactlyInAnyOrder("bar", "rear wheel out", "rear bleed the brake", "rear wheel in", "front set the brake cable", "test ride")
                .containsSubsequence("bar", "rear bleed the brake", "rear wheel in").containsSubsequence("bar", "front set the brake cable", "test ride");
        assertThat(swaps.get(0).work().along()).containsExactly("The rear brake hose runs inside it: it is opened, and the brake is bled",
                "The front brake cable runs inside it: it is pulled out, and the brake is set again");
        assertThat(swaps.get(0).work().needs()).contains("brake fluid and hose fittings, as the brake asks", "inner cable and housing, as the brake asks");
    }

    /** What is written of the bike holds where its calipers are not listed. */
    @Test
    void theBikeSaysHowItBrakes() throws IOException {
        Workshop workshop = workshop("    headset fit: tall cups\n    pad shape", "    headset fit: tall cups\n    hoses through: [bar]\n    braking: cable\n    pad shape");
        List<Swap> swaps = swaps(workshop, MountingPlace.BAR, "old bar 740");
        assertThat(jobs(workshop, swaps)).containsExactlyInAnyOrder("bar", "front set the brake cable", "rear set the brake cable", "test ride");
        assertThat(swaps.get(0).work().along()).containsExactly("The brake cables run inside it: they are pulled out, and both brakes are set again");
    }
}
