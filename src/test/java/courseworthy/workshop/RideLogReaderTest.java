package courseworthy.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.workshop.RideLog.Conditions;
import courseworthy.workshop.RideLog.LoggedRide;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The log of a workshop, its stock and the intervals of its parts: what is read, and slips, each alone, with all that is said of it. */
class RideLogReaderTest {

    private static final String WORKSHOP = """
            log: log.yaml
            stock:
              - {name: jug, kind: sealant, quantity: 250 ml, keep: 60 ml, for: [pony, hoop], price: 26, counted: 2026-02-28}
              - {name: inner tubes, kind: tube, quantity: 3}
            bikes:
              - {name: pony, mass: 9 kg, hours used: 40 h, fitted: 2026-01-01}
            parts:
              - {name: hoop, kind: wheel, on: pony, end: rear, mass: 900 g}
              - {name: links, kind: chain, on: pony, mass: 250 g, intervals: [{job: renew, hours: 90 h, length: 2000 km, days: 300}]}
              - {name: pads, kind: brake pads, on: pony, end: rear, mass: 20 g, least left: 0.8 mm}
            """;
    private static final String LOG = """
            log: Spring
            rides:
              - {date: 2026-03-01, bike: pony, hours: 2:30 h, length: 30 km, punctures: [tubes, plugs, not at all], going: wet, mud: 20 %, with: [hoop]}
              - {from: 2026-01-05, to: 2026-02-01, bike: pony, hours: 20 h}
              - {date: 2026-03-04, bike: pony, debrief: race.yaml}
              - {bike: pony, recordings: rides, going: dry}
            service:
              - {date: 2026-03-02, part: links, job: renew}
              - {date: 2026-03-09, part: pads, left: 1.2 mm}
            used:
              - {date: 2026-03-03, stock: jug, quantity: 60 ml}
              - {date: 2026-03-03, stock: inner tubes}
            each week:
              - {bike: pony, hours: 5 h, length: 70 km, going: dry}
            """;

    @TempDir
    private Path folder;

    private final Faults faults = new Faults();

