package courseworthy.task;

import courseworthy.task.CourseMap.MapPoint;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Leaves out points of a line that are no further than a tolerance from what stays (Douglas and Peucker 1973, Cartographica 10:112-122, from
 * memory). Its ends stay.
 */
final class PlanLineThinner {

    private PlanLineThinner() {
    }

    /** @param tolerance m */
    static List<MapPoint> thinned(List<MapPoint> line, double tolerance) {
        boolean[] stays = new boolean[line.size()];
        stays[0] = true;
        stays[line.size() - 1] = true;
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, line.size() - 1});
        while (!open.isEmpty()) {
            int[] ends = open.pop();
            int furthest = furthest(line, ends[0], ends[1], tolerance);
            if (furthest > 0) {
                stays[furthest] = true;
                open.push(new int[] {ends[0], furthest});
                open.push(new int[] {furthest, ends[1]});
            }
        }
        List<MapPoint> out = new ArrayList<>();
        for (int i = 0; i < stays.length; i++) {
            if (stays[i]) {
                out.add(line.get(i));
            }
        }
        return out;
    }

    private static int furthest(List<MapPoint> line, int from, int to, double tolerance) {
        double most = tolerance;
        int out = 0;
        for (int i = from + 1; i < to; i++) {
            double off = distance(line.get(i), line.get(from), line.get(to));
            if (off > most) {
                most = off;
                out = i;
            }
        }
        return out;
    }

    /** From a point to the nearest of a straight piece. */
    private static double distance(MapPoint point, MapPoint from, MapPoint to) {
        double east = to.east() - from.east();
        double north = to.north() - from.north();
        double square = east * east + north * north;
        double along = square == 0 ? 0 : ((point.east() - from.east()) * east + (point.north() - from.north()) * north) / square;
        double held = Math.max(0, Math.min(1, along));
        return Math.hypot(point.east() - from.east() - held * east, point.north() - from.north() - held * north);
    }
}
