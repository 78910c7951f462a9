package courseworthy.render.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.render.HostileText;
import courseworthy.report.Calendar;
import courseworthy.report.Calendar.Entry;
import courseworthy.report.RichText;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Files as RFC 5545 has them: a library for iCalendar reads them back, and octets are counted here, which that library does not hold to. */
class CalendarRendererTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);

    /** Clock of Berlin: two hours ahead of UTC in June, one in March before the 29th (IANA time zone database). */
    @Test
    void timesAreUtcWhereTheZoneIsKnown() {
        String summer = CalendarRenderer.render(calendar(ZoneId.of("Europe/Berlin"), DAY.atTime(8, 0), "Moor Cup"));
        String winter = CalendarRenderer.render(calendar(ZoneId.of("Europe/Berlin"), LocalDateTime.of(2026, 3, 28, 8, 0), "Moor Cup"));

        assertThat(summer).contains("\r\nDTSTART:20260620T060000Z\r\n", "\r\nDTEND:20260620T070000Z\r\n");
        assertThat(winter).contains("\r\nDTSTART:20260328T070000Z\r\n");
    }

    @Test
    void timesFloatWhereItIsNot() {
        assertThat(CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), "Moor Cup"))).contains("\r\nDTSTART:20260620T080000\r\n", "\r\nDTEND:20260620T090000\r\n");
    }

    @Test
    void theWholeFileIsAsTheStandardHasIt() {
        assertThat(CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), "A; B, C\\D"))).isEqualTo(String.join("\r\n", "BEGIN:VCALENDAR", "VERSION:2.0",
                "PRODID:-//courseworthy//plan//EN", "CALSCALE:GREGORIAN", "NAME:A\\; B\\, C\\\\D", "BEGIN:VEVENT",
                "UID:" + new ReadCalendar(CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), "A; B, C\\D"))).uids().get(0),
                "DTSTAMP:20260620T000000Z", "LAST-MODIFIED:20260620T000000Z", "SEQUENCE:0", "DTSTART:20260620T080000", "DTEND:20260620T090000", "SUMMARY:A\\; B\\, C\\\\D",
                "DESCRIPTION:first\\nA\\; B\\, C\\\\D", "BEGIN:VALARM", "ACTION:DISPLAY", "TRIGGER:-PT60M", "DESCRIPTION:A\\; B\\, C\\\\D", "END:VALARM",
                "END:VEVENT", "END:VCALENDAR", ""));
    }

    /** RFC 5545, sections 3.8.7.2 to 3.8.7.4: when it was last revised, and a number that grows with each revision. */
    @Test
    void whatIsMadeOfALaterFileIsALaterRevision() {
        assertThat(revised("2026-06-12T19:04:05Z")).contains("\r\nDTSTAMP:20260612T190405Z\r\n", "\r\nLAST-MODIFIED:20260612T190405Z\r\n", "\r\nSEQUENCE:203454245\r\n");
        assertThat(revised("2026-06-12T19:04:06Z")).contains("\r\nSEQUENCE:203454246\r\n");
        assertThat(revised("2019-06-12T19:04:06Z")).contains("\r\nSEQUENCE:0\r\n");
        assertThat(revised("2199-06-12T19:04:06Z")).contains("\r\nSEQUENCE:2147483647\r\n");
    }

    private static String revised(String changed) {
        Entry entry = new Entry(List.of("a"), RichText.of("Work"), List.of(), DAY.atTime(9, 0), DAY.atTime(10, 0), 0);
        String file = CalendarRenderer.render(new Calendar(RichText.of("x"), DAY, null, Instant.parse(changed), List.of(entry)));
        assertThat(new ReadCalendar(file).valid().events()).hasSize(1);
        return file;
    }

    /** What only moves in time, or says other things, stays the same entry; the same words cut elsewhere are another. */
    @Test
    void anEntryIsKnownByItsIdentity() {
        assertThat(uid("a", "b")).isEqualTo(uid("a", "b")).isNotEqualTo(uid("ab", "")).isNotEqualTo(uid("a", "c")).matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
        Entry later = new Entry(List.of("a", "b"), RichText.of("Other"), List.of(), DAY.atTime(9, 0), DAY.atTime(10, 0), 0);
        assertThat(new ReadCalendar(CalendarRenderer.render(new Calendar(RichText.of("x"), DAY, null, null, List.of(later)))).uids()).containsExactly(uid("a", "b"));
    }

    private static String uid(String... identity) {
        Entry entry = new Entry(List.of(identity), RichText.of("T"), List.of(), DAY.atTime(8, 0), DAY.atTime(9, 0), 60);
        return new ReadCalendar(CalendarRenderer.render(new Calendar(RichText.of("x"), DAY, null, null, List.of(entry)))).uids().get(0);
    }

    /** RFC 5545, section 3.1: lines "SHOULD NOT be longer than 75 octets, excluding the line break", and a fold may not cut a character. */
    @Property(tries = 600, seed = "5545")
    void noLineIsLongerThanSeventyFiveOctets(@ForAll("hostile") String text) {
        String file = CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), text + text));
        assertThat(file).endsWith("END:VCALENDAR\r\n");
        for (String line : file.split("\r\n")) {
            byte[] octets = line.getBytes(StandardCharsets.UTF_8);
            assertThat(octets.length).isLessThanOrEqualTo(75);
            assertThat(new String(octets, StandardCharsets.UTF_8)).isEqualTo(line);
            assertThat(line.codePoints()).noneMatch(c -> Character.isISOControl(c) || turns(c));
        }
    }

    /** The library judges the file; text is read here, since the library takes a backslash before a line break for something else. */
    @Property(tries = 600, seed = "5546")
    void textComesOutAsItWentIn(@ForAll("hostile") String text) {
        String file = CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), text));
        new ReadCalendar(file).valid();
        assertThat(text(file, "SUMMARY")).isEqualTo(shown(text));
        assertThat(text(file, "DESCRIPTION")).isEqualTo("first\n" + shown(text));
    }

    /** The value of the first property of a name, unfolded and without its escapes (sections 3.1 and 3.3.11). */
    private static String text(String file, String name) {
        String line = file.replace("\r\n ", "").lines().filter(each -> each.startsWith(name + ":")).findFirst().orElseThrow();
        return Pattern.compile("\\\\(.)").matcher(line.substring(name.length() + 1)).replaceAll(found -> found.group(1).equals("n") ? "\n" : Matcher.quoteReplacement(found.group(1)));
    }

    /** Ten thousand characters of a name are text like any other. */
    @Test
    void aLongNameIsFolded() {
        String name = "\u00e9\ud83d\udeb2".repeat(5000);
        assertThat(new ReadCalendar(CalendarRenderer.render(calendar(null, DAY.atTime(8, 0), name))).valid().events().get(0).getSummary().getValue()).isEqualTo(name);
    }

    private static String shown(String text) {
        StringBuilder out = new StringBuilder();
        text.replaceAll("[\n\r\t\u0085\u2028\u2029]", " ").codePoints().filter(c -> !Character.isISOControl(c))
                .filter(c -> !turns(c)).forEach(c -> out.appendCodePoint(c >= 0xd800 && c <= 0xdfff ? 0xfffd : c));
        return out.toString();
    }

    private static Calendar calendar(ZoneId zone, LocalDateTime from, String text) {
        Entry entry = new Entry(List.of("course", "rider", text), RichText.ofQuoted(text), List.of(RichText.of("first"), RichText.ofQuoted(text)), from,
                from.plusHours(1), 60);
        return new Calendar(RichText.ofQuoted(text), DAY, zone, null, List.of(entry));
    }

    @Provide
    Arbitrary<String> hostile() {
        return HostileText.any();
    }

    /** Unicode Standard Annex 9, table 4, and the three directional marks. */
    private static boolean turns(int c) {
        return c == 0x200e || c == 0x200f || c == 0x61c || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069;
    }
}
