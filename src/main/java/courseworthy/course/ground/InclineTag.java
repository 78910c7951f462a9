package courseworthy.course.ground;

/** The gradient of an incline tag. */
final class InclineTag {

    /** Steeper is taken for a slip of the pen. */
    private static final double STEEPEST = 0.6;

    private InclineTag() {
    }

    /** How steep, as a fraction whichever way it goes; null where the tag gives no gradient in per cent or degrees. */
    static Double steepest(String tag) {
        if (tag == null) {
            return null;
        }
        String text = tag.strip().replace(" ", "");
        boolean degrees = text.endsWith("°");
        if (!degrees && !text.endsWith("%")) {
            return null;
        }
        String number = text.substring(0, text.length() - 1);
        if (!number.matches("[+-]?[0-9]{1,3}([.][0-9]{1,3})?")) {
            return null;
        }
        double value = Math.abs(Double.parseDouble(number));
        double gradient = degrees ? Math.tan(Math.toRadians(Math.min(value, 89))) : value / 100;
        return gradient > 0 && gradient <= STEEPEST ? Double.valueOf(gradient) : null;
    }
}
