package courseworthy.course.matching;

/**
 * Places on the links of a network at an even spacing, at which the rider may be. Each stands for an equal part of its link; a link shorter
 * than the spacing has one in its middle.
 */
final class NetworkPositions {

    /** Most positions: 10,000 km of ways, and less than 100 MB. */
    static final int MOST = 1 << 21;

    private final RoadNetwork network;
    private final int[] first;
    private final int[] link;
    private final double[] cell;
    private final int[] vertex;
    private final double[] lat;
    private final double[] lon;

    private NetworkPositions(RoadNetwork network, int[] first, double[] cell) {
        this.network = network;
        this.first = first;
        this.cell = cell;
        int size = first[first.length - 1];
        link = new int[size];
        vertex = new int[size];
        lat = new double[size];
        lon = new double[size];
    }

    /**
     * Positions on all links.
     *
     * @param spacing m between positions; more where the network is so large that there would be too many
     */
    static NetworkPositions of(RoadNetwork network, double spacing) {
        int[] first = new int[network.links() + 1];
        double[] cell = new double[network.links()];
        double wide = spacing;
        while (!divided(network, wide, first, cell)) {
            wide *= 2;
        }
        NetworkPositions positions = new NetworkPositions(network, first, cell);
        for (int i = 0; i < network.links(); i++) {
            positions.place(i);
        }
        return positions;
    }

    private static boolean divided(RoadNetwork network, double spacing, int[] first, double[] cell) {
        for (int i = 0; i < network.links(); i++) {
            double length = network.length(i);
            long parts = Math.max(1, Math.round(length / spacing));
            // Where there are too many whatever the spacing, the links beyond have none.
            if (first[i] + parts > MOST && spacing < 1e4) {
                return false;
            }
            parts = Math.min(parts, MOST - first[i]);
            first[i + 1] = first[i] + (int) parts;
            cell[i] = length / Math.max(1, parts);
        }
        return true;
    }

    private void place(int of) {
        int before = network.firstVertex(of);
        int last = network.endVertex(of) - 1;
        for (int position = first[of]; position < first[of + 1]; position++) {
            double at = (position - first[of] + 0.5) * cell[of];
            while (before + 1 < last && network.along(before + 1) < at) {
                before++;
            }
            double step = network.along(before + 1) - network.along(before);
            double share = step > 0 ? (at - network.along(before)) / step : 0;
            vertex[position] = before;
            link[position] = of;
            lat[position] = network.lat(before) + share * (network.lat(before + 1) - network.lat(before));
            double east = network.lon(before) + share * LocalPlane.east(network.lon(before), network.lon(before + 1));
            lon[position] = east > 180 ? east - 360 : east < -180 ? east + 360 : east;
        }
    }

    int size() {
        return link.length;
    }

    int link(int position) {
        return link[position];
    }

    /** First position of a link. */
    int first(int of) {
        return first[of];
    }

    /** Number of positions of a link. */
    int count(int of) {
        return first[of + 1] - first[of];
    }

    /** Length of the part of a link that each of its positions stands for, m. */
    double cell(int of) {
        return cell[of];
    }

    /** East and north of a step of one metre along the link at a position; zero where the link has no length there. */
    double[] direction(int position) {
        int from = vertex[position];
        double x = LocalPlane.east(network.lon(from), network.lon(from + 1)) * LocalPlane.eastScale(network.lat(from));
        double y = (network.lat(from + 1) - network.lat(from)) * LocalPlane.northScale(network.lat(from));
        double length = Math.sqrt(x * x + y * y);
        return length > 0 ? new double[] {x / length, y / length} : new double[2];
    }

    double lat(int position) {
        return lat[position];
    }

    double lon(int position) {
        return lon[position];
    }
}
