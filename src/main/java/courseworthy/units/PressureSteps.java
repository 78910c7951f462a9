package courseworthy.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Pressures as they are told: in steps of 0.05 bar below 2.5 bar and of 0.1 bar from there on, with the nearest whole pound per square inch
 * beside it. Hands on the bar notice no difference under 0.7 bar or so in a road tyre (published: 69 to 241 kPa), and few gauges are truer
 * than a step; the steps themselves are common practice, no source. All in Pa.
 */
public final class PressureSteps {

    private static final double BAR = 1e5;
    private static final double PSI = 6894.757293168;
    private static final double FINE = 0.05 * BAR;
    private static final double COARSE = 0.1 * BAR;
    private static final double COARSE_FROM = 2.5 * BAR;
    /** From where the wider step holds, in words. */
    public static final String WIDE = "0.1 bar from 2.5 bar on";
    /** What arithmetic may leave of a step. */
    private static final double ROUNDING = 1e-6;

    private PressureSteps() {
    }

    /** The step at a pressure. */
    public static double step(double pascal) {
        return pascal < COARSE_FROM - 1 ? FINE : COARSE;
    }

    /** The step next to a pressure. */
    public static double nearest(double pascal) {
        return Math.round(pascal / step(pascal)) * step(pascal);
    }

    /** For what must not be taken for more than it is. */
    public static double down(double pascal) {
        return Math.floor(pascal / step(pascal) + ROUNDING) * step(pascal);
    }

    /** For what must not be taken for less than it is. */
    public static double up(double pascal) {
        return Math.ceil(pascal / step(pascal) - ROUNDING) * step(pascal);
    }

    /**
     * Whole pounds per square inch nearest to a pressure, but none above a ceiling that the pressure keeps to.
     *
     * @param ceiling null for none
     */
    public static long psi(double pascal, Double ceiling) {
        long nearest = Math.round(pascal / PSI);
        boolean above = ceiling != null && pascal <= ceiling + 1 && nearest * PSI > ceiling + 1;
        return above ? (long) Math.floor(ceiling / PSI + ROUNDING) : nearest;
    }

    /** The bare number in bar of the step next to a pressure: {@code 1.20}, {@code 4.9}. */
    public static String bar(double pascal) {
        double rounded = nearest(pascal);
        return BigDecimal.valueOf(rounded / BAR).setScale(rounded < COARSE_FROM - 1 ? 2 : 1, RoundingMode.HALF_UP).toPlainString();
    }

    /** {@code 1.20 bar (17 psi)}. @param ceiling null for none */
    public static String text(double pascal, Double ceiling) {
        return bar(pascal) + " bar (" + psi(pascal, ceiling) + " psi)";
    }
}
