package courseworthy.render.html;

import courseworthy.render.Quantity;
import courseworthy.render.FootnoteIndex;
import courseworthy.report.RichText;
import courseworthy.report.Span;
import courseworthy.report.SpanVisitor;
import courseworthy.report.Style;
import java.util.Set;

/** Rich text as HTML within a line. */
final class HtmlText implements SpanVisitor {

    private final HtmlWriter out;
    private final FootnoteIndex footnotes;
    private final Set<String> sections;
    private final boolean heading;

    private HtmlText(HtmlWriter out, FootnoteIndex footnotes, Set<String> sections, boolean heading) {
        this.out = out;
        this.footnotes = footnotes;
        this.sections = sections;
        this.heading = heading;
    }

    /** @param sections the ids that may be referred to */
    static void write(RichText text, HtmlWriter out, FootnoteIndex footnotes, Set<String> sections) {
        text.spans().forEach(span -> span.accept(new HtmlText(out, footnotes, sections, false)));
    }

    /** A heading is one weight throughout, and a name in it is shown as it was given. */
    static void writeHeading(RichText text, HtmlWriter out, FootnoteIndex footnotes, Set<String> sections) {
        text.in(Style.PLAIN).spans().forEach(span -> span.accept(new HtmlText(out, footnotes, sections, true)));
    }

    @Override
    public void text(Span.Text text) {
        String element = switch (text.style()) {
            case PLAIN -> "";
            case EMPHASIS -> "em";
            case STRONG -> "b";
            case ATTENTION -> "strong";
            case SECONDARY -> "small";
            case ASSUMED -> "u";
        };
        open(element);
        open(text.quoted() ? "bdi" : "");
        words(text.text());
        close(text.quoted() ? "bdi" : "");
        close(element);
    }

    private void open(String element) {
        if (!element.isEmpty()) {
            out.open(element);
        }
    }

    private void close(String element) {
        if (!element.isEmpty()) {
            out.close(element);
        }
    }

    private void words(String words) {
        int at = 0;
        Quantity found = heading ? null : Quantity.next(words, 0);
        while (found != null) {
            breakable(words.substring(at, found.start()));
            quantity(found);
            at = found.end();
            found = Quantity.next(words, at);
        }
        breakable(words.substring(at));
    }

    /** A long name of several is broken behind a slash rather than within a word: {@code shipped/long-gloves-in-the-cool}. */
    private void breakable(String words) {
        int at = 0;
        for (int slash = words.indexOf('/'); slash >= 0; slash = words.indexOf('/', slash + 1)) {
            if (slash > 0 && slash + 1 < words.length() && Character.isLetter(words.charAt(slash - 1)) && Character.isLetter(words.charAt(slash + 1))) {
                out.text(words.substring(at, slash + 1)).open("wbr");
                at = slash + 1;
            }
        }
        out.text(words.substring(at));
    }

    private void quantity(Quantity quantity) {
        value(quantity.metric(), quantity.customary(), "");
        if (!quantity.spread().isEmpty()) {
            out.text(" ");
            value("(" + quantity.spread() + ")", quantity.customarySpread().isEmpty() ? "" : "(" + quantity.customarySpread() + ")", " range");
        }
    }

    private void value(String metric, String customary, String cssClass) {
        out.open("span", "quantity" + cssClass);
        if (!customary.isEmpty()) {
            out.attribute("data-us", customary);
        }
        out.text(metric).close("span");
    }

    @Override
    public void code(Span.Code code) {
        out.element("code", code.text());
    }

    @Override
    public void link(Span.Link link) {
        out.open("a").attribute("href", link.target());
        if (link.external()) {
            out.attribute("rel", "noreferrer");
        }
        breakable(link.label());
        out.close("a");
    }

    @Override
    public void crossReference(Span.CrossReference reference) {
        if (sections.contains(reference.sectionId())) {
            out.open("a").attribute("href", "#" + reference.sectionId()).text(reference.label()).close("a");
        } else {
            out.text(reference.label());
        }
    }

    @Override
    public void standing(Span.Standing standing) {
        out.open("span", "standing " + switch (standing.fill()) {
            case FULL -> "full";
            case HALF -> "half";
            case OPEN -> "open";
        }).text(standing.word()).close("span");
    }

    @Override
    public void footnote(Span.Footnote footnote) {
        String number = Integer.toString(footnotes.number(footnote));
        out.text(" ").open("a", "source").attribute("href", "#source-" + number).attribute("aria-label", "Source " + number)
                .text("[" + number + "]").close("a");
    }
}
