package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.workshop.RideLog.Puncture;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rides that a log takes from debriefs and recordings. */
class RideLogFilesTest {

    @TempDir
    private Path folder;

    private final Faults faults = new Faults();

    @BeforeEach
    void files() throws IOException {
        for (String name : List.of("heather-ridge.json", "heather-ridge.yaml")) {
            Files.copy(Path.of("docs", "examples", "debriefs", name), folder.resolve(name));
        }
        Files.writeString(folder.resolve("w.yaml"), "log: log.yaml\nbikes:\n  - {name: pony, mass: 9 kg}\nparts:\n"
                + "  - {name: links, kind: chain, on: pony, mass: 250 g}\n  - {name: legs, kind: fork, on: pony, mass: 2 kg, intervals: [{job: oils and seals, hours: 50 h}]}\n");
    }

    private Workshop read(String rides) throws IOException {
        Files.writeString(folder.resolve("log.yaml"), rides);
        return RideLogFiles.read(WorkshopReader.read(folder.resolve("w.yaml"), "shed/w.yaml", faults), faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** An hour north at 0.01 degree in six minutes, 1.11 km by the meridian arc of 111 km a degree, and a rest of an hour in between. */
    private static String recording(String day) {
        StringBuilder out = new StringBuilder("<gpx version=\"1.1\" creator=\"hand\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>");
        for (int i = 0; i <= 10; i++) {
            int minutes = i * 6 + (i > 5 ? 60 : 0);
            out.append(String.format("<trkpt lat=\"%.2f\" lon=\"-28\"><time>%sT%02d:%02d:00Z</time></trkpt>", 44.5 + i * 0.01, day, 8 + minutes / 60, minutes % 60));
            if (i == 5) {
                out.append(String.format("<trkpt lat=\"%.2f\" lon=\"-28\"><time>%sT09:30:00Z</time></trkpt>", 44.55, day));
            }
        }
        return out.append("</trkseg></trk></gpx>").toString();
    }

    @Test
    void aFolderOfRecordingsIsSummedByDay() throws IOException {
        Path rides = Files.createDirectory(folder.resolve("rides"));
        Files.writeString(rides.resolve("a.gpx"), recording("2026-04-01"));
        Files.writeString(rides.resolve("b.gpx"), recording("2026-04-03"));
        Files.writeString(rides.resolve("notes.txt"), "none");
        List<LoggedRide> out = read("rides:\n  - {bike: pony, recordings: rides, going: damp}\n").log().rides();
        assertThat(said()).isEmpty();
        assertThat(out).extracting(LoggedRide::from).containsExactly(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 4, 3));
        assertThat(out).allSatisfy(ride -> {
            assertThat(ride.hours()).isEqualTo(3600, within(1.0));
            assertThat(ride.length()).isEqualTo(11_110, within(20.0));
            assertThat(ride.on().going()).isEqualTo("damp");
        });
    }

    /** Hours and going as the debrief has them: 4:12 h, dry. */
    @Test
    void aDebriefGivesHoursAndGoing() throws IOException {
        LoggedRide ride = read("rides:\n  - {date: 2026-06-20, bike: pony, debrief: heather-ridge.yaml}\n").log().rides().get(0);
        assertThat(ride.hours()).isEqualTo(15_120, within(0.5));
        assertThat(ride.on().going()).isEqualTo("dry");
        assertThat(read("rides:\n  - {date: 2026-06-20, bike: pony, going: wet, debrief: heather-ridge.yaml}\n").log().rides().get(0).on().going()).isEqualTo("wet");
    }

    /** Its puncture was repaired with plugs on the day of the ride; of one that was not repaired nothing was taken. */
    @Test
    void aDebriefGivesPunctures() throws IOException {
        String rides = "rides:\n  - {date: 2026-06-20, bike: pony, debrief: heather-ridge.yaml}\n";
        assertThat(read(rides).log().punctures()).containsExactly(new Puncture(LocalDate.of(2026, 6, 20), "pony", "plugs"));
        Path debrief = folder.resolve("heather-ridge.yaml");
        Files.writeString(debrief, Files.readString(debrief).replace("repaired with: plugs", "repaired with: not at all"));
        assertThat(read(rides).log().punctures()).isEmpty();
        assertThat(said()).isEmpty();
    }

    @Test
    void whatCannotBeUsedIsSaid() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        Files.writeString(folder.resolve("short.yaml"), Files.readString(folder.resolve("heather-ridge.yaml")).replace("hours: 4:12 h", ""));
        read("""
                rides:
                  - {bike: pony, recordings: empty}
                  - {bike: pony, recordings: gone}
                  - {date: 2026-06-20, bike: pony, debrief: short.yaml}
                service:
                  - {date: 2026-06-20, part: links, job: renw}
                  - {date: 2026-06-20, part: pony, job: paint}
                """);
        assertThat(said()).containsExactly(
                "shed/log.yaml:2: recordings: found \"empty\", a folder without recordings, expected a folder of recordings (GPX), or one, beside the log or below it\n"
                        + "    Copy the recorded rides there as GPX files.",
                "shed/log.yaml:3: recordings: found \"gone\", which is not there, expected a folder of recordings (GPX), or one, beside the log or below it\n"
                        + "    Check the spelling of the path.",
                "shed/log.yaml:4: debrief: found \"short.yaml\", which gives no hours, expected a debrief beside the log or below it\n"
                        + "    Add \"hours: 4:12 h\" to the debrief.",
                "shed/log.yaml:6: job: found \"renw\" on a chain, expected one of: renew\n    Did you mean \"renew\"?",
                "shed/log.yaml:7: job: found \"paint\" on a bike, expected one of: bleed the brakes or renew their cables, headset bearings, pivot bearings, "
                        + "check for wear, renew\n    Or state it among the part's intervals in the workshop's file.");
        assertThat(faults.warnings()).extracting(Fault::text).containsExactly("shed/w.yaml:6: warning: intervals: found job \"oils and seals\" of \"legs\", expected a job of "
                + "its own\n    Did you mean \"oil and seals\"?");
    }

