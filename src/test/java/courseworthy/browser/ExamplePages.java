package courseworthy.browser;

import courseworthy.ToolOutput;
import courseworthy.report.BriefReport;
import courseworthy.report.StagesReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The pages that commands make of the shipped examples, by a name for each. */
public final class ExamplePages {

    private static final String COURSE = "heather-ridge";
    private static final List<String> RIDE = List.of("--event", "docs/examples/events/heather-ridge.yaml", "--rider", "docs/examples/riders/ida-hardtail.yaml");

    private static final String STAGES = "docs/examples/events/three-becks.yaml";

    private static final String CELLAR = "docs/examples/workshops/cellar.yaml";
    private static final String SEASON = "season";
    private static final String CATALOGUE = "catalogue";
    /** Pages of the catalogue that there is one of, and two that were wide. */
    private static final Set<String> LISTS = Set.of("index.html", "all.html", "stretches.html", "rear-tyre-casing.html");

    private static final Map<String, List<String>> LINES = new LinkedHashMap<>();

    static {
        add("brief", "brief", COURSE, "--full", "--workshop", CELLAR);
        add("brief in short", "brief", COURSE);
        add("topic", "brief", COURSE, "--topic", "rear tyre casing");
        add("why", "why", COURSE, "rear tyre casing");
        add("compare", "compare", COURSE, "--set", "front tyre casing=heavy, rear tyre casing=heavy", "--set", "bike=gravel");
        add("gears", "gears", COURSE);
        add("checklist", "checklist", COURSE);
        add("checklist of another day", "checklist", COURSE, "--date", "2026-06-21");
        LINES.put("checklist of another rider", List.of("checklist", COURSE, "--event", "docs/examples/events/heather-ridge.yaml", "--rider",
                "docs/examples/riders/joss-steel.yaml"));
        LINES.put("position", List.of("position", CELLAR));
        LINES.put("season", List.of("season", "docs/examples"));
        LINES.put("course", List.of("course", COURSE));
        LINES.put("scout", List.of("scout", "docs/examples/maps/sorrel-wood.gpx"));
        LINES.put("debrief", List.of("debrief", "docs/examples/debriefs/heather-ridge.yaml"));
        LINES.put("topics", List.of("topics"));
        add("reasons", "brief", COURSE, "--part", "reasons");
        LINES.put("pits", List.of("brief", "larch-common", "--event", "docs/examples/events/larch-common.yaml", "--workshop", CELLAR));
        LINES.put("checklist with pits", List.of("checklist", "larch-common", "--event", "docs/examples/events/larch-common.yaml"));
        LINES.put("season by week", List.of("season", "docs/examples", "--by-week"));
        LINES.put("stages", List.of("stages", STAGES, "--rider", "docs/examples/riders/kim-cross-country.yaml"));
        LINES.put("stages out of a workshop", List.of("stages", STAGES, "--rider", "docs/examples/riders/joss-steel.yaml", "--workshop", CELLAR));
        LINES.put("a stage", List.of("stages", STAGES, "--rider", "docs/examples/riders/kim-cross-country.yaml", "--stage", "2"));
        LINES.put("roster", List.of("roster", COURSE, "--riders", "docs/examples/riders"));
        LINES.put("similar", List.of("similar", COURSE));
        LINES.put("debriefs", List.of("debrief", "docs/examples/debriefs"));
        LINES.put("rules", List.of("rules"));
        LINES.put("measures", List.of("measures"));
        add("why not", "why", COURSE, "front tyre width", "--not", "45 mm");
        add("why a rule", "why", COURSE, "seatpost", "--rule", "shipped/dropper-on-mountain-bikes");
        LINES.put("position copied", List.of("position", CELLAR, "--from", "steel bike", "--to", "hardtail"));
        LINES.put("scout on a map", List.of("scout", "docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm"));
        LINES.put("brief on a map", List.of("brief", "docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm", "--topic", "bike"));
        LINES.put("sheet check", List.of("sheet", "check", "docs/examples/sheets/hill-country.yaml", "--gaps", "--riders", "docs/examples/riders"));
        LINES.put("sheet test", List.of("sheet", "test", "docs/examples/sheets/hill-country.yaml", "--cover"));
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

    /** The commands by the names of their pages: words of the command line, without a format. */
    public static Map<String, List<String>> commands() {
        return Collections.unmodifiableMap(LINES);
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
        for (String name : LINES.keySet()) {
            out.put(name, write(folder, name, LINES.get(name)));
        }
        new ToolOutput().run("season", "docs/examples", "--format", "html", "-o", folder.resolve(SEASON).toString());
        new ToolOutput().run("pages", folder.resolve(CATALOGUE).toString(), "--format", "html");
        return out;
    }

    /** Writes parts of pages, and other options of commands, whose blocks are on pages above. */
    static Map<String, Path> writeParts(Path folder) throws IOException {
        Map<String, Path> out = new LinkedHashMap<>();
        for (String part : BriefReport.PARTS) {
            List<String> line = new ArrayList<>(List.of("brief", COURSE, "--workshop", CELLAR, "--part", part));
            line.addAll(RIDE);
            out.put("part " + part, write(folder, "part " + part, line));
        }
        for (String part : StagesReport.PARTS) {
            out.put("stages, part " + part, write(folder, "stages, part " + part, List.of("stages", STAGES, "--workshop", CELLAR, "--part", part)));
        }
        return out;
    }

    private static Path write(Path folder, String name, List<String> words) throws IOException {
        List<String> line = new ArrayList<>(words);
        line.addAll(List.of("--format", "html"));
        return Files.writeString(folder.resolve(name.replace(' ', '-') + ".html"), new ToolOutput().run(line.toArray(String[]::new)));
    }

    /** The pages of the example season, of those that were written. */
    static List<Path> season(Map<String, Path> written) throws IOException {
        return under(written, SEASON);
    }

    /** Pages of the catalogue, of those that were written: of each folder the first and every so many. */
    static List<Path> catalogue(Map<String, Path> written, int step) throws IOException {
        Map<Path, Integer> seen = new HashMap<>();
        List<Path> out = new ArrayList<>();
        for (Path each : under(written, CATALOGUE)) {
            if (seen.merge(each.getParent(), 1, Integer::sum) % step == 1 || LISTS.contains(each.getFileName().toString())) {
                out.add(each);
            }
        }
        return out;
    }

    private static List<Path> under(Map<String, Path> written, String folder) throws IOException {
        try (Stream<Path> files = Files.walk(written.values().iterator().next().resolveSibling(folder))) {
            return files.filter(each -> each.toString().endsWith(".html")).sorted().toList();
        }
    }
}
