package courseworthy.browser;

import courseworthy.ToolOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pages that commands make of the shipped examples, by a name for each. */
final class ExamplePages {

    private static final String COURSE = "heather-ridge";
    private static final List<String> RIDE = List.of("--event", "docs/examples/events/heather-ridge.yaml", "--rider", "docs/examples/riders/ida-hardtail.yaml");

    private static final String STAGES = "docs/examples/events/three-becks.yaml";

    private static final Map<String, List<String>> LINES = new LinkedHashMap<>();

    static {
        add("brief", "brief", COURSE, "--full", "--workshop", "docs/examples/workshops/cellar.yaml");
        add("brief in short", "brief", COURSE);
        add("topic", "brief", COURSE, "--topic", "rear tyre casing");
        add("why", "why", COURSE, "rear tyre casing");
        add("compare", "compare", COURSE, "--set", "front tyre casing=heavy, rear tyre casing=heavy", "--set", "bike=gravel");
        add("gears", "gears", COURSE);
        add("checklist", "checklist", COURSE);
        add("checklist of another day", "checklist", COURSE, "--date", "2026-06-21");
        LINES.put("checklist of another rider", List.of("checklist", COURSE, "--event", "docs/examples/events/heather-ridge.yaml", "--rider",
                "docs/examples/riders/joss-steel.yaml"));
        LINES.put("position", List.of("position", "docs/examples/workshops/cellar.yaml"));
        LINES.put("season", List.of("season", "docs/examples"));
        LINES.put("course", List.of("course", COURSE));
        LINES.put("scout", List.of("scout", "docs/examples/maps/sorrel-wood.gpx"));
        LINES.put("debrief", List.of("debrief", "docs/examples/debriefs/heather-ridge.yaml"));
        LINES.put("topics", List.of("topics"));
        add("reasons", "brief", COURSE, "--part", "reasons");
        LINES.put("pits", List.of("brief", "larch-common", "--event", "docs/examples/events/larch-common.yaml", "--workshop", "docs/examples/workshops/cellar.yaml"));
        LINES.put("checklist with pits", List.of("checklist", "larch-common", "--event", "docs/examples/events/larch-common.yaml"));
        LINES.put("season by week", List.of("season", "docs/examples", "--by-week"));
        LINES.put("stages", List.of("stages", STAGES, "--rider", "docs/examples/riders/kim-cross-country.yaml"));
        LINES.put("stages out of a workshop", List.of("stages", STAGES, "--rider", "docs/examples/riders/joss-steel.yaml", "--workshop", "docs/examples/workshops/cellar.yaml"));
        LINES.put("a stage", List.of("stages", STAGES, "--rider", "docs/examples/riders/kim-cross-country.yaml", "--stage", "2"));
        LINES.put("roster", List.of("roster", COURSE, "--riders", "docs/examples/riders"));
        LINES.put("similar", List.of("similar", COURSE));
        LINES.put("debriefs", List.of("debrief", "docs/examples/debriefs"));
        LINES.put("rules", List.of("rules"));
        LINES.put("measures", List.of("measures"));
        LINES.put("sheet impact", List.of("sheet", "impact", "none", "docs/examples/sheets/hill-country.yaml"));
    }

    private ExamplePages() {
    }

    private static void add(String name, String... line) {
        List<String> all = new ArrayList<>(List.of(line));
        all.addAll(RIDE);
        LINES.put(name, all);
    }

    static List<String> names() {
        return List.copyOf(LINES.keySet());
    }

    /** What the same command writes for programs. */
    static String json(String name) {
        List<String> line = new ArrayList<>(LINES.get(name));
        line.addAll(List.of("--format", "json"));
        return new ToolOutput().run(line.toArray(String[]::new));
    }

    /** Writes them into a folder, and in folders in it the pages of the example season and of the catalogue. */
    static Map<String, Path> write(Path folder) throws IOException {
        Map<String, Path> out = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> each : LINES.entrySet()) {
            List<String> line = new ArrayList<>(each.getValue());
            line.addAll(List.of("--format", "html"));
            String page = new ToolOutput().run(line.toArray(String[]::new));
            out.put(each.getKey(), Files.writeString(folder.resolve(each.getKey().replace(' ', '-') + ".html"), page));
        }
        new ToolOutput().run("season", "docs/examples", "--format", "html", "-o", folder.resolve("season").toString());
        new ToolOutput().run("pages", folder.resolve("catalogue").toString(), "--format", "html");
        return out;
    }
}