    private Workshop read(String workshop, String log) throws IOException {
        Files.writeString(folder.resolve("log.yaml"), log);
        return WorkshopReader.read(Files.writeString(folder.resolve("w.yaml"), workshop), "shed/w.yaml", faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void whatIsWrittenIsRead() throws IOException {
        RideLog log = read(WORKSHOP, LOG).log();
        assertThat(said()).isEmpty();
        assertThat(log.name()).isEqualTo("Spring");
        assertThat(log.file()).isEqualTo("shed/log.yaml");
        assertThat(log.rides()).containsExactly(
                new LoggedRide(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 1), 9000, 30_000.0, new Conditions("pony", "wet", 0.2, List.of("hoop"))),
                new LoggedRide(LocalDate.of(2026, 1, 5), LocalDate.of(2026, 2, 1), 72_000, null, new Conditions("pony", null, null, List.of())));
        assertThat(log.sources()).extracting(RideLog.LogSource::key, RideLog.LogSource::path, RideLog.LogSource::line)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("debrief", "race.yaml", 5), org.assertj.core.groups.Tuple.tuple("recordings", "rides", 6));
        assertThat(log.services()).extracting(RideLog.Service::part, RideLog.Service::job, RideLog.Service::measured)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("links", "renew", Map.of()),
                        org.assertj.core.groups.Tuple.tuple("pads", null, Map.of(PartDetail.LEFT, 0.0012)));
        assertThat(log.uses()).extracting(RideLog.StockUse::stock, RideLog.StockUse::quantity)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("jug", 0.06), org.assertj.core.groups.Tuple.tuple("inner tubes", 1.0));
        assertThat(log.punctures()).containsExactly(new RideLog.Puncture(LocalDate.of(2026, 3, 1), "pony", "tube"), new RideLog.Puncture(LocalDate.of(2026, 3, 1), "pony", "plugs"));
        assertThat(log.weekly().get(0).hours()).isEqualTo(18_000, within(0.1));
        assertThat(log.first()).isEqualTo(LocalDate.of(2026, 1, 5));
        assertThat(log.last()).isEqualTo(LocalDate.of(2026, 3, 9));
    }

    @Test
    void theStockAndIntervalsAreRead() throws IOException {
        Workshop workshop = read(WORKSHOP, LOG);
        assertThat(workshop.stock()).containsExactly(
                new StockItem("jug", "sealant", 0.25, 0.06, List.of("pony", "hoop"), 26.0, LocalDate.of(2026, 2, 28), 3),
                new StockItem("inner tubes", "tube", 3, 0, List.of(), null, null, 4));
        assertThat(workshop.find("links").intervals()).containsExactly(new Part.StatedInterval("renew", 324_000.0, 2e6, 300));
        assertThat(workshop.find("pads").number(PartDetail.LEAST_LEFT)).isEqualTo(0.0008, within(1e-9));
        assertThat(workshop.without(java.util.Set.of("pads")).log()).isSameAs(workshop.log());
    }

    /** Dates are of one ride or of a span; hours, a debrief or recordings, one of them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "hours: 20 h | going: dry | shed/log.yaml:4: debrief: found no hours, expected one of: hours, debrief, recordings;"
                + "Write the hours ridden, or name the file or folder that has them.",
        "hours: 20 h | hours: 20 h, debrief: race.yaml | shed/log.yaml:4: hours: found more than one of hours, debrief and recordings, expected one of: hours, debrief, "
                + "recordings;Write the hours ridden, or name the file or folder that has them.",
        "recordings: rides | recordings: rides, length: 3 km | shed/log.yaml:6: length: found length beside recordings, expected no length;"
                + "Recordings have their own days and distances.",
        "[tubes, plugs, | [tubs, plugs, | shed/log.yaml:3: punctures: found \"tubs\", expected what each was repaired with: sealant, plugs, tubes, not at all;"
                + "Did you mean \"tubes\"?",
        "recordings: rides | recordings: rides, punctures: [tubes] | shed/log.yaml:6: punctures: found punctures of rides in a file, expected punctures of a ride with its hours;"
                + "Write them in the debrief, or what they took under used.",
        "date: 2026-03-04, bike | bike | shed/log.yaml:5: date: found no date, expected the day of the ride;Add \"date: 2026-05-09\".",
        "from: 2026-01-05, to | to | shed/log.yaml:4: date: found no single day and no first and last day, expected date alone, or from and to;"
                + "Write \"date: 2026-05-09\", or \"from: 2026-01-05\" and \"to: 2026-03-01\".",
        "to: 2026-02-01 | to: 2026-01-04 | shed/log.yaml:4: to: found \"2026-01-04\", expected a day not before from",
        "hours: 2:30 h | hours: 25 h | shed/log.yaml:3: hours: found \"25 h\" in one day, expected at most 24 h a day",
        "date: 2026-03-04, bike: pony, debrief: race.yaml | date: 2026-03-01, bike: pony, hours: 22 h | shed/log.yaml:5: hours: found 25 h on pony on 2026-03-01 in all, "
                + "expected at most 24 h a day",
        "bike: pony, hours: 20 h | bike: poney, hours: 20 h | shed/log.yaml:4: bike: found \"poney\", which is not in the workshop, expected a bike of the workshop;"
                + "Did you mean \"pony\"?",
        "with: [hoop] | with: [zebra] | shed/log.yaml:3: with: found \"zebra\", which is not in the workshop, expected a part of the workshop;"
                + "Write the name as in the workshop's file.",
        "job: renew | mass: 3 kg | shed/log.yaml:8: mass: found an unknown key, expected one of: date, part, job, wear, left, thickness;@"
                + "shed/log.yaml:8: job: found neither a job nor a measurement, expected job, wear, left or thickness;Write what was done: \"job: renew\".",
        "links, job: renew | links, left: 1 mm | shed/log.yaml:8: left: found left of a chain, expected wear of a chain, left of brake pads, thickness of a rotor",
        "stock: jug, quantity: 60 ml | stock: jug | shed/log.yaml:11: quantity: found no quantity of a liquid, expected a volume;Add \"quantity: 60 ml\".",
        "stock: inner tubes | stock: inner tub | shed/log.yaml:12: stock: found \"inner tub\", which is not in the workshop, expected a stock of the workshop;Did you mean \"inner tubes\"?",
        "debrief: race.yaml | debrief: ../race.yaml | shed/log.yaml:5: debrief: found \"../race.yaml\", expected a path beside the log or below it;"
                + "Copy it into the log's folder."})
    void aSlipInALogIsSaidInFull(String good, String wrong, String message) throws IOException {
        assertThat(LOG).contains(good);
        read(WORKSHOP, LOG.replace(good, wrong));
        assertThat(String.join("@", said())).isEqualTo(message.replace(";@", "@").replace(";", "\n    "));
    }

    @Test
    void aWeekHasNoMoreThanItsHours() throws IOException {
        read(WORKSHOP, LOG + "  - {bike: pony, hours: 99 h}\n  - {bike: pony, hours: 64:30 h}\n");
        assertThat(said()).containsExactly("shed/log.yaml:16: hours: found 169 h on pony each week in all, expected at most 168 h a week");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "log: log.yaml | log: ../log.yaml | shed/w.yaml:1: log: found \"../log.yaml\", expected a path beside the workshop's file or below it;"
                + "Put the log beside the workshop's file.",
        "name: inner tubes | name: jug | shed/w.yaml:4: name: found a second \"jug\", expected a name of its own for every stock",
        "for: [pony, hoop] | for: [pony, hop] | shed/w.yaml:3: for: found \"hop\", which is neither a bike nor a part, expected names of bikes and parts;"
                + "Did you mean \"hoop\"?",
        "{job: renew, hours: 90 h, length: 2000 km, days: 300} | {job: renew} | shed/w.yaml:9: hours: found no hours, length or days, expected at least one of them;"
                + "Write how often the maker has it done: \"hours: 50 h\".",
        "[{job: renew, | [{job: renew, days: 3}, {job: renew, | shed/w.yaml:9: job: found a second \"renew\", expected each job once"})
    void aSlipInAWorkshopIsSaidInFull(String good, String wrong, String message) throws IOException {
        assertThat(WORKSHOP).contains(good);
        read(WORKSHOP.replace(good, wrong), LOG.replaceAll("(?s)used:.*each", "each"));
        assertThat(said().get(0)).startsWith(message.replace(";", "\n    "));
    }

    @Test
    void aLinkThatLeadsOutIsNotFollowed() throws IOException {
        Path shed = Files.createDirectory(folder.resolve("shed"));
        Files.writeString(folder.resolve("log.yaml"), LOG);
        Files.createSymbolicLink(shed.resolve("log.yaml"), folder.resolve("log.yaml"));
        WorkshopReader.read(Files.writeString(shed.resolve("w.yaml"), WORKSHOP), "shed/w.yaml", faults);
        assertThat(said()).containsExactly("shed/w.yaml:1: log: found \"log.yaml\", a link that leads out of the folder, expected a path beside the workshop's file "
                + "or below it\n    Copy the log into the folder.");
    }
}
