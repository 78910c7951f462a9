package courseworthy.event;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoursReaderTest {

    private static final double H = 3600;

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Event.Forecast read(String forecast) {
        return event("date: 2026-05-23\nstart: 09:00\nforecast:\n  " + forecast.strip().replace("\n", "\n  ") + "\n").forecast();
    }

    private Event event(String text) {
        try {
            return EventReader.read(Files.writeString(folder.resolve("e.yaml"), text), "e.yaml", faults);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Event.Forecast csv(String table) throws IOException {
        Files.writeString(folder.resolve("w.csv"), table);
        return read("hours: w.csv");
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void aListOfHoursIsReadInBaseUnits() {
        Event.Forecast forecast = read("""
                going: dry
                hours:
                  - {hour: 08:00, temperature: 50 F, wind: 18 km/h, gust: 36 km/h, from: SW, rain: 0 mm, humidity: 80 %}
                  - {hour: 11:00, temperature: 16 C, wind: 7 m/s, gust: 7 m/s, from: 350 deg, rain: 1.5 mm, humidity: 65 %}
                """);
        assertThat(said()).isEmpty();
        assertThat(forecast.hours()).containsExactly(new WeatherHour(8 * H, 10.0, 5.0, 10.0, 225.0, 0.0, 0.8),
                new WeatherHour(11 * H, 16.0, 7.0, 7.0, 350.0, 0.0015, 0.65));
        assertThat(forecast.low()).isEqualTo(10);
        assertThat(forecast.high()).isEqualTo(16);
        assertThat(forecast.wind()).isNull();
    }

    /** RFC 4180: quotes, commas and line breaks within them, CRLF, a last line without an end; units in the names of columns or in cells. */
    @Test
    void aCsvFileSaysTheSame() throws IOException {
        List<WeatherHour> written = read("""
                hours:
                  - {hour: 08:00, temperature: 10 C, wind: 5 m/s, from: SW, rain: 0 mm}
                  - {hour: 09:00, temperature: 11 C, wind: 6 m/s, from: W, rain: 0.5 mm}
                """).hours();
        assertThat(csv("hour,temperature (C),wind (m/s),from,rain (mm)\r\n08:00,10,5,SW,0\r\n09:00,11,6,W,0.5").hours()).isEqualTo(written);
        assertThat(csv("\uFEFF\"hour\",rain,wind (km/h),from,\"temperature (F)\"\n\n08:00,0 mm,18,\"225 deg\",50\n09:00,0.5 mm,21.6,W,51.8\n").hours())
                .hasSize(2).allSatisfy(hour -> assertThat(written).anySatisfy(other -> assertThat(hour.temperature()).isCloseTo(other.temperature(),
                        org.assertj.core.api.Assertions.within(1e-9)))).extracting(WeatherHour::from).containsExactly(225.0, 270.0);
        assertThat(said()).isEmpty();
    }

    @Test
    void hoursPassMidnightAndMayBearTheirDay() throws IOException {
        assertThat(csv("hour,rain (mm)\n08:00,0\n14:00,0\n20:00,0\n02:00,1\n07:00,0\n").hours()).extracting(WeatherHour::at)
                .containsExactly(8 * H, 14 * H, 20 * H, 26 * H, 31 * H);
        assertThat(csv("hour,rain (mm)\n2026-05-22T22:00,0\n2026-05-23 04:00,2\n2026-05-23T10:00,0\n").hours()).extracting(WeatherHour::at)
                .containsExactly(-2 * H, 4 * H, 10 * H);
        assertThat(said()).isEmpty();
    }

    /** What is said for the whole day in the alternative takes the place of what the hours say; hours there take the place of all hours. */
    @Test
    void theAlternativeReplacesWhatItGives() {
        String hours = "hours:\n  - {hour: 09:00, temperature: 10 C, wind: 5 m/s, from: N, rain: 0 mm}\n  - {hour: 12:00, temperature: 16 C, wind: 6 m/s, from: N, rain: 0 mm}\n";
        Event.Forecast wet = read(hours + "or: {going: wet, high: 12 C}").or();
        assertThat(wet.hours()).extracting(WeatherHour::temperature, WeatherHour::rain, WeatherHour::wind)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(null, null, 5.0), org.assertj.core.groups.Tuple.tuple(null, null, 6.0));
        assertThat(wet.low()).isEqualTo(10);
        assertThat(wet.high()).isEqualTo(12);
        Event.Forecast other = read(hours + "or: {hours: [{hour: 09:00, temperature: 6 C, rain: 2 mm}]}").or();
        assertThat(other.hours()).containsExactly(new WeatherHour(9 * H, 6.0, null, null, null, 0.002, null));
        assertThat(other.high()).isEqualTo(6);
        assertThat(read(hours + "good to: 2 C").warmer(-2).hours()).extracting(WeatherHour::temperature).containsExactly(8.0, 14.0);
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, value = {
            "{hour: 9, rain: 0 mm} | e.yaml:5: hour: found \"9\", expected a time as HH:MM, such as 14:00, or with its day, such as 2026-05-23T14:00",
            "{rain: 0 mm} | e.yaml:5: hour: found nothing, expected a time as HH:MM, such as 14:00, or with its day, such as 2026-05-23T14:00  Add a line \"hour: ...\".",
            "{hour: 09:00} | e.yaml:5: hour: found an hour alone, expected what the weather is then Add what is forecast, such as \"temperature: 12 C\".",
            "{hour: 10:00, rain: 0 mm} | e.yaml:5: hour: found \"10:00\", expected hours that begin at or before the start, 09:00, and reach it Add the hours that are missing, or check their day.",
            "{hour: 09:00, wind: 5 m/s, gust: 4 m/s} | e.yaml:5: gust: found \"4 m/s\", expected no less than the wind Check whether the two are exchanged.",
            "{hour: 09:00, from: SW} | e.yaml:5: from: found a direction without a wind, expected how strong the wind is beside it Add \"wind: 4 m/s\" to the hours or to the forecast.",
            "{hour: 09:00, rain: 400 mm} | e.yaml:5: rain: found \"400 mm\", expected rain of an hour from 0 mm to 300 mm",
            "{hour: 09:00, rain: 1} | e.yaml:5: rain: found \"1\", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in Add the unit, one of: km, mi, m, ft, cm, mm, in.",
            "{hour: 09:00, snow: 1 mm} | e.yaml:5: snow: found an unknown key, expected one of: hour, temperature, wind, gust, from, rain, humidity",
            "dry | e.yaml:5: hours: found \"dry\", expected a list of hours, such as - {hour: 09:00, temperature: 12 C}, or the name of a CSV file"
    })
    void aSlipInAnHourIsSaidInFull(String hour, String message) {
        read("hours:\n  - " + hour);
        assertThat(said()).anySatisfy(text -> assertThat(text.replaceAll("\\s+", " ")).startsWith(message.replaceAll("\\s+", " ")));
    }

    /** One slip, one message: a start that cannot be read is not asked for again. */
    @Test
    void aStartThatCannotBeReadIsNotMissedToo() {
        event("start: 9 o'clock\nforecast: {hours: [{hour: 09:00, rain: 0 mm}]}");
        assertThat(said()).singleElement().asString().contains("start: found");
    }

    @Test
    void slipsInTheTableAreSaidInFull() {
        read("hours: {hour: 09:00}");
        read("hours: []");
        event("forecast: {hours: [{hour: 09:00, rain: 0 mm}]}");
        event("start: 09:00\nforecast: {hours: [{hour: 2026-05-23T09:00, rain: 0 mm}]}");
        read("hours:\n  - {hour: 09:00, rain: 0 mm}\n  - {hour: 08:00, rain: 0 mm}");
        read("hours:\n  - {hour: 09:00, rain: 0 mm}\n  - {hour: 10:00, temperature: 4 C}");
        assertThat(said()).map(text -> text.replaceAll("\\s+", " ")).containsExactlyInAnyOrder(
                "e.yaml:4: hours: found a block of keys, expected a list of hours, such as - {hour: 09:00, temperature: 12 C}, or the name of a CSV file Start each hour with a dash.",
                "e.yaml:4: hours: found 0 hours, expected from 1 to 240 hours",
                "e.yaml:1: hours: found hours without a start, expected the time at which the ride starts Add a line \"start: 09:00\" to the event.",
                "e.yaml:2: hour: found \"2026-05-23T09:00\", expected a time of day alone, as the event has no date Add a line \"date: 2026-05-23\" to the event.",
                "e.yaml:6: hour: found \"08:00\", expected a time after the one before, at most 6 h later Put the hours in order, without gaps.",
                "e.yaml:5: temperature: found nothing, expected a value in every hour, or in none Add it here, or leave it out of all hours.",
                "e.yaml:6: rain: found nothing, expected a value in every hour, or in none Add it here, or leave it out of all hours.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "low: 5 C | temperature: 9 C | low: found \"5 C\" beside hours that give the temperature, expected one of the two Remove this line, or the temperature of the hours.",
            "high: 20 C | temperature: 9 C | high: found \"20 C\" beside hours that give the temperature, expected one of the two Remove this line, or the temperature of the hours.",
            "wind: 3 m/s | wind: 4 m/s | wind: found \"3 m/s\" beside hours that give the wind, expected one of the two Remove this line, or the wind of the hours.",
            "humidity: 60 % | humidity: 70 % | humidity: found \"60 %\" beside hours that give the humidity, expected one of the two Remove this line, or the humidity of the hours.",
            "wind from: N | 'wind: 4 m/s, from: S' | wind from: found \"N\" beside hours that give the direction of the wind, expected one of the two Remove this line, or the from of the hours."})
    void theDayAndItsHoursDoNotGiveTheSame(String day, String hour, String message) {
        read(day + "\nhours:\n  - {hour: 09:00, " + hour + "}");
        assertThat(said()).map(text -> text.replaceAll("\\s+", " ")).containsExactly("e.yaml:4: " + message);
    }

    @Test
    void whatTheHoursLeaveOutTheDayMayGive() {
        Event.Forecast forecast = read("low: 8 C\nhigh: 19 C\nwind from: W\nhours:\n  - {hour: 09:00, wind: 4 m/s, rain: 0 mm}");
        assertThat(said()).isEmpty();
        assertThat(forecast.low()).isEqualTo(8);
        assertThat(forecast.from()).isEqualTo(270);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "'hour;rain (mm)~09:00;0' | w.csv:1: found columns separated by semicolons or tabs, expected comma-separated values, the first line naming the columns Save it with commas, and decimals with points.",
            "'' | w.csv:1: found an empty file, expected comma-separated values, the first line naming the columns",
            "'hour,rain (furlongs)~09:00,0' | w.csv:1: rain: found \"furlongs\" as its unit, expected a unit in brackets, such as wind (km/h)",
            "'hour,rain,rain~09:00,0 mm,0 mm' | w.csv:1: rain: found a second column of this name, expected a name of its own for each column",
            "'hour,rain~09:00,0 mm,3' | w.csv:2: found 3 cells, expected 2, one for each column Put a cell that has a comma in it in quotes.",
            "'hour,rain~09:00,\"0 mm' | w.csv:2: found a quote that is not closed, or followed by more text, expected a cell in quotes, with each quote in it doubled Write \"a \"\"b\"\" c\" for a \"b\" c.",
            "'hour,rain~09:00,0 mm~10:00,wet' | w.csv:3: rain: found \"wet\", expected a length with its unit, such as 84 km",
            "'hour,wind (m/s),rain (mm)~09:00,3,0~10:00,3,' | w.csv:3: rain: found nothing, expected a value in every hour, or in none Add it here, or leave it out of all hours."})
    void aSlipInACsvFileIsSaidWithItsLine(String table, String message) throws IOException {
        csv(table.replace('~', '\n'));
        assertThat(said()).anySatisfy(text -> assertThat(text.replaceAll("\\s+", " ")).startsWith(message.replaceAll("\\s+", " ")));
    }

    @Test
    void aCsvFileLiesBesideTheEvent() throws IOException {
        read("hours: missing.csv");
        read("hours: ../w.csv");
        Node.Mapping block = YamlReader.read("start: 09:00\nforecast: {hours: w.csv}\n".getBytes(StandardCharsets.UTF_8), "cases.yaml", faults);
        EventReader.read(block, "cases.yaml", faults);
        csv("hour,rain\n" + "09:00,0 mm\n".repeat(120_000));
        assertThat(said()).map(text -> text.replaceAll("\\s+", " ")).containsExactlyInAnyOrder(
                "e.yaml:4: hours: found \"missing.csv\", which is no file, expected a CSV file in the event's folder or below it Check the spelling; the path starts at the event's folder.",
                "e.yaml:4: hours: found \"../w.csv\", which lies outside the event's folder, expected a CSV file in the event's folder or below it Put the table beside the event.",
                "cases.yaml:2: hours: found \"w.csv\", expected a list of hours A file can be named only in an event's own file.",
                "w.csv: found a file over 1 MB, expected at most 1 MB Leave out the rows that are not needed.");
    }
}
