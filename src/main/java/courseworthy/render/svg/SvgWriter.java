package courseworthy.render.svg;

import courseworthy.render.MarkupEscaper;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes well-formed SVG: every element that is opened is closed in order, and values pass through {@link #attribute} and {@link #text}
 * alone, which escape them. Names of elements and attributes are constants of the code and are checked for their letters.
 */
final class SvgWriter {


    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    /** True while the start tag of the innermost element can still take attributes. */
    private boolean inTag;

    SvgWriter open(String element) {
        checkName(element);
        endTag();
        out.append('<').append(element);
        open.push(element);
        inTag = true;
        return this;
    }

    SvgWriter attribute(String name, String value) {
        checkName(name);
        if (!inTag) {
            throw new IllegalStateException("attribute " + name + " outside of a start tag");
        }
        out.append(' ').append(name).append("=\"");
        out.append(MarkupEscaper.attribute(value));
        out.append('"');
        return this;
    }

    /** A length or place in pixels, to a tenth. */
    SvgWriter attribute(String name, double pixels) {
        return attribute(name, number(pixels));
    }

    SvgWriter text(String words) {
        endTag();
        out.append(MarkupEscaper.text(words));
        return this;
    }

    /** @throws IllegalStateException where it is not the innermost element that is open */
    SvgWriter close(String element) {
        if (!element.equals(open.peek())) {
            throw new IllegalStateException("cannot close " + element + " inside " + open.peek());
        }
        open.pop();
        if (inTag) {
            out.append("/>");
            inTag = false;
        } else {
            out.append("</").append(element).append('>');
        }
        return this;
    }

    /** What another writer has written, which is well-formed because that writer checks it too. */
    SvgWriter append(SvgWriter written) {
        endTag();
        out.append(written.markup());
        return this;
    }

    /** @throws IllegalStateException where an element is still open */
    String markup() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return out.toString();
    }

    /** A number of pixels to a tenth, in as few characters as possible. */
    static String number(double pixels) {
        return fixed(pixels, 1);
    }

    /** A number with at most some decimals, without zeros at its end and without an exponent; the same in every locale. */
    static String fixed(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("no number to draw: " + value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private void endTag() {
        if (inTag) {
            out.append('>');
            inTag = false;
        }
    }

    private static void checkName(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || i > 0 && (c == '-' || c >= '0' && c <= '9'))) {
                throw new IllegalArgumentException("not a name: " + name);
            }
        }
        if (name.isEmpty()) {
            throw new IllegalArgumentException("an empty name");
        }
    }
}
