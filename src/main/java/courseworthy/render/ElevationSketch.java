package courseworthy.render;

import courseworthy.report.picture.ElevationProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An elevation profile drawn with block characters. */
final class ElevationSketch {

    private static final String EIGHTHS = " \u2581\u2582\u2583\u2584\u2585\u2586\u2587\u2588";

    private final double[] heights;

    /** @param columns how many pieces of the same length the course is drawn in, each as high as its highest point */
    ElevationSketch(ElevationProfile profile, int columns) {
        heights = new double[columns];
        Arrays.fill(heights, Double.NaN);
        double length = profile.length();
        for (int i = 0; i < profile.size(); i++) {
            int column = length > 0 ? (int) Math.min(columns - 1, profile.distance(i) / length * columns) : 0;
            double height = profile.height(i);
            if (!Double.isNaN(height) && !(height <= heights[column])) {
                heights[column] = height;
            }
        }
        bridge();
    }

    /** Columns without a point of their own are drawn on the straight line between their neighbours. */
    private void bridge() {
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

    /**
     * Rows of characters, the top one first.
     *
     * @param least eighths of a row at the lowest point
     */
    List<String> rows(int rows, int least) {
        double low = lowest();
        double span = Math.max(highest() - low, 1);
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

    double lowest() {
        return Arrays.stream(heights).min().orElseThrow();
    }

    double highest() {
        return Arrays.stream(heights).max().orElseThrow();
    }
}
