package courseworthy.render.html;

import courseworthy.render.MarkupEscaper;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;

/**
 * Writes HTML, element by element. Names of elements and attributes are the caller's own words; whatever else is written is escaped, so that it
 * can be read and is never obeyed. What is left open, or closed in another order than it was opened, fails at once.
 */
final class HtmlWriter {

    /** Elements without content (HTML, 13.1.2). */
    private static final Set<String> VOID = Set.of("br", "hr", "input", "link", "meta", "wbr");

    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inStartTag;

    /** Opens an element; its attributes come next. */
    HtmlWriter open(String element) {
        endStartTag();
        out.append('<').append(element);
        inStartTag = true;
        if (!VOID.contains(element)) {
            open.push(element);
        }
        return this;
    }

    /** Opens an element of a class. */
    HtmlWriter open(String element, String cssClass) {
        return open(element).attribute("class", cssClass);
    }

    /** @throws IllegalStateException where no start tag is open */
    HtmlWriter attribute(String name, String value) {
        requireStartTag(name);
        out.append(' ').append(name).append("=\"").append(MarkupEscaper.attribute(value)).append('"');
        return this;
    }

    /** An attribute that is true by being there. */
    HtmlWriter attribute(String name) {
        requireStartTag(name);
        out.append(' ').append(name);
        return this;
    }

    private void requireStartTag(String name) {
        if (!inStartTag) {
            throw new IllegalStateException("no start tag for the attribute " + name);
        }
    }

    HtmlWriter text(String text) {
        endStartTag();
        out.append(MarkupEscaper.text(text));
        return this;
    }

    /** Markup that this package or that of the pictures made. */
    HtmlWriter markup(String trusted) {
        endStartTag();
        out.append(trusted);
        return this;
    }

    /** @throws IllegalStateException where another element is the one to be closed */
    HtmlWriter close(String element) {
        endStartTag();
        if (!element.equals(open.peek())) {
            throw new IllegalStateException(element + " is closed where " + open.peek() + " is open");
        }
        open.pop();
        out.append("</").append(element).append('>');
        return this;
    }

    /** An element with text alone. */
    HtmlWriter element(String element, String text) {
        return open(element).text(text).close(element);
    }

    /** Ends the line, for those who read the source. Not within text, where it would be a space. */
    HtmlWriter line() {
        endStartTag();
        out.append('\n');
        return this;
    }

    private void endStartTag() {
        if (inStartTag) {
            out.append('>');
            inStartTag = false;
        }
    }

    /** @throws IllegalStateException where an element is left open */
    String finish() {
        endStartTag();
        if (!open.isEmpty()) {
            throw new IllegalStateException(open.peek() + " is left open");
        }
        return out.toString();
    }
}
