package courseworthy.render;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.RichText;
import courseworthy.report.Span;
import courseworthy.report.SpanVisitor;
import courseworthy.report.Style;

/** Rich text as a line of Markdown. */
final class MarkdownText implements SpanVisitor {

    private final StringBuilder out = new StringBuilder();
    private final FootnoteIndex footnotes;
    private final MarkdownAnchors anchors;
    private final boolean inTable;
    /** Words in one style that are not yet written, since more of the same style may follow. */
    private final StringBuilder pending = new StringBuilder();
    private String pendingMark = "";

    private MarkdownText(FootnoteIndex footnotes, MarkdownAnchors anchors, boolean inTable) {
        this.footnotes = footnotes;
        this.anchors = anchors;
        this.inTable = inTable;
    }

    /** @param inTable whether it stands in a cell of a table */
    static String of(RichText text, FootnoteIndex footnotes, MarkdownAnchors anchors, boolean inTable) {
        MarkdownText writer = new MarkdownText(footnotes, anchors, inTable);
        text.spans().forEach(span -> span.accept(writer));
        writer.flush("");
        return writer.out.toString().strip();
    }

    @Override
    public void text(Span.Text text) {
        String mark = switch (text.style()) {
            case PLAIN, SECONDARY, ASSUMED -> "";
            case EMPHASIS -> "*";
            case STRONG, ATTENTION -> "**";
        };
        String words = TextSanitiser.span(text.text());
        if (!mark.equals(pendingMark)) {
            flush(words);
            pendingMark = mark;
        }
        boolean twoSpaces = words.startsWith(" ") && (pending.length() > 0 ? endsInSpace(pending) : endsInSpace(out));
        pending.append(twoSpaces ? words.substring(1) : words);
    }

    private static boolean endsInSpace(StringBuilder text) {
        return text.length() == 0 || text.charAt(text.length() - 1) == ' ';
    }

    /**
     * Writes what is pending. Spaces are put outside its marks. The marks are left out where CommonMark would not take them for such:
     * they are written between spaces, punctuation and the ends of the line alone.
     *
     * @param next what follows
     */
    private void flush(String next) {
        String words = pending.toString();
        pending.setLength(0);
        int from = 0;
        int to = words.length();
        while (from < to && isSpace(words.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(words.charAt(to - 1))) {
            to--;
        }
        String after = words.substring(to) + next;
        boolean marked = !pendingMark.isEmpty() && from < to && opens(words.substring(0, from)) && (after.isEmpty() || isBreak(after.charAt(0)));
        String mark = marked ? pendingMark : "";
        out.append(MarkdownEscaper.text(words.substring(0, from))).append(mark)
                .append(MarkdownEscaper.text(words.substring(from, to))).append(mark).append(MarkdownEscaper.text(words.substring(to)));
        pendingMark = "";
    }

    private boolean opens(String spaceBefore) {
        if (!spaceBefore.isEmpty() || out.length() == 0) {
            return true;
        }
        char last = out.charAt(out.length() - 1);
        return last != '*' && isBreak(last);
    }

    private static boolean isSpace(char c) {
        return Character.isSpaceChar(c);
    }

    private static boolean isBreak(char c) {
        return isSpace(c) || "()[]{},.;:!?'\"/-".indexOf(c) >= 0;
    }

    @Override
    public void code(Span.Code code) {
        flush(" ");
        String typed = TextSanitiser.line(code.text());
        if (typed.isEmpty()) {
            return;
        }
        String fence = MarkdownEscaper.fence(typed, 1);
        String pad = typed.startsWith("`") || typed.endsWith("`") ? " " : "";
        out.append(fence).append(pad).append(inTable ? typed.replace("|", "\\|") : typed).append(pad).append(fence);
    }

    @Override
    public void link(Span.Link link) {
        linked(link.label(), MarkdownEscaper.target(link.target()));
    }

    @Override
    public void crossReference(Span.CrossReference reference) {
        String anchor = anchors.of(reference.sectionId());
        if (anchor == null) {
            text(new Span.Text(reference.label(), Style.PLAIN, false));
        } else {
            linked(reference.label(), "#" + MarkdownEscaper.target(anchor));
        }
    }

    private void linked(String label, String target) {
        flush("[");
        int last = out.length() - 1;
        if (last >= 0 && out.charAt(last) == '!') {
            out.insert(last, '\\');
        }
        out.append('[').append(MarkdownEscaper.text(TextSanitiser.line(label))).append("](").append(target).append(')');
    }

    @Override
    public void standing(Span.Standing standing) {
        text(new Span.Text(standing.word(), Style.PLAIN, false));
    }

    @Override
    public void footnote(Span.Footnote footnote) {
        flush(" ");
        out.append(" \\[").append(footnotes.number(footnote)).append("\\]");
    }
}
