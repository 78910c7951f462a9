package courseworthy.render;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.TextSanitiser;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a file, a parser of CommonMark reads it as the text that it is (library org.commonmark, with its tables). */
class MarkdownRendererProperties {

    /** Nodes that stand around text alone come and go with the text, since empty text has no emphasis and no code. */
    private static final List<String> AROUND_TEXT = List.of("Emphasis", "StrongEmphasis", "Code", "SoftLineBreak");

    @Property(tries = 600, seed = "4721")
    void theOutlineIsThatOfAHarmlessText(@ForAll("hostile") String text) {
        if (TextSanitiser.span(text).strip().isEmpty()) {
            return;
        }
        assertThat(outline(text)).isEqualTo(outline("harmless"));
    }

    private static List<String> outline(String text) {
        List<String> out = new MarkdownReading(new MarkdownRenderer().render(SampleReport.with(text))).outline();
        out.removeIf(AROUND_TEXT::contains);
        return out;
    }

    @Property(tries = 600, seed = "4722")
    void textComesOutAsItWentIn(@ForAll("hostile") String text) {
        MarkdownReading page = new MarkdownReading(new MarkdownRenderer().render(SampleReport.with(text)));
        String shown = TextSanitiser.span(text).strip();
        if (shown.isEmpty()) {
            return;
        }
        assertThat(unspaced(page.text())).contains(unspaced("Of" + shown + "and" + shown + "."))
                .contains(unspaced("Done when: " + shown + "Why: " + shown));
        assertThat(unspaced(page.headings().get(0))).isEqualTo(unspaced(shown + ", set up for" + shown));
        assertThat(page.rows()).anySatisfy(row -> assertThat(row.stream().map(MarkdownRendererProperties::unspaced).toList())
                .containsExactly(unspaced(shown), "12mm", unspaced(shown)));
    }

    private static String unspaced(String text) {
        return text.replaceAll("[\\p{Z}\\s]", "");
    }

    @Provide
    Arbitrary<String> hostile() {
        return HostileText.any();
    }
}
