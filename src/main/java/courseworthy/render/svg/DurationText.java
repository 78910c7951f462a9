package courseworthy.render.svg;

/** How long something takes: {@code 45 min}, {@code 1:20 h}. */
final class DurationText {

    private static final int MINUTES_OF_AN_HOUR = 60;

    private DurationText() {
    }

    static String of(double seconds) {
        long minutes = Math.round(seconds / 60);
        if (minutes < MINUTES_OF_AN_HOUR) {
            return NumberText.withUnit(Long.toString(minutes), "min");
        }
        long rest = minutes % MINUTES_OF_AN_HOUR;
        return NumberText.withUnit(minutes / MINUTES_OF_AN_HOUR + (rest < 10 ? ":0" : ":") + rest, "h");
    }
}
