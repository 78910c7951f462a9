package courseworthy.render.html;

import courseworthy.render.Quantity;
import courseworthy.render.svg.TextWidths;
import courseworthy.report.RichText;
import courseworthy.report.Span;
import courseworthy.report.Style;
import courseworthy.report.Table;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the columns of a table stand side by side and can still be read: no word is cut off, and no cell is a tower of short
 * lines. Widths are shared out as browsers do it (CSS 2.1, 17.5.2.2): each column its longest word, and of what is left by how much it lacks.
 */
enum ColumnFit {

    /** What a phone of 360 px leaves between the margins of the page and of what is opened, in the type of the page (16 px, 12 px between columns). */
    PHONE(312, 16, 12, 4),
    /** What A4 leaves between margins of 14 mm, in 8 pt with 5 pt between columns: as the style sheet has it, at 96 px an inch (CSS Values 3, 5.2). */
    PAPER(688, 10.67, 6.67, 12);

    /** Lines break before they are full: so much wider are a column's words than their letters (judgement, no source). */
    private static final double RAGGED = 1.15;
    /** A character of what is to be typed, em: 0.602 in DejaVu Sans Mono 2.37 (its table hmtx), at 0.95 of the size. */
    private static final double MONOSPACE = 0.572;

    private final double room;
    private final double scale;
    private final double gap;
    private final int mostLines;

    /**
     * @param room      width, px
     * @param type      size of type, px
     * @param gap       between two columns, px
     * @param mostLines of a cell that a reader still takes for one (judgement)
     */
    ColumnFit(double room, double type, double gap, int mostLines) {
        this.room = room;
        this.scale = type / TextWidths.SIZE;
        this.gap = gap;
        this.mostLines = mostLines;
    }

    boolean fits(Table table) {
        List<ColumnWidths> columns = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            columns.add(column(table, i));
        }
        double least = columns.stream().mapToDouble(ColumnWidths::word).sum();
        double lacking = columns.stream().mapToDouble(ColumnWidths::lacks).sum();
        double left = room - gap * columns.size() - least;
        double share = lacking <= left ? 1 : left / lacking;
        return left >= 0 && columns.stream().allMatch(each -> each.lines(share) <= mostLines);
    }

    private ColumnWidths column(Table table, int index) {
        RichText heading = table.columns().get(index).heading();
        double word = word(heading, true);
        double line = TextWidths.of(heading.plain(), true) * scale;
        for (List<RichText> row : table.rows()) {
            word = Math.max(word, word(row.get(index), false));
            line = Math.max(line, width(row.get(index), row.get(index).plain()));
        }
        return new ColumnWidths(word, line);
    }

    /** The widest piece of a text that no line break may part, px. */
    private double word(RichText text, boolean heading) {
        double widest = 0;
        for (String each : Quantity.unbroken(text.plain()).split("[ \n]|(?<=\\p{L}-)")) {
            widest = Math.max(widest, heading ? TextWidths.of(each, true) * scale : width(text, each));
        }
        return widest;
    }

    /** Of a piece of a text, px: as wide as the widest style of it would have it. */
    private double width(RichText text, String piece) {
        double words = TextWidths.of(piece, isBold(text)) * scale;
        boolean code = text.spans().stream().anyMatch(each -> each instanceof Span.Code);
        return code ? Math.max(words, piece.length() * MONOSPACE * TextWidths.SIZE * scale) : words;
    }

    private static boolean isBold(RichText text) {
        return !text.in(Style.PLAIN).equals(text);
    }

    /**
     * How wide a column is.
     *
     * @param word its longest word, px
     * @param line its longest cell on one line, px
     */
    private record ColumnWidths(double word, double line) {
        double lacks() {
            return Math.max(0, line - word);
        }

        double lines(double share) {
            double width = word + share * lacks();
            return line <= width ? 1 : Math.ceil(RAGGED * line / width);
        }
    }
}
