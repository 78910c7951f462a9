package courseworthy.render.html;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.render.HostileText;
import courseworthy.render.SampleReport;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Whatever stands in a file, a parser of HTML (library jsoup) reads it as the text that it is. */
class HtmlRendererProperties {

    /** Tags that stand round text alone come and go with the text; what US readers see hangs on whether it is a quantity. */
    private static final List<String> ROUND_TEXT = List.of("wbr", "bdi", "b", "em", "strong", "small", "span", "code", "a");

    @Property(tries = 600, seed = "5821")
    void theOutlineIsThatOfAHarmlessText(@ForAll("hostile") String text) {
        if (!shown(text).isEmpty()) {
            assertThat(outline(text)).isEqualTo(outline("harmless"));
        }
    }

    private static List<String> outline(String text) {
        List<String> out = new ArrayList<>();
        for (Element element : page(text).getAllElements()) {
            if (!ROUND_TEXT.contains(element.normalName())) {
                List<String> attributes = new ArrayList<>();
                element.attributes().forEach(attribute -> attributes.add(attribute.getKey()));
                attributes.removeAll(List.of("data-us", "data-label", "data-label-us"));
                out.add(element.normalName() + attributes);
            }
        }
        return out;
    }

    @Property(tries = 600, seed = "5822")
    void textComesOutAsItWentIn(@ForAll("hostile") String text) {
        String expected = shown(text);
        if (expected.isEmpty()) {
            return;
        }
        Document page = page(text);
        assertThat(comparable(page.body().text())).contains(comparable("Of " + expected + " and " + expected + "."))
                .contains(comparable("Done when: " + expected + "Why: " + expected));
        assertThat(comparable(page.select("h1").text())).isEqualTo(comparable(expected));
        assertThat(comparable(page.title())).isEqualTo(comparable(expected + ", set up for " + expected));
    }

    @Property(tries = 600, seed = "5823")
    void nothingIsAskedForAndNothingObeyed(@ForAll("hostile") String text) {
        Document page = page(text);
        assertThat(page.select("script")).hasSize(1);
        assertThat(page.select("style")).hasSize(1);
        assertThat(page.select("link, img, iframe, object, embed, video, audio, base, form, source")).isEmpty();
        for (Element element : page.getAllElements()) {
            for (Attribute attribute : element.attributes()) {
                assertThat(attribute.getKey()).doesNotStartWith("on").isNotIn("style", "src", "srcset", "action");
                if (attribute.getKey().equals("href")) {
                    assertThat(attribute.getValue()).startsWith("#");
                }
            }
        }
        assertThat(page.outerHtml()).doesNotContainPattern("[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]");
    }

    private static Document page(String text) {
        return Jsoup.parse(new HtmlRenderer().render(SampleReport.with(text)));
    }

    /** What is left of a text: without what reorders it, and with a sign in place of what cannot be shown. */
    private static String shown(String text) {
        return unspaced(text.replaceAll("[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]", "").replaceAll("[\\x00-\\x08\\x0b-\\x1f\\x7f-\\x9f]", "\ufffd"));
    }

    private static String comparable(String text) {
        return unspaced(text).replace('\u2212', '-');
    }

    private static String unspaced(String text) {
        return text.replaceAll("[\\p{Z}\\s\ufffd]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]|[\ufdd0-\ufdef\ufffe\uffff]", "");
    }

    @Provide
    Arbitrary<String> hostile() {
        return HostileText.any();
    }
}
