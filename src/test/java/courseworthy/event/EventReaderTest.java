package courseworthy.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.topic.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EventReaderTest {

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Event read(String text) {
        try {
            return EventReader.read(Files.writeString(folder.resolve("e.yaml"), text), "e.yaml", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void everythingWrittenIsReadInBaseUnits() {
        Event event = read("""
                name: Long Loop
                role: race
                date: 2026-05-09
                start: 07:30
                utc offset: +02:00
                laps: 2
                aim: time
                time limit: 14 h
                group share: 35 %
                forecast: {low: 41 F, high: 24 C, going: damp, wind: 18 km/h, wind from: SW}
                support:
                  - {at: 88 km, water: yes, food: yes, bag: yes}
                  - {at: 42 km, water: yes, food: no}
                rules:
                  aero extensions: forbidden
                  tyre width: at most 45 mm
                  longest development: 6.94 m
                  longest development to age: 16
                  lights: required
                  mudguards: not required
                  outside help: allowed
                  kit: [whistle, foil blanket]
                  edition: 2026, second issue
                start height: 1200 ft
                bike: {kind: gravel}
                """);
        assertThat(said()).isEmpty();
        assertThat(event.name()).isEqualTo("Long Loop");
        assertThat(event.file()).isEqualTo("e.yaml");
        assertThat(event.role()).isEqualTo("race");
        assertThat(event.date()).isEqualTo(LocalDate.of(2026, 5, 9));
        assertThat(event.start()).isEqualTo(LocalTime.of(7, 30));
        assertThat(event.offset()).isEqualTo(ZoneOffset.ofHours(2));
        assertThat(event.laps()).isEqualTo(2);
        assertThat(event.aim()).isEqualTo("time");
        assertThat(event.timeLimit()).isEqualTo(50_400);
        assertThat(event.groupShare()).isEqualTo(0.35);
        assertThat(event.forecast()).isEqualTo(Event.Forecast.builder().low(5.0).high(24.0).going("damp").wind(5.0).from(225.0).build());
        assertThat(event.support()).containsExactly(new Event.Support(42_000, true, false, false, 13),
                new Event.Support(88_000, true, true, true, 12));
        assertThat(event.supportKnown()).isTrue();
        assertThat(event.rules()).isEqualTo(
                new Event.Rules(false, 0.045, true, false, true, List.of("whistle", "foil blanket"), "2026, second issue", new Event.GearLimit(6.94, 16)));
        assertThat(event.startHeight()).isEqualTo(365.76);
        assertThat(event.bike().get("kind").describe()).isEqualTo("\"gravel\"");
    }

    /** What is not written of the alternative is as in the forecast; a difference of 9 F is one of 5 C. */
    @Test
    void aForecastMayTurn() {
        Event.Forecast forecast = read("forecast: {low: 9 C, high: 21 C, going: dry, wind: 3 m/s, good to: 9 F, or: {going: wet, high: 13 C}}\n")
                .forecast();
        assertThat(said()).isEmpty();
        assertThat(forecast.goodTo()).isCloseTo(5, within(1e-9));
        assertThat(forecast.or()).isEqualTo(Event.Forecast.builder().low(9.0).high(13.0).going("wet").wind(3.0).goodTo(forecast.goodTo())
                .build());
    }

    /** Humidity and pressure of the air; what the alternative does not say of them is as in the forecast. */
    @Test
    void aForecastMayTellHumidityAndPressure() {
        Event.Forecast forecast = read("forecast: {low: 9 C, high: 21 C, humidity: 35 %, air pressure: 1002 hPa, or: {humidity: 95 %}}\n").forecast();
        assertThat(said()).isEmpty();
        assertThat(forecast.air()).isEqualTo(new Event.AirConditions(0.35, 100_200.0));
        assertThat(forecast.or().air()).isEqualTo(new Event.AirConditions(0.95, 100_200.0));
        assertThat(forecast.warmer(3).air()).isEqualTo(forecast.air());
        read("forecast: {humidity: 120 %, air pressure: 1002 bar}\n");
        assertThat(said()).containsExactly(
                "e.yaml:1: humidity: found \"120 %\", expected a relative humidity from 0 % to 100 %",
                "e.yaml:1: air pressure: found \"1002 bar\", expected a pressure at sea level from 850 hPa to 1085 hPa");
    }

    /** By the rules of the IANA time zone database: Zurich keeps UTC+1, in summer from the last Sunday of March UTC+2; Phoenix UTC-7 all year. */
    @ParameterizedTest
    @CsvSource({"Europe/Zurich, 2026-03-28, 1", "Europe/Zurich, 2026-03-30, 2", "Europe/Zurich, 2026-10-26, 1", "America/Phoenix, 2026-07-01, -7",
        "Pacific/Apia, 2026-07-01, 13"})
    void aZoneKnowsSummerTime(String zone, String date, int hours) {
        Event event = read("zone: " + zone + "\ndate: " + date + "\nstart: 08:00\n");
        assertThat(said()).isEmpty();
        assertThat(event.offset()).isEqualTo(ZoneOffset.ofHours(hours));
        assertThat(event.lines().of("zone")).isEqualTo(1);
    }

    /** A date from elsewhere settles the offset; without one there is none. */
    @Test
    void aZoneWaitsForItsDate() {
        Event event = read("zone: Europe/Zurich\n");
        assertThat(said()).isEmpty();
        assertThat(event.offset()).isNull();
        assertThat(event.with(null, LocalDate.of(2026, 7, 1)).offset()).isEqualTo(ZoneOffset.ofHours(2));
    }

    @Test
    void zoneAndOffsetMustAgree() {
        assertThat(read("date: 2026-07-01\nzone: Europe/Zurich\nutc offset: +02:00\n").offset()).isEqualTo(ZoneOffset.ofHours(2));
        read("zone: Europe/Zurich\nutc offset: +02:00\n");
        read("zone: Europe/Zurich\nutc offset: +01:00\n");
        assertThat(said()).isEmpty();
        read("date: 2026-07-01\nzone: Europe/Zurich\nutc offset: +01:00\n");
        assertThat(said()).containsExactly("e.yaml:3: utc offset: found \"+01:00\", expected the offset of Europe/Zurich on 2026-07-01, +02:00\n"
                + "    Leave one of the two lines out; by the zone, summer time is reckoned with.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Europe/Zurch", "CET", "+02:00", "Zurich", "europe/zurich"})
    void aZoneIsNamedAsTheDatabaseNamesIt(String zone) {
        read("zone: \"" + zone + "\"\n");
        assertThat(said()).hasSize(1);
        assertThat(said().get(0)).startsWith("e.yaml:1: zone: found \"" + zone + "\", expected a zone by its IANA name, such as Africa/Nairobi");
    }

    /** A latest time of day that is not after the start's is on the next day. */
    @Test
    void latestTimesAreFromTheStart() {
        Event event = read("start: 20:00\ncut-offs:\n  - {at: 50 km, by: 02:30}\n  - {at: 20 km, within: 2:15 h}\n  - {at: 10 km, by: 21:00}\n");
        assertThat(said()).isEmpty();
        assertThat(event.plan().cutoffs()).containsExactly(new Event.Cutoff(10_000, 3600), new Event.Cutoff(20_000, 8100),
                new Event.Cutoff(50_000, 6.5 * 3600));
    }

    @Test
    void whereTyresArePumpedAndHowLongChangesTake() {
        Event event = read("pumped at: {temperature: 64.4 F, height: 420 m}\ntime to change: {tyres: 40 min, gears: 1:30 h}\n");
        assertThat(said()).isEmpty();
        assertThat(event.plan().pumped().temperature()).isCloseTo(18, within(1e-9));
        assertThat(event.plan().pumped().height()).isEqualTo(420);
        assertThat(event.plan().changes()).containsExactly(java.util.Map.entry(Work.TYRES, 2400.0), java.util.Map.entry(Work.GEARS, 5400.0));
    }

    @Test
    void whatIsNotWrittenIsUnknown() {
        assertThat(read("name: Some Day\n")).isEqualTo(Event.builder().name("Some Day").file("e.yaml").build());
        assertThat(said()).isEmpty();
    }

    @Test
    void noSupportIsSomethingElseThanNothingSaidOfIt() {
        assertThat(read("support: none\n").supportKnown()).isTrue();
        assertThat(read("support: []\n").support()).isEmpty();
        assertThat(read("name: x\n").supportKnown()).isFalse();
        assertThat(said()).isEmpty();
    }

    /** The sixteen points of the compass, 22.5 degrees each. */
    @ParameterizedTest
    @CsvSource({"N, 0", "NE, 45", "ENE, 67.5", "S, 180", "W, 270", "NNW, 337.5", "225 deg, 225", "0 deg, 0", "360 deg, 0"})
    void windComesFromAPointOrAnAngle(String written, double degrees) {
        assertThat(read("forecast: {wind from: " + written + "}\n").forecast().from()).isEqualTo(degrees);
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"+00:00, 0", "-00:00, 0", "-03:30, -12600", "+05:45, 20700", "+14:00, 50400", "-12:00, -43200"})
    void offsetsOfAllZonesAreRead(String written, int seconds) {
        assertThat(read("utc offset: " + written + "\n").offset().getTotalSeconds()).isEqualTo(seconds);
        assertThat(said()).isEmpty();
    }

    /** Each slip alone, and all that is said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "role: racing|e.yaml:1: role: found \"racing\", expected one of: training, race",
            "date: 9.5.2026|e.yaml:1: date: found \"9.5.2026\", expected a day as YYYY-MM-DD, such as 2026-05-09",
            "date: 2026-02-30|e.yaml:1: date: found \"2026-02-30\", expected a day as YYYY-MM-DD, such as 2026-05-09;The calendar has no such day.",
            "date: 0000-05-09|e.yaml:1: date: found \"0000-05-09\", expected a day as YYYY-MM-DD, such as 2026-05-09;Years run from 1901 to 2099.",
            "date: 9999-05-09|e.yaml:1: date: found \"9999-05-09\", expected a day as YYYY-MM-DD, such as 2026-05-09;Years run from 1901 to 2099.",
            "forecast: {low: -20 C, high: 30 C}|e.yaml:1: high: found \"30 C\", expected at most 40 C above the low;Check the units of low and high.",
            "cut-offs: [{at: 33 km, within: 3:00 h}, {at: 50 km, within: 2:30 h}]|e.yaml:1: within: found \"2:30 h\" at \"50 km\", expected a later time than at the point before",
            "cut-offs: [{at: 50 km, within: 3:00 h}, {at: 33 km, within: 3:00 h}]|e.yaml:1: within: found \"3:00 h\" at \"50 km\", expected a later time than at the point before",
            "cut-offs: [{at: 33 km, within: 3:00 h}, {at: 33 km, within: 4:00 h}]|e.yaml:1: at: found \"33 km\" a second time, expected each point once",
            "cut-offs: [{at: 33 km, within: 20 min}]|e.yaml:1: within: found \"20 min\" at \"33 km\", expected a time that can be ridden, at most 60 km/h from the start",
            "start: 7:30|e.yaml:1: start: found \"7:30\", expected a time of day as HH:MM, such as 07:30",
            "start: 24:00|e.yaml:1: start: found \"24:00\", expected a time of day as HH:MM, such as 07:30",
            "start: 7h30|e.yaml:1: start: found \"7h30\", expected a time of day as HH:MM, such as 07:30",
            "utc offset: 2|e.yaml:1: utc offset: found \"2\", expected local time's offset from UTC as +HH:MM or -HH:MM, such as +02:00",
            "utc offset: +15:00|e.yaml:1: utc offset: found \"+15:00\", expected local time's offset from UTC as +HH:MM or -HH:MM, such as +02:00",
            "utc offset: +02:75|e.yaml:1: utc offset: found \"+02:75\", expected local time's offset from UTC as +HH:MM or -HH:MM, such as +02:00",
            "laps: 0|e.yaml:1: laps: found \"0\", expected a whole number from 1 to 100",
            "aim: win|e.yaml:1: aim: found \"win\", expected one of: finish, time, podium",
            "time limit: 5 min|e.yaml:1: time limit: found \"5 min\", expected a time from 10 min to 240 h",
            "group share: 120 %|e.yaml:1: group share: found \"120 %\", expected a share from 0 % to 100 %",
            "group share: 0.3|e.yaml:1: group share: found \"0.3\", expected a share with its sign, such as 6 %;Add the unit, one of: %.",
            "forecast: dry|e.yaml:1: forecast: found \"dry\", expected a block of keys",
            "forecast: {low: 20 C, high: 10 C}|e.yaml:1: low: found \"20 C\", expected no more than the high",
            "forecast: {high: 80 C}|e.yaml:1: high: found \"80 C\", expected a temperature from -40 C to 55 C",
            "forecast: {going: mud}|e.yaml:1: going: found \"mud\", expected one of: dry, damp, wet",
            "forecast: {wind: 300 km/h}|e.yaml:1: wind: found \"300 km/h\", expected a mean wind from 0 m/s to 50 m/s",
            "forecast: {wind from: sw}|e.yaml:1: wind from: found \"sw\", expected a direction the wind comes from, such as SW or 225 deg;Did you mean \"SW\"?",
            "forecast: {wind from: 400 deg}|e.yaml:1: wind from: found \"400 deg\", expected a direction the wind comes from, such as SW or 225 deg",
            "forecast: {rain: yes}|e.yaml:1: rain: found an unknown key, expected one of: low, high, going, wind, wind from, humidity, air pressure, hours, good to, or",
            "support: plenty|e.yaml:1: support: found \"plenty\", expected a list of points, or none;Start each point with a dash: \"- {at: 42 km, water: yes}\".",
            "support: [{water: yes}]|e.yaml:1: at: found nothing, expected the distance from the start of the event, over all laps;Add a line \"at: ...\".",
            "support: [{at: 42 km}]|e.yaml:1: support: found a point that offers nothing, expected water, food or bag;Add what there is, such as \"water: yes\".",
            "support: [{at: 42 km, beer: yes, water: yes}]|e.yaml:1: beer: found an unknown key, expected one of: at, water, food, bag",
            "rules: {aero extensions: no}|e.yaml:1: aero extensions: found \"no\", expected one of: forbidden, allowed",
            "rules: {lights: yes}|e.yaml:1: lights: found \"yes\", expected one of: not required, required",
            "rules: {tyre width: 45 mm}|e.yaml:1: tyre width: found \"45 mm\", expected the widest tyre allowed, such as at most 45 mm;Widths run from 18 mm to 130 mm.",
            "rules: {tyre width: at most 45 m}|e.yaml:1: tyre width: found \"at most 45 m\", expected the widest tyre allowed, such as at most 45 mm;Widths run from 18 mm to 130 mm.",
            "rules: {helmets: required}|e.yaml:1: helmets: found an unknown key, expected one of: edition, aero extensions, tyre width, lights, mudguards, outside help, kit, longest development, longest development to age",
            "rules: {longest development: 7 cm}|e.yaml:1: longest development: found \"7 cm\", expected a development from 3 m to 12 m",
            "rules: {longest development to age: 16}|e.yaml:1: longest development to age: found an age without a development, expected longest development beside it;"
                    + "Add a line \"longest development: 7.93 m\".",
            "start height: 12 km|e.yaml:1: start height: found \"12 km\", expected a height from -450 m to 9000 m",
            "bike: gravel|e.yaml:1: bike: found \"gravel\", expected a block of keys",
            "forecast: {good to: 0 C}|e.yaml:1: good to: found \"0 C\", expected how far its temperatures may be off, such as 3 C or 5 F;It is over 0 C and at most 20 C.",
            "forecast: {good to: often}|e.yaml:1: good to: found \"often\", expected how far its temperatures may be off, such as 3 C or 5 F;It is over 0 C and at most 20 C.",
            "forecast: {or: wet}|e.yaml:1: or: found \"wet\", expected a block of keys",
            "forecast: {or: {}}|e.yaml:1: or: found nothing, expected what the day may turn to, such as {going: wet, high: 12 C}",
            "forecast: {or: {or: {going: wet}}}|e.yaml:1: or: found an unknown key, expected one of: low, high, going, wind, wind from, humidity, air pressure, hours",
            "forecast: {low: 9 C, high: 21 C, or: {high: 4 C}}|e.yaml:1: high: found \"4 C\", expected no more than the high;What is not given in the alternative is as in the forecast: write both low and high.",
            "cut-offs: [{at: 33 km}]|e.yaml:1: cut-offs: found a point without a latest time, expected by or within;Write \"by: 12:30\", or \"within: 4:30 h\" from the start.",
            "cut-offs: [{within: 3 h}]|e.yaml:1: at: found nothing, expected the distance from the start of the event, over all laps;Add a line \"at: ...\".",
            "cut-offs: [{at: 33 km, by: 11:15}]|e.yaml:1: by: found \"11:15\", expected a time of day only where the start is known;Add a line \"start: 08:00\", or write \"within: 4:30 h\" from the start.",
            "cut-offs: [{at: 33 km, by: noon}]|e.yaml:1: by: found \"noon\", expected a time of day as HH:MM, such as 07:30",
            "pumped at: home|e.yaml:1: pumped at: found \"home\", expected a block of keys",
            "pumped at: {temperature: 70 C}|e.yaml:1: temperature: found \"70 C\", expected a temperature from -40 C to 55 C",
            "time to change: {tyres: soon}|e.yaml:1: tyres: found \"soon\", expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s",
            "lap: 3|e.yaml:1: lap: found an unknown key, expected one of: name, role, stages, changes between stages, date, start, utc offset, zone, aim, rules, "
                    + "bike, pumped at, time to change, travel, time for work, laps, time limit, group share, forecast, support, start height, cut-offs, pits;Did you mean \"laps\"?",
            "{date: 2026-05-09, time for work: {monday: 1:00 h}}|e.yaml:1: each evening: found nothing, expected the time for work on evenings that are not named;Add a line \"each evening: 1:00 h\", or of 0 min for none.",
            "time for work: {each evening: 1:00 h, monday: 0 min}|e.yaml:1: time for work: found evenings by their day, and no date of the event, expected the date from which a plan by evening counts back;"
                    + "Add a line \"date: 2026-05-09\", or write one time for every evening.",
            "{date: 2026-05-09, time for work: {each evening: 1:00 h, days: [{date: 2026-05-02, time: 0 min}, {date: 2026-05-02, time: 1:00 h}]}}|e.yaml:1: date: found 2026-05-02 a second time, expected each day once",
            "{date: 2026-05-09, travel: {out: 2026-05-10}}|e.yaml:1: out: found 2026-05-10, expected a day at most 60 days before the event, which is on 2026-05-09",
            "{date: 2026-05-09, travel: {home: 2026-05-08}}|e.yaml:1: home: found 2026-05-08, expected a day at most 60 days after the event, which is on 2026-05-09"})
    void aSlipIsSaidInFull(String text, String message) {
        read(text + "\n");
        assertThat(said()).containsExactly(message.replace(";", "\n    "));
    }

    @Test
    void timesOfDayThatFallOnTheWayAreRefused() {
        read("start: 08:00\ntime limit: 5:00 h\ncut-offs:\n  - {at: 33 km, by: 11:15}\n  - {at: 50 km, by: 10:30}\n  - {at: 60 km, by: 14:00}\n");
        assertThat(said()).containsExactly("e.yaml:5: by: found \"10:30\" at \"50 km\", expected a later time than at the point before\n"
                + "    For a time on another day write \"within: 26:30 h\", from the start.", "e.yaml:6: by: found \"14:00\" at \"60 km\", expected no later than "
                + "the time limit of the whole\n    For a time on another day write \"within: 26:30 h\", from the start.");
    }

    @Test
    void slipsAreSaidTogetherInTheOrderOfTheirLines() {
        read("laps: none\ndate: tomorrow\nforecast:\n  low: 3\n  going: soggy\nrules:\n  lights: on\n");
        assertThat(said()).extracting(s -> s.substring(0, s.indexOf(": found"))).containsExactly(
                "e.yaml:1: laps", "e.yaml:2: date", "e.yaml:4: low", "e.yaml:5: going", "e.yaml:7: lights");
    }

    @Test
    void theKeysAreThoseThatAreRead() {
        read("zzz: 1\n");
        assertThat(said().get(0)).contains("one of: " + String.join(", ", EventReader.KEYS));
        assertThat(read("forecast: {zzz: 1}\nsupport: [{zzz: 1}]\nrules: {zzz: 1}\n")).isNotNull();
        assertThat(said()).anyMatch(s -> s.contains("one of: " + String.join(", ", ForecastReader.KEYS)));
        assertThat(said()).anyMatch(s -> s.contains("one of: " + String.join(", ", EventReader.SUPPORT_KEYS)));
    }
}
