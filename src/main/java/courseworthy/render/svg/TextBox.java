package courseworthy.render.svg;

/** The room that a line of text takes in a picture, in pixels. */
record TextBox(double left, double top, double right, double bottom) {

    /** Which part of a text lies at its place. */
    enum Anchor {
        START("start"), MIDDLE("middle"), END("end");

        private final String value;

        Anchor(String value) {
            this.value = value;
        }

        /** The value of the attribute text-anchor. */
        String value() {
            return value;
        }
    }

    /** @param y of the line that its letters stand on */
    static TextBox of(PictureText words, TextStyle style, Anchor anchor, double x, double y) {
        double width = words.width(style.bold());
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
        return new TextBox(left, y - TextWidths.ASCENT, left + width, y + TextWidths.DESCENT);
    }

    /** True where the boxes share more than an edge, to a tenth of a pixel. */
    boolean overlaps(TextBox other) {
        return left < other.right - 0.1 && other.left < right - 0.1 && top < other.bottom - 0.1 && other.top < bottom - 0.1;
    }
}
