package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.engine.LargeSheet;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sheets that someone spoilt in any of many ways, looked over: told what is wrong or what is to be looked at, never a stack trace,
 * never a write. The whole is {@code -Dcourseworthy.mutated=50000}.
 */
class MutatedSheetsTest {

    private static final int SHEETS = Integer.getInteger("courseworthy.mutated", 400);

    private static final String[] JUNK = {"", "yes", "-1", "0", "84", "84 km", "1e9 km", "0.0000001 m", "-5 m", "99999999999999999999 km", "100 %",
        "9223372036854775807", "-9223372036854775808 mm", "between 5 h and 3 h", "over 200 %", "under 0 km", "at least", "prefer", "one of []",
        "1000000000000 x ratio needed on the last climb", "0 x hours", "NaN", "[]", "{}", "[a, {b: c}]", "{a: b}", "\"\"", "'x'", "&a b", "*a",
        "!!int 3", "|", ">", "? x", "# gone", "x: y", "2026-13-45", "24:61", "\t", "\u0000", "\ud83d\udeb2", "\ud83d", "../../../etc/passwd",
        "{{{{{{{{{{{{{{{{{{{{{{{{{{", "[[[[[[[[[[[[[[[[[[[[[[[[[[", "none of: [{none of: [{none of: [{hours: over 3 h}]}]}]", "<<: x", "%YAML 1.1",
        "---", "...", "rider: one of [a, a]", "date: between 02-29 and 02-28"};

    @TempDir
    private Path folder;

    private final SplittableRandom chance = new SplittableRandom(23);
    private final List<String> words = new ArrayList<>();

