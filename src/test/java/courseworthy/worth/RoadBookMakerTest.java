package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.GroundCertainty;
import courseworthy.problem.Faults;
import courseworthy.ride.BikeKind;
import courseworthy.ride.RideTrace;
import courseworthy.topic.Topics;
import courseworthy.worth.RoadBook.EffortLevel;
import courseworthy.worth.RoadBook.RoadBookGround;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The road book of courses written by hand, against a count of the ride's own steps. */
class RoadBookMakerTest {

    private static final String RIDER = """
            name: Alex
            mass: 75 kg
            power: 250 W
            held for: 1:00 h
            climbing cadence: 60 rpm
            highest cadence: 100 rpm
            bike: {kind: gravel, mass: 9 kg}
            """;
    private static final String COURSE = """
            name: Up and Down
            stretches:
              - {length: 6 km, ascent: 20 m, descent: 20 m, surface: asphalt, smoothness: good}
              - {length: 4 km, ascent: 300 m, descent: 0 m, surface: gravel, smoothness: bad}
              - {length: 4 km, ascent: 0 m, descent: 300 m, surface: gravel, smoothness: bad}
              - {length: 3 km, ascent: 10 m, descent: 10 m, surface: grass}
              - {length: 3 km, ascent: 10 m, descent: 10 m, surface: grass}
            """;
    private static final Drivetrain GEARS = new Drivetrain(List.of(40), List.of(11, 13, 15, 17, 19, 21, 24, 28, 32, 37, 42));

    @TempDir
    private Path folder;

    private static final String CROSSING = """
            name: Crossing
            stretches:
              - {length: 6 km, ascent: 20 m, descent: 20 m, surface: asphalt, smoothness: good}
              - {length: 900 m, ferry: 12 min}
              - {length: 300 m, ascent: 20 m, descent: 0 m, on foot: yes}
              - {length: 6 km, ascent: 20 m, descent: 20 m, surface: asphalt, smoothness: good}
            """;

    private Call call(String event) {
        return CallFixture.call(folder, COURSE, RIDER, event);
    }

    private RoadBook book(Call call, String assumed) throws IOException {
        return book(call, COURSE, assumed);
    }

