package courseworthy.report;

import courseworthy.course.ElevationLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws the elevation with block characters. */
final class ElevationSketch {

    private static final String EIGHTHS = " \u2581\u2582\u2583\u2584\u2585\u2586\u2587\u2588";

    private ElevationSketch() {
    }

    /** Highest point of each of some pieces of even length, m. */
    static double[] columns(ElevationLine line, int columns) {
        double length = line.distance()[line.size() - 1];
        double[] highest = new double[columns];
        Arrays.fill(highest, Double.NaN);
        for (int i = 0; i < line.size(); i++) {
            int column = length > 0 ? (int) Math.min(columns - 1, line.distance()[i] / length * columns) : 0;
            double height = line.elevation()[i];
            if (!Double.isNaN(height) && !(height <= highest[column])) {
                highest[column] = height;
            }
        }
        bridge(highest);
        return highest;
    }

    /** One row: the lowest as the lowest block, the highest as a full one. */
    static String row(double[] heights) {
        return rows(heights, 1, 1).get(0);
    }

    /**
     * Several rows, top first.
     *
     * @param least eighths of a row at the lowest point
     */
    static List<String> rows(double[] heights, int rows, int least) {
        double low = lowest(heights);
        double span = Math.max(highest(heights) - low, 1);
        List<String> out = new ArrayList<>();
        for (int row = rows - 1; row >= 0; row--) {
            StringBuilder line = new StringBuilder();
            for (double height : heights) {
                int eighths = least + (int) Math.round((height - low) / span * (rows * 8 - least));
                line.append(EIGHTHS.charAt(Math.max(0, Math.min(8, eighths - row * 8))));
            }
            out.add(line.toString().stripTrailing());
        }
        return out;
    }

    static double lowest(double[] heights) {
        double low = heights[0];
        for (double height : heights) {
            low = Math.min(low, height);
        }
        return low;
    }

    static double highest(double[] heights) {
        double high = heights[0];
        for (double height : heights) {
            high = Math.max(high, height);
        }
        return high;
    }

    /** Columns without a point of their own are drawn on the straight line between their neighbours. */
    private static void bridge(double[] heights) {
        int known = -1;
        for (int i = 0; i < heights.length; i++) {
            if (Double.isNaN(heights[i])) {
                continue;
            }
            for (int gap = known + 1; gap < i; gap++) {
                heights[gap] = known < 0 ? heights[i]
                        : heights[known] + (heights[i] - heights[known]) * (gap - known) / (i - known);
            }
            known = i;
        }
        Arrays.fill(heights, known + 1, heights.length, known < 0 ? 0 : heights[known]);
    }
}
