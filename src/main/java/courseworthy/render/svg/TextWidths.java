package courseworthy.render.svg;

import java.text.Normalizer;

/**
 * An upper bound of how wide text is drawn, so that labels keep apart in whichever face a device has. Advance widths are those of DejaVu Sans and
 * DejaVu Sans Bold 2.37 (the tables cmap and hmtx of the fonts, in thousandths of an em), the widest of the sans-serif faces that systems have
 * as their own, and a little more for the rounding of widths to pixels. Other characters count as the widest of their block in those faces.
 */
public final class TextWidths {

    /** The size of all text in pictures, in pixels. */
    public static final double SIZE = 12;
    /** From the line that letters stand on up to the accents of capitals, and down to the tails: DejaVu Sans has 0.928 and 0.236 em. */
    static final double ASCENT = 11;
    static final double DESCENT = 3;
    /** Rounding of advance widths to whole pixels where a device hints text: common practice, no source. */
    private static final double SLACK = 1.02;

    private static final short[] REGULAR = {318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636,
        636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603,
        787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278,
        974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838};
    private static final short[] BOLD = {348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696, 696, 696, 696,
        696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683, 683, 821, 837, 372, 372, 775, 637, 995, 837, 850, 733, 850,
        770, 720, 682, 812, 774, 1103, 771, 724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716, 712, 343, 343, 665, 343, 1042,
        712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838};
    /** Of a character that is in none of the blocks below: that of the widest letter up to U+0250, in bold. */
    private static final int WIDEST = 1556;

    private TextWidths() {
    }

    /** At most as many pixels as a text takes in a picture. */
    public static double of(String text, boolean bold) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD);
        double sum = 0;
        for (int i = 0; i < apart.length(); ) {
            int c = apart.codePointAt(i);
            sum += thousandths(c, bold);
            i += Character.charCount(c);
        }
        return sum / 1000 * SIZE * SLACK;
    }

    /** A text, cut with an ellipsis where it is wider than some pixels; empty where not even the ellipsis fits. */
    static String cut(String text, double width, boolean bold) {
        if (of(text, bold) <= width) {
            return text;
        }
        double room = width - of("\u2026", bold);
        double used = 0;
        int end = 0;
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            used += of(text.substring(end, next), bold);
            if (used > room) {
                break;
            }
            end = next;
        }
        return room < 0 ? "" : text.substring(0, end).stripTrailing() + "\u2026";
    }

    private static int thousandths(int c, boolean bold) {
        if (c >= ' ' && c <= '~') {
            return (bold ? BOLD : REGULAR)[c - ' '];
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        return switch (c) {
            case '\u2009', '\u202f' -> 250;
            case '\u00b7' -> bold ? 380 : 318;
            case '\u00b0', '\u2013' -> 500;
            case '\u00d7', '\u2212', '\u2190', '\u2192', '\u2264', '\u2265' -> 838;
            case '\u2026', '\u2014' -> 1000;
            default -> ofBlock(c);
        };
    }

    /** Greek, and Cyrillic without its rare letters, as wide as their widest letter in bold. */
    private static int ofBlock(int c) {
        if (c >= 0x370 && c < 0x400) {
            return 1093;
        }
        return c >= 0x400 && c < 0x460 ? 1326 : WIDEST;
    }
}
