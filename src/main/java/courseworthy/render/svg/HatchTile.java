package courseworthy.render.svg;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A tile of strokes that is repeated to fill an area. It is written as a block of many tiles, which pictures refer to as often as it takes, and
 * not as a pattern of SVG, since browsers print those as coarse images.
 *
 * @param id     of its block in the page
 * @param width  pixels
 * @param height pixels
 * @param stroke width of its strokes, pixels
 * @param path   absolute places of its strokes (M), each followed by relative commands
 */
record HatchTile(String id, int width, int height, double stroke, String path) {

    /** A block is about as large as a piece of a band: few references, and little to write once. */
    private static final int BLOCK_WIDTH = 216;
    private static final int BLOCK_HEIGHT = 20;
    private static final Pattern STROKE = Pattern.compile("M(-?[\\d.]+) (-?[\\d.]+)([^M]*)");

    int blockWidth() {
        return width * (BLOCK_WIDTH / width);
    }

    int blockHeight() {
        return height * ((BLOCK_HEIGHT + height - 1) / height);
    }

    /** Writes the block. */
    void define(SvgWriter out) {
        out.open("path").attribute("id", id).attribute("stroke-width", stroke).attribute("stroke-linecap", "round").attribute("d", block()).close("path");
    }

    private String block() {
        List<MatchResult> strokes = STROKE.matcher(path).results().toList();
        StringBuilder out = new StringBuilder();
        for (int top = 0; top < blockHeight(); top += height) {
            for (int left = 0; left < blockWidth(); left += width) {
                for (MatchResult each : strokes) {
                    out.append('M').append(SvgWriter.number(left + Double.parseDouble(each.group(1)))).append(' ')
                            .append(SvgWriter.number(top + Double.parseDouble(each.group(2)))).append(each.group(3));
                }
            }
        }
        return out.toString();
    }

    /** Fills an area, whose corner a tile begins at; what reaches beyond is cut off. */
    void fill(SvgWriter out, double x, double y, double wide, double high) {
        out.open("svg").attribute("x", x).attribute("y", y).attribute("width", wide).attribute("height", high);
        for (int top = 0; top < high; top += blockHeight()) {
            for (int left = 0; left < wide; left += blockWidth()) {
                out.open("use").attribute("href", "#" + id);
                if (left > 0) {
                    out.attribute("x", left);
                }
                if (top > 0) {
                    out.attribute("y", top);
                }
                out.close("use");
            }
        }
        out.close("svg");
    }
}
