package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.WearNote;
import courseworthy.checklist.Checklist;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What falls due before a start is named in its brief and on its checklist, and nothing where there is no log or no day. */
class RideUpkeepTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: pony, kind: gravel, mass: 9 kg}
            parts:
              - {name: legs, kind: fork, on: pony, mass: 2 kg, travel: 40 mm, hours used: 0 h, intervals: [{job: oil and seals, hours: 50 h}]}
              - {name: loose legs, kind: fork, mass: 2 kg, travel: 40 mm, hours used: 70 h, intervals: [{job: oil and seals, hours: 50 h}]}
            """;

    @TempDir
    private Path folder;

    private Brief brief(String log, String date) throws IOException {
        Files.writeString(folder.resolve("w.yaml"), (log == null ? "" : "log: log.yaml\n") + WORKSHOP);
        Files.writeString(folder.resolve("log.yaml"), log == null ? "" : log);
        Files.writeString(folder.resolve("e.yaml"), "name: A day\n" + date);
        Files.writeString(folder.resolve("c.yaml"), "name: Lane\nstretches:\n  - {length: 50 km, ascent: 200 m, descent: 200 m, surface: gravel}\n");
        Request request = Request.builder(folder.resolve("c.yaml").toString()).event(folder.resolve("e.yaml").toString())
                .workshop(folder.resolve("w.yaml").toString()).build();
        return BriefTask.of(new Workspace(null, warning -> { }), request).brief();
    }

    private static List<String> due(Brief brief) {
        return brief.build().wear().stream().map(WearNote::text).toList();
    }

    /** 49.5 h of 50 h by the day before: the ride of about two hours fills it. Of 40 h it leaves some. */
    @Test
    void whatTheRideItselfFillsIsDueBeforeIt() throws IOException {
        Brief brief = brief("rides: [{from: 2026-05-01, to: 2026-06-10, bike: pony, hours: 49:30 h, going: dry}]\neach week: [{bike: pony, hours: 0 h}]\n", "date: 2026-06-20\n");
        assertThat(due(brief)).anyMatch(line -> line.startsWith("legs: due by 2026-06-18 (") && line.endsWith("the manufacturer states 50 h); change oil and seals"));
        assertThat(due(brief)).noneMatch(line -> line.contains("loose legs"));
        assertThat(brief.checklist().sections().stream().flatMap(each -> each.items().stream()).map(Checklist.ChecklistItem::what))
                .contains("legs: change oil and seals");
        assertThat(due(brief("rides: [{date: 2026-06-10, bike: pony, hours: 10 h, going: dry}]\neach week: [{bike: pony, hours: 0 h}]\n", "date: 2026-06-20\n"))).noneMatch(line -> line.contains("oil"));
    }

    @Test
    void withoutALogOrADayNothingIsSaid() throws IOException {
        assertThat(due(brief(null, "date: 2026-06-20\n"))).isEmpty();
        assertThat(due(brief("rides: [{from: 2026-05-01, to: 2026-06-10, bike: pony, hours: 60 h}]\n", ""))).isEmpty();
    }
}
