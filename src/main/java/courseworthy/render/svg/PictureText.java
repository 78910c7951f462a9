package courseworthy.render.svg;

import courseworthy.render.Quantity;

/**
 * A line of text in a picture, in metric units and in those customary in the United States, between which the reader of a page may change.
 *
 * @param customary the same as {@code metric} where nothing in it differs
 */
record PictureText(String metric, String customary) {

    static PictureText of(String words) {
        return new PictureText(words, Quantity.customary(words));
    }

    /** A number that stands without its unit, as at the mark of an axis. @param finer how many more decimals it takes in the customary unit, or fewer */
    static PictureText number(double value, int decimals, String unit, int finer) {
        String metric = NumberText.fixed(value, decimals);
        int customary = Math.max(0, decimals + finer);
        return new PictureText(metric, Quantity.customaryUnit(unit).equals(unit) ? metric : NumberText.fixed(Quantity.inCustomaryUnit(value, unit), customary));
    }

    /** A number with its unit, as short as it can be. */
    static PictureText shortest(double value, int decimals, String unit) {
        return new PictureText(NumberText.withUnit(NumberText.shortest(value, decimals), unit),
                NumberText.withUnit(NumberText.shortest(Quantity.inCustomaryUnit(value, unit), decimals), Quantity.customaryUnit(unit)));
    }

    /** A name with the unit of what it heads. */
    static PictureText heading(String before, String unit) {
        return new PictureText(before + unit, before + Quantity.customaryUnit(unit));
    }

    /** This text behind some words. */
    PictureText after(String words) {
        return new PictureText(words + metric, words + customary);
    }

    /** This text behind another. */
    PictureText after(PictureText other) {
        return new PictureText(other.metric + metric, other.customary + customary);
    }

    /** Each of the two cut with an ellipsis where it is wider than some pixels; empty where not even the ellipsis fits. */
    PictureText cut(double width, boolean bold) {
        return new PictureText(TextWidths.cut(metric, width, bold), TextWidths.cut(customary, width, bold));
    }

    boolean isEmpty() {
        return metric.isEmpty() && customary.isEmpty();
    }

    boolean differs() {
        return !metric.equals(customary);
    }

    /** At most as many pixels as it takes in either. */
    double width(boolean bold) {
        double wide = TextWidths.of(metric, bold);
        return differs() ? Math.max(wide, TextWidths.of(customary, bold)) : wide;
    }
}
