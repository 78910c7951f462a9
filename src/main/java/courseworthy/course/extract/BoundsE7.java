package courseworthy.course.extract;

/** The box around the nodes of a file, in units of 10<sup>-7</sup> degree. */
final class BoundsE7 {

    private static final double E7 = 1e7;

    private int south = Integer.MAX_VALUE;
    private int north = Integer.MIN_VALUE;
    private int west = Integer.MAX_VALUE;
    private int east = Integer.MIN_VALUE;

    void clear() {
        south = Integer.MAX_VALUE;
        north = Integer.MIN_VALUE;
        west = Integer.MAX_VALUE;
        east = Integer.MIN_VALUE;
    }

    void add(int latitude, int longitude) {
        south = Math.min(south, latitude);
        north = Math.max(north, latitude);
        west = Math.min(west, longitude);
        east = Math.max(east, longitude);
    }

    void add(BoundsE7 other) {
        south = Math.min(south, other.south);
        north = Math.max(north, other.north);
        west = Math.min(west, other.west);
        east = Math.max(east, other.east);
    }

    Bounds bounds() {
        return south > north ? Bounds.EMPTY : new Bounds(south / E7, west / E7, north / E7, east / E7);
    }
}
