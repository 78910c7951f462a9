package courseworthy.render.svg;

import courseworthy.report.Figure;
import courseworthy.report.picture.BackPlan;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.PictureVisitor;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.TrackPlan;
import courseworthy.report.picture.WorthChart;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The pictures of one page as SVG. Each is drawn twice, narrow and wide; {@link #STYLE_SHEET} shows one of them. The page asks for each figure in
 * its order, and once at its end for the hatches that all of them share.
 */
public final class SvgPictures {

    /** How pictures look; it takes its colours from the properties ink, paper, pale, rule, hair and accent of the page. */
    public static final String STYLE_SHEET = read("pictures.css");

    private final String idPrefix;
    private final Set<GroundMaterial> hatches = EnumSet.noneOf(GroundMaterial.class);
    private int count;

    /** @param idPrefix of the ids of its pictures, which are counted: unique in the page, letters, digits and hyphens */
    public SvgPictures(String idPrefix) {
        this.idPrefix = idPrefix;
    }

    private static String read(String name) {
        try (InputStream in = SvgPictures.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Both versions of a picture; its title and its text equivalent are those of the figure. */
    public String draw(Figure figure) {
        count++;
        StringBuilder out = new StringBuilder();
        for (PictureWidth width : PictureWidth.values()) {
            SvgCanvas canvas = new SvgCanvas(width, idPrefix + count);
            Kind kind = figure.picture().accept(Drawings.INSTANCE);
            kind.drawing.accept(canvas);
            hatches.addAll(canvas.hatches());
            out.append(canvas.markup(kind.styleClass, figure.title().plain(), figure.textEquivalent().plain())).append('\n');
        }
        return out.toString();
    }

    /** A small rectangle in the hatch of a ground, for a table; the word for it stands beside it. */
    public String swatch(GroundMaterial material) {
        hatches.add(material);
        return HatchPattern.of(material).swatch();
    }

    /** Strokes for a roughness, for a table; the figure stands beside them. */
    public String strokes(double roughness) {
        return RoughnessStrokes.small(RoughnessStrokes.count(roughness));
    }

    /** The hatches of all that was drawn so far: a picture of no size, to be written once on the page. */
    public String hatches() {
        return HatchPattern.definitions(hatches);
    }

    /** How a picture is drawn. */
    private record Kind(String styleClass, Consumer<SvgCanvas> drawing) {
    }

    /** The drawing of each kind of picture. */
    private enum Drawings implements PictureVisitor<Kind> {
        INSTANCE;

        @Override
        public Kind elevationProfile(ElevationProfile profile) {
            return new Kind("elevation-profile", canvas -> ElevationProfileDrawing.draw(canvas, profile));
        }

        @Override
        public Kind barChart(BarChart chart) {
            return new Kind("bar-chart", canvas -> BarChartDrawing.draw(canvas, chart));
        }

        @Override
        public Kind longSection(LongSection section) {
            return new Kind("long-section", canvas -> LongSectionDrawing.draw(canvas, section));
        }

        @Override
        public Kind gearLadder(GearLadder ladder) {
            return new Kind("gear-ladder", canvas -> GearLadderDrawing.draw(canvas, ladder));
        }

        @Override
        public Kind worthChart(WorthChart chart) {
            return new Kind("worth", canvas -> WorthDrawing.draw(canvas, chart));
        }

        @Override
        public Kind dayStrip(DayStrip strip) {
            return new Kind("day-strip", canvas -> DayStripDrawing.draw(canvas, strip));
        }

        @Override
        public Kind backPlan(BackPlan plan) {
            return new Kind("back-plan", canvas -> BackPlanDrawing.draw(canvas, plan));
        }

        @Override
        public Kind beforeAfter(BeforeAfter parts) {
            return new Kind("before-after", canvas -> BeforeAfterDrawing.draw(canvas, parts));
        }

        @Override
        public Kind trackPlan(TrackPlan plan) {
            return new Kind("track-plan", canvas -> TrackDrawing.draw(canvas, plan));
        }

        @Override
        public Kind pressureLine(PressureLine line) {
            return new Kind("pressure-line", canvas -> PressureLineDrawing.draw(canvas, line));
        }
    }
}
