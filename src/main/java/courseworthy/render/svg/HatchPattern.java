package courseworthy.render.svg;

import courseworthy.report.picture.GroundMaterial;
import java.util.Collection;
import java.util.Locale;

/** The hatch of each ground: tiles of strokes in the ink of the page, distinct by their form alone, on screens and in print. */
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

    /** Slanted strokes: what cannot be, is only waited for, or lies in the dark. */
    static final HatchTile SHADE = new HatchTile("hatch-shade", 6, 6, 1, "M0 6l6-6");
    /** The same, half as dense. */
    static final HatchTile TWILIGHT = new HatchTile("hatch-twilight", 12, 12, 1, "M0 12l12-12");
    private static final int SWATCH_WIDTH = 32;
    private static final int SWATCH_HEIGHT = 24;

    private final HatchTile tile;

    HatchPattern(int width, int height, double stroke, String path) {
        tile = new HatchTile("hatch-" + name().toLowerCase(Locale.ROOT), width, height, stroke, path);
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

    HatchTile tile() {
        return tile;
    }

    /** The class of a line on such ground. */
    String styleClass() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A picture of no size that holds hatches for all others of a page. One that is not displayed would hide them in browsers. */
    static String definitions(Collection<GroundMaterial> used) {
        SvgWriter out = new SvgWriter();
        out.open("svg").attribute("class", "hatches").attribute("width", 0).attribute("height", 0).attribute("aria-hidden", "true").open("defs");
        for (GroundMaterial material : GroundMaterial.values()) {
            if (used.contains(material) && material != GroundMaterial.UNKNOWN) {
                of(material).tile.define(out);
            }
        }
        SHADE.define(out);
        TWILIGHT.define(out);
        return out.close("defs").close("svg").markup();
    }

    /** Fills an area; what is unknown is left blank. */
    void fill(SvgWriter out, double x, double y, double wide, double high) {
        if (this != UNKNOWN) {
            tile.fill(out, x, y, wide, high);
        }
    }

    /** A rectangle in this hatch by itself, hidden from readers of the page, to whom the word beside it says the same. */
    String swatch() {
        SvgWriter out = new SvgWriter();
        out.open("svg").attribute("class", "swatch").attribute("width", SWATCH_WIDTH).attribute("height", SWATCH_HEIGHT).attribute("aria-hidden", "true");
        fill(out, 0, 0, SWATCH_WIDTH, SWATCH_HEIGHT);
        out.open("rect").attribute("class", "edge").attribute("width", SWATCH_WIDTH).attribute("height", SWATCH_HEIGHT).close("rect");
        return out.close("svg").markup();
    }
}
