package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Stretch;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.Cases;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that someone spoilt in any of many ways end in faults or in sound values, never in an exception. */
class ReadersNeverThrowTest {

    private static final String[] JUNK = {"", "yes", "-1", "0", "84", "84 km", "1e9 km", "0.0000001 m", "-5 m", "99999999999999999999 km", "100 %",
        "NaN", "[]", "{}", "[a, {b: c}]", "{a: b}", "\"\"", "'x'", "&a b", "*a", "!!int 3", "|", ">", "? x", "# gone", "x: y", "2026-13-45",
        "24:61", "+99:99", "grade9", "9-", "\t", "\u0000", "\ud83d\udeb2", "../../../etc/passwd", "none"};

    @TempDir
    Path folder;

    private final Random random = new Random(17);

    @Test
    void spoiltCourses() throws IOException {
        for (String name : List.of("heather-ridge", "grey-shoulder", "three-becks")) {
            String text = Files.readString(Path.of("course-profiles", name + ".yaml"));
            for (int i = 0; i < 700; i++) {
                Path file = written("p.yaml", spoilt(text));
                Faults faults = new Faults();
                Course course = CourseReader.read(file, "p.yaml", i % 3 == 0 ? JUNK[i % JUNK.length] : null, faults);
                assertThat(course == null).as(() -> contents(file)).isEqualTo(faults.stop());
                if (course != null) {
                    assertThat(course.stretches()).isNotEmpty().as(() -> contents(file)).allSatisfy(ReadersNeverThrowTest::assertSound);
                    assertThat(course.length()).isBetween(1.0, 3_000_000.0);
                }
                assertTold(faults);
            }
        }
    }

    @Test
    void spoiltRidersAndEvents() throws IOException {
        String rider = Files.readString(Path.of("docs", "examples", "riders", "kim-cross-country.yaml"));
        String event = Files.readString(Path.of("docs", "examples", "events", "grey-shoulder.yaml"));
        for (int i = 0; i < 1500; i++) {
            Faults faults = new Faults();
            Rider read = RiderReader.read(written("r.yaml", spoilt(rider)), "r.yaml", faults);
            assertThat(read != null || faults.stop()).isTrue();
            Event day = EventReader.read(written("e.yaml", spoilt(event)), "e.yaml", faults);
            assertThat(day != null || faults.stop()).isTrue();
            if (day != null && day.bike() != null) {
                BikeReader.read("e.yaml", day.bike(), faults);
            }
            assertTold(faults);
        }
    }

    @Test
    void spoiltWorkshops() throws IOException {
        String text = Files.readString(Path.of("docs", "examples", "workshops", "cellar.yaml"));
        for (int i = 0; i < 1000; i++) {
            Faults faults = new Faults();
            Workshop read = WorkshopReader.read(written("w.yaml", spoilt(text)), "w.yaml", faults);
            assertThat(read != null || faults.stop()).isTrue();
            if (read != null) {
                read.bikes().forEach(bike -> assertThat(read.mounted(bike)).doesNotContainValue(null));
            }
            assertTold(faults);
        }
    }

    @Test
    void spoiltSheetsAndCases() throws IOException {
        String sheet = Files.readString(Path.of("docs", "examples", "sheets", "hill-country.yaml"));
        String cases = Files.readString(Path.of("docs", "examples", "sheets", "hill-country.cases.yaml"));
        for (int i = 0; i < Draws.of(1000); i++) {
            Faults faults = new Faults();
            Sheet read = SheetReader.read(written("s.yaml", spoilt(sheet)), "s.yaml", 0, faults);
            assertThat(read != null || faults.stop()).isTrue();
            Cases tried = CaseReader.read(written("c.yaml", spoilt(cases)), "c.yaml", "Hill country", faults);
            assertThat(tried.ofRules()).doesNotContainNull();
            assertThat(tried.calls()).doesNotContainNull();
            assertTold(faults);
        }
    }

    private static void assertSound(Stretch stretch) {
        assertThat(stretch.length()).isBetween(0.98, 2_040_000.0);
        assertThat(stretch.ascent() == null || stretch.ascent() >= 0).isTrue();
        assertThat(stretch.descent() == null || stretch.descent() >= 0).isTrue();
        assertThat(stretch.ground()).isNotNull();
    }

    private static void assertTold(Faults faults) {
        for (Fault fault : faults.faults()) {
            assertThat(fault.found()).isNotEmpty();
            assertThat(fault.expected()).isNotEmpty();
            assertThat(fault.text()).doesNotContain("Exception", "null", "java.");
        }
    }

    private static String contents(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** One to three slips: a line lost, doubled, moved, indented, cut, or given another value. */
    private String spoilt(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n")));
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(lines.size());
            String line = lines.get(at);
            switch (random.nextInt(7)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.set(at, " ".repeat(random.nextInt(4)) + line);
                case 3 -> lines.set(at, line.substring(0, random.nextInt(line.length() + 1)));
                case 4 -> lines.add(random.nextInt(lines.size() + 1), JUNK[random.nextInt(JUNK.length)]);
                default -> lines.set(at, otherValue(line));
            }
            if (lines.isEmpty()) {
                lines.add("");
            }
        }
        return String.join("\n", lines);
    }

    private String otherValue(String line) {
        String junk = JUNK[random.nextInt(JUNK.length)];
        List<Integer> colons = new ArrayList<>();
        for (int at = line.indexOf(": "); at >= 0; at = line.indexOf(": ", at + 1)) {
            colons.add(at);
        }
        if (colons.isEmpty()) {
            return junk;
        }
        int colon = colons.get(random.nextInt(colons.size()));
        int end = line.indexOf(',', colon);
        return line.substring(0, colon + 2) + junk + (end < 0 ? "" : line.substring(end));
    }

    /** Half a pair of surrogates, which spoiling may leave, is no text that a file can hold: it becomes a question mark. */
    private Path written(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }
}
