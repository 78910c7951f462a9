package courseworthy.course;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Makes the tracks under course-profiles/tracks: closed loops of invented courses, as a device would have recorded them, with the noise,
 * the stops, the drop-outs and the spikes of real recordings. The same bytes each time: the random numbers are those of
 * {@link Random}, whose algorithm is fixed, and the functions those of {@link StrictMath}. No real way is followed. Run {@link #main}
 * to write the files anew.
 */
final class TrackMaker {

    /** The tracks there are; each row is a stretch of its profile: km, m climbed, m descended. */
    static final List<Plan> PLANS = List.of(
            new Plan("grey-shoulder.gpx", "Grey Shoulder", 11, 41.9, 6.4, 1190, 20, 2.5, 1.5, 3,
                    new double[][] {{7.9, 95, 60}, {11.6, 785, 5}, {6.3, 545, 0}, {5.8, 15, 530}, {8.7, 60, 545}, {15.1, 200, 255},
                        {9.2, 730, 20}, {5.1, 225, 110}, {12.1, 40, 960}, {7.7, 75, 285}}),
            new Plan("flintmoor-100.gpx", "Flintmoor Hundred", 23, 49.7, -8.1, 190, 22, 2.5, 1.2, 3,
                    new double[][] {{5.5, 60, 35}, {14.8, 240, 190}, {9.3, 110, 150}, {12.6, 210, 180}, {6.2, 55, 70}, {17.4, 265, 255},
                        {8.1, 90, 105}, {15.7, 230, 215}, {11.4, 90, 150}}),
            new Plan("home-trails.gpx", "Home Trails", 37, 42.1, 7.1, 260, 12, 2.0, 1.2, 3,
                    new double[][] {{2.4, 35, 10}, {6.1, 385, 10}, {4.3, 60, 330}, {3.7, 95, 90}, {5.2, 340, 15}, {5.9, 70, 405},
                        {3.8, 110, 120}, {3.3, 45, 150}, {2.3, 10, 20}}));

    private static final int SHAPE = 40_000;
    /** Share of the last point's error that the next one keeps: errors of receivers drift. */
    private static final double DRIFT = 0.96;
    /** Standard deviation of the elevation's error that does not drift, m. */
    private static final double JITTER = 0.3;

    private final Plan plan;
    private final ElevationLine ground;
    private final Random random;

    private TrackMaker(Plan plan) {
        this.plan = plan;
        this.ground = DrawnElevation.line(plan.stretches(), plan.startHeight);
        this.random = new Random(plan.seed);
    }

    /**
     * A track to make.
     *
     * @param latitude    of the start, degrees
     * @param longitude   of the start, degrees
     * @param startHeight m above the sea
     * @param spacing     m between points
     * @param sway        standard deviation of the position's error, m
     * @param wobble      standard deviation of the elevation's error, m
     * @param ripple      height of small ups and downs on the ground, m
     */
    record Plan(String file, String name, long seed, double latitude, double longitude, double startHeight, double spacing, double sway,
            double wobble, double ripple, double[][] rows) {

        double metres() {
            double sum = 0;
            for (double[] row : rows) {
                sum += row[0] * 1000;
            }
            return sum;
        }

        List<Stretch> stretches() {
            List<Stretch> out = new ArrayList<>();
            for (double[] row : rows) {
                out.add(new Stretch(row[0] * 1000, row[1], row[2], null, Ground.UNKNOWN, 0));
            }
            return out;
        }
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args.length > 0 ? args[0] : "course-profiles/tracks"));
        for (Plan plan : PLANS) {
            Files.writeString(folder.resolve(plan.file), gpx(plan), StandardCharsets.UTF_8);
        }
    }

    /** The file's text. */
    static String gpx(Plan plan) {
        return new TrackMaker(plan).gpx();
    }

    private String gpx() {
        int n = (int) StrictMath.round(plan.metres() / plan.spacing) + 1;
        double[][] shape = shape();
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"Courseworthy\" "
                + "xmlns=\"http://www.topografix.com/GPX/1/1\">\n<trk><name>" + plan.name + "</name><trkseg>\n");
        double east = 0;
        double north = 0;
        double height = 0;
        for (int i = 0; i < n; i++) {
            double at = plan.metres() * i / (n - 1);
            double[] place = place(shape, at);
            east = drifted(east, plan.sway);
            north = drifted(north, plan.sway);
            height = drifted(height, plan.wobble);
            String point = "<trkpt lat=\"" + decimal(plan.latitude + (place[1] + north) / metresPerDegreeNorth(), 6) + "\" lon=\""
                    + decimal(plan.longitude + (place[0] + east) / metresPerDegreeEast(), 6) + "\">";
            boolean lost = i % 1543 > 1530;
            double spike = i % 1733 == 1700 ? 85 : 0;
            String elevation = lost ? "" : "<ele>" + decimal(height(at) + height + JITTER * random.nextGaussian() + spike, 1) + "</ele>";
            int times = i % 997 == 900 ? 4 : 1;
            for (int k = 0; k < times; k++) {
                out.append(point).append(elevation).append("</trkpt>\n");
            }
        }
        return out.append("</trkseg></trk>\n</gpx>\n").toString();
    }

    /** An error that drifts, with a standard deviation in the long run. */
    private double drifted(double before, double deviation) {
        return DRIFT * before + StrictMath.sqrt(1 - DRIFT * DRIFT) * deviation * random.nextGaussian();
    }

    /** A closed line with bends large and small: east and north of the start, and the way along it, in m. */
    private double[][] shape() {
        double[] size = new double[90];
        double[] phase = new double[90];
        for (int k = 2; k < size.length; k++) {
            size[k] = (k < 8 ? 0.16 / k : k > 25 ? 0.09 / k : 0) * (0.5 + random.nextDouble());
            phase[k] = 2 * StrictMath.PI * random.nextDouble();
        }
        double[] x = new double[SHAPE + 1];
        double[] y = new double[SHAPE + 1];
        double[] along = new double[SHAPE + 1];
        for (int i = 0; i <= SHAPE; i++) {
            double turn = 2 * StrictMath.PI * i / SHAPE;
            double radius = 1;
            for (int k = 2; k < size.length; k++) {
                radius += size[k] * StrictMath.cos(k * turn + phase[k]);
            }
            x[i] = radius * StrictMath.sin(turn);
            y[i] = radius * StrictMath.cos(turn);
            along[i] = i == 0 ? 0 : along[i - 1] + StrictMath.sqrt((x[i] - x[i - 1]) * (x[i] - x[i - 1]) + (y[i] - y[i - 1]) * (y[i] - y[i - 1]));
        }
        double scale = plan.metres() / along[SHAPE];
        double y0 = y[0];
        for (int i = 0; i <= SHAPE; i++) {
            x[i] *= scale;
            y[i] = (y[i] - y0) * scale;
            along[i] *= scale;
        }
        return new double[][] {x, y, along};
    }

    private static double[] place(double[][] shape, double at) {
        double[] along = shape[2];
        int low = 0;
        int high = along.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (along[middle] <= at) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double part = (at - along[low]) / (along[high] - along[low]);
        return new double[] {shape[0][low] + part * (shape[0][high] - shape[0][low]), shape[1][low] + part * (shape[1][high] - shape[1][low])};
    }

    /** The ground's own height: rounded at the turns, with small ups and downs that fade out at both ends. */
    private double height(double at) {
        double sum = 0;
        for (int i = -3; i <= 3; i++) {
            sum += straight(at + i * 15);
        }
        double ends = StrictMath.min(1, StrictMath.min(at, plan.metres() - at) / 500);
        double waves = StrictMath.sin(at / 83 + plan.seed) + StrictMath.sin(at / 127 + 2 * plan.seed) + StrictMath.sin(at / 211);
        return sum / 7 + plan.ripple * ends * waves / 3;
    }

    private double straight(double at) {
        double[] distance = ground.distance();
        double[] height = ground.elevation();
        double within = StrictMath.max(0, StrictMath.min(plan.metres(), at));
        int i = (int) StrictMath.max(1, StrictMath.min(distance.length - 1, StrictMath.ceil(within / distance[1])));
        return height[i - 1] + (height[i] - height[i - 1]) * (within - distance[i - 1]) / (distance[i] - distance[i - 1]);
    }

    /** Length of a degree of latitude on WGS84, by the usual series (from memory; good to a metre). */
    private double metresPerDegreeNorth() {
        double latitude = StrictMath.toRadians(plan.latitude);
        return 111_132.95 - 559.85 * StrictMath.cos(2 * latitude) + 1.18 * StrictMath.cos(4 * latitude);
    }

    private double metresPerDegreeEast() {
        double latitude = StrictMath.toRadians(plan.latitude);
        return 111_412.88 * StrictMath.cos(latitude) - 93.5 * StrictMath.cos(3 * latitude) + 0.12 * StrictMath.cos(5 * latitude);
    }

    private static String decimal(double value, int places) {
        long scale = 1;
        for (int i = 0; i < places; i++) {
            scale *= 10;
        }
        long all = StrictMath.round(StrictMath.abs(value) * scale);
        String rest = String.valueOf(scale + all % scale).substring(1);
        return (value < 0 ? "-" : "") + all / scale + "." + rest;
    }
}
