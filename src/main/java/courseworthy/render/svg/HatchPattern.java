package courseworthy.render.svg;

import courseworthy.report.picture.GroundMaterial;
import java.util.Collection;

/** The hatch of each ground: tiles of strokes in the ink of the page, told apart by their form alone, on screens and in print. */
enum HatchPattern {
    /** One rule. */
    PAVED(20, 20, 2, "M0 10h20"),
    /** Pairs of slanted strokes. */
    FIRM(16, 12, 1.1, "M3 9l3-6M7 9l3-6"),
    /** Dots. */
    GRAVEL(10, 8, 2.3, "M2.5 2h0M7.5 6h0"),
    /** Dashes. */
    EARTH(12, 8, 1.3, "M1 2h5M7 6h5"),
    /** Upright strokes. */
    GRASS(10, 9, 1.1, "M2 8v-5M5 6v-5M8 8v-3"),
    /** Angular blocks. */
    ROCK(14, 12, 1.2, "M1.5 9l1.5-5 5-1.5 3 3.5-1 4.5zM11 2l2-1"),
    /** Fine stipple. */
    SAND(5, 5, 1.2, "M1.5 1.5h0M4 4h0"),
    /** Waves. */
    MUD(14, 7, 1.3, "M0 4.5q3.5-5 7 0t7 0"),
    /** Slanted crosses. */
    SNOW(14, 12, 1.1, "M1.5 1l4 4M5.5 1l-4 4M8.5 7l4 4M12.5 7l-4 4"),
    /** Blank; a question mark stands on it. */
    UNKNOWN(20, 20, 0, "");

    /** The pattern of slanted strokes. */
    static final String SHADE_ID = "hatch-shade";
    /** The same, half as dense. */
    static final String TWILIGHT_ID = "hatch-twilight";
    private static final int SHADE = 6;
    private static final int SWATCH_WIDTH = 32;
    private static final int SWATCH_HEIGHT = 24;

    private final int tileWidth;
    private final int tileHeight;
    private final double stroke;
    private final String path;

    HatchPattern(int tileWidth, int tileHeight, double stroke, String path) {
        this.tileWidth = tileWidth;
        this.tileHeight = tileHeight;
        this.stroke = stroke;
        this.path = path;
    }

    static HatchPattern of(GroundMaterial material) {
        return switch (material) {
            case PAVED -> PAVED;
            case FIRM -> FIRM;
            case GRAVEL -> GRAVEL;
            case EARTH -> EARTH;
            case GRASS -> GRASS;
            case ROCK -> ROCK;
            case SAND -> SAND;
            case MUD -> MUD;
            case SNOW -> SNOW;
            case UNKNOWN -> UNKNOWN;
        };
    }

    String id() {
        return "hatch-" + styleClass();
    }

    /** The end of its id, and of the class of a line on such ground. */
    String styleClass() {
        return switch (this) {
            case PAVED -> "paved";
            case FIRM -> "firm";
            case GRAVEL -> "gravel";
            case EARTH -> "earth";
            case GRASS -> "grass";
            case ROCK -> "rock";
            case SAND -> "sand";
            case MUD -> "mud";
            case SNOW -> "snow";
            case UNKNOWN -> "unknown";
        };
    }

    int tileWidth() {
        return tileWidth;
    }

    int tileHeight() {
        return tileHeight;
    }

    double stroke() {
        return stroke;
    }

    String path() {
        return path;
    }

    /** A picture of no size that holds hatches for all others of a page. One that is not displayed would hide them in browsers. */
    static String definitions(Collection<GroundMaterial> used) {
        SvgWriter out = new SvgWriter();
        out.open("svg").attribute("class", "hatches").attribute("width", 0).attribute("height", 0).attribute("aria-hidden", "true").open("defs");
        for (GroundMaterial material : GroundMaterial.values()) {
            if (used.contains(material) && material != GroundMaterial.UNKNOWN) {
                HatchPattern each = of(material);
                tile(out, each.id(), each.tileWidth, each.tileHeight, each.stroke, each.path);
            }
        }
        tile(out, SHADE_ID, SHADE, SHADE, 1, "M-1 1l2-2M0 6l6-6M5 7l2-2");
        tile(out, TWILIGHT_ID, 2 * SHADE, 2 * SHADE, 1, "M-1 1l2-2M0 12l12-12M11 13l2-2");
        return out.close("defs").close("svg").markup();
    }

    /** A rectangle in this hatch by itself, hidden from readers of the page, to whom the word beside it says the same. */
    String swatch() {
        SvgWriter out = new SvgWriter();
        out.open("svg").attribute("class", "swatch").attribute("width", SWATCH_WIDTH).attribute("height", SWATCH_HEIGHT).attribute("aria-hidden", "true");
        out.open("rect").attribute("class", "edge");
        if (this != UNKNOWN) {
            out.attribute("fill", "url(#" + id() + ")");
        }
        out.attribute("width", SWATCH_WIDTH).attribute("height", SWATCH_HEIGHT).close("rect");
        return out.close("svg").markup();
    }

    private static void tile(SvgWriter out, String id, int width, int height, double stroke, String path) {
        out.open("pattern").attribute("id", id).attribute("patternUnits", "userSpaceOnUse").attribute("width", width).attribute("height", height);
        out.open("path").attribute("d", path).attribute("fill", "none").attribute("stroke", "currentColor").attribute("stroke-width", stroke)
                .attribute("stroke-linecap", "round").close("path").close("pattern");
    }
}
