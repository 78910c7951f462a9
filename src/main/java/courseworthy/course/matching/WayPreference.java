package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;

/**
 * What speaks against riding a way, where the track leaves it open: small against what the position says, so that it settles only what
 * could be either. In natural logarithms of odds; all by judgement, no source.
 */
final class WayPreference {

    private WayPreference() {
    }

    /** Costs of a metre of all links, forward and backward. */
    static double[][] rates(RoadNetwork network) {
        double[][] rates = new double[2][network.links()];
        for (int i = 0; i < network.links(); i++) {
            rates[0][i] = forward(network.way(i));
            rates[1][i] = backward(network.way(i));
        }
        return rates;
    }

    /** Cost of a metre in the direction in which the way was drawn. */
    static double forward(MapWay way) {
        return base(way) + (way.tag("oneway").equals("-1") ? against(way) : 0);
    }

    /** Cost of a metre in the opposite direction. */
    static double backward(MapWay way) {
        String oneway = way.tag("oneway");
        boolean round = way.tag("junction").equals("roundabout") && oneway.isEmpty();
        return base(way) + (oneway.equals("yes") || oneway.equals("1") || round ? against(way) : 0);
    }

    private static double against(MapWay way) {
        if (way.tag("junction").equals("roundabout")) {
            return 0.1;
        }
        boolean open = way.tag("oneway:bicycle").equals("no") || way.tag("cycleway").startsWith("opposite");
        return open ? 0 : 0.01;
    }

    private static double base(MapWay way) {
        String bicycle = way.tag("bicycle");
        boolean invited = bicycle.equals("yes") || bicycle.equals("designated") || bicycle.equals("permissive");
        double allowed = invited ? 0 : bicycle.equals("no") || bicycle.equals("use_sidepath") ? 0.004 : bicycle.equals("dismount") ? 0.002 : 0;
        return allowed + switch (way.tag("highway")) {
            case "motorway", "motorway_link" -> 0.05;
            case "trunk", "trunk_link" -> 0.008;
            case "primary", "primary_link" -> 0.003;
            case "secondary", "secondary_link" -> 0.0015;
            case "footway", "pedestrian", "platform" -> invited ? 0 : 0.002;
            case "steps" -> 0.004;
            case "corridor", "elevator" -> 0.01;
            default -> 0;
        };
    }
}
