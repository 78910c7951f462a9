package courseworthy.render.svg;

/** How text looks in pictures. All of it has one size. */
enum TextStyle {
    PLAIN(null),
    /** A value, in bold. */
    VALUE("value"),
    /** What stands beside a value: axes, ranges. */
    PALE("pale"),
    /** A value that needs attention, in the accent colour. */
    WARNING("warning");

    private final String styleClass;

    TextStyle(String styleClass) {
        this.styleClass = styleClass;
    }

    /** Its class in the style sheet; null where it needs none. */
    String styleClass() {
        return styleClass;
    }

    boolean bold() {
        return this == VALUE || this == WARNING;
    }
}
