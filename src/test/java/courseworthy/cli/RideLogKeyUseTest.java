package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every key of a log, of a stock and of a part's intervals is used by a season: each is changed in an example that has them all. */
class RideLogKeyUseTest {

    private static final String SEASON = """
            riders: [{name: Ann, workshop: w.yaml}]
            events: [{course: c.yaml, date: 2026-06-20}]
            """;
    private static final String WORKSHOP = """
            log: log.yaml
            stock:
              - {name: jug, kind: sealant, quantity: 80 ml, keep: 30 ml, for: [milk], price: 26, counted: 2026-02-28}
              - {name: can, kind: brake fluid, quantity: 50 ml, keep: 50 ml, counted: 2026-02-28}
              - {name: links in a bag, kind: chain, quantity: 0, keep: 1, for: [pony], price: 30, counted: 2026-02-28}
              - {name: tubes, kind: tube, quantity: 1, counted: 2026-02-28}
            bikes:
              - {name: pony, kind: gravel, mass: 9 kg, hours used: 90 h, fitted: 2026-02-01, intervals: [{job: headset bearings, hours: 100 h, length: 2000 km, days: 60}]}
            parts:
              - {name: hoop, kind: wheel, on: pony, end: rear, mass: 900 g, hours used: 40 h}
              - {name: milk, kind: sealant, on: hoop, mass: 60 g, added: 2026-02-01}
              - {name: other hoop, kind: wheel, end: rear, mass: 900 g, hours used: 40 h}
              - {name: links, kind: chain, on: pony, mass: 250 g, hours used: 5 h}
              - {name: legs, kind: fork, on: pony, mass: 900 g, fitted: 2026-02-01, intervals: [{job: look, hours: 40 h}, {job: paint, length: 400 km}, {job: wax, days: 100}]}
              - {name: pads, kind: brake pads, on: pony, end: rear, mass: 20 g, left: 1.8 mm, least left: 0.8 mm}
              - {name: disc, kind: rotor, on: hoop, mass: 120 g, thickness: 1.7 mm, least thickness: 1.5 mm}
            """;
    private static final String LOG = """
            log: Spring
            rides:
              - {date: 2026-03-01, bike: pony, hours: 9:30 h, length: 30 km, punctures: [tubes], going: wet, mud: 20 %, with: [other hoop]}
              - {from: 2026-01-05, to: 2026-02-20, bike: pony, hours: 20 h, length: 200 km, going: damp}
              - {bike: pony, recordings: a.gpx, going: dry}
              - {date: 2026-03-04, bike: pony, debrief: heather-ridge.yaml}
            service:
              - {date: 2026-03-02, part: pony, job: headset bearings}
              - {date: 2026-03-02, part: links, wear: 0.2 %}
              - {date: 2026-03-03, part: pads, left: 1.5 mm}
              - {date: 2026-03-03, part: disc, thickness: 1.6 mm}
            used:
              - {date: 2026-03-05, stock: jug, quantity: 20 ml}
            each week:
              - {bike: pony, hours: 5 h, length: 70 km, going: wet, mud: 10 %, with: [other hoop]}
            """;
    private static final List<String> COMMANDS = List.of("season . --format json", "season .");
    /** Values that agree with what else the example says. */
    private static final Map<String, List<String>> OTHERS = Map.ofEntries(Map.entry("log/rides/bike", List.of("donkey")), Map.entry("log/each week/bike", List.of("donkey")),
            Map.entry("log/rides/date", List.of("2026-03-04")), Map.entry("log/rides/from", List.of("2026-02-18")), Map.entry("log/rides/to", List.of("2026-01-20")),
            Map.entry("log/rides/punctures", List.of("plugs")), Map.entry("log/rides/with", List.of("hoop")), Map.entry("log/each week/with", List.of("hoop")), Map.entry("log/rides/recordings", List.of("b.gpx")),
            Map.entry("log/rides/debrief", List.of("other.yaml")), Map.entry("log/service/part", List.of("donkey")), Map.entry("log/service/job", List.of("check for wear")),
            Map.entry("log/service/date", List.of("2026-04-20")), Map.entry("log/used/date", List.of("2026-02-10")), Map.entry("log/used/stock", List.of("can")),
            Map.entry("workshop/stock/name", List.of("tin")), Map.entry("workshop/stock/kind", List.of("brake fluid")), Map.entry("workshop/stock/for", List.of("donkey")),
            Map.entry("workshop/stock/counted", List.of("2026-04-01")), Map.entry("workshop/log", List.of("other-log.yaml")),
            Map.entry("workshop/parts/fork/fitted", List.of("2026-03-01")), Map.entry("workshop/bikes/fitted", List.of("2026-03-03")));

    @TempDir
    private Path folder;

    @BeforeEach
    void files() throws IOException {
        Files.writeString(folder.resolve("season.yaml"), SEASON);
        Files.writeString(folder.resolve("w.yaml"), WORKSHOP.replace("parts:", "  - {name: donkey, kind: gravel, mass: 12 kg}\nparts:"));
        Files.writeString(folder.resolve("c.yaml"), "name: Lane\nsummary: A lane\nstretches:\n  - {length: 30 km, ascent: 200 m, descent: 200 m, surface: gravel}\n");
        Files.writeString(folder.resolve("log.yaml"), LOG);
        Files.writeString(folder.resolve("other-log.yaml"), "rides: [{date: 2026-03-01, bike: pony, hours: 3 h}]\n");
        String debrief = Files.readString(Path.of("docs/examples/debriefs/heather-ridge.yaml"));
        Files.writeString(folder.resolve("heather-ridge.yaml"), debrief);
        Files.writeString(folder.resolve("other.yaml"), debrief.replace("hours: 4:12 h", "hours: 14:12 h"));
        Files.copy(Path.of("docs/examples/debriefs/heather-ridge.json"), folder.resolve("heather-ridge.json"));
        Files.copy(Path.of("docs/examples/recordings/evening-1.gpx"), folder.resolve("a.gpx"));
        Files.copy(Path.of("docs/examples/recordings/evening-2.gpx"), folder.resolve("b.gpx"));
    }

    @Test
    void everyKeyOfALogIsUsed() throws IOException {
        KeyUse use = new KeyUse(folder, "log", OTHERS);
        use.look(folder.resolve("log.yaml"), COMMANDS);
        assertThat(use.unseen()).isEmpty();
        // The name of a log is for those who read it.
        use.unused().remove("log");
        assertThat(use.unused()).isEmpty();
    }

    /** Of the kinds of parts a fork stands for all: they have the same three keys. */
    @Test
    void everyKeyOfAStockAndOfIntervalsIsUsed() throws IOException {
        Map<String, List<JsonNode>> keys = new LinkedHashMap<>(SchemaKeys.of("workshop"));
        keys.keySet().removeIf(key -> !key.startsWith("stock/") && !key.equals("log") && !key.startsWith("parts/fork/intervals") && !key.equals("parts/fork/fitted")
                && !key.startsWith("bikes/intervals") && !key.equals("bikes/fitted") && !key.equals("bikes/hours used") && !key.equals("parts/brake pads/least left"));
        KeyUse use = new KeyUse(folder, "workshop", OTHERS, keys);
        use.look(folder.resolve("w.yaml"), COMMANDS);
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }
}
