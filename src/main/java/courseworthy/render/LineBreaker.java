package courseworthy.render;

import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Breaks a text at spaces into lines. A number keeps its unit; a word that is wider than a line is cut. */
final class LineBreaker {

    /** A part of a text, from the first character to the one after the last. */
    record CharacterRange(int from, int to) {
    }

    private LineBreaker() {
    }

    /** The lines of a text that has no line feeds and no runs of spaces; one empty line where it is empty. */
    static List<CharacterRange> lines(String text, int columns) {
        List<CharacterRange> out = new ArrayList<>();
        int from = -1;
        int to = 0;
        for (CharacterRange word : words(text)) {
            if (from >= 0 && width(text, from, word.to()) > columns) {
                out.add(new CharacterRange(from, to));
                from = -1;
            }
            from = from < 0 ? word.from() : from;
            to = word.to();
            for (int cut = TextWidth.fitting(text, from, columns); cut < to; cut = TextWidth.fitting(text, from, columns)) {
                out.add(new CharacterRange(from, cut));
                from = cut;
            }
        }
        if (from >= 0 || out.isEmpty()) {
            out.add(new CharacterRange(Math.max(from, 0), to));
        }
        return out;
    }

    /** The width of the widest piece that is not broken. */
    static int widestWord(String text) {
        int widest = 0;
        for (CharacterRange word : words(text)) {
            widest = Math.max(widest, width(text, word.from(), word.to()));
        }
        return widest;
    }

    private static int width(String text, int from, int to) {
        return TextWidth.of(text.substring(from, to));
    }

    private static List<CharacterRange> words(String text) {
        List<CharacterRange> out = new ArrayList<>();
        int from = 0;
        while (from < text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            int last = out.size() - 1;
            if (last >= 0 && isUnit(text.substring(from, to)) && Character.isDigit(text.charAt(out.get(last).to() - 1))) {
                out.set(last, new CharacterRange(out.get(last).from(), to));
            } else if (to > from) {
                out.add(new CharacterRange(from, to));
            }
            from = to + 1;
        }
        return out;
    }

    private static boolean isUnit(String word) {
        int end = word.length();
        while (end > 0 && ".,;:)".indexOf(word.charAt(end - 1)) >= 0) {
            end--;
        }
        return Unit.ofSymbol(word.substring(0, end)) != null;
    }
}
