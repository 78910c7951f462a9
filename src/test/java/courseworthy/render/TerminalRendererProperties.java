package courseworthy.render;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.TextSanitiser;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever stands in a file, a page for the terminal shows it and keeps its width. */
class TerminalRendererProperties {

    @Property(tries = 400, seed = "4711")
    void noLineIsWiderThanThePage(@ForAll("hostile") String text, @ForAll @IntRange(min = 60, max = 100) int width) {
        String page = new TerminalRenderer(width, false).render(SampleReport.with(text));
        assertThat(page.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThanOrEqualTo(width));
    }

    @Property(tries = 400, seed = "4712")
    void nothingReachesTheTerminalThatItWouldObey(@ForAll("hostile") String text) {
        String page = new TerminalRenderer(80, false).render(SampleReport.with(text));
        assertThat(page).doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]").doesNotContainPattern("[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069\u2028\u2029]");
    }

    @Property(tries = 400, seed = "4713")
    void colourAddsNothingButEmphasis(@ForAll("hostile") String text) {
        String plain = new TerminalRenderer(80, false).render(SampleReport.with(text));
        String colour = new TerminalRenderer(80, true).render(SampleReport.with(text));
        assertThat(colour.replaceAll("\u001b\\[(1|2|3|1;33)m([^\u001b\n]*)\u001b\\[0m", "$2")).isEqualTo(plain);
    }

    @Property(tries = 400, seed = "4714")
    void nothingIsLost(@ForAll("hostile") String text) {
        String page = new TerminalRenderer(80, false).render(SampleReport.with(text));
        assertThat(unspaced(page)).contains(unspaced(TextSanitiser.span("Of " + text + " and " + text + ".")));
    }

    private static String unspaced(String text) {
        return text.replaceAll("[ \n]", "");
    }

    @Provide
    Arbitrary<String> hostile() {
        return HostileText.any();
    }
}
