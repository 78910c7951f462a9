package courseworthy.render;

import courseworthy.problem.TextSanitiser;

/**
 * Makes text harmless in HTML and XML. Characters that markup gives a meaning become references; those that reorder what is shown are dropped;
 * other control characters, and halves of surrogate pairs, become U+FFFD, since neither allows a reference to them (HTML, 13.5; XML 1.0, 2.2).
 */
public final class MarkupEscaper {

    private MarkupEscaper() {
    }

    /** Text between tags. */
    public static String text(String text) {
        return escape(text, false);
    }

    /** The value of an attribute, to be put between double quotes. */
    public static String attribute(String value) {
        return escape(value, true);
    }

    private static String escape(String text, boolean quotes) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                out.append(c).append(text.charAt(++i));
            } else if (c == '&') {
                out.append("&amp;");
            } else if (c == '<') {
                out.append("&lt;");
            } else if (c == '>') {
                out.append("&gt;");
            } else if (quotes && c == '"') {
                out.append("&quot;");
            } else if (quotes && c == '\'') {
                out.append("&#39;");
            } else if (!TextSanitiser.reorders(c)) {
                out.append(isUnfit(c) ? '\ufffd' : c);
            }
        }
        return out.toString();
    }

    private static boolean isUnfit(char c) {
        boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
        return control || Character.isSurrogate(c) || c == '\ufffe' || c == '\uffff' || c >= '\ufdd0' && c <= '\ufdef';
    }
}
