package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.RecordedRide;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a recorded ride hints at, against ground that was hidden. Rides are real recordings on roads, and rides that the model makes with another rider,
 * wind and uneven effort.
 */
class RecordedGroundTest {

    private static final String ROAD = "surface=asphalt, smoothness=good";
    private static final List<String> KINDS = List.of(ROAD, "surface=compacted, smoothness=intermediate", "surface=gravel, smoothness=bad",
            "surface=ground, smoothness=very_bad, mtb:scale=1", "surface=ground, smoothness=horrible, mtb:scale=2");

    /** How often hints on hidden ground had the truth among them, and how much of it they left out. */
    private static final class Tally {
        double asked;
        double told;
        double right;
        int kinds;
        int hints;

        void add(Stretch truth, Stretch hinted, double length) {
            asked += length;
            if (hinted.alternatives().isEmpty()) {
                return;
            }
            Range is = Roughness.of(truth.ground());
            double low = hinted.alternatives().stream().mapToDouble(each -> Roughness.of(each).low()).min().getAsDouble();
            double high = hinted.alternatives().stream().mapToDouble(each -> Roughness.of(each).high()).max().getAsDouble();
            told += length;
            right += is.mid() >= low && is.mid() <= high ? length : 0;
            hints++;
            kinds += hinted.alternatives().size();
        }

        String text() {
            return String.format(Locale.ROOT, "%.1f km asked, %.2f told, of it %.3f right, %.2f kinds left", asked / 1000, told / asked, right / told,
                    (double) kinds / hints);
        }
    }

    private static Ground ground(String pairs) {
        return GroundPairs.ground(GroundPairs.read(pairs, "", 0, "", new Faults()));
    }

    private static Course track(String name) {
        return CourseReader.read(RealData.at("tracks/" + name + ".gpx"), name, null, new Faults());
    }

