package courseworthy.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.StageRace.RaceStage;
import courseworthy.problem.Faults;
import courseworthy.ride.Range;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.Rulebook;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StageSettlerTest {

    private static final Path FOLDER = Path.of("src/test/resources/courseworthy/stage");
    /** Half a second over six days is no difference that anybody would see. */
    private static final double ALIKE = 0.5;

    @TempDir
    private Path folder;

    private StageSetUp settled(String changes) throws Exception {
        return settled(changes, 6);
    }

    /** @param wet how many of the days from the first on may be wet, as they are written; later ones are dry */
    private StageSetUp settled(String changes, int wet) throws Exception {
        String written = Files.readString(FOLDER.resolve("six-days.yaml")).replace("changes between stages: nothing", changes);
        for (int day = wet + 1; day <= 6; day++) {
            written = written.replaceAll("(date: 2026-07-" + String.format("%02d", 5 + day) + ".*going: )wet", "$1dry");
        }
        Path file = Files.writeString(folder.resolve("race.yaml"), written);
        Faults faults = new Faults();
        Event race = EventReader.read(file, "race.yaml", faults);
        Rider rider = RiderReader.read(Path.of("docs/examples/riders/ida-hardtail.yaml"), "rider", faults);
        List<RideInput> rides = new ArrayList<>();
        for (RaceStage stage : race.plan().race().stages()) {
            Course course = CourseReader.read(FOLDER.resolve(stage.course()), stage.course(), null, faults);
            rides.add(new RideInput(course, rider, stage.day(), rider.bike()));
        }
        ShippedRules shipped = ShippedRules.load();
        Rulebook book = Rulebook.of(shipped.sheets(), List.of(), List.of(), faults);
        faults.throwIfAny();
        return StageSettler.of(new DroolsRules(book.rows(), shipped), race.plan().race(), rides);
    }

    /** Each day's value tried for the whole race, where it is enough for every day: none loses less. */
    @Test
    void noDaysOwnSetUpLosesLess() throws Exception {
        StageSetUp setUp = settled("changes between stages: nothing");
        int tried = 0;
        for (RaceTopic each : setUp.topics()) {
            for (Long value : each.wanted()) {
                if (value != null && isEnough(setUp.days(), each.topic(), value)) {
                    tried++;
                    assertThat(lost(setUp.days(), each.topic(), each.value())).as("%s, %d tried", each.topic(), value)
                            .isLessThanOrEqualTo(lost(setUp.days(), each.topic(), value) + ALIKE);
                }
            }
        }
        assertThat(tried).isGreaterThan(50);
        assertThat(setUp.compromises()).isNotEmpty();
    }

    /** Pads that one wet day asks for are on for the dry ones too, and a dropper that one day's descents ask for (common practice, no source). */
    @Test
    void whatMakesOneDaySafeIsOnForAll() throws Exception {
        StageSetUp setUp = settled("changes between stages: nothing", 3);
        whereDaysDiffer(setUp, Topics.PAD_COMPOUND, "sintered", "organic");
        whereDaysDiffer(setUp, Topics.SEATPOST, "dropper", "rigid");
    }

    private static void whereDaysDiffer(StageSetUp setUp, Topic topic, String safe, String other) {
        List<Long> wanted = setUp.days().stream().map(day -> day.alone().on(topic).value()).toList();
        assertThat(wanted).contains((long) topic.option(safe), (long) topic.option(other));
        assertThat(setUp.topics()).filteredOn(each -> each.topic() == topic).singleElement()
                .satisfies(each -> assertThat(each.value()).isEqualTo(topic.option(safe)));
    }

    private static boolean isEnough(List<StageDay> days, Topic topic, long value) {
        return days.stream().map(day -> day.alone().on(topic)).allMatch(own -> own.value() == null
                || RaceTopicSettler.keeps(own, value, 0) && !RaceTopicSettler.isLessSafe(topic, value, own.value()));
    }

    private static double lost(List<StageDay> days, Topic topic, long value) {
        return days.stream().map(day -> day.loss(topic, value)).mapToDouble(each -> each == null ? 0 : each.mid()).sum();
    }

    /** With little work, what loses time on some days is changed for them, and never for less than the work. */
    @Test
    void whatIsChangedReturnsMoreThanItsWork() throws Exception {
        StageSetUp never = settled("changes between stages: nothing");
        assertThat(never.changes()).isEmpty();
        StageSetUp often = settled("changes between stages: [tyres]\ntime to change: {tyres: 1 min}");
        assertThat(often.changes()).isNotEmpty().allSatisfy(each -> {
            assertThat(each.work()).isEqualTo(Work.TYRES);
            assertThat(each.minutes()).isEqualTo(1);
            assertThat(each.stated()).isTrue();
        });
        Range returned = often.returned();
        assertThat(returned.mid()).isGreaterThanOrEqualTo(often.changes().size() * EveningChangeFinder.SECONDS_A_MINUTE);
        assertThat(settled("changes between stages: [tyres]\ntime to change: {tyres: 40:00 h}").changes()).isEmpty();
    }

    /** One bike for days that want several: the one that takes least time over all of them, each day ridden on each (counted here by itself). */
    @Test
    void oneBikeTakesLeastTimeOverAllDays() throws Exception {
        StageSetUp setUp = settled("changes between stages: nothing");
        List<StageDay> days = setUp.days();
        String chosen = setUp.bikes().get(0).kind();
        assertThat(setUp.topics().get(0).topic()).isEqualTo(Topics.BIKE);
        assertThat(Topics.BIKE.text(setUp.topics().get(0).value())).isEqualTo(chosen);
        for (StageDay each : days) {
            String kind = each.alone().on(Topics.BIKE).text();
            boolean allowed = days.stream().allMatch(day -> RaceTopicSettler.keeps(day.alone().on(Topics.BIKE), Topics.BIKE.option(kind), 1));
            assertThat(!allowed || total(days, chosen) <= total(days, kind)).as(kind).isTrue();
        }
    }

    private static double total(List<StageDay> days, String kind) {
        return days.stream().mapToDouble(day -> (day.alone().on(Topics.BIKE).text().equals(kind) ? day.alone().demands() : day.ride().on(kind)).estimated().estimate().trace().total()).sum();
    }

    /** Where the bike may be changed, each day has the one bike or the one that it wants, and each bike more saves more than its work and 2 min. */
    @Test
    void anotherBikeSavesMoreThanItCosts() throws Exception {
        StageSetUp one = settled("changes between stages: nothing");
        StageSetUp many = settled("changes between stages: [bike]");
        double before = 0;
        double after = 0;
        for (StageDay day : many.days()) {
            String ridden = many.bikes().get(many.bikeOn(day.number())).kind();
            assertThat(ridden).isIn(one.bikes().get(0).kind(), day.alone().on(Topics.BIKE).text());
            before += total(List.of(day), one.bikes().get(0).kind());
            after += total(List.of(day), ridden);
        }
        assertThat(before - after).isGreaterThanOrEqualTo((many.bikes().size() - 1) * BikeSchedule.A_BIKE_MORE + many.changes().size() * 30 * EveningChangeFinder.SECONDS_A_MINUTE);
        assertThat(many.changes().stream().mapToDouble(each -> each.returns().mid()).sum()).isCloseTo(before - after, within(1e-6));
        assertThat(settled("changes between stages: [bike]\ntime to change: {bike: 90:00 h}").bikes()).hasSize(1);
    }
}