    private Workshop added(String workshop, String path, String bike) throws IOException {
        Path file = Files.writeString(folder.resolve("other.yaml"), workshop);
        return RideLogFiles.add(WorkshopReader.read(file, "other.yaml", faults), new RecordedRides(path, bike), folder.resolve(path), faults);
    }

    /** Without a log or beside one; the only bike need not be named. */
    @Test
    void recordingsAreAddedFromTheCommandLine() throws IOException {
        Path rides = Files.createDirectory(folder.resolve("rides"));
        Files.writeString(rides.resolve("a.gpx"), recording("2026-04-01"));
        Files.writeString(rides.resolve("b.gpx"), recording("2026-04-03"));
        assertThat(added("bikes: [{name: pony, mass: 9 kg}]\n", "rides", null).log().rides()).hasSize(2)
                .allSatisfy(ride -> assertThat(ride.on().bike()).isEqualTo("pony"));
        Files.writeString(folder.resolve("log.yaml"), "rides: [{date: 2026-03-01, bike: pony, hours: 3 h}]\n");
        assertThat(added("log: log.yaml\nbikes: [{name: pony, mass: 9 kg}, {name: donkey, mass: 9 kg}]\n", "rides/a.gpx", "donkey").log().rides())
                .extracting(ride -> ride.on().bike()).containsExactly("pony", "donkey");
        assertThat(said()).isEmpty();
    }

    @Test
    void recordingsThatCannotBeAddedAreRefused() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        String two = "bikes: [{name: pony, mass: 9 kg}, {name: donkey, mass: 9 kg}]\n";
        added(two, "gone", "pony");
        added(two, "empty", null);
        added(two, "empty", "ponny");
        assertThat(said()).containsExactlyInAnyOrder("--log: found \"gone\", which is not there, expected a recorded ride (GPX), or a folder of them\n    Check the spelling of the path.",
                "--log-bike: found nothing, expected the bike of the recorded rides: pony, donkey",
                "--log: found \"empty\", a folder without recordings, expected a recorded ride (GPX), or a folder of them\n    Copy the recorded rides there as GPX files.",
                "--log-bike: found \"ponny\", expected the bike of the recorded rides: pony, donkey\n    Did you mean \"pony\"?");
    }

    @Test
    void aLinkThatLeadsOutIsNotFollowed() throws IOException {
        Path shed = Files.createDirectory(folder.resolve("shed"));
        Files.createDirectory(folder.resolve("rides"));
        Files.createSymbolicLink(shed.resolve("rides"), folder.resolve("rides"));
        Files.writeString(shed.resolve("log.yaml"), "rides:\n  - {bike: pony, recordings: rides}\n");
        Files.copy(folder.resolve("w.yaml"), shed.resolve("w.yaml"));
        RideLogFiles.read(WorkshopReader.read(shed.resolve("w.yaml"), "w.yaml", faults), faults);
        assertThat(said()).containsExactly("log.yaml:2: recordings: found \"rides\", a link that leads out of the log's folder, expected a folder of recordings (GPX), "
                + "or one, beside the log or below it\n    Copy it into the folder.");
    }
}
