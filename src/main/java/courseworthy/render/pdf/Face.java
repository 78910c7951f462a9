package courseworthy.render.pdf;

/** A weight of the one typeface that is used: Liberation Sans (SIL Open Font Licence 1.1), with Latin, Greek and Cyrillic. */
enum Face {
    REGULAR("/liberation/LiberationSans-Regular.ttf"), BOLD("/liberation/LiberationSans-Bold.ttf");

    private final String resource;

    Face(String resource) {
        this.resource = resource;
    }

    /** Where its file lies on the class path. */
    String resource() {
        return resource;
    }
}
