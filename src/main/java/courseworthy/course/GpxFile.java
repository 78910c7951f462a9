package courseworthy.course;

import java.util.List;

/**
 * A GPX file as it was written: nothing removed, nothing cleaned.
 *
 * @param name      of the track or route, else of the file's metadata; empty where none is given
 * @param segments  track segments in order or, where there is no track, routes; empty and single-point ones included
 * @param route     whether the segments are routes
 * @param wayPoints number of way points, which are no part of the line
 * @param named     names of the first way points that have one
 */
record GpxFile(String name, List<Segment> segments, boolean route, int wayPoints, List<String> named) {

    /**
     * One unbroken run of points.
     *
     * @param lat       degrees
     * @param lon       degrees
     * @param elevation m; NaN where a point has none
     * @param seconds   since 1970 began (UTC); NaN where a point has no time, and throughout where times are not asked for
     */
    record Segment(double[] lat, double[] lon, double[] elevation, double[] seconds) {
        int size() {
            return lat.length;
        }
    }

    int points() {
        int sum = 0;
        for (Segment segment : segments) {
            sum += segment.size();
        }
        return sum;
    }
}