    /** The course in pieces of about a kilometre on grounds drawn by chance, the first on roads. */
    private static Course onGround(Course course, Random random, List<String> kinds) {
        int pieces = (int) Math.max(4, course.length() / 1000);
        List<Stretch> out = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            String kind = kinds.get(i % 3 == 0 ? 0 : random.nextInt(kinds.size()));
            out.add(new Stretch(course.length() / pieces, null, null, null, ground(kind), 0));
        }
        return course.with(out);
    }

    private static Course hidden(Course course, Random random) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch stretch : course.stretches()) {
            out.add(random.nextInt(3) > 0 ? stretch
                    : new Stretch(stretch.length(), null, null, null, Ground.UNKNOWN, List.of(), GroundOrigin.UNMATCHED, 0));
        }
        return course.with(out);
    }

    private static void count(Course truth, Course asked, Course hinted, Tally tally) {
        double at = 0;
        int i = 0;
        double end = truth.stretches().get(0).length();
        for (Stretch stretch : hinted.stretches()) {
            double middle = at + stretch.length() / 2;
            while (middle > end) {
                end += truth.stretches().get(++i).length();
            }
            if (asked.stretches().get(i).ground().equals(Ground.UNKNOWN)) {
                tally.add(truth.stretches().get(i), stretch, stretch.length());
            }
            at += stretch.length();
        }
    }

    /** A ride over a course by the model: a point every 10 m, effort that is off by some percent from kilometre to kilometre, a place off by 3 m. */
    private static RecordedRide ride(Course course, RideAssumptions rider, Random random) {
        RideEstimate model = RideEstimate.of(DiscretisedCourse.of(course, 300), rider, course.stretches());
        List<RecordedRide.RecordedRun> runs = new ArrayList<>();
        double clock = 1000;
        double effort = 1;
        double before = 0;
        double next = 0;
        for (Track.TrackPiece piece : course.track().pieces()) {
            double[] seconds = new double[piece.size()];
            double[] lat = piece.lat().clone();
            double[] lon = piece.lon().clone();
            for (int i = 0; i < seconds.length; i++) {
                double along = piece.distance()[i] * model.way().length() / course.track().length();
                if (along >= next) {
                    effort = Math.exp(0.06 * random.nextGaussian());
                    next += 1000;
                }
                clock += (model.arrivalAt(along) - before) * effort;
                before = model.arrivalAt(along);
                seconds[i] = clock;
                lat[i] += 3 * random.nextGaussian() / 111_195;
                lon[i] += 3 * random.nextGaussian() / 111_195 / Math.cos(Math.toRadians(lat[i]));
            }
            runs.add(new RecordedRide.RecordedRun(lat, lon, seconds));
        }
        return new RecordedRide(runs);
    }

    private static RideAssumptions rider(BikeKind kind, double power, double mass, int skill, double wind) {
        return new RideAssumptions(kind, Range.exact(mass), DragArea.alone(kind, mass - 14), new RideAssumptions.PacingRanges(Range.exact(power), Range.exact(1), true),
                skill, 0, 1, -1, Range.exact(1), new RideAssumptions.WeatherAssumptions(18, 300, true, wind, 1));
    }

    /** Six rides of riders light and heavy, weak and strong, on other bikes than is assumed, in wind. */
    @Test
    void aSimulatedRideTellsTheGroundItWasRiddenOn() {
        Tally tally = new Tally();
        String[] tracks = {"ride_mtb_34km", "ride_road_hilly_57km", "course_two_segments_49km"};
        for (int seed = 0; seed < 6; seed++) {
            Random random = new Random(seed);
            Course truth = onGround(track(tracks[seed % 3]), random, KINDS);
            RecordedRide ride = ride(truth, rider(seed % 2 == 0 ? BikeKind.GRAVEL : BikeKind.HARDTAIL, 140 + 25 * seed, 70 + 6 * seed, 1 + seed % 3, seed % 3), random);
            Course asked = hidden(truth, random);
            Course hinted = RecordedGround.hinted(asked, ride, BikeKind.GRAVEL);
            count(truth, asked, hinted, tally);
        }
        assertThat(tally.right / tally.told).as(tally.text()).isGreaterThan(0.95);
        assertThat(tally.told / tally.asked).as(tally.text()).isGreaterThan(0.9);
        assertThat((double) tally.kinds / tally.hints).as(tally.text() + ": of five, two fifths are left out").isBetween(2.0, 3.1);
    }

    /** Nine in ten are meant, since what is left out lies outside the 5th to 95th hundredth; of the 20 pieces of one ride, chance takes two or so. */
    @ParameterizedTest
    @CsvSource({"ride_road_hilly_57km", "ride_road_sensors_40km", "ride_cadence_18km"})
    void realRidesOnRoadsAreNotTakenForTrails(String name) {
        Tally tally = new Tally();
        RecordedRide ride = RecordedRide.read(RealData.at("tracks/" + name + ".gpx"), name, new Faults());
        for (int seed = 0; seed < 5; seed++) {
            Random random = new Random(seed);
            Course truth = onGround(track(name), random, List.of(ROAD));
            Course asked = hidden(truth, random);
            Course hinted = RecordedGround.hinted(asked, ride, BikeKind.ROAD);
            count(truth, asked, hinted, tally);
        }
        assertThat(tally.right / tally.told).as(tally.text()).isGreaterThan(0.87);
        assertThat((double) tally.kinds / tally.hints).as(tally.text()).isLessThan(3.6);
    }

    /** At the ground of a measured cross-country course throughout, as in {@link RecordedRidesTest}; its pieces are harder and easier than that. */
    @Test
    void aRealRideOnTrailsIsNotTakenForARoad() {
        Tally tally = new Tally();
        RecordedRide ride = RecordedRide.read(RealData.at("tracks/ride_mtb_34km.gpx"), "ride", new Faults());
        for (int seed = 0; seed < 5; seed++) {
            Random random = new Random(seed);
            Course truth = onGround(track("ride_mtb_34km"), random, List.of(KINDS.get(3)));
            Course asked = hidden(truth, random);
            count(truth, asked, RecordedGround.hinted(asked, ride, BikeKind.HARDTAIL), tally);
        }
        assertThat(tally.right / tally.told).as(tally.text()).isGreaterThan(0.8);
        assertThat(tally.told / tally.asked).as(tally.text()).isGreaterThan(0.25);
    }

    private static Course onRoadThen(Course course, Stretch... after) {
        double length = course.length();
        for (Stretch each : after) {
            length -= each.length();
        }
        List<Stretch> out = new ArrayList<>(List.of(new Stretch(length, null, null, null, ground(ROAD), 0)));
        out.addAll(List.of(after));
        return course.with(out);
    }

    /** What is mapped or written stays as it is; a likely ground that the ride speaks against goes, and what is mapped of it stays. */
    @Test
    void nothingMappedOrWrittenChanges() {
        Course course = track("ride_mtb_34km");
        Ground path = ground("surface=unpaved, tracktype=grade2");
        GroundOrigin origin = new GroundOrigin("Long Lane", Map.of("tracktype", "grade2"), Map.of("graded-track", Map.of("surface", "unpaved")));
        Ground rough = ground("surface=ground, tracktype=grade2, smoothness=horrible");
        Ground smooth = ground("surface=asphalt, tracktype=grade2, smoothness=excellent");
        Stretch open = new Stretch(2000, null, null, null, path, List.of(rough, smooth), origin, 0);
        Stretch written = new Stretch(1000, null, null, null, ground("surface=gravel"), 0);
        Course asked = onRoadThen(course, written, open);
        Course truth = onRoadThen(course, written, open.known(smooth));
        RecordedRide ride = ride(truth, rider(BikeKind.GRAVEL, 200, 80, 2, 0), new Random(3));

        Course hinted = RecordedGround.hinted(asked, ride, BikeKind.GRAVEL);

        List<Stretch> out = hinted.stretches();
        assertThat(out.subList(0, 2)).isEqualTo(asked.stretches().subList(0, 2));
        Stretch told = out.get(2);
        assertThat(told.origin().mapped()).isEqualTo(origin.mapped());
        assertThat(told.origin().inferred()).containsEntry(RecordedGround.RULE, Map.of());
        assertThat(told.alternatives()).contains(smooth).doesNotContain(rough);
        assertThat(told.ground().trackGrade()).isEqualTo(2);
    }

    /** Known ground is needed to tell how hard the ride was ridden; and a ride elsewhere tells nothing. */
    @Test
    void withoutKnownGroundOrElsewhereThereIsNoHint() {
        Course course = track("ride_mtb_34km");
        RecordedRide ride = RecordedRide.read(RealData.at("tracks/ride_mtb_34km.gpx"), "ride", new Faults());
        Course unknown = RecordedGround.hinted(course, ride, BikeKind.GRAVEL);
        assertThat(unknown.stretches().stream().flatMap(each -> each.alternatives().stream())).isEmpty();
        assertThat(unknown.notes()).last().asString().isEqualTo("The recorded ride gives no hint: only 0.0 km of it lie on ground that is known, "
                + "and at least 2.0 km are needed to tell how hard it was ridden.");
        RecordedRide elsewhere = RecordedRide.read(RealData.at("tracks/ride_cadence_18km.gpx"), "ride", new Faults());
        assertThat(RecordedGround.hinted(course, elsewhere, BikeKind.GRAVEL).notes()).last().asString()
                .isEqualTo("The recorded ride gives no hint: it passes over no piece of unknown ground of at least 400 m.");
    }
}
