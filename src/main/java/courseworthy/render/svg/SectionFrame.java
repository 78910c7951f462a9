package courseworthy.render.svg;

/**
 * Where a section lies in its picture.
 *
 * @param canvas what it is drawn on
 * @param along  of metres from the start
 * @param left   end of all its bands, pixels
 * @param right  end of all its bands, pixels
 * @param metres its length
 */
record SectionFrame(SvgCanvas canvas, Scale along, double left, double right, double metres) {

    static SectionFrame of(SvgCanvas canvas, double metres, double left, double right) {
        return new SectionFrame(canvas, Scale.linear(0, metres, left, right), left, right, metres);
    }

    double at(double metresFromStart) {
        return along.at(metresFromStart);
    }

    /** Of kilometres from the start. */
    Scale kilometres() {
        return Scale.linear(0, metres / 1000, left, right);
    }

    /** The length that takes some pixels, m. */
    double metresOf(double pixels) {
        return pixels * metres / (right - left);
    }
}
