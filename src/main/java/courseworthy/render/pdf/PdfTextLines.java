package courseworthy.render.pdf;

import courseworthy.render.pdf.PdfRow.GlyphRun;
import courseworthy.report.RichText;
import courseworthy.report.Span;
import courseworthy.report.SpanVisitor;
import courseworthy.report.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks rich text into lines that fit a width: between words, within a word only where it is wider than a line. */
final class PdfTextLines implements SpanVisitor {

    /** Stands for a space at which no line is broken, while lines are broken. */
    private static final String GLUE = "\u0001";
    /** A number and its unit, and the end of the bike that it is of, stay together. */
    private static final Pattern UNBROKEN = Pattern.compile("(?<=\\d) (?=(?:bar|psi|mm|cm|km|m|L|g|kg|W|kJ|kcal|h|min|%|C|rpm|days?)\\b|%)|(?<=bar) (?=\\(\\d)"
            + "|(?<=\\b(?:front|rear|up to|about)) (?=\\d)");

    private final Faces faces;
    private final double size;
    private final double width;
    private final boolean bold;
    private final List<List<GlyphRun>> lines = new ArrayList<>();
    private List<GlyphRun> line = new ArrayList<>();
    private double used;
    /** What stands together since the last space, and so is not broken apart. */
    private final List<GlyphRun> word = new ArrayList<>();
    private double wordWidth;
    private boolean spaced;

    private PdfTextLines(Faces faces, double size, double width, boolean bold) {
        this.faces = faces;
        this.size = size;
        this.width = width;
        this.bold = bold;
    }

    /** @param bold whether all of it is bold; else what is strong is */
    static List<List<GlyphRun>> of(RichText text, Faces faces, double size, double width, boolean bold) {
        PdfTextLines out = new PdfTextLines(faces, size, width, bold);
        text.spans().forEach(span -> span.accept(out));
        out.endWord();
        if (!out.line.isEmpty()) {
            out.lines.add(out.line);
        }
        return out.lines;
    }

    /** Points that the text takes on one line. */
    static double natural(RichText text, Faces faces, double size, boolean bold) {
        double out = 0;
        for (GlyphRun run : of(text, faces, size, Double.MAX_VALUE, bold).stream().flatMap(List::stream).toList()) {
            out = run.x() + faces.width(run.text(), run.face(), size);
        }
        return out;
    }

    @Override
    public void text(Span.Text text) {
        words(text.text(), text.style() == Style.STRONG || text.style() == Style.ATTENTION);
    }

    @Override
    public void code(Span.Code code) {
        words(code.text(), false);
    }

    @Override
    public void link(Span.Link link) {
        words(link.label(), false);
    }

    @Override
    public void crossReference(Span.CrossReference reference) {
        words(reference.label(), false);
    }

    @Override
    public void standing(Span.Standing standing) {
        words(standing.word(), false);
    }

    /** Sources are not printed: the page has them. */
    @Override
    public void footnote(Span.Footnote footnote) {
        // nothing to show
    }

    private void words(String text, boolean strong) {
        Face face = bold || strong ? Face.BOLD : Face.REGULAR;
        String shown = UNBROKEN.matcher(faces.shown(text, face)).replaceAll(GLUE);
        int from = 0;
        while (from < shown.length()) {
            int space = shown.indexOf(' ', from);
            int to = space < 0 ? shown.length() : space;
            if (to > from) {
                append(shown.substring(from, to).replace(GLUE, " "), face);
            }
            if (space >= 0) {
                endWord();
                spaced = true;
            }
            from = to + 1;
        }
    }

    private void append(String part, Face face) {
        word.add(new GlyphRun(face, size, wordWidth, part));
        wordWidth += faces.width(part, face, size);
    }

    private void endWord() {
        if (word.isEmpty()) {
            return;
        }
        double space = spaced && !line.isEmpty() ? faces.width(" ", Face.REGULAR, size) : 0;
        if (used + space + wordWidth > width && !line.isEmpty()) {
            endLine();
            space = 0;
        }
        if (wordWidth > width) {
            brokenWord();
        } else {
            if (space > 0) {
                put(Face.REGULAR, " ", used);
            }
            double start = used + space;
            word.forEach(run -> put(run.face(), run.text(), start + run.x()));
            used = start + wordWidth;
        }
        word.clear();
        wordWidth = 0;
        spaced = false;
    }

    private void brokenWord() {
        for (GlyphRun run : word) {
            for (int i = 0; i < run.text().length(); ) {
                String c = Character.toString(run.text().codePointAt(i));
                double wide = faces.width(c, run.face(), size);
                if (used + wide > width && !line.isEmpty()) {
                    endLine();
                }
                put(run.face(), c, used);
                used += wide;
                i += c.length();
            }
        }
    }

    /** Adds to the last run where it has the same face. */
    private void put(Face face, String text, double x) {
        GlyphRun last = line.isEmpty() ? null : line.get(line.size() - 1);
        if (last != null && last.face() == face) {
            line.set(line.size() - 1, new GlyphRun(face, size, last.x(), last.text() + text));
        } else {
            line.add(new GlyphRun(face, size, x, text));
        }
    }

    /** The space at the end is not seen, but keeps the words apart for a reader aloud. */
    private void endLine() {
        GlyphRun last = line.get(line.size() - 1);
        line.set(line.size() - 1, new GlyphRun(last.face(), size, last.x(), last.text() + " "));
        lines.add(line);
        line = new ArrayList<>();
        used = 0;
    }
}
