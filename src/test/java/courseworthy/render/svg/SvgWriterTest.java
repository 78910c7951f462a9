package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SvgWriterTest {

    @Test
    void elementsAreClosedInOrder() {
        SvgWriter out = new SvgWriter().open("g").open("rect");
        assertThatThrownBy(() -> out.close("g")).hasMessage("cannot close g inside rect");
        assertThatThrownBy(out::markup).hasMessage("not closed: [rect, g]");
        assertThat(out.close("rect").close("g").markup()).isEqualTo("<g><rect/></g>");
        assertThatThrownBy(() -> out.close("g")).hasMessage("cannot close g inside null");
    }

    @Test
    void attributesStandInStartTagsAlone() {
        SvgWriter out = new SvgWriter().open("text").attribute("x", 1.25).text("a");
        assertThatThrownBy(() -> out.attribute("y", 1)).hasMessage("attribute y outside of a start tag");
        assertThat(out.close("text").markup()).isEqualTo("<text x=\"1.3\">a</text>");
    }

    @Test
    void namesAreLetters() {
        assertThatThrownBy(() -> new SvgWriter().open("g onload=")).hasMessageStartingWith("not a name");
        assertThatThrownBy(() -> new SvgWriter().open("")).hasMessageStartingWith("an empty name");
        assertThatThrownBy(() -> new SvgWriter().open("g").attribute("a\"b", "")).hasMessageStartingWith("not a name");
    }

    @Test
    void numbersHaveFixedDecimalsAndNoExponent() {
        assertThat(SvgWriter.number(12)).isEqualTo("12");
        assertThat(SvgWriter.number(-0.04)).isEqualTo("0");
        assertThat(SvgWriter.number(12.26)).isEqualTo("12.3");
        assertThat(SvgWriter.fixed(1e7, 1)).isEqualTo("10000000");
        assertThat(SvgWriter.fixed(0.00004, 4)).isEqualTo("0");
        assertThatThrownBy(() -> SvgWriter.number(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void marksThatTurnTextAboutAreLeftOutAndControlsReplaced() {
        assertThat(new SvgWriter().open("text").text("a\u202eb\u0007c\u2067d\ud800e\u009bf\ufffeg").close("text").markup())
                .isEqualTo("<text>ab\ufffdcd\ufffde\ufffdf\ufffdg</text>");
    }

    @Provide
    Arbitrary<String> hostile() {
        Arbitrary<String> pieces = Arbitraries.of("<script>", "</text>", "]]>", "&amp;", "\"", "'", "\u0000", "\u202e", "\ud83d", "\ud83d\udeb2", "<!--", "x=1",
                "\ufffe", "\u4e2d", " ").list().ofMaxSize(12).map(list -> String.join("", list));
        return Arbitraries.oneOf(pieces, Arbitraries.strings().ofMaxLength(40));
    }

    /** The JDK's parser gives back what went in, as text and as the value of an attribute. */
    @Property(seed = "20261129", tries = 500)
    void whateverIsWrittenIsReadBackAsText(@ForAll("hostile") String words) {
        Element read = DrawnText.parse(new SvgWriter().open("svg").attribute("class", words).open("text").text(words).close("text").close("svg").markup());
        assertThat(read.getElementsByTagName("*").getLength()).isEqualTo(1);
        String harmless = words.replaceAll("[\\u200e\\u200f\\u061c\\u202a-\\u202e\\u2066-\\u2069]", "").codePoints()
                .map(c -> c != '\n' && c != '\t' && Character.isISOControl(c) || c >= 0xd800 && c < 0xe000 || c == 0xfffe || c == 0xffff ? 0xfffd : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        assertThat(read.getTextContent()).isEqualTo(harmless);
        assertThat(read.getAttribute("class")).isEqualTo(harmless.replace('\n', ' ').replace('\t', ' '));
    }
}
