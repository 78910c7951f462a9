package courseworthy.fit;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;

/** How two parts or a part and a limit compare, with the words for it. */
final class FitComparison {

    /** Sizes closer than this are the same, m (computing). */
    static final double SAME = 0.0005;
    /** A millimetre, m. */
    static final double MM = 0.001;
    /** An inch, m; exact by definition. */
    static final double INCH = 0.0254;

    private FitComparison() {
    }

    static FitResult label(Part one, Part other, PartDetail detail) {
        return label(one, detail, other, detail);
    }

    /** Labels of one interface that the two parts write under keys of their own. */
    static FitResult label(Part one, PartDetail detail, Part other, PartDetail its) {
        String mine = one.word(detail);
        String theirs = other.word(its);
        if (mine == null || theirs == null) {
            return FitResult.unknown(mine == null ? "find the " + detail.written() + " of " + one : "find the " + its.written() + " of " + other);
        }
        return mine.equals(theirs) ? FitResult.FITS : FitResult.not(detail.written() + ": " + mine + " against " + theirs);
    }

    static FitResult same(Part one, Part other, PartDetail detail) {
        Double mine = one.number(detail);
        Double theirs = other.number(detail);
        if (mine == null || theirs == null) {
            return FitResult.unknown("measure the " + detail.written() + " of " + (mine == null ? one : other));
        }
        double apart = Math.abs(mine - theirs);
        return apart < SAME ? FitResult.FITS : FitResult.not(detail.written() + ": " + mm(mine) + " against " + mm(theirs));
    }

    /** A limit that has to be known beside what is held against it: what is broken already stays broken. */
    static FitResult known(Part part, PartDetail limit, String find) {
        return part.has(limit) ? FitResult.FITS : FitResult.unknown(find);
    }

    static FitResult within(double value, Double least, Double most, String what) {
        if (least != null && value < least - 1e-9) {
            return FitResult.not(mm(least - value) + " under " + what);
        }
        return most != null && value > most + 1e-9 ? FitResult.not(mm(value - most) + " over " + what) : FitResult.FITS;
    }

    static FitResult notLess(Part front, Part rear, PartDetail detail, String what) {
        Double one = front.number(detail);
        Double other = rear.number(detail);
        if (one == null || other == null) {
            return FitResult.unknown("measure " + (one == null ? front : rear));
        }
        return one >= other - SAME ? FitResult.FITS : FitResult.not("the front " + what + " is " + mm(other - one) + " smaller than the rear");
    }

    static String mm(double metres) {
        return oneDecimal(metres / MM) + " mm";
    }

    static String kg(double kilograms) {
        return oneDecimal(kilograms) + " kg";
    }

    static String teeth(int number) {
        return number == 1 ? "1 tooth" : number + " teeth";
    }

    /** Halves up, without a zero behind the point. */
    static String oneDecimal(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths) % 10;
    }
}
