package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ToolOutput;
import courseworthy.report.BriefReport;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The main points of a brief, its parts and the whole of it. */
class BriefCommandTest {

    private static final String KIM = "docs/examples/riders/kim-cross-country.yaml";
    private static final Request WORKSHOP = Request.builder("heather-ridge").event("docs/examples/events/heather-ridge.yaml").rider(KIM)
            .workshop("docs/examples/workshops/cellar.yaml").build();
    private static final Pattern DISTANCE = Pattern.compile("(?m)^([0-9.]+) km");

    static Stream<Request> requests() throws IOException {
        List<Request> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            for (String name : files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().toList()) {
                String course = "course-profiles/" + name;
                String event = "docs/examples/events/" + name;
                out.add(Request.builder(course).build());
                out.add(Request.builder(course).event(event).build());
                out.add(Request.builder(course).event(event).rider(KIM).build());
                out.add(Request.builder(course).event(event).rider("docs/examples/riders/sam-novice.yaml").role("training").build());
            }
        }
        return out.stream();
    }

    /** Under 80 lines up to 15 km, under 120 at 330 km, and in proportion between: a screen and a half. */
    @ParameterizedTest
    @MethodSource("requests")
    void theMainPointsFitOnAScreenAndAHalf(Request request) {
        String text = new ToolOutput().shortBrief(request);
        Matcher distance = DISTANCE.matcher(text);
        assertThat(distance.find()).isTrue();
        double share = Math.max(0, Math.min(1, (Double.parseDouble(distance.group(1)) - 15) / 315));
        assertThat(text.lines().count()).isLessThan(80 + Math.round(40 * share));
        assertThat(text.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(text).containsSubsequence("\nIN SHORT\n", "\nWHAT TO SET\n", "\nPLAN FOR THE DAY", "\nTHE REST\n", "'--full'", "'--part NAME'");
    }

    /** What changes the set-up or endangers the rider on this day is among the main points, what holds for any ride is not. */
    @Test
    void theMainPointsHaveWhatThisDayBrings() {
        String hot = plain(new ToolOutput().shortBrief(Request.builder("ochre-flats").event("docs/examples/events/ochre-flats.yaml").rider(KIM)
                .build()));
        assertThat(hot).contains("CAUTIONS OF THIS DAY", "In such heat start slower", "Of this, do not drink more than 1 L an hour")
                .doesNotContain("Tighten to the torque marked");
        String turning = plain(new ToolOutput().shortBrief(WORKSHOP));
        assertThat(turning).contains("If it turns wet, 6 to 13 C: ", " changes, start work by ", "THE BUILD borrowed bike, ", "Falls short: ",
                "NOT YOUR USUAL, OR NOT FIRM");
    }

    /** A road bike on a marathon over rocks. */
    @Test
    void theMainPointsSayWhatIsNotTheRidersOwn(@TempDir Path folder) throws IOException {
        Path rider = Files.writeString(folder.resolve("rider.yaml"), "name: Kim\nmass: 70 kg\nbar width: 440 mm\nbike:\n  kind: road\n");
        String text = plain(new ToolOutput().shortBrief(Request.builder("heather-ridge").rider(rider.toString()).build()));
        assertThat(text).containsPattern("NOT YOUR USUAL, OR NOT FIRM - bike: cross-country .*, your usual is road - bar width: \\d+ mm, your usual is 440 mm");
    }

    @ParameterizedTest
    @MethodSource("requests")
    void wholeTextHasAllThatThePageHas(Request request) {
        ToolOutput tool = new ToolOutput();
        sameWords(tool.brief(request, Format.TEXT), tool.brief(request, Format.MARKDOWN));
    }

    @Test
    void wholeTextOfABuildHasAllThatThePageHas() {
        ToolOutput tool = new ToolOutput();
        sameWords(tool.brief(WORKSHOP, Format.TEXT), tool.brief(WORKSHOP, Format.MARKDOWN));
        sameWords(tool.checklist(WORKSHOP, Format.TEXT), tool.checklist(WORKSHOP, Format.MARKDOWN));
    }

    /** Word by word, as often, whatever the format puts around them; the profile is drawn in one and described in the other. */
    private static void sameWords(String text, String markdown) {
        Map<String, Integer> left = words(text);
        String page = markdown.replaceAll("(?m)^Elevation over .*$", "").replaceAll("(?m)^> \\*\\*Caution:\\*\\* ", "");
        List<String> missing = new ArrayList<>();
        words(page).forEach((word, count) -> {
            if (left.getOrDefault(word, 0) < count) {
                missing.add(word);
            }
        });
        assertThat(missing).isEmpty();
    }

    private static Map<String, Integer> words(String text) {
        Map<String, Integer> out = new HashMap<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}.%]+")) {
            String bare = word.replaceAll("^\\.+|\\.+$", "");
            if (!bare.isEmpty()) {
                out.merge(bare, 1, Integer::sum);
            }
        }
        return out;
    }

    @Test
    void everyPartIsAPieceOfTheWhole() {
        ToolOutput tool = new ToolOutput();
        String whole = tool.brief(WORKSHOP, Format.TEXT);
        for (String part : BriefReport.PARTS) {
            String text = tool.part(WORKSHOP, part, Format.TEXT);
            String body = text.substring(text.indexOf('\n') + 1);
            if (plain(text).contains("There is nothing under \"" + part + "\"")) {
                assertThat(part).isIn("own-bike", "course-file", "close", "against");
            } else {
                assertThat(whole).contains(body.substring(body.indexOf("\n\n") + 2));
            }
        }
        assertThat(tool.part(WORKSHOP, "checklist", Format.TEXT)).isEqualTo(tool.checklist(WORKSHOP, Format.TEXT));
        assertThat(tool.part(WORKSHOP, "reasons", Format.MARKDOWN)).contains("\n## Reasons\n").doesNotContain("## Cautions");
    }

    @Test
    void anUnknownPartIsRefusedWithWhatThereIs() {
        CommandRun ran = CommandRun.of("brief", "heather-ridge", "--part", "reason");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(plain(ran.err())).contains("--part", "\"reason\"", "reasons", "checklist", "Did you mean \"reasons\"?");
    }

    @Test
    void optionsThatExcludeEachOtherAreRefused() {
        for (List<String> options : List.of(List.of("--full"), List.of("--topic", "plugs"), List.of("--format", "json"))) {
            List<String> args = new ArrayList<>(List.of("brief", "heather-ridge", "--part", "plan"));
            args.addAll(options);
            CommandRun ran = CommandRun.of(args.toArray(String[]::new));
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains("--part", options.get(0));
        }
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Ten minutes need no food; a cut-off at the finish is the finish's, one past it is asked about. */
    @Test
    void aVeryShortRideWithCutOffs(@TempDir Path own) throws IOException {
        Path course = Files.writeString(own.resolve("tiny.yaml"), "name: Tiny\nstretches:\n  - {length: 5 km, surface: gravel}\n");
        Path event = Files.writeString(own.resolve("day.yaml"), "name: Day\nrole: race\ncut-offs:\n  - {at: 5 km, within: 1:00 h}\n  - {at: 7 km, within: 2:00 h}\n");
        String text = CommandRun.of("brief", course.toString(), "--event", event.toString()).out().replaceAll("\\s+", " ");
        assertThat(text).contains("finish; cut-off 1:00 h", "A cut-off is given for 7.0 km, which is past the finish: check it.", "You need not eat on the way.")
                .doesNotContain("for 5.0 km, which is");
    }
}
