package courseworthy.render.svg;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines of a width. */
final class LabelLines {

    /** From one line to the next, pixels. */
    static final double PITCH = 15;

    private LabelLines() {
    }

    /**
     * At most some lines, none wider than a width in either system of units; a word that is too wide is cut, and so is what is left over. Never
     * empty. A text whose two versions have as many words breaks at the same words in both.
     */
    static List<PictureText> of(String text, double width, boolean bold, int most) {
        PictureText whole = PictureText.of(text.strip());
        List<String> metric = words(whole.metric());
        List<String> customary = words(whole.customary());
        if (metric.size() == customary.size()) {
            return broken(metric, customary, width, bold, most);
        }
        List<PictureText> first = broken(metric, metric, width, bold, most);
        List<PictureText> second = broken(customary, customary, width, bold, most);
        List<PictureText> out = new ArrayList<>();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            out.add(new PictureText(i < first.size() ? first.get(i).metric() : "", i < second.size() ? second.get(i).customary() : ""));
        }
        return out;
    }

    private static List<String> words(String text) {
        return List.of(text.split("[ \\t\\n\\r]+"));
    }

    private static List<PictureText> broken(List<String> metric, List<String> customary, double width, boolean bold, int most) {
        List<PictureText> out = new ArrayList<>();
        PictureText line = new PictureText(metric.get(0), customary.get(0));
        for (int i = 1; i < metric.size(); i++) {
            PictureText word = new PictureText(metric.get(i), customary.get(i));
            PictureText longer = new PictureText(line.metric() + " " + word.metric(), line.customary() + " " + word.customary());
            boolean last = out.size() == most - 1;
            if (last || longer.width(bold) <= width) {
                line = longer;
            } else {
                out.add(line.cut(width, bold));
                line = word;
            }
        }
        out.add(line.cut(width, bold));
        return out;
    }
}