    @Test
    void theyAreToldOfAndNothingElse() throws IOException {
        words.addAll(List.of(JUNK));
        words.addAll(Measure.names());
        words.addAll(Topics.names());
        words.addAll(List.of("any of", "none of", "any stretch", "no stretch", "share of course", "decided", "where", "is", "when", "say", "do",
                "force", "evidence", "source", "because", "id", "leave out", "advice", "sheet", "author", "licence", "version"));
        List<String> sheets = List.of(SheetCommandTest.SHEET, starter(), LargeSheet.of(25, 1), LargeSheet.of(40, 2), everything());
        Path file = folder.resolve("mine.yaml");
        for (String sheet : sheets) {
            assertThat(CommandRun.of("sheet", "check", Files.writeString(file, sheet).toString()).err()).as("unspoilt").isEmpty();
        }
        int usable = 0;
        for (int i = 0; i < SHEETS; i++) {
            byte[] spoilt = spoilt(sheets.get(i % sheets.size()));
            Files.write(file, spoilt);
            CommandRun ran = CommandRun.of("sheet", "check", file.toString());
            usable += ran.code() == 0 ? 1 : 0;
            assertThat(ran.code()).as(() -> ran.err() + text(spoilt)).isIn(0, 2);
            assertThat(ran.out().isEmpty()).as(() -> text(spoilt)).isEqualTo(ran.code() == 2);
            assertThat(ran.out() + ran.err()).as(() -> text(spoilt)).doesNotContain("Exception", "\tat ", "java.", "null");
            assertThat(Files.readAllBytes(file)).isEqualTo(spoilt);
            try (Stream<Path> there = Files.list(folder)) {
                assertThat(there).containsExactly(file);
            }
        }
        assertThat(usable).as("some spoilt sheets must get past the readers").isGreaterThan(SHEETS / 20);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static String starter() throws IOException {
        return Files.readString(Path.of("src", "main", "resources", "courseworthy", "new", "sheet.yaml"));
    }

    /** Every key a sheet can have. */
    private static String everything() {
        return """
                sheet: Everything
                author: a coach
                advice:
                  - id: tired-hands
                    when:
                      decided:
                        bike: one of [cross-country full suspension, trail]
                      roughness: at least rough
                      descent per km: over 18 m
                      hours: between 4:00 h and 9:00 h
                      rider tag: marathon
                      date: between 11-01 and 02-28
                    say:
                      fork travel: [at least 110 mm, prefer 120 mm]
                      seatpost: prefer dropper
                    force: may
                    evidence: published
                    source: A handbook, 2019
                    because: After four hours, rough descents punish tired hands first.
                  - id: no-light-casing
                    when:
                      any stretch: [{sharp stones: yes, length: over 1 km}, {surface: rock}]
                      no stretch: {sand: yes}
                      share of course: {where: {paved: yes}, is: under 40 %}
                      any of:
                        - {role: race, none of: [{aim: podium}]}
                        - {races a year: over 5}
                    say:
                      front tyre casing: at least reinforced
                      easiest gear: at most 0.95 x ratio needed on the last climb
                    force: must
                    because: One stop costs more than the grams ever return.
                  - id: sealant-overnight
                    when:
                      decided: {front sealant: tubeless}
                    do:
                      what: Top up sealant, spin both wheels, lay each side down in turn
                      find: No hiss, no wet spot
                      by: two days before
                      needs: 12:00 h
                      part: tyres
                      after: no-hiss
                    because: Fresh sealant needs a night and a short ride to find its leaks.
                  - id: no-hiss
                    do: {what: Listen, find: No hiss, by: week before}
                    because: A hiss is heard in a quiet room.
                leave out:
                  - rule: shipped/dropper-on-mountain-bikes
                    because: Ours are fitted already.
                """;
    }

    /** One to four slips: a line lost, doubled, moved, indented or cut; a value, a key or some bytes put in the place of others. */
    private byte[] spoilt(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n")));
        boolean numbersAlone = chance.nextInt(4) == 0;
        for (int n = chance.nextInt(4); n >= 0; n--) {
            int at = chance.nextInt(lines.size());
            String line = lines.get(at);
            switch (numbersAlone ? 5 : chance.nextInt(9)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.set(at, " ".repeat(chance.nextInt(4)) + line);
                case 3 -> lines.set(at, line.substring(0, chance.nextInt(line.length() + 1)));
                case 4 -> lines.add(chance.nextInt(lines.size() + 1), word());
                case 5 -> lines.set(at, number(line).isEmpty() ? line : line.replace(number(line), Long.toString(chance.nextLong(-1, 60))));
                case 6 -> lines.add(chance.nextInt(lines.size() + 1), line);
                default -> lines.set(at, otherWord(line));
            }
            if (lines.isEmpty()) {
                lines.add("");
            }
        }
        byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0 && chance.nextInt(10) == 0) {
            bytes[chance.nextInt(bytes.length)] = (byte) chance.nextInt(256);
        }
        return bytes;
    }

    private String word() {
        return words.get(chance.nextInt(words.size()));
    }

    /** The first digits in a line, empty where there are none. */
    private static String number(String line) {
        int from = 0;
        while (from < line.length() && !Character.isDigit(line.charAt(from))) {
            from++;
        }
        int to = from;
        while (to < line.length() && Character.isDigit(line.charAt(to))) {
            to++;
        }
        return line.substring(from, to);
    }

    /** Another key, or another value behind one of the colons. */
    private String otherWord(String line) {
        List<Integer> colons = new ArrayList<>();
        for (int at = line.indexOf(": "); at >= 0; at = line.indexOf(": ", at + 1)) {
            colons.add(at);
        }
        if (colons.isEmpty()) {
            return word();
        }
        int colon = colons.get(chance.nextInt(colons.size()));
        if (chance.nextBoolean()) {
            int from = Math.max(Math.max(line.lastIndexOf("{", colon), line.lastIndexOf(", ", colon)) + 1, line.indexOf(line.strip()));
            return line.substring(0, from) + word() + line.substring(colon);
        }
        int end = line.indexOf(',', colon);
        return line.substring(0, colon + 2) + word() + (end < 0 ? "" : line.substring(end));
    }
}
