package courseworthy.course;

/**
 * Metres climbed and descended along a line, with small ups and downs left out. There is no standard for it; common practice is a
 * threshold of 2 to 10 m, or smoothing over 10 to 50 m (from memory), and the result depends on the method, so the method is stated:
 * docs/explanation/elevation.md.
 *
 * <p>A climb counts from its lowest to its highest point, and is over when the line has fallen by the threshold below that highest
 * point; descents likewise. Nothing is lost at crests, and a steady ramp counts in full. The first and the last leg count whatever
 * their size, so that metres up less metres down are the height gained from end to end. Breaks in the line are never bridged.
 */
public final class AscentCounter {

    /** Turns of less than this are not counted, m: on a line smoothed over about 30 m. */
    public static final double THRESHOLD = 2;

    private final ElevationLine line;
    private final double[] up;
    private final double[] down;

    private AscentCounter(ElevationLine line) {
        this.line = line;
        this.up = new double[line.size()];
        this.down = new double[line.size()];
    }

    /**
     * Counts along a line.
     *
     * @param threshold m, above 0
     */
    public static AscentCounter along(ElevationLine line, double threshold) {
        AscentCounter out = new AscentCounter(line);
        double[] distance = line.distance();
        int from = 0;
        for (int i = 1; i <= distance.length; i++) {
            if (i == distance.length || distance[i] == distance[i - 1]) {
                out.piece(from, i, threshold);
                from = i;
            }
        }
        return out;
    }

    /** Metres climbed in all. */
    public double up() {
        return up.length == 0 ? 0 : up[up.length - 1];
    }

    /** Metres descended in all. */
    public double down() {
        return down.length == 0 ? 0 : down[down.length - 1];
    }

    /** Metres climbed between two distances from the start; parts add up to the whole. */
    public double up(double from, double to) {
        return at(up, to) - at(up, from);
    }

    /** Metres descended between two distances from the start. */
    public double down(double from, double to) {
        return at(down, to) - at(down, from);
    }

    private double at(double[] sum, double distance) {
        double[] d = line.distance();
        int i = firstBeyond(d, distance);
        if (i == 0) {
            return 0;
        }
        if (i == d.length) {
            return sum[d.length - 1];
        }
        return sum[i - 1] + (sum[i] - sum[i - 1]) * (distance - d[i - 1]) / (d[i] - d[i - 1]);
    }

    private static int firstBeyond(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] > value) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Finds the turns of one unbroken piece and counts between them. */
    private void piece(int from, int to, double threshold) {
        double[] e = line.elevation();
        int low = from;
        int high = from;
        int direction = 0;
        int counted = from;
        if (from > 0) {
            up[from] = up[from - 1];
            down[from] = down[from - 1];
        }
        for (int i = from + 1; i < to; i++) {
            low = e[i] < e[low] ? i : low;
            high = e[i] > e[high] ? i : high;
            if (direction <= 0 && e[i] - e[low] >= threshold) {
                count(counted, low, -1);
                counted = low;
                direction = 1;
                high = i;
            } else if (direction >= 0 && e[high] - e[i] >= threshold) {
                count(counted, high, 1);
                counted = high;
                direction = -1;
                low = i;
            }
        }
        int last = direction > 0 ? high : direction < 0 ? low : counted;
        count(counted, last, direction);
        count(last, to - 1, e[to - 1] > e[last] ? 1 : -1);
    }

    /**
     * Counts one leg, monotone but for what is under the threshold: each point by the highest (lowest) so far, and no higher (lower)
     * than where the leg ends.
     */
    private void count(int from, int to, int direction) {
        double[] e = line.elevation();
        double extreme = e[from];
        for (int i = from + 1; i <= to; i++) {
            double before = extreme;
            if (direction > 0 && e[i] > extreme) {
                extreme = Math.min(e[i], e[to]);
            } else if (direction < 0 && e[i] < extreme) {
                extreme = Math.max(e[i], e[to]);
            }
            up[i] = up[i - 1] + Math.max(0, extreme - before);
            down[i] = down[i - 1] + Math.max(0, before - extreme);
        }
    }

    /**
     * The plain dead band: a step counts once the elevation has moved by the band from where it last counted. It loses up to the
     * band at every crest, so it is the low estimate, and it is what many figures in circulation were made with.
     *
     * @param elevation m, in order, unbroken; NaN is passed over
     * @param band      m, above 0
     * @return metres up, metres down
     */
    public static double[] deadBand(double[] elevation, double band) {
        double up = 0;
        double down = 0;
        double last = Double.NaN;
        for (double metres : elevation) {
            if (Double.isNaN(metres)) {
                continue;
            }
            if (Double.isNaN(last)) {
                last = metres;
            } else if (metres - last >= band) {
                up += metres - last;
                last = metres;
            } else if (last - metres >= band) {
                down += last - metres;
                last = metres;
            }
        }
        return new double[] {up, down};
    }
}
