package courseworthy.problem;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.CourseReader;
import courseworthy.debrief.DebriefReader;
import courseworthy.engine.ShippedRules;
import courseworthy.event.EventReader;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.SheetReader;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file with a key of earlier versions is refused with the present name of the key, in each kind of file that had it. */
class FormerKeysTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            course | rise                     | stretches: [{length: 3 km, rise: 20 m}]                                  | ascent
            course | drop                     | stretches: [{length: 3 km, drop: 20 m}]                                  | descent
            course | drop height              | stretches: [{length: 3 km, drop height: 0.3 m}]                          | ledge height
            event  | ground                   | forecast: {ground: wet}                                                  | going
            event  | ground                   | forecast: {going: dry, or: {ground: wet}}                                | going
            event  | cut-off                  | cut-off: 9:00 h                                                          | time limit
            rider  | fork travel              | bike: {kind: trail, fork travel: 140 mm}                                 | most fork travel
            rider  | rotor limit              | bike: {kind: trail, rotor limit: 200 mm}                                 | most rotor
            rider  | drop limit               | bike: {kind: trail, drop limit: 60 cm}                                   | ledge limit
            rider  | tyre marking             | bike: {kind: trail, tyre marking: 3 bar}                                 | marked tyre pressure
            rider  | rim marking              | bike: {kind: trail, rim marking: 3 bar}                                  | marked rim pressure
            workshop | drop limit             | bikes: [{name: a, mass: 2 kg, drop limit: 60 cm}]                        | ledge limit
            debrief | ground                  | weather: {ground: wet}                                                   | going
            debrief | flats                   | flats: none                                                              | punctures
            debrief | mended with             | punctures: [{wheel: rear, mended with: plugs}]                           | repaired with
            cases  | speaks                   | cases: [{call: a day, course: fernbrake, speaks: [a]}]                   | fires
            workshop | stroke                 | parts: [{name: a, kind: seatpost, stroke: 100 mm}]                       | dropper travel
            workshop | legs                   | parts: [{name: a, kind: fork, legs: standard}]                           | chassis
            sheet  | ground                   | ground: wet                                                              | going
            sheet  | technical grade          | technical grade: over 1                                                  | mtb:scale
            sheet  | hardest technical grade  | hardest technical grade: over 1                                          | hardest mtb:scale
            sheet  | longest climb rise       | longest climb rise: over 100 m                                           | longest climb ascent
            sheet  | last long climb rise     | last long climb rise: over 100 m                                         | last long climb ascent
            sheet  | drop height              | drop height: over 0.2 m                                                  | ledge height
            sheet  | bike drop limit          | bike drop limit: over 0.2 m                                              | bike ledge limit
            sheet  | drop above the mark      | drop above the mark: over 0.2 m                                          | ledge above the mark
            sheet  | cut-off                  | cut-off: under 9:00 h                                                    | time limit
            sheet  | fork travel limit        | fork travel limit: under 120 mm                                          | most fork travel
            sheet  | rotor limit              | rotor limit: under 180 mm                                                | most rotor
            sheet  | tyre marking             | tyre marking: under 3 bar                                                | marked tyre pressure
            sheet  | rim marking              | rim marking: under 3 bar                                                 | marked rim pressure
            sheet  | lower marking            | lower marking: under 3 bar                                               | lower marked pressure
            """)
    void isToldThePresentName(String kind, String former, String text, String now) throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("f.yaml"), kind.equals("sheet")
                ? "sheet: Mine\nauthor: me\nadvice:\n  - id: a\n    when: {" + text + "}\n    say: {plugs: prefer 3}\n    because: So it is.\n" : text + "\n");
        switch (kind) {
            case "course" -> CourseReader.read(file, "f.yaml", null, faults);
            case "event" -> EventReader.read(file, "f.yaml", faults);
            case "rider" -> RiderReader.read(file, "f.yaml", faults);
            case "workshop" -> WorkshopReader.read(file, "f.yaml", faults);
            case "debrief" -> DebriefReader.read(file, "f.yaml", faults);
            case "cases" -> CaseReader.read(file, "f.yaml", "Mine", faults);
            default -> SheetReader.read(file, "f.yaml", 0, faults);
        }
        assertThat(faults.faults()).extracting(Fault::text).filteredOn(each -> each.contains(" " + former + ": found an unknown "))
                .singleElement().asString().endsWith("\n    Write \"" + now + "\", as it is now called.");
    }

    @Test
    void aFormerIdOfAShippedRuleIsToldItsPresentOne() throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("mine.yaml"), "sheet: Mine\nauthor: me\nadvice:\n  - id: a\n    say: {plugs: prefer 3}\n    because: So it is.\n"
                + "leave out:\n  - {rule: house/dropper-on-mountain-bikes, because: Ours are rigid.}\n");
        Rulebook.of(ShippedRules.load().sheets(), List.of(), List.of(SheetReader.read(file, "mine.yaml", 0, faults)), faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("mine.yaml:8: leave out: found \"house/dropper-on-mountain-bikes\", expected the id of a rule in force\n"
                + "    Write \"shipped/dropper-on-mountain-bikes\", as it is now called.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tube: prefer 2          | say: found "tube"                  | tubes
            dropper stroke: prefer 125 mm | say: found "dropper stroke"  | dropper travel
            fork legs: prefer standard | say: found "fork legs"          | fork chassis
            fork chassis: prefer stout | found "stout"                   | stiff
            fork chassis: prefer slim | found "slim"                     | light
            saddle: prefer the proven one | found "the proven one"       | your usual saddle
            """)
    void aFormerTopicOrOptionIsToldItsPresentName(String say, String found, String now) throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("s.yaml"), "sheet: Mine\nauthor: me\nadvice:\n  - id: a\n    say: {" + say + "}\n    because: So it is.\n");
        SheetReader.read(file, "s.yaml", 0, faults);
        assertThat(faults.faults()).extracting(Fault::text).singleElement().asString().contains(found).endsWith("Write \"" + now + "\", as it is now called.");
    }
}
