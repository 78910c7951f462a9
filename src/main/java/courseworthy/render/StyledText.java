package courseworthy.render;

import courseworthy.report.Style;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A line of harmless text for the terminal with a style for each character. */
final class StyledText {

    static final StyledText EMPTY = new StyledText("", List.of());

    private final String text;
    private final List<Style> styles;

    private StyledText(String text, List<Style> styles) {
        this.text = text;
        this.styles = styles;
    }

    /** Characters drawn by a renderer, spaces included. */
    static StyledText drawn(String characters, Style style) {
        return new StyledText(characters, Collections.nCopies(characters.length(), style));
    }

    boolean isEmpty() {
        return text.isEmpty();
    }

    int width() {
        return TextWidth.of(text);
    }

    int widestWord() {
        return LineBreaker.widestWord(text);
    }

    /** The text broken into lines of at most some columns. */
    List<StyledText> lines(int columns) {
        List<StyledText> out = new ArrayList<>();
        for (LineBreaker.CharacterRange line : LineBreaker.lines(text, columns)) {
            out.add(new StyledText(text.substring(line.from(), line.to()), styles.subList(line.from(), line.to())));
        }
        return out;
    }

    /** The same with another style wherever it is plain. */
    StyledText in(Style style) {
        List<Style> out = new ArrayList<>(styles);
        out.replaceAll(each -> each == Style.PLAIN ? style : each);
        return new StyledText(text, out);
    }

    /** {@code label: value}; the value alone where this is empty. */
    StyledText labelling(StyledText value) {
        Builder out = new Builder().append(this);
        return (isEmpty() ? out : out.append(": ", Style.SECONDARY)).append(value).build();
    }

    /** The text as it is sent to the terminal. */
    void write(StringBuilder out, boolean colour) {
        int from = 0;
        while (from < text.length()) {
            Style style = styles.get(from);
            int to = from + 1;
            while (to < text.length() && styles.get(to) == style) {
                to++;
            }
            String code = colour ? code(style) : "";
            if (code.isEmpty()) {
                out.append(text, from, to);
            } else {
                out.append("\u001b[").append(code).append('m').append(text, from, to).append("\u001b[0m");
            }
            from = to;
        }
    }

    /** The parameter of the sequence "select graphic rendition" (ECMA-48, section 8.3.117): bold, italic, faint, yellow. */
    private static String code(Style style) {
        return switch (style) {
            case PLAIN, ASSUMED -> "";
            case EMPHASIS -> "3";
            case STRONG -> "1";
            case ATTENTION -> "1;33";
            case SECONDARY -> "2";
        };
    }

    /** Puts pieces together; no two spaces meet, and none stands at either end. */
    static final class Builder {
        private final StringBuilder text = new StringBuilder();
        private final List<Style> styles = new ArrayList<>();

        Builder append(String harmless, Style style) {
            for (int i = 0; i < harmless.length(); i++) {
                char c = harmless.charAt(i);
                boolean afterSpace = text.length() == 0 || text.charAt(text.length() - 1) == ' ';
                if (c != ' ' || !afterSpace) {
                    text.append(c);
                    styles.add(style);
                }
            }
            return this;
        }

        Builder append(StyledText more) {
            for (int i = 0; i < more.text.length(); i++) {
                append(more.text.substring(i, i + 1), more.styles.get(i));
            }
            return this;
        }

        StyledText build() {
            int end = text.length();
            while (end > 0 && text.charAt(end - 1) == ' ') {
                end--;
            }
            return new StyledText(text.substring(0, end), new ArrayList<>(styles.subList(0, end)));
        }
    }
}
