package courseworthy.report;

import java.util.List;
import java.util.Objects;

/** The data of a picture. */
public sealed interface Picture {

    /** Heights along a course. */
    final class ElevationProfile implements Picture {
        private final double[] distances;
        private final double[] heights;
        private final boolean compact;

        /**
         * @param distances from the start, m; never falling
         * @param heights   m, one for each distance; NaN where it is not known
         * @param compact   to be drawn small, without axes
         */
        public ElevationProfile(double[] distances, double[] heights, boolean compact) {
            if (distances.length == 0 || distances.length != heights.length) {
                throw new IllegalArgumentException(distances.length + " distances and " + heights.length + " heights");
            }
            this.distances = distances.clone();
            this.heights = heights.clone();
            this.compact = compact;
        }

        public int size() {
            return distances.length;
        }

        /** From the start, m. */
        public double distance(int point) {
            return distances[point];
        }

        /** In m; NaN where it is not known. */
        public double height(int point) {
            return heights[point];
        }

        /** From the start to the end, m. */
        public double length() {
            return distances[distances.length - 1];
        }

        /** True where it is to be drawn small, without axes. */
        public boolean compact() {
            return compact;
        }
    }

    /**
     * Bars from zero, one below the other.
     *
     * @param labelHeading what the labels are, where the same is shown as a table
     * @param valueHeading what the values are
     */
    record BarChart(String labelHeading, String valueHeading, List<Bar> bars) implements Picture {

        public BarChart {
            Objects.requireNonNull(labelHeading);
            Objects.requireNonNull(valueHeading);
            bars = List.copyOf(bars);
        }
    }

    /**
     * One bar.
     *
     * @param value   its length, not negative, in a unit that all bars of a chart share
     * @param written the value with its unit
     */
    record Bar(String label, double value, String written) {

        public Bar {
            Objects.requireNonNull(label);
            Objects.requireNonNull(written);
            if (!(value >= 0)) {
                throw new IllegalArgumentException("a bar of " + value);
            }
        }
    }
}
