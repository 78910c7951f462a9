package courseworthy.ride;

import java.util.Arrays;
import java.util.Random;

/**
 * Ranges from a sample. Each uncertain input is drawn on its own between its ends, as likely below its middle as above it and evenly
 * within either half, since only ends and middle are known (JCGM 100:2008, 4.3.7, from memory). The draws are a Latin hypercube
 * (McKay MD, Beckman RJ, Conover WJ, 1979, Technometrics 21:239-245, from memory) from a fixed seed, so that they are the same every time
 * and both sides of a comparison have the same ones. A range runs from the 5th to the 95th hundredth of what comes of them.
 */
final class Spread {

    /** Draws in a sample. */
    static final int DRAWS = 300;
    private static final long SEED = 19_650_412;
    private static final double LOW = 0.05;

    private Spread() {
    }

    /**
     * Places between the ends of each input, -1 to 1, 0 the middle.
     *
     * @return by draw and input
     */
    static double[][] draws(int draws, int inputs) {
        Random random = new Random(SEED);
        double[][] out = new double[draws][inputs];
        int[] order = new int[draws];
        for (int input = 0; input < inputs; input++) {
            for (int i = 0; i < draws; i++) {
                int other = random.nextInt(i + 1);
                order[i] = order[other];
                order[other] = i;
            }
            for (int i = 0; i < draws; i++) {
                out[i][input] = 2 * (order[i] + random.nextDouble()) / draws - 1;
            }
        }
        return out;
    }

    /**
     * The range of a result that was worked out with each input alone at its ends: between them it is taken to run along a parabola, and the
     * parts that inputs change it by to multiply (true) or to add up (false). This stands for riding every draw; tests hold the one against
     * the other.
     *
     * @param mid        with all inputs in the middle
     * @param slow       with each input at its slow end (-1)
     * @param fast       with each input at its fast end (1)
     * @param multiplied how the parts join
     */
    static Range range(double mid, double[] slow, double[] fast, boolean multiplied, double[][] draws) {
        double[] results = new double[draws.length];
        for (int i = 0; i < results.length; i++) {
            double joined = multiplied ? 1 : 0;
            for (int input = 0; input < slow.length; input++) {
                double q = draws[i][input];
                double up = fast[input] - mid;
                double down = slow[input] - mid;
                double change = 0.5 * q * (up - down + q * (up + down));
                joined = multiplied ? joined * (1 + change / mid) : joined + change;
            }
            results[i] = multiplied ? mid * joined : mid + joined;
        }
        return range(mid, results);
    }

    /** The range of results of all draws about the middle one. */
    static Range range(double mid, double[] results) {
        double[] sorted = results.clone();
        Arrays.sort(sorted);
        return Range.around(at(sorted, LOW), mid, at(sorted, 1 - LOW));
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = Math.min(sorted.length - 2, (int) place);
        return sorted[below] + (sorted[below + 1] - sorted[below]) * (place - below);
    }
}
