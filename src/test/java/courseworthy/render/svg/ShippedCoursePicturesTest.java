package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** The pictures on the page of every shipped course, for a rider whose bike and workshop are known. */
class ShippedCoursePicturesTest {

    private static final Pattern DRAWING = Pattern.compile("<svg class=\"drawing .*?</svg>(?=\n)", Pattern.DOTALL);

    static Stream<Path> courses() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("courses")
    void noTextOverlapsAnotherOrLeavesItsPicture(Path course) {
        String page = new ToolOutput().brief(Request.builder(course.toString()).event("docs/examples/events/" + course.getFileName())
                .rider("docs/examples/riders/kim-cross-country.yaml").role("race").build(), Format.HTML);
        List<Element> drawn = DRAWING.matcher(page).results().map(each -> DrawnText.parse(each.group())).toList();
        assertThat(drawn).hasSizeGreaterThanOrEqualTo(4);
        Set<String> ids = new HashSet<>();
        for (Element svg : drawn) {
            assertThat(DrawnText.faults(svg)).as(svg.getAttribute("class")).isEmpty();
            assertThat(ids.add(svg.getAttribute("aria-labelledby"))).isTrue();
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
            assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
        }
        assertThat(drawn).anyMatch(each -> each.getAttribute("class").contains("long-section"));
    }
}
