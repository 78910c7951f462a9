package courseworthy.render.svg;

/** Roughness as one to five strokes, one above the other. */
final class RoughnessStrokes {

    /** From one stroke to the next, pixels. */
    static final double PITCH = 4;
    private static final int MOST = 5;
    private static final int WIDTH = 24;
    private static final int HEIGHT = 20;

    private RoughnessStrokes() {
    }

    /** One for each class of roughness begun, so that the smoothest ground has one too. */
    static int count(double roughness) {
        return (int) Math.max(1, Math.min(MOST, 1 + Math.floor(roughness)));
    }

    /** The path of some strokes. @param bottom of the band that they stand in */
    static String path(int count, double left, double right, double bottom) {
        StringBuilder out = new StringBuilder();
        for (int stroke = 0; stroke < count; stroke++) {
            out.append('M').append(SvgWriter.number(left)).append(' ').append(SvgWriter.number(bottom - 2 - stroke * PITCH)).append('H')
                    .append(SvgWriter.number(right));
        }
        return out.toString();
    }

    /** A picture of them alone, hidden from readers of the page, to whom the figure beside it says the same. */
    static String small(int count) {
        SvgWriter out = new SvgWriter();
        out.open("svg").attribute("class", "swatch").attribute("width", WIDTH).attribute("height", HEIGHT).attribute("aria-hidden", "true");
        out.open("path").attribute("class", "strokes").attribute("d", path(count, 0, WIDTH, HEIGHT)).close("path");
        return out.close("svg").markup();
    }
}