    private RoadBook book(Call call, String written, String assumed) throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("book.yaml"), written);
        Course course = CourseReader.read(file, "book.yaml", assumed, faults);
        faults.throwIfAny();
        return RoadBookMaker.of(course, call, GEARS);
    }

    /** Stretches with the same ground and the same slope are one piece; the same ground uphill and downhill is two. */
    @Test
    void whatLooksAndClimbsTheSameIsOnePiece() throws IOException {
        RoadBook book = book(call(""), null);
        assertThat(book.ground()).extracting(RoadBookGround::to).containsExactly(6000.0, 10_000.0, 14_000.0, 20_000.0);
        assertThat(book.ground().get(3).change().ascent()).isEqualTo(20);
    }

    /** Each stretch's gear is the one whose cadence is nearest 80 rpm, half-way between 60 and 100, for the longest of its pedalled time. */
    @Test
    void theGearInUseIsTheOneNearestTheUsualCadence() throws IOException {
        Call call = call("name: Three\nlaps: 3\n");
        RoadBook book = book(call, null);
        double wheel = BikeKind.circumference(0.622, call.on(Topics.REAR_TYRE_WIDTH).value() / 1000.0);
        RideTrace trace = call.demands().estimated().estimate().trace();
        for (RoadBookGround piece : book.ground()) {
            double[] seconds = new double[60];
            double coasted = 0;
            double pedalled = 0;
            for (int at = 0; at < trace.size(); at++) {
                double middle = (trace.along(at) - trace.speed(at) * trace.seconds(at) / 2) % book.lap();
                boolean here = middle > piece.from() && middle < piece.to();
                double time = here ? trace.seconds(at) - trace.onFoot(at) : 0;
                if (trace.power(at) < 5) {
                    coasted += time;
                } else {
                    pedalled += time;
                    seconds[nearest(trace.speed(at), wheel)] += time;
                }
            }
            int longest = 0;
            for (int i = 1; i < seconds.length; i++) {
                longest = seconds[i] > seconds[longest] ? i : longest;
            }
            assertThat(piece.use().effort()).isEqualTo(coasted > pedalled ? EffortLevel.COASTING : EffortLevel.PEDALLED);
            assertThat(piece.use().gear() == null ? 0 : piece.use().gear().sprocket()).as("from %.0f m", piece.from())
                    .isEqualTo(coasted > pedalled ? 0 : longest);
        }
        assertThat(book.ground()).extracting(piece -> piece.use().effort()).containsExactly(EffortLevel.PEDALLED, EffortLevel.PEDALLED, EffortLevel.COASTING, EffortLevel.PEDALLED);
    }

    private static int nearest(double speed, double wheel) {
        return GEARS.sprockets().stream().min(Comparator.comparingDouble(each -> miss(speed, each, wheel))).orElseThrow();
    }

    /** How far the cadence in a sprocket is from 80 rpm at a speed, m/s. */
    private static double miss(double speed, int sprocket, double wheel) {
        return Math.abs(speed / (40.0 / sprocket * wheel) * 60 - 80);
    }

    @Test
    void lapsAreToldByTheirEnds() throws IOException {
        Call call = call("name: Three\nlaps: 3\n");
        RoadBook book = book(call, null);
        assertThat(book.passages()).filteredOn(each -> each.lap() > 1).extracting(RoadBook.RoadBookPassage::at).containsExactly(40_000.0, 60_000.0);
        RoadBook.RoadBookPassage end = book.passages().get(book.passages().size() - 1);
        assertThat(end.after()).isEqualTo(call.demands().estimated().estimate().total());
        double second = book.passages().get(book.passages().size() - 2).after().mid();
        double first = book.passages().get(book.passages().size() - 3).after().mid();
        assertThat(second - first).as("a tired lap is no faster").isGreaterThan(0.99 * first).isEqualTo(first, within(0.1 * first));
    }

    @Test
    void whatWasAssumedIsSaid() throws IOException {
        Call call = call("");
        assertThat(book(call, null).ground()).extracting(piece -> piece.look().certainty()).containsOnly(GroundCertainty.WRITTEN);
        RoadBook filled = book(call, "smoothness=very_bad");
        assertThat(filled.ground()).extracting(piece -> piece.look().certainty())
                .containsExactly(GroundCertainty.WRITTEN, GroundCertainty.WRITTEN, GroundCertainty.WRITTEN, GroundCertainty.ASSUMED);
    }

    /** A ferry of twelve minutes takes twelve minutes of the clock, and nobody turns a gear on it; what must be walked is walked. */
    @Test
    void aFerryAndAWalkAreToldAsSuch() throws IOException {
        Call call = CallFixture.call(folder, CROSSING, RIDER, "");
        RoadBook book = book(call, CROSSING, null);
        assertThat(book.ground()).extracting(piece -> piece.use().effort())
                .containsExactly(EffortLevel.PEDALLED, EffortLevel.BY_FERRY, EffortLevel.ON_FOOT, EffortLevel.PEDALLED);
        assertThat(book.ground()).extracting(piece -> piece.use().gear() == null).containsExactly(false, true, true, false);
        double onTheFerry = book.ground().get(2).reached().mid() - book.ground().get(1).reached().mid();
        assertThat(onTheFerry).isEqualTo(720, within(0.02 * 720));
    }

    private static final String SUPPORT = """
            name: Supported
            laps: 2
            start: 09:00
            support:
              - {at: 5 km, water: yes}
              - {at: 25 km, food: yes, bag: yes}
            cut-offs:
              - {at: 25 km, within: 3:00 h}
              - {at: 12 km, within: 2:00 h}
            """;

    /** What is at one place is one mark; places of the second lap say so. */
    @Test
    void whatIsAtTheWaysideStandsInOrder() throws IOException {
        assertThat(book(call(SUPPORT), null).marks()).containsExactly(new RoadBook.SupportMark(5000, 1, true, false, false, null),
                new RoadBook.SupportMark(12_000, 1, false, false, false, 7200.0), new RoadBook.SupportMark(25_000, 2, false, true, true, 10_800.0));
    }

    @Test
    void theClimbThatAsksForTheEasiestGearIsNumbered() throws IOException {
        RoadBook book = book(call(""), null);
        assertThat(book.climbs()).hasSize(1);
        assertThat(book.deciding()).isEqualTo(1);
        String flat = "name: Flat\nstretches:\n  - {length: 20 km, ascent: 5 m, descent: 5 m, surface: asphalt}\n";
        assertThat(book(CallFixture.call(folder, flat, RIDER, ""), flat, null).deciding()).isNull();
    }

    /** Without a measured line the gear is given for the whole of a stretch, and neighbours with the same gear are one piece. */
    @Test
    void gearsCoverTheLapWithoutAGap() throws IOException {
        RoadBook book = book(call(""), null);
        double from = 0;
        for (RoadBook.GearPiece piece : book.gears()) {
            assertThat(piece.from()).isEqualTo(from);
            assertThat(piece.to()).isGreaterThan(from);
            assertThat(book.ground()).extracting(RoadBookGround::to).contains(piece.to());
            from = piece.to();
        }
        assertThat(from).isEqualTo(book.lap());
        for (int i = 1; i < book.gears().size(); i++) {
            assertThat(book.gears().get(i).use()).isNotEqualTo(book.gears().get(i - 1).use());
        }
        assertThat(book.ground().get(2).change()).isEqualTo(new RoadBook.HeightChange(0, 300));
    }

    /** By the kilometre as a rule; a lap of 1200 km by 5 km, one of 2 km by 100 m. */
    @Test
    void theClockIsToldByTheKilometre() throws IOException {
        assertThat(spacing("60 km")).isEqualTo(1000);
        assertThat(spacing("1200 km")).isEqualTo(5000);
        assertThat(spacing("2 km")).isEqualTo(100);
    }

    private double spacing(String length) throws IOException {
        String written = "name: Flat\nstretches:\n  - {length: " + length + ", ascent: 5 m, descent: 5 m, surface: asphalt}\n";
        return book(CallFixture.call(folder, written, RIDER, ""), written, null).passages().get(1).at();
    }
}
