package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times of a recorded ride. The format: GPX 1.1 has xsd:dateTime (W3C XML Schema part 2, 3.2.7). */
class RecordedRideTest {

    @TempDir
    private Path folder;
    private final Faults faults = new Faults();

    private RecordedRide read(String points) throws IOException {
        Path file = Files.writeString(folder.resolve("r.gpx"), "<gpx xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>" + points + "</trkseg></trk></gpx>");
        return RecordedRide.read(file, "r.gpx", faults);
    }

    private static String point(double lat, String time) {
        return "<trkpt lat=\"" + lat + "\" lon=\"9\">" + (time.isEmpty() ? "" : "<time>" + time + "</time>") + "</trkpt>";
    }

    @ParameterizedTest
    @CsvSource({"2024-05-01T10:00:00Z, 1714557600", "2024-05-01T10:00:00.250Z, 1714557600.25", "2024-05-01T12:00:00+02:00, 1714557600",
        "2024-05-01T05:00:00-05:00, 1714557600", "2024-05-01T10:00:00, 1714557600", "1970-01-01T00:00:00Z, 0", "yesterday, NaN", "'', NaN"})
    void timesAreReadInAnyZone(String text, double seconds) {
        assertThat(Double.compare(RecordedRide.seconds(text), seconds)).as(text).isZero();
    }

    /** A point without a time, or with one before that of the point before, tells nothing. */
    @Test
    void pointsWithoutATimeAreLeftOut() throws IOException {
        RecordedRide ride = read(point(47.1, "2024-05-01T10:00:00Z") + point(47.2, "") + point(47.3, "2024-05-01T09:59:00Z")
                + point(47.4, "2024-05-01T10:00:10Z"));
        assertThat(ride.runs()).hasSize(1);
        assertThat(ride.runs().get(0).lat()).containsExactly(47.1, 47.4);
        assertThat(ride.runs().get(0).seconds()).containsExactly(1714557600, 1714557610);
    }

    @Test
    void aPlannedTrackIsNoRide() throws IOException {
        assertThat(read(point(47.1, "") + point(47.2, ""))).isNull();
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("r.gpx: found a track without times, "
                + "expected a recorded ride (GPX whose points have times)\n    Export the ride that a device recorded, not a planned route.");
    }
}
