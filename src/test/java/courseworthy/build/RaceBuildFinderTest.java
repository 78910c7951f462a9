package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.CourseReader;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.ride.Range;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.Rulebook;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One build for several days, held against every way of putting the tyres of a small workshop on, each counted by itself. */
class RaceBuildFinderTest {

    private static final Path COURSES = Path.of("src/test/resources/courseworthy/stage");
    private static final String KIND = "cross-country hardtail";

    @TempDir
    private static Path folder;
    private static Workshop workshop;
    private static final List<Recommendation> DAYS = new ArrayList<>();

    @BeforeAll
    static void read() throws Exception {
        Faults faults = new Faults();
        List<String> lines = new ArrayList<>(List.of("workshop: small", "bikes:", "  - {name: bike, kind: " + KIND + ", mass: 9 kg, tyre clearance: 70 mm}", "parts:",
                "  - {name: front wheel, kind: wheel, on: bike, end: front, mass: 800 g, bead seat: 622 mm, rim inner width: 28 mm, hookless: no, tubeless: yes}",
                "  - {name: rear wheel, kind: wheel, on: bike, end: rear, mass: 900 g, bead seat: 622 mm, rim inner width: 28 mm, hookless: no, tubeless: yes}"));
        List.of("48 mm, casing: light, tread: file, mass: 520 g", "56 mm, casing: reinforced, tread: fast, mass: 700 g", "58 mm, casing: reinforced, tread: all-round, mass: 790 g",
                "60 mm, casing: heavy, tread: mud, mass: 980 g").forEach(kind -> List.of("A", "B").forEach(end -> lines.add(
                        "  - {name: tyre " + kind.substring(0, 2) + " " + end + ", kind: tyre, hours used: 20 h, bead seat: 622 mm, tubeless: yes, hookless: no, width: " + kind + "}")));
        workshop = WorkshopReader.read(Files.write(folder.resolve("workshop.yaml"), lines), "workshop.yaml", faults);
        ShippedRules shipped = ShippedRules.load();
        DroolsRules rules = new DroolsRules(Rulebook.of(shipped.sheets(), List.of(), List.of(), faults).rows(), shipped);
        Rider rider = RiderReader.read(Path.of("docs/examples/riders/ida-hardtail.yaml"), "rider", faults);
        for (String each : List.of("lanes dry", "lanes dry", "wood wet", "rock dry")) {
            Event day = EventReader.read(Files.writeString(folder.resolve("day.yaml"), "role: race\nstart: 09:00\ndate: 2026-07-06\nforecast: {low: 10 C, high: 18 C, going: "
                    + each.split(" ")[1] + "}\n"), "day.yaml", faults);
            RideInput ride = new RideInput(CourseReader.read(COURSES.resolve(each.split(" ")[0] + ".yaml"), each, null, faults), rider, day, rider.bike());
            Call call = CallMaker.call(rules, ride.on(KIND), Map.of(Topics.BIKE, (long) Topics.BIKE.option(KIND)));
            DAYS.add(Recommendation.of(rules, call, new WorthCalculator(call, Sensitivity.of(call.demands())), ride::on));
        }
        faults.throwIfAny();
    }

    private static RaceBuild found(List<Recommendation> days) {
        return RaceBuildFinder.of(days, 0, workshop, WorkDeadline.of(null), FitRules.load());
    }

    private static Map<MountingPlace, Part> with(Part front, Part rear) {
        Map<MountingPlace, Part> out = new EnumMap<>(workshop.mounted(workshop.bikes().get(0)));
        out.put(MountingPlace.FRONT_TYRE, front);
        out.put(MountingPlace.REAR_TYRE, rear);
        return out;
    }

    private static List<Part> tyres() {
        return workshop.parts().stream().filter(each -> each.name().startsWith("tyre")).toList();
    }

    /** Counted day by day: the losses against each day's own decisions, and 10 s of mass a notch. */
    private static long lost(List<Recommendation> days, Map<MountingPlace, Part> parts) {
        long sum = 0;
        for (Recommendation day : days) {
            BuildObjective aims = new BuildObjective(day.call(), TimeSavings.of(day.call(), day.worths()));
            double kilograms = parts.get(MountingPlace.FRONT_TYRE).number(PartDetail.MASS) + parts.get(MountingPlace.REAR_TYRE).number(PartDetail.MASS);
            long placed = aims.of(MountingPlace.FRONT_TYRE, parts.get(MountingPlace.FRONT_TYRE)) + aims.of(MountingPlace.REAR_TYRE, parts.get(MountingPlace.REAR_TYRE));
            sum += placed * BuildVariables.LOSS + Math.round(kilograms * 1000) * aims.perKilogram() * BuildVariables.GRAM_SECOND;
        }
        return sum;
    }

    @Test
    void noOtherTyresLoseLessOverAllDays() {
        for (List<Recommendation> days : List.of(DAYS, DAYS.subList(1, 3), DAYS.subList(0, 3), List.of(DAYS.get(1), DAYS.get(3), DAYS.get(3)))) {
            Build build = found(days).build();
            long least = Long.MAX_VALUE;
            int tried = 0;
            for (Part front : tyres()) {
                for (Part rear : tyres()) {
                    if (front != rear) {
                        least = Math.min(least, lost(days, with(front, rear)));
                        tried++;
                    }
                }
            }
            assertThat(tried).isEqualTo(56);
            // Which of two equal tyres goes in front, and that a pair serves, count for less than a notch.
            assertThat(lost(days, build.inPlace())).isBetween(least, least + BuildVariables.LOSS);
        }
    }

    /** Days that agree on little: the build for all of them is not that of the day for which its work is told, and loses less. */
    @Test
    void oneDayDoesNotDecideAlone() {
        List<Recommendation> days = List.of(DAYS.get(0), DAYS.get(2), DAYS.get(3));
        Build all = found(days).build();
        Build first = BuildFinder.parts(DAYS.get(0), workshop, null);
        assertThat(all.inPlace().get(MountingPlace.REAR_TYRE)).isNotEqualTo(first.inPlace().get(MountingPlace.REAR_TYRE));
        assertThat(lost(days, all.inPlace())).isLessThan(lost(days, first.inPlace()));
    }

    @Test
    void minutesAreAddedOverTheDays() {
        RaceBuild race = found(DAYS);
        assertThat(race.costs()).hasSize(DAYS.size()).allSatisfy(each -> assertThat(each.low()).isGreaterThanOrEqualTo(0));
        double sum = race.costs().stream().mapToDouble(Range::mid).sum();
        assertThat(race.cost().mid()).isCloseTo(sum, within(1e-9));
        RaceBuild alone = found(DAYS.subList(0, 1));
        assertThat(alone.cost().high()).as("one day has the build of that day").isZero();
    }
}
