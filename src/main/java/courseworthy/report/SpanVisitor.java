package courseworthy.report;

/** One method for each kind of span. */
public interface SpanVisitor {

    void text(Span.Text text);

    void code(Span.Code code);

    void link(Span.Link link);

    void crossReference(Span.CrossReference reference);

    void standing(Span.Standing standing);

    void footnote(Span.Footnote footnote);
}
