package courseworthy.course;

import java.util.Arrays;

/**
 * Leaves out points of an elevation line that the rest tells to a tolerance: at every distance the line through what stays is no further than
 * that above or below the line through all (Douglas and Peucker 1973, Cartographica 10:112-122, from memory, with the error measured in
 * height). The ends and breaks between pieces always stay.
 */
public final class ElevationThinner {

    private final double[] distance;
    private final double[] elevation;
    private final double tolerance;
    private final boolean[] stays;

    private ElevationThinner(ElevationLine line, double tolerance) {
        distance = line.distance();
        elevation = line.elevation();
        this.tolerance = tolerance;
        stays = new boolean[distance.length];
    }

    /** @param tolerance m, 0 or more */
    public static ElevationLine thinned(ElevationLine line, double tolerance) {
        return new ElevationThinner(line, tolerance).line(line);
    }

    private ElevationLine line(ElevationLine whole) {
        int from = 0;
        for (int i = 1; i <= distance.length; i++) {
            if (i == distance.length || distance[i] == distance[i - 1]) {
                piece(from, i - 1);
                from = i;
            }
        }
        double[] keptDistance = new double[distance.length];
        double[] keptElevation = new double[distance.length];
        int kept = 0;
        for (int i = 0; i < stays.length; i++) {
            if (stays[i]) {
                keptDistance[kept] = distance[i];
                keptElevation[kept++] = elevation[i];
            }
        }
        return new ElevationLine(Arrays.copyOf(keptDistance, kept), Arrays.copyOf(keptElevation, kept), whole.measured(), whole.absolute());
    }

    /** Halves at the point that is furthest off until none is off by more than the tolerance; without recursion, since lines are long. */
    private void piece(int first, int last) {
        int[] open = new int[2 * (last - first + 2)];
        int size = 0;
        stays[first] = true;
        stays[last] = true;
        open[size++] = first;
        open[size++] = last;
        while (size > 0) {
            int to = open[--size];
            int from = open[--size];
            int furthest = furthest(from, to);
            if (furthest > 0) {
                stays[furthest] = true;
                open[size++] = from;
                open[size++] = furthest;
                open[size++] = furthest;
                open[size++] = to;
            }
        }
    }

    /** The point between two that is furthest above or below the line through them; 0 where none is off by more than the tolerance. */
    private int furthest(int from, int to) {
        double most = tolerance;
        int out = 0;
        for (int i = from + 1; i < to; i++) {
            double part = (distance[i] - distance[from]) / (distance[to] - distance[from]);
            double off = Math.abs(elevation[i] - (elevation[from] + part * (elevation[to] - elevation[from])));
            if (off > most) {
                most = off;
                out = i;
            }
        }
        return out;
    }
}
