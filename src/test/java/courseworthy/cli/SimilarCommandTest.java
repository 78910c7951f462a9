package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimilarCommandTest {

    private static final String HEATHER = "course-profiles/heather-ridge.yaml";
    private static final String KIM = "docs/examples/riders/kim-cross-country.yaml";

    @TempDir
    private Path folder;

    private Path copy(String from, String to) throws IOException {
        Path target = folder.resolve(to);
        Files.createDirectories(target.getParent());
        return Files.copy(Path.of(from), target);
    }

    private Path course(String name) throws IOException {
        return copy("course-profiles/" + name + ".yaml", "courses/" + name + ".yaml");
    }

    private String courses() {
        return folder.resolve("courses").toString();
    }

    @Test
    void textFitsATerminal() throws IOException {
        course("beech-hollow");
        course("market-roads");
        course("quern-hills");
        course("wide-fallow");

        CommandRun ran = CommandRun.of("similar", HEATHER, courses(), "--rider", KIM, "--debriefs", "docs/examples/debriefs");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        String inHere = ran.out().replace(courses(), "courses");
        assertThat(inHere.lines().filter(line -> !line.contains("courses/"))).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(inHere).startsWith("Heather Ridge Marathon                                           similar courses\n")
                .contains("Compared with 4 courses in ", "\n1. ", " % alike\n", "What differs most ", "Set up ", "THE OTHER COURSES", "WHAT COUNTS, AND HOW MUCH");
    }

    /** What text shows and counts is all that the JSON has, front and rear on one line where both are the same. */
    @Test
    void linesShownAndCountedAreAllDecisions() throws IOException {
        course("market-roads");
        JsonNode near = json("similar", HEATHER, courses()).get("nearest").get(0);
        CommandRun ran = CommandRun.of("similar", HEATHER, courses(), "--format", "markdown");

        List<String> rows = ran.out().lines().dropWhile(line -> !line.startsWith("| Set up")).skip(2).takeWhile(line -> line.startsWith("|")).toList();
        Matcher more = Pattern.compile("(\\d+) more lines? of the set-up differs?").matcher(ran.out());
        assertThat(more.find()).isTrue();
        List<String> all = new ArrayList<>();
        for (JsonNode each : near.get("decisions")) {
            String line = each.get("topic").asText().replaceFirst("^(front|rear) ", "") + each.get("here") + each.get("there");
            if (!each.get("topic").asText().startsWith("rear ") || !all.contains(line)) {
                all.add(line);
            }
        }
        assertThat(rows.size() + Integer.parseInt(more.group(1))).isEqualTo(all.size()).isLessThan(near.get("decisions").size());
    }

    @Test
    void theCourseItselfAndWhateverIsNoCourseAreLeftOut() throws IOException {
        Path own = course("heather-ridge");
        course("three-becks");
        copy(KIM, "courses/kim.yaml");
        copy("docs/examples/events/heather-ridge.yaml", "courses/event.yaml");
        Files.writeString(folder.resolve("courses/notes.txt"), "a");

        JsonNode json = json("similar", own.toString(), courses());

        assertThat(json.get("nearest")).extracting(each -> each.get("name").asText()).containsExactly("Three Becks, day two");
        assertThat(json.get("others")).isEmpty();
    }

    private static JsonNode json(String... words) {
        String[] all = List.of(words).toArray(new String[words.length + 2]);
        all[words.length] = "--format";
        all[words.length + 1] = "json";
        CommandRun ran = CommandRun.of(all);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        return OutputSchema.tree(ran.out());
    }

    @Test
    void aTrackUnderAProfileIsNoCourseOfItsOwn() throws IOException {
        String track = "<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\"><trk><name>A</name><trkseg>"
                + "<trkpt lat=\"50\" lon=\"-20\"/><trkpt lat=\"50.1\" lon=\"-20\"/></trkseg></trk></gpx>";
        Files.createDirectories(folder.resolve("courses"));
        Files.writeString(folder.resolve("courses/a.gpx"), track);
        Files.writeString(folder.resolve("courses/b.gpx"), track);
        Files.writeString(folder.resolve("courses/z.yaml"), "name: Z\ntrack: a.gpx\nstretches:\n  - {to: 11.12 km, surface: gravel}\n");

        JsonNode json = json("similar", HEATHER, courses());

        assertThat(json.get("nearest")).extracting(each -> Path.of(each.get("file").asText()).getFileName().toString()).containsExactlyInAnyOrder("b.gpx", "z.yaml");
    }

    @Test
    void debriefsOfACourseAreFoundByItsName() throws IOException {
        course("three-becks");
        course("market-roads");
        for (String ending : List.of("json", "yaml")) {
            copy("docs/examples/debriefs/three-becks." + ending, "courses/debriefs/three-becks." + ending);
            copy("docs/examples/debriefs/heather-ridge." + ending, "courses/heather-debrief/heather-ridge." + ending);
        }

        JsonNode nearest = json("similar", HEATHER, courses()).get("nearest");

        for (JsonNode each : nearest) {
            JsonNode debriefs = each.get("debriefs");
            assertThat(debriefs).hasSize(each.get("name").asText().startsWith("Three Becks") ? 1 : 0);
            debriefs.forEach(debrief -> assertThat(debrief.get("not_borne_out")).extracting(verdict -> verdict.get("topic").asText())
                    .containsExactly("easiest gear", "water"));
        }
        assertThat(nearest).hasSize(2);
        CommandRun text = CommandRun.of("similar", HEATHER, courses());
        assertThat(text.out().replaceAll("\\s+", " ")).contains("Learned there: - Three Becks, for Kim, 2026-08-06: not borne out: easiest gear ");
    }

    /** Briefs of either format name their course; without a name nothing is matched. */
    @Test
    void aBriefThatNamesNoCourseMatchesNothing() throws IOException {
        course("three-becks");
        copy("docs/examples/debriefs/three-becks.yaml", "courses/debriefs/three-becks.yaml");
        String brief = Files.readString(Path.of("docs/examples/debriefs/three-becks.json"));
        Path saved = folder.resolve("courses/debriefs/three-becks.json");

        Files.writeString(saved, brief.replace("\"format\" : 2", "\"format\" : 1"));
        assertThat(json("similar", HEATHER, courses()).get("nearest").get(0).get("debriefs")).hasSize(1);

        Files.writeString(saved, brief.replaceFirst("\"name\" : \"Three Becks, day two\",", ""));
        assertThat(json("similar", HEATHER, courses()).get("nearest").get(0).get("debriefs")).isEmpty();
    }

    @Test
    void whoMadeTheMapOfAnotherCourseIsNamed() throws IOException {
        Path other = course("three-becks");
        course("market-roads");
        Files.writeString(other, Files.readString(other).replaceFirst("(?m)^name:", "attribution: the makers of the map\nname:"));

        assertThat(json("similar", HEATHER, courses()).get("attributions")).extracting(JsonNode::asText).containsExactly("the makers of the map");
        assertThat(CommandRun.of("similar", HEATHER, courses()).out()).containsOnlyOnce("Map data: the makers of the map");
    }

    @Test
    void whatCountsForTheRiderAndTheDayCountsOnBothSides() throws IOException {
        course("three-becks");
        JsonNode once = json("similar", HEATHER, courses(), "--rider", KIM);
        Path lap = Files.writeString(folder.resolve("laps.yaml"), "name: Two laps\nlaps: 2\n");
        JsonNode twice = json("similar", HEATHER, courses(), "--rider", KIM, "--event", lap.toString());

        for (String end : List.of("lowest", "highest")) {
            assertThat(distance(twice).get(end).asDouble()).isEqualTo(2 * distance(once).get(end).asDouble(), within(200.0));
        }
    }

    private static JsonNode distance(JsonNode json) {
        for (JsonNode each : json.get("measures")) {
            if (each.get("measure").asText().equals("distance")) {
                return each;
            }
        }
        throw new AssertionError("no distance");
    }

    @Test
    void aFileThatCannotBeReadIsWarnedOfOnce() throws IOException {
        course("three-becks");
        Files.writeString(folder.resolve("courses/broken.yaml"), "name: Broken\nstretches:\n  - {length: far}\n  - {length: wide}\n");
        copy("docs/examples/debriefs/three-becks.yaml", "courses/debriefs/three-becks.yaml");

        CommandRun ran = CommandRun.of("similar", HEATHER, courses());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Compared with 1 course in ", "Three Becks, day two");
        assertThat(ran.err().replace(courses(), "courses").lines().filter(line -> line.contains("warning:")))
                .satisfiesExactly(line -> assertThat(line).startsWith("courses/broken.yaml:3: warning: "),
                        line -> assertThat(line).startsWith("courses/debriefs/three-becks.json: warning: "));
        assertThat(ran.err()).contains("1 more fault in it. The course is left out.", "The debrief is left out.");
    }

    @Test
    void aFolderWithoutACourseIsRefused() throws IOException {
        Path own = course("heather-ridge");
        String none = courses() + "/: found no course that can be read, besides the one asked about, expected a folder of course profiles (.yaml) and GPX tracks (.gpx)\n";
        assertThat(CommandRun.of("similar", own.toString(), courses())).isEqualTo(new CommandRun(2, "", none));
        assertThat(CommandRun.of("similar", HEATHER, folder + "/nowhere")).isEqualTo(new CommandRun(2, "",
                folder + "/nowhere: found no such folder, expected a folder of course profiles (.yaml) and GPX tracks (.gpx)\n"));
        assertThat(CommandRun.of("similar", HEATHER, HEATHER).err()).isEqualTo(HEATHER
                + ": found a file, expected a folder of course profiles (.yaml) and GPX tracks (.gpx)\n");
        assertThat(CommandRun.of("similar", own.toString(), "docs/examples/riders", "--debriefs", "nowhere").code()).isEqualTo(2);
    }

    @Test
    void aFolderOfDebriefsHasToExist() throws IOException {
        course("three-becks");

        assertThat(CommandRun.of("similar", HEATHER, courses(), "--debriefs", "nowhere")).isEqualTo(new CommandRun(2, "",
                "nowhere: found no such folder, expected a folder of debriefs\n"));
        assertThat(CommandRun.of("similar", HEATHER, courses(), "--debriefs", HEATHER).err()).isEqualTo(HEATHER
                + ": found a file, expected a folder of debriefs\n");
    }
}
