package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each command writes as JSON keeps to its schema, over several courses; and the schema leaves nothing open: with a field more anywhere,
 * or any field less, it is refused.
 */
class OutputSchemasTest {

    private static final String SHEET = "docs/examples/sheets/hill-country.yaml";
    private static final String WORKSHOP = "docs/examples/workshops/cellar.yaml";
    private static final List<String> KIM = List.of("heather-ridge", "--event", "docs/examples/events/heather-ridge.yaml", "--rider",
            "docs/examples/riders/kim-cross-country.yaml", "--sheet", SHEET);
    private static final List<String> JOSS = List.of("wide-fallow", "--event", "docs/examples/events/wide-fallow.yaml", "--rider",
            "docs/examples/riders/joss-steel.yaml", "--workshop", WORKSHOP);
    private static final List<String> NOBODY = List.of("market-roads");
    /** Fields that an output may do without: what was not asked for, or is not known. */
    private static final Set<String> OPTIONAL = Set.of("untouched", "races_a_year", "season_returns_s", "changes_together", "leaves_out",
            "ground_known_by");

    @TempDir
    private Path folder;

    private void keeps(String kind, String command, List<String> asked, String... more) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.addAll(asked);
        words.addAll(List.of(more));
        words.addAll(List.of("--format", "json"));
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            CommandRun ran = CommandRun.of(words.toArray(new String[0]));
            assertThat(ran.out()).as("%s: %s", words, ran.err()).isNotEmpty();
            JsonNode json = OutputSchema.tree(ran.out());
            assertThat(OutputSchema.faults(kind, json)).as("%s", words).isEmpty();
            leavesNothingOpen(kind, json);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }

    /** At the first object of each place. */
    private static void leavesNothingOpen(String kind, JsonNode json) {
        Map<String, ObjectNode> places = new LinkedHashMap<>();
        places("", json, places);
        places.forEach((place, node) -> {
            node.put("something else", 1);
            assertThat(OutputSchema.faults(kind, json)).as("%s: one more at %s", kind, place).isNotEmpty();
            node.remove("something else");
            for (String field : place.equals("/rules") ? List.<String>of() : names(node)) {
                JsonNode was = node.remove(field);
                assertThat(OutputSchema.faults(kind, json).isEmpty()).as("%s: without %s/%s", kind, place, field).isEqualTo(OPTIONAL.contains(field));
                node.set(field, was);
            }
        });
        assertThat(OutputSchema.faults(kind, json)).isEmpty();
    }

    private static List<String> names(ObjectNode node) {
        List<String> out = new ArrayList<>();
        node.fieldNames().forEachRemaining(out::add);
        return out;
    }

    private static void places(String place, JsonNode node, Map<String, ObjectNode> out) {
        if (node instanceof ObjectNode object) {
            out.putIfAbsent(place, object);
            names(object).forEach(field -> places(place + "/" + field, object.get(field), out));
        } else if (node.isArray()) {
            node.forEach(each -> places(place + "[]", each, out));
        }
    }

    @Test
    void gears() {
        keeps("gears", "gears", KIM);
        keeps("gears", "gears", JOSS);
        keeps("gears", "gears", NOBODY);
    }

    @Test
    void scout() {
        keeps("scout", "scout", List.of("src/test/resources/courseworthy/scout/half-known.yaml"));
        keeps("scout", "scout", NOBODY);
        keeps("scout", "scout", List.of("docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm", "--no-cache"));
    }

    @Test
    void similar() {
        keeps("similar", "similar", KIM, "--debriefs", "docs/examples/debriefs");
        keeps("similar", "similar", List.of("src/test/resources/courseworthy/scout/half-known.yaml"));
        keeps("similar", "similar", NOBODY);
    }

    @Test
    void roster() {
        keeps("roster", "roster", List.of("heather-ridge", "--riders", "docs/examples/riders", "--event", "docs/examples/events/heather-ridge.yaml", "--sheet", SHEET));
        keeps("roster", "roster", List.of("market-roads", "--riders", "docs/examples/riders"));
    }

    @Test
    void compare() {
        keeps("compare", "compare", KIM, "--set", "bike=trail", "--set", "front tyre casing=light, rear tyre casing=light");
        keeps("compare", "compare", JOSS, "--set", "rear tyre width=32 mm");
        keeps("compare", "compare", NOBODY, "--set", "easiest gear=0.9, hardest gear=4");
    }

    @Test
    void checklist() {
        keeps("checklist", "checklist", KIM);
        keeps("checklist", "checklist", JOSS);
        keeps("checklist", "checklist", NOBODY);
        keeps("checklist", "checklist", List.of("larch-common", "--event", "docs/examples/events/larch-common.yaml"));
    }

    @Test
    void position() {
        keeps("position", "position", List.of(WORKSHOP));
        keeps("position", "position", List.of(WORKSHOP, "--from", "hardtail", "--to", "borrowed bike"));
        keeps("position", "position", List.of(WORKSHOP, "--from", "hardtail", "--to", "steel bike"));
    }

    /** Of bikes of which nothing is measured most figures are null. */
    @Test
    void positionsThatAreNotKnown() throws IOException {
        String bare = Files.writeString(folder.resolve("bare.yaml"), "workshop: Bare\nbikes:\n  - {name: one, kind: gravel}\n  - {name: two, kind: trail}\n")
                .toString();
        keeps("position", "position", List.of(bare));
        keeps("position", "position", List.of(bare, "--from", "one", "--to", "two"));
    }

    @Test
    void stages() {
        String race = "docs/examples/events/three-becks.yaml";
        keeps("stages", "stages", List.of(race, "--rider", "docs/examples/riders/kim-cross-country.yaml", "--workshop", WORKSHOP, "--sheet", SHEET));
        keeps("stages", "stages", List.of(race));
    }

    @Test
    void season() {
        keeps("season", "season", List.of("docs/examples"));
        keeps("season-weeks", "season", List.of("docs/examples", "--by-week"));
    }

    @Test
    void debriefsAndTheirRecord() {
        keeps("debrief", "debrief", List.of("docs/examples/debriefs/heather-ridge.yaml"));
        keeps("debrief", "debrief", List.of("docs/examples/debriefs/three-becks.yaml"));
        keeps("debrief", "debrief", List.of("docs/examples/debriefs"));
    }

    @Test
    void debriefsUnderASheet() throws IOException {
        List<String> words = new ArrayList<>(List.of("brief", "course-profiles/heather-ridge.yaml", "--sheet", SHEET, "--format", "json", "-o", folder + "/given.json"));
        assertThat(CommandRun.of(words.toArray(new String[0])).code()).isZero();
        String debrief = Files.writeString(folder.resolve("day.yaml"), "debrief: A day\nbrief: given.json\n").toString();
        keeps("debrief", "debrief", List.of(debrief));
    }

    @Test
    void sheets() throws IOException {
        keeps("impact", "sheet impact none", List.of(SHEET));
        keeps("impact", "sheet impact", List.of(SHEET, "none", "--riders", "docs/examples/riders"));
        keeps("impact", "sheet impact", List.of(SHEET, SHEET));
        keeps("test", "sheet test", List.of(SHEET, "--cover"));
        keeps("check", "sheet check", List.of(SHEET, "--gaps"));
        String poor = Files.writeString(folder.resolve("poor.yaml"), """
                sheet: Poor
                author: me
                advice:
                  - {id: five, when: {roughness: at least rough}, say: {plugs: prefer 5}, because: Stones cut.}
                  - {id: six, when: {roughness: at least rough}, say: {plugs: prefer 6}, because: Stones cut.}
                """).toString();
        Files.writeString(folder.resolve("poor.cases.yaml"), "cases for: Poor\ncases:\n  - rule: five\n    fires:\n      smooth: {roughness: 1.0}\n");
        keeps("test", "sheet test", List.of(poor));
        keeps("test", "sheet test", List.of(poor, "--cover"));
        keeps("check", "sheet check", List.of(poor));
    }
}
