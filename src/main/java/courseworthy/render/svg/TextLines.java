package courseworthy.render.svg;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines of a width. */
final class TextLines {

    /** From one line to the next, pixels. */
    static final double PITCH = 15;

    private TextLines() {
    }

    /** At most some lines, none wider than a width; a word that is too wide is cut, and so is what is left over. Never empty. */
    static List<String> of(String text, double width, boolean bold, int most) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("[ \\t\\n\\r]+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            boolean last = out.size() == most - 1;
            if (line.isEmpty() || last || TextWidths.of(longer, bold) <= width) {
                line = new StringBuilder(longer);
            } else {
                out.add(TextWidths.cut(line.toString(), width, bold));
                line = new StringBuilder(word);
            }
        }
        out.add(TextWidths.cut(line.toString(), width, bold));
        return out;
    }
}
