package courseworthy.ride;

import java.util.Arrays;
import java.util.Random;

/**
 * Ranges from a sample. Each uncertain input is drawn on its own between its ends, as likely below its middle as above it and evenly
 * within either half, since only ends and middle are known (JCGM 100:2008, 4.3.7, from memory). The draws are a Latin hypercube
 * (McKay MD, Beckman RJ, Conover WJ, 1979, Technometrics 21:239-245, from memory) from a fixed seed, so that they are the same every time
 * and both sides of a comparison have the same ones. A range runs from the 5th to the 95th hundredth of what comes of them.
 */
final class RangeSampler {

    /** Draws in a sample. */
    static final int DRAWS = 300;
    private static final long SEED = 19_650_412;
    private static final double LOW = 0.05;

    private RangeSampler() {
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

    /** Where between its ends an input is worked out, from its slow to its fast end; the middle is the third. */
    static final double[] PLACES = {-1, -0.5, 0, 0.5, 1};
    static final int MIDDLE = 2;

    /** Parts that only multiply. */
    static final Together APART = new Together(0, 0, 1);

    /**
     * Two inputs that slow a ride less together than one after the other: where rolling resistance already does, the ground's cap on speed is
     * reached less often.
     *
     * @param one   an input
     * @param other another
     * @param both  result with both at their slow ends, over the product of their parts
     */
    record Together(int one, int other, double both) {

        double factor(double[] draw) {
            double a = draw[one];
            double b = draw[other];
            return a < 0 && b < 0 && both != 1 ? 1 + a * b * (both - 1) : 1;
        }
    }

    /**
     * The range of a result that was worked out with each input alone at its ends, and half-way to them where it changes much: between these
     * places it runs along a curve through them, and the parts that inputs change it by multiply or add up. This stands for riding every
     * draw; tests hold the one against the other.
     *
     * @param mid      with all inputs in the middle
     * @param results  by input and place; NaN where it was not worked out half-way
     * @param together how the parts multiply; null where they add up
     */
    static Range range(double mid, double[][] results, Together together, double[][] draws) {
        double[][] curves = new double[results.length][];
        for (int input = 0; input < curves.length; input++) {
            curves[input] = curve(mid, results[input]);
        }
        double[] joined = new double[draws.length];
        for (int i = 0; i < joined.length; i++) {
            double sum = mid;
            for (int input = 0; input < curves.length; input++) {
                double change = on(curves[input], draws[i][input]);
                sum = together != null ? sum * (1 + change / mid) : sum + change;
            }
            sum *= together == null ? 1 : together.factor(draws[i]);
            joined[i] = sum;
        }
        return range(mid, joined);
    }

    /** Coefficients of q to q⁴ of the change from the middle. */
    private static double[] curve(double mid, double[] at) {
        double slow = at[0] - mid;
        double fast = at[4] - mid;
        if (Double.isNaN(at[1])) {
            return new double[] {(fast - slow) / 2, (fast + slow) / 2, 0, 0};
        }
        double halfSlow = at[1] - mid;
        double halfFast = at[3] - mid;
        double odd = (fast - slow) / 2;
        double oddHalf = (halfFast - halfSlow) / 2;
        double even = (fast + slow) / 2;
        double evenHalf = (halfFast + halfSlow) / 2;
        double third = (odd - 2 * oddHalf) / 0.75;
        double fourth = (even - 4 * evenHalf) / 0.75;
        return new double[] {odd - third, even - fourth, third, fourth};
    }

    private static double on(double[] curve, double q) {
        return q * (curve[0] + q * (curve[1] + q * (curve[2] + q * curve[3])));
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
