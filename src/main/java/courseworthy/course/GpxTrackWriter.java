package courseworthy.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes a course's track as GPX 1.1 (topografix.com/GPX/1/1) with the heights that the course has. Where the track's own points lie far apart,
 * others are put between them, so that the ground between is kept.
 */
public final class GpxTrackWriter {

    /** Points lie no further apart, m: twice the spacing of common tiles. */
    private static final double FAR_APART = 60;

    private final StringBuilder out = new StringBuilder();
    private final ElevationLine line;
    private int node;

    private GpxTrackWriter(ElevationLine line) {
        this.line = line;
    }

    /** The file of a course that has a track and heights. */
    public static String text(Course course) {
        GpxTrackWriter writer = new GpxTrackWriter(course.line());
        writer.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"courseworthy\">\n")
                .append("  <trk>\n    <name>").append(escaped(course.name())).append("</name>\n");
        course.track().pieces().forEach(writer::piece);
        return writer.out.append("  </trk>\n</gpx>\n").toString();
    }

    private void piece(Track.TrackPiece piece) {
        out.append("    <trkseg>\n");
        for (int i = 0; i < piece.size() - 1; i++) {
            double run = piece.distance()[i + 1] - piece.distance()[i];
            int parts = (int) Math.max(1, Math.ceil(run / FAR_APART));
            for (int k = 0; k < parts; k++) {
                double part = (double) k / parts;
                point(between(piece.lat(), i, part), between(piece.lon(), i, part), piece.distance()[i] + part * run);
            }
        }
        int last = piece.size() - 1;
        point(piece.lat()[last], piece.lon()[last], piece.distance()[last]);
        out.append("    </trkseg>\n");
    }

    /** A step over the date line is left as it is: its two ends are no line in degrees. */
    private static double between(double[] values, int i, double part) {
        double step = values[i + 1] - values[i];
        return Math.abs(step) > 180 ? values[i] : values[i] + part * step;
    }

    private void point(double latitude, double longitude, double distance) {
        out.append(String.format(Locale.ROOT, "      <trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>%.1f</ele></trkpt>\n", latitude, longitude, height(distance)));
    }

    /** Between the two nodes of the line around a distance; asked for in order. */
    private double height(double distance) {
        while (node < line.size() - 2 && line.distance()[node + 1] < distance) {
            node++;
        }
        double run = line.distance()[node + 1] - line.distance()[node];
        double part = run == 0 ? 0 : Math.max(0, Math.min(1, (distance - line.distance()[node]) / run));
        return line.elevation()[node] + part * (line.elevation()[node + 1] - line.elevation()[node]);
    }

    private static String escaped(String text) {
        List<String> plain = new ArrayList<>();
        text.codePoints().forEach(point -> plain.add(point == '&' ? "&amp;" : point == '<' ? "&lt;" : point == '>' ? "&gt;"
                : Character.isISOControl(point) ? " " : Character.toString(point)));
        return String.join("", plain);
    }
}
