package courseworthy.course.extract;

import courseworthy.problem.Fault;

/** Ends the reading of a map file: says what was found there and what was expected. */
final class RefusedExtract extends RuntimeException {

    static final String WANTED = "an OpenStreetMap extract (.osm.pbf, .osm or .osm.gz)";

    private static final String FETCH_AGAIN = "Fetch the file again.";
    private static final long serialVersionUID = 1L;

    private final int line;
    private final String field;
    private final String found;
    private final String expected;
    private final String mend;

    private RefusedExtract(int line, String field, String found, String expected, String mend) {
        super(found, null, false, false);
        this.line = line;
        this.field = field;
        this.found = found;
        this.expected = expected;
        this.mend = mend;
    }

    /** A file that is of another kind than those that can be read. */
    static RefusedExtract kind(String found, String mend) {
        return new RefusedExtract(0, "", found, WANTED, mend);
    }

    /** Bytes that no writer of the format leaves behind. */
    static RefusedExtract damaged(String found) {
        return new RefusedExtract(0, "", found, "a whole extract", FETCH_AGAIN);
    }

    /** More near the track than a map has. */
    static RefusedExtract tooMuch(String found) {
        return new RefusedExtract(0, "", found, "fewer", "Take another extract.");
    }

    /** A file whose parts stand in another order than the one in which they can be read. */
    static RefusedExtract waysBeforeNodes() {
        return new RefusedExtract(0, "", "ways before nodes", "nodes first, then ways", "Sort the extract by type and id, or take another.");
    }

    /** A file that ends too early. */
    static RefusedExtract cut(String where) {
        return new RefusedExtract(0, "", "the end of the file " + where, "a whole extract", "The file was cut short: fetch it again.");
    }

    /** What stands at a line of a text file. */
    static RefusedExtract at(int line, String field, String found, String expected, String mend) {
        return new RefusedExtract(line, field, found, expected, mend);
    }

    Fault fault(String shown) {
        return Fault.of(shown, line, field, found, expected, mend);
    }
}
