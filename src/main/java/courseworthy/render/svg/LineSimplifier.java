package courseworthy.render.svg;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/**
 * Leaves points of a line out that nobody would see: D. H. Douglas and T. K. Peucker, Algorithms for the reduction of the number of points
 * required to represent a digitized line or its caricature, Cartographica 10 (1973), 112 to 122.
 */
final class LineSimplifier {

    private LineSimplifier() {
    }

    /** The points to keep, so that none left out is farther than a tolerance from the line through the others. */
    static BitSet kept(double[] x, double[] y, double tolerance) {
        BitSet kept = new BitSet(x.length);
        if (x.length == 0) {
            return kept;
        }
        kept.set(0);
        kept.set(x.length - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, x.length - 1});
        while (!open.isEmpty()) {
            int[] part = open.pop();
            int farthest = farthest(x, y, part[0], part[1], tolerance);
            if (farthest > 0) {
                kept.set(farthest);
                open.push(new int[] {part[0], farthest});
                open.push(new int[] {farthest, part[1]});
            }
        }
        return kept;
    }

    /** The point farthest from the line between two others; 0 where none is beyond the tolerance. */
    private static int farthest(double[] x, double[] y, int from, int to, double tolerance) {
        double most = tolerance * tolerance;
        int farthest = 0;
        for (int i = from + 1; i < to; i++) {
            double square = squareToSegment(x[i] - x[from], y[i] - y[from], x[to] - x[from], y[to] - y[from]);
            if (square > most) {
                most = square;
                farthest = i;
            }
        }
        return farthest;
    }

    /** The square of the distance of a point from the segment between the origin and another point. */
    private static double squareToSegment(double x, double y, double endX, double endY) {
        double length = endX * endX + endY * endY;
        double share = length == 0 ? 0 : Math.max(0, Math.min(1, (x * endX + y * endY) / length));
        double dx = x - share * endX;
        double dy = y - share * endY;
        return dx * dx + dy * dy;
    }
}
