package courseworthy.course;

import java.util.Arrays;

/** Points of a track as they are read, in arrays that grow. */
final class TrackPoints {

    private double[] lat = new double[1024];
    private double[] lon = new double[1024];
    private double[] elevation = new double[1024];
    private double[] seconds = new double[1024];
    private int size;

    void add(double latitude, double longitude, double metres, double time) {
        if (size == lat.length) {
            lat = Arrays.copyOf(lat, size * 2);
            lon = Arrays.copyOf(lon, size * 2);
            elevation = Arrays.copyOf(elevation, size * 2);
            seconds = Arrays.copyOf(seconds, size * 2);
        }
        lat[size] = latitude;
        lon[size] = longitude;
        elevation[size] = metres;
        seconds[size] = time;
        size++;
    }

    /** The run so far; the next begins empty. */
    GpxFile.Segment take() {
        GpxFile.Segment out = new GpxFile.Segment(Arrays.copyOf(lat, size), Arrays.copyOf(lon, size), Arrays.copyOf(elevation, size),
                Arrays.copyOf(seconds, size));
        size = 0;
        return out;
    }
}
