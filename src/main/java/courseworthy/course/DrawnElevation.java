package courseworthy.course;

import java.util.List;

/**
 * Draws a line from the ascent and descent of stretches where no track gives one. A stretch with an ascent or a descent alone is a straight ramp.
 * One with both rolls in equal waves, each up and then down at one gradient, so many that a wave gives back at most {@link #WAVE} of
 * what it climbs (or climbs at most that of what it falls); a hill that matters is worth a stretch of its own. A stretch with neither
 * is drawn level. Short ramps are not in the line.
 */
final class DrawnElevation {

    /** Most that one wave climbs and loses again, m. */
    static final double WAVE = 40;
    /** Shortest wave, m. */
    private static final double SHORTEST_WAVE = 100;

    private final double[] elevation;
    private final double[] distance;
    private int node;
    private double at;
    private double height;

    private DrawnElevation(double length, double startHeight) {
        int steps = (int) Math.max(1, Math.round(length / ElevationCleaner.STEP));
        distance = new double[steps + 1];
        elevation = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            distance[i] = length * i / steps;
        }
        height = startHeight;
    }

    /** @param startHeight m above sea level, null where unknown */
    static ElevationLine line(List<Stretch> stretches, Double startHeight) {
        double length = 0;
        for (Stretch stretch : stretches) {
            length += stretch.length();
        }
        DrawnElevation drawing = new DrawnElevation(length, startHeight == null ? 0 : startHeight);
        for (Stretch stretch : stretches) {
            drawing.stretch(stretch.length(), stretch.ascent() == null ? 0 : stretch.ascent(), stretch.descent() == null ? 0 : stretch.descent());
        }
        drawing.rest();
        return new ElevationLine(drawing.distance, drawing.elevation, false, startHeight != null);
    }

    private void stretch(double length, double rise, double drop) {
        int waves = (int) Math.max(1, Math.min(Math.ceil(Math.min(rise, drop) / WAVE), Math.floor(length / SHORTEST_WAVE)));
        double up = rise + drop == 0 ? length : length * rise / (rise + drop);
        for (int i = 0; i < waves; i++) {
            ramp(up / waves, rise / waves);
            ramp((length - up) / waves, -drop / waves);
        }
    }

    private void ramp(double length, double rise) {
        double to = at + length;
        while (node < distance.length && distance[node] < to) {
            elevation[node] = height + rise * (distance[node] - at) / length;
            node++;
        }
        at = to;
        height += rise;
    }

    private void rest() {
        while (node < distance.length) {
            elevation[node++] = height;
        }
    }
}
