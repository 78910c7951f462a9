package courseworthy.render;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.RichText;
import courseworthy.report.Span;
import courseworthy.report.SpanVisitor;
import courseworthy.report.Style;
import java.util.Locale;

/** Rich text as a line for the terminal: control characters shown, code in quotes, footnotes as numbers in brackets. */
final class TerminalText implements SpanVisitor {

    private final StyledText.Builder out = new StyledText.Builder();
    private final FootnoteIndex footnotes;
    private final boolean capitals;
    private final boolean codeAlone;

    private TerminalText(FootnoteIndex footnotes, boolean capitals, boolean codeAlone) {
        this.footnotes = footnotes;
        this.capitals = capitals;
        this.codeAlone = codeAlone;
    }

    static StyledText of(RichText text, FootnoteIndex footnotes) {
        return of(text, footnotes, false);
    }

    /** The words of the tool in capitals; what is quoted or typed stays as it is. */
    static StyledText inCapitals(RichText text, FootnoteIndex footnotes) {
        return of(text, footnotes, true);
    }

    private static StyledText of(RichText text, FootnoteIndex footnotes, boolean capitals) {
        TerminalText writer = new TerminalText(footnotes, capitals, text.spans().size() == 1);
        text.spans().forEach(span -> span.accept(writer));
        return writer.out.build();
    }

    @Override
    public void text(Span.Text text) {
        String words = TextSanitiser.span(text.text());
        out.append(capitals && !text.quoted() ? words.toUpperCase(Locale.ROOT) : words, text.style());
    }

    @Override
    public void code(Span.Code code) {
        String typed = TextSanitiser.line(code.text());
        out.append(codeAlone ? typed : "'" + typed + "'", Style.PLAIN);
    }

    @Override
    public void link(Span.Link link) {
        out.append(TextSanitiser.span(link.label()), Style.PLAIN);
        if (link.external()) {
            out.append(" (" + TextSanitiser.line(link.target()) + ")", Style.SECONDARY);
        }
    }

    @Override
    public void crossReference(Span.CrossReference reference) {
        out.append(TextSanitiser.span(reference.label()), Style.PLAIN);
    }

    @Override
    public void standing(Span.Standing standing) {
        out.append(TextSanitiser.span(standing.word()), Style.PLAIN);
    }

    @Override
    public void footnote(Span.Footnote footnote) {
        out.append(" [" + footnotes.number(footnote) + "]", Style.SECONDARY);
    }
}
