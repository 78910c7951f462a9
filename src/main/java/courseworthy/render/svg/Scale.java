package courseworthy.render.svg;

/** Where the values of an axis lie in a picture, in pixels. Values outside of the axis are drawn at its end. */
final class Scale {

    private final double low;
    private final double high;
    private final double atLow;
    private final double atHigh;
    private final boolean logarithmic;

    private Scale(double low, double high, double atLow, double atHigh, boolean logarithmic) {
        if (!(low < high)) {
            throw new IllegalArgumentException("a scale from " + low + " to " + high);
        }
        this.low = logarithmic ? Math.log(low) : low;
        this.high = logarithmic ? Math.log(high) : high;
        this.atLow = atLow;
        this.atHigh = atHigh;
        this.logarithmic = logarithmic;
    }

    static Scale linear(double low, double high, double atLow, double atHigh) {
        return new Scale(low, high, atLow, atHigh, false);
    }

    /** @param low above zero */
    static Scale logarithmic(double low, double high, double atLow, double atHigh) {
        return new Scale(low, high, atLow, atHigh, true);
    }

    double at(double value) {
        double place = logarithmic ? value > 0 ? Math.log(value) : low : value;
        double share = (place - low) / (high - low);
        return atLow + (atHigh - atLow) * Math.max(0, Math.min(1, share));
    }
}
