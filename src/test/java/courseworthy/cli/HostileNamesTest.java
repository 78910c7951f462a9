package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Names in files that would do something if a page obeyed them come out as the text that they are. */
class HostileNamesTest {

    private static final String MARK = "Fen";
    private static final String EXAMPLES = "docs/examples/";

    @TempDir
    private Path folder;

    static Stream<String> names() {
        return Stream.of(MARK + "</title></style></script><script>alert(1)</script>", MARK + "\" onload=\"alert(1)\" x='", MARK + "<img src=x onerror=alert(1)>",
                MARK + "\u202egpj.exe\u2066", MARK + "&lt;b&gt;&amp;", MARK + "javascript:alert(1)//", MARK + " m".repeat(98), MARK + "]]><!--", MARK + "\u0645\u0631\u062d\u0628\u0627");
    }

    /** The example with another name: a quoted string of JSON is one of YAML. */
    private String renamed(String example, String name) throws IOException {
        String text = Files.readString(Path.of(EXAMPLES + example)).replaceFirst("(?m)^name:.*$", "name: @");
        Path file = folder.resolve(Path.of(example).getFileName());
        Files.writeString(file, text.replaceFirst("name: @", java.util.regex.Matcher.quoteReplacement("name: " + new ObjectMapper().writeValueAsString(name))));
        return file.toString();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theyAreTextOnThePage(String name) throws IOException {
        Document page = Jsoup.parse(new ToolOutput().run("brief", "fernbrake", "--event", renamed("events/fernbrake.yaml", name), "--rider",
                renamed("riders/sam-novice.yaml", name), "--format", "html"));
        assertThat(page.select("script")).hasSize(1);
        assertThat(page.select("style")).hasSize(1);
        assertThat(page.select("img, iframe, object, embed, link, base, form")).isEmpty();
        for (Element element : page.getAllElements()) {
            element.attributes().forEach(attribute -> assertThat(attribute.getKey()).doesNotStartWith("on").isNotIn("style", "src"));
        }
        String shown = name.replaceAll("[\u202a-\u202e\u2066-\u2069]", "");
        assertThat(page.select(".subtitle").text()).contains("for " + shown);
        assertThat(page.title()).contains(shown);
        assertThat(page.outerHtml()).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
    }

    /** A name is at most 200 characters long: one of 10,000 is refused before any page is made. */
    @Test
    void aNameOfTenThousandCharactersIsRefused() throws IOException {
        String rider = renamed("riders/sam-novice.yaml", MARK + "m".repeat(10_000 - MARK.length()));
        assertThatThrownBy(() -> new ToolOutput().run("checklist", "fernbrake", "--rider", rider, "--format", "html"))
                .hasMessageContaining("ended with 2").hasMessageContaining("name: found 10000 characters, expected at most 200");
    }

    /** What a page shows of a name it shows once the script is off, too: nothing of it is written by the script. */
    @ParameterizedTest
    @MethodSource("names")
    void theyAreNotInTheScript(String name) throws IOException {
        String page = new ToolOutput().run("checklist", "fernbrake", "--rider", renamed("riders/sam-novice.yaml", name), "--format", "html");
        assertThat(Jsoup.parse(page).select("script, style").eachText()).noneMatch(text -> text.contains(MARK));
        assertThat(List.of(page.split("<script>"))).hasSize(2);
    }
}
