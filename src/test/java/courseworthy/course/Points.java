package courseworthy.course;

import java.util.Locale;

/** Writes small GPX files for tests. */
final class Points {

    private final StringBuilder out = new StringBuilder();

    /** A track of one segment. */
    static String track(String points) {
        return file("<trk><trkseg>" + points + "</trkseg></trk>");
    }

    /** A GPX 1.1 file around what is given. */
    static String file(String inside) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"test\" "
                + "xmlns=\"http://www.topografix.com/GPX/1/1\">" + inside + "</gpx>\n";
    }

    /**
     * A track due north from the equator, where a degree of latitude is 110574.3 m on WGS84, with a point for each elevation.
     *
     * @param step      m between points
     * @param elevation m; NaN for none
     */
    static String north(double step, double... elevation) {
        Points points = new Points();
        for (int i = 0; i < elevation.length; i++) {
            points.add(i * step / 110_574.3, 9.5, elevation[i]);
        }
        return track(points.out.toString());
    }

    Points add(double lat, double lon, double elevation) {
        out.append(String.format(Locale.ROOT, "<trkpt lat=\"%.9f\" lon=\"%.9f\">", lat, lon));
        if (!Double.isNaN(elevation)) {
            out.append(String.format(Locale.ROOT, "<ele>%.3f</ele>", elevation));
        }
        out.append("</trkpt>\n");
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
