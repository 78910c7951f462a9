package courseworthy.render.svg;

/** The two widths that each picture is drawn in, so that its text is never scaled; the style sheet of the page shows one of them. */
enum PictureWidth {
    /** For pages under 700 px: 360 px less a margin of 16 px on either side. */
    NARROW(328, "narrow"),
    WIDE(860, "wide");

    private final int pixels;
    private final String styleClass;

    PictureWidth(int pixels, String styleClass) {
        this.pixels = pixels;
        this.styleClass = styleClass;
    }

    int pixels() {
        return pixels;
    }

    String styleClass() {
        return styleClass;
    }
}
