package courseworthy.course.terrain;

/** An elevation file that does not hold what it should; the message says what was found. */
final class DamagedTileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String expected;
    private final String remedy;

    DamagedTileException(String found, String expected, String remedy) {
        super(found, null, false, false);
        this.expected = expected;
        this.remedy = remedy;
    }

    String expected() {
        return expected;
    }

    String remedy() {
        return remedy;
    }
}
