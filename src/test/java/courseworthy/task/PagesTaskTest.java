package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Faults;
import courseworthy.render.MarkdownRenderer;
import courseworthy.report.CataloguePages;
import courseworthy.sheet.Row;
import courseworthy.sheet.SheetReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages say what the catalogue and the rules say, and what they show of sheets can be written into one. */
class PagesTaskTest {

    private static final Map<String, String> PAGES = new TreeMap<>();

    static {
        new CataloguePages(PagesTask.of(new Workspace(Path.of("").toAbsolutePath(), warning -> { })), "README.md", ".md").pages()
                .forEach((path, page) -> PAGES.put(path, new MarkdownRenderer().render(page)));
    }

    private static final Pattern CODE = Pattern.compile("```yaml\n((?:when|say):.*?)\n```", Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("^- \\[[^]]+]\\(([^)]+)\\)", Pattern.MULTILINE);

    @TempDir
    private Path folder;

    @Test
    void thereIsOneForEachMeasureAndTopicAndTheFirstLeadsToAll() {
        List<String> linked = new ArrayList<>();
        Matcher link = LINK.matcher(PAGES.get("README.md"));
        while (link.find()) {
            linked.add(link.group(1));
        }
        assertThat(linked).hasSize(Topics.all().size() + Measure.values().length + 2).doesNotHaveDuplicates();
        List<String> others = new ArrayList<>(PAGES.keySet());
        others.remove("README.md");
        others.removeIf(path -> path.startsWith("rules/") && !path.equals("rules/all.md"));
        assertThat(linked).containsExactlyInAnyOrderElementsOf(others);
    }

    /** Every condition and saying that is shown is one that the reader of sheets takes. */
    @Test
    void whatIsShownOfSheetsCanBeWritten() throws IOException {
        StringBuilder sheet = new StringBuilder("sheet: All examples\nauthor: somebody\nadvice:\n");
        int count = 0;
        for (String page : PAGES.values()) {
            Matcher code = CODE.matcher(page);
            while (code.find()) {
                boolean says = code.group(1).startsWith("say:");
                sheet.append("  - id: example-").append(++count).append("\n    ").append(code.group(1).replace("\n", "\n    ")).append('\n')
                        .append(says ? "" : "    do: {what: Look, find: It is there, by: night before}\n").append("    because: It is an example.\n");
            }
        }
        assertThat(count).isEqualTo(Topics.all().size() + Measure.values().length + 1);
        Path file = folder.resolve("examples.yaml");
        Files.writeString(file, sheet);
        Faults faults = new Faults();
        SheetReader.read(file, "examples.yaml", 0, faults);
        assertThat(faults.faults()).isEmpty();
    }

    /** Each rule has a page with all that is known of it, which the list of rules leads to; what is shown of the sheet is the row itself. */
    @Test
    void everyRuleHasAPage() throws IOException {
        List<RuleEntry> rules = RulesTask.of(null);
        assertThat(rules).hasSizeGreaterThan(400);
        for (RuleEntry rule : rules) {
            String path = "rules/" + rule.origin().rule().replace('/', '-') + ".md";
            assertThat(PAGES.get("rules/all.md")).contains("(../" + path + ")");
            assertThat(PAGES.get(path)).as(path).startsWith("# " + rule.origin().rule() + ", " + rule.origin().force().word() + "\n").contains(rule.origin().where().toString());
        }
        for (Row row : ShippedRules.rules()) {
            String page = PAGES.get("rules/" + row.origin().rule().replace('/', '-') + ".md");
            Matcher listing = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(page);
            assertThat(listing.find()).as(row.origin().rule()).isTrue();
            String id = row.origin().rule().substring(row.origin().rule().indexOf('/') + 1);
            assertThat(listing.group(1)).startsWith("- id: " + id + "\n").contains("because: ").containsOnlyOnce("id: ");
        }
        assertThat(PAGES.get("rules/shipped-less-pressure-in-the-wet.md")).contains("[going](../measures/going.md)").contains("[front tyre pressure](../topics/front-tyre-pressure.md)")
                .contains("In the wet a twentieth less pressure puts more rubber on slippery ground.").contains("common practice").contains("## Where it applies");
    }

    /** Every shipped row that says something stands on the page of each of its topics, with its reason, its place and a case. */
    @Test
    void everyRuleStandsOnThePagesOfItsTopics() {
        for (Row row : ShippedRules.rules()) {
            for (String topic : row.topics()) {
                String page = PAGES.get("topics/" + topic.replace(' ', '-') + ".md");
                assertThat(page).as(row.origin().rule()).contains("\n### " + row.origin().rule() + "\n").contains("Applies: ");
            }
        }
        for (Topic topic : Topics.all()) {
            assertThat(PAGES.get("topics/" + topic.name().replace(' ', '-') + ".md")).contains("\n## Rules on it\n").doesNotContain("No shipped rule.");
        }
    }
}
