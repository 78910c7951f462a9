package courseworthy.course;

import courseworthy.problem.Faults;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A ride as a device recorded it: where it was when.
 *
 * @param runs in order, each without a break; at least one
 */
public record RecordedRide(List<RecordedRun> runs) {

    public RecordedRide {
        runs = List.copyOf(runs);
    }

    /**
     * Points with times that never go back, at least two.
     *
     * @param lat     degrees
     * @param lon     degrees
     * @param seconds since any moment
     */
    public record RecordedRun(double[] lat, double[] lon, double[] seconds) {
        public int size() {
            return seconds.length;
        }
    }

    /** Reads a GPX file with times; null with a fault where it cannot be read or has none. */
    public static RecordedRide read(Path path, String shown, Faults faults) {
        GpxFile gpx = GpxReader.timed(path, shown, faults);
        if (gpx == null) {
            return null;
        }
        List<RecordedRun> runs = new ArrayList<>();
        for (GpxFile.Segment segment : gpx.segments()) {
            RecordedRun run = run(segment);
            if (run.size() > 1) {
                runs.add(run);
            }
        }
        if (runs.isEmpty()) {
            faults.add(shown, 0, "", "a track without times", "a recorded ride (GPX whose points have times)",
                    "Export the ride that a device recorded, not a planned route.");
            return null;
        }
        return new RecordedRide(runs);
    }

    /** The points that have a time not before that of the point before. */
    private static RecordedRun run(GpxFile.Segment segment) {
        int n = segment.size();
        double[] lat = new double[n];
        double[] lon = new double[n];
        double[] seconds = new double[n];
        int size = 0;
        for (int i = 0; i < n; i++) {
            double time = segment.seconds()[i];
            if (Double.isNaN(time) || size > 0 && time < seconds[size - 1]) {
                continue;
            }
            lat[size] = segment.lat()[i];
            lon[size] = segment.lon()[i];
            seconds[size++] = time;
        }
        return new RecordedRun(Arrays.copyOf(lat, size), Arrays.copyOf(lon, size), Arrays.copyOf(seconds, size));
    }

    /** Seconds since 1970 began of a time as GPX has it (xsd:dateTime), taken for UTC where it names no zone; NaN where it is none. */
    static double seconds(String text) {
        try {
            OffsetDateTime time = text.endsWith("Z") || text.lastIndexOf('+') > 0 || text.lastIndexOf('-') > text.indexOf('T')
                    ? OffsetDateTime.parse(text) : LocalDateTime.parse(text).atOffset(ZoneOffset.UTC);
            return time.toEpochSecond() + time.getNano() / 1e9;
        } catch (DateTimeException e) {
            return Double.NaN;
        }
    }
}
