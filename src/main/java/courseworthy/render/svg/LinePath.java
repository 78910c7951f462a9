package courseworthy.render.svg;

import java.util.BitSet;

/** Lines as the value of the attribute d. */
final class LinePath {

    /** Less than half a pixel cannot be seen. */
    private static final double TOLERANCE = 0.35;

    private LinePath() {
    }

    /** A line straight down. */
    static String down(double x, double top, double bottom) {
        return "M" + SvgWriter.number(x) + " " + SvgWriter.number(top) + "V" + SvgWriter.number(bottom);
    }

    /** A line straight across. */
    static String across(double left, double right, double y) {
        return "M" + SvgWriter.number(left) + " " + SvgWriter.number(y) + "H" + SvgWriter.number(right);
    }

    /**
     * A line through points, without those that nobody would see.
     *
     * @param x places in pixels
     * @param y places in pixels, as many
     */
    static String of(double[] x, double[] y) {
        BitSet kept = LineSimplifier.kept(x, y, TOLERANCE);
        StringBuilder out = new StringBuilder();
        for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
            out.append(i == 0 ? "M" : " ").append(SvgWriter.number(x[i])).append(' ').append(SvgWriter.number(y[i]));
        }
        return out.toString();
    }
}
