package courseworthy.render.svg;

import java.util.BitSet;

/** A line through points as the value of the attribute d, without points that nobody would see. */
final class LinePath {

    /** Less than half a pixel cannot be seen. */
    private static final double TOLERANCE = 0.35;

    private LinePath() {
    }

    /**
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
