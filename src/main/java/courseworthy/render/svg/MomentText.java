package courseworthy.render.svg;

/** Moments of a ride as time of day, or from its start where the start is not known. */
final class MomentText {

    private static final double MINUTE = 60;

    private MomentText() {
    }

    /**
     * @param startOfDay the start, seconds after midnight; null where it is not known
     * @param seconds    from the start; below 0 before it
     * @return {@code 09:07}, else {@code +1:07}
     */
    static String of(Integer startOfDay, double seconds) {
        if (startOfDay != null) {
            return NumberText.clock((startOfDay + seconds) / MINUTE);
        }
        long minutes = Math.round(Math.abs(seconds) / MINUTE);
        return (seconds < 0 ? "\u2212" : "+") + minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
    }
}
