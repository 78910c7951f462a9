package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.RecordedRide;
import courseworthy.course.Track;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How long each part of a course took, by a recorded ride that is known second by second. */
class RecordedTimesTest {

    /** North by so many metres. */
    private static final double DEGREE = 111_195;

    /** A line along a meridian through places in m from its south end. */
    private static Track track(double... north) {
        double[] none = new double[north.length];
        Arrays.fill(none, Double.NaN);
        double[] distance = new double[north.length];
        for (int i = 1; i < north.length; i++) {
            distance[i] = distance[i - 1] + Math.abs(north[i] - north[i - 1]);
        }
        return new Track(List.of(new Track.TrackPiece(lat(north), new double[north.length], distance, none)), Track.Elevation.MISSING);
    }

    private static double[] lat(double... north) {
        return Arrays.stream(north).map(each -> each / DEGREE).toArray();
    }

    /** A point every 5 m between places, each leg at its speed in m/s; 0 for a halt of 300 s. */
    private static RecordedRide ride(double[] north, double[] speed) {
        double[] at = new double[4000];
        double[] seconds = new double[4000];
        int size = 1;
        at[0] = north[0];
        for (int leg = 1; leg < north.length; leg++) {
            int steps = speed[leg - 1] == 0 ? 300 : (int) Math.round(Math.abs(north[leg] - north[leg - 1]) / 5);
            for (int i = 1; i <= steps; i++) {
                at[size] = north[leg - 1] + (north[leg] - north[leg - 1]) * i / steps;
                seconds[size] = seconds[size - 1] + (speed[leg - 1] == 0 ? 1 : 5 / speed[leg - 1]);
                size++;
            }
        }
        return new RecordedRide(List.of(new RecordedRide.RecordedRun(lat(Arrays.copyOf(at, size)), new double[size], Arrays.copyOf(seconds, size))));
    }

    @Test
    void eachPartTakesAsLongAsItWasRidden() {
        RecordedTimes times = RecordedTimes.of(track(0, 3000), ride(new double[] {0, 1000, 2000, 3000}, new double[] {5, 10, 4}));
        assertThat(times.between(0, 1000)).isCloseTo(200, within(4.0));
        assertThat(times.between(1000, 2000)).isCloseTo(100, within(4.0));
        assertThat(times.between(2000, 3000)).isCloseTo(250, within(4.0));
    }

    @Test
    void aHaltIsNoRidingTime() {
        RecordedTimes times = RecordedTimes.of(track(0, 2000), ride(new double[] {0, 1000, 1000, 2000}, new double[] {5, 0, 5}));
        assertThat(times.between(0, 2000)).isCloseTo(400, within(8.0));
    }

    /** One road ridden slowly out and fast back. */
    @Test
    void theWayOutAndTheWayBackAreToldApart() {
        RecordedTimes times = RecordedTimes.of(track(0, 2000, 0), ride(new double[] {0, 2000, 0}, new double[] {4, 10}));
        assertThat(times.between(0, 1900)).isCloseTo(475, within(8.0));
        assertThat(times.between(2100, 4000)).isCloseTo(190, within(8.0));
    }

    @Test
    void twoPassesOfOnePartGiveTheirMean() {
        RecordedTimes times = RecordedTimes.of(track(0, 1000), ride(new double[] {0, 1000, 0, 1000}, new double[] {4, 9, 8}));
        assertThat(times.between(100, 900)).isCloseTo((200 + 100) / 2.0, within(6.0));
    }

    @Test
    void whatWasNotRiddenIsNotTold() {
        RecordedTimes times = RecordedTimes.of(track(0, 3000), ride(new double[] {0, 1000}, new double[] {5}));
        assertThat(times.between(1500, 2500)).isNaN();
        assertThat(times.between(500, 1500)).isNaN();
        RecordedTimes backwards = RecordedTimes.of(track(0, 3000), ride(new double[] {3000, 0}, new double[] {5}));
        assertThat(backwards.between(500, 2500)).isNaN();
    }
}
