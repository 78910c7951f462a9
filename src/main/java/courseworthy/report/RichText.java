package courseworthy.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * A line of text as a sequence of spans. It cannot be changed: each method returns a longer text.
 *
 * <pre>{@code RichText.of("For ").quoted(rider.name()).text(", who weighs ").strong("78 kg")}</pre>
 */
public record RichText(List<Span> spans) {

    public static final RichText EMPTY = new RichText(List.of());

    public RichText {
        spans = List.copyOf(spans);
    }

    /** Words of the tool. */
    public static RichText of(String words) {
        return EMPTY.text(words);
    }

    /** Text from a file or the command line. */
    public static RichText ofQuoted(String text) {
        return EMPTY.quoted(text);
    }

    public static RichText ofStrong(String words) {
        return EMPTY.strong(words);
    }

    /** Several texts with a separator between them, empty ones left out. */
    public static RichText join(String separator, Collection<RichText> texts) {
        RichText out = EMPTY;
        for (RichText each : texts) {
            if (!each.isEmpty()) {
                out = out.isEmpty() ? each : out.text(separator).append(each);
            }
        }
        return out;
    }

    public RichText text(String words) {
        return styled(words, Style.PLAIN);
    }

    /** Text from a file or the command line: whatever it holds, it is shown and never obeyed. */
    public RichText quoted(String text) {
        return plus(text, new Span.Text(text, Style.PLAIN, true));
    }

    public RichText emphasised(String words) {
        return styled(words, Style.EMPHASIS);
    }

    public RichText strong(String words) {
        return styled(words, Style.STRONG);
    }

    public RichText styled(String words, Style style) {
        return plus(words, new Span.Text(words, style, false));
    }

    /** Something to type. */
    public RichText code(String typed) {
        return plus(typed, new Span.Code(typed));
    }

    /** @param target a relative path or a web address, never text from a file */
    public RichText link(String label, String target) {
        return plus(label, new Span.Link(label, target));
    }

    public RichText crossReference(String label, String sectionId) {
        return plus(label, new Span.CrossReference(label, sectionId));
    }

    /** How firm something stands. */
    public RichText standing(String word, Span.Standing.Fill fill) {
        return plus(word, new Span.Standing(word, fill));
    }

    /** A mark that leads to a source; nothing where the source is empty. */
    public RichText footnote(String source) {
        return plus(source, new Span.Footnote(source));
    }

    public RichText append(RichText more) {
        List<Span> out = new ArrayList<>(spans);
        out.addAll(more.spans);
        return new RichText(out);
    }

    /** The same with all its words in one style. */
    public RichText in(Style style) {
        List<Span> out = new ArrayList<>();
        for (Span span : spans) {
            out.add(span instanceof Span.Text text ? new Span.Text(text.text(), style, text.quoted()) : span);
        }
        return new RichText(out);
    }

    public boolean isEmpty() {
        return spans.isEmpty();
    }

    /** What a reader sees of it, without any mark. */
    public String plain() {
        StringBuilder out = new StringBuilder();
        for (Span span : spans) {
            out.append(span.plain());
        }
        return out.toString();
    }

    private RichText plus(String content, Span span) {
        if (content.isEmpty()) {
            return this;
        }
        List<Span> out = new ArrayList<>(spans);
        out.add(span);
        return new RichText(out);
    }
}
