package courseworthy.render.svg;

import courseworthy.report.picture.ElevationProfile;

/** A height line alone, with its axes. */
final class ElevationProfileDrawing {

    private static final double TOP = 24;
    private static final double HIGH = 120;
    private static final double COMPACT = 56;

    private ElevationProfileDrawing() {
    }

    static void draw(SvgCanvas canvas, ElevationProfile profile) {
        double[] metres = new double[profile.size()];
        double[] heights = new double[profile.size()];
        boolean known = false;
        for (int i = 0; i < metres.length; i++) {
            metres[i] = profile.distance(i);
            heights[i] = profile.height(i);
            known |= !Double.isNaN(heights[i]);
        }
        if (!known || !(profile.length() > 0)) {
            canvas.text(TextStyle.PALE, TextBox.Anchor.START, 0, 14, "Heights are not known.");
            return;
        }
        HeightLineDrawing line = new HeightLineDrawing(metres, heights);
        SectionFrame frame = SectionFrame.of(canvas, profile.length(), line.labelWidth() + 8, canvas.width() - 8);
        double bottom = TOP + (profile.compact() ? COMPACT : HIGH);
        line.draw(frame, TOP, bottom);
        AxisDrawing.kilometres(canvas, profile.length() / 1000, frame.kilometres(), bottom + 6);
    }
}
