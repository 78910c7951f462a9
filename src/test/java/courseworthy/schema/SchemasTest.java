package courseworthy.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import courseworthy.course.CourseReader;
import courseworthy.course.GroundOriginReader;
import courseworthy.course.GroundReader;
import courseworthy.debrief.DebriefReader;
import courseworthy.event.EventReader;
import courseworthy.event.ForecastReader;
import courseworthy.event.PitReader;
import courseworthy.event.SeasonReader;
import courseworthy.event.StageReader;
import courseworthy.problem.Faults;
import courseworthy.rider.BikeReader;
import courseworthy.rider.RiderReader;
import courseworthy.call.FirmnessTable;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.RulesFolder;
import courseworthy.sheet.SheetReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.workshop.RideLogReader;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The schemas against a general YAML parser and a general validator of JSON Schema: what the readers take they take, and what they
 * refuse by its form they refuse.
 */
class SchemasTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final Map<String, JsonSchema> COMPILED = new HashMap<>();
    private static final JsonSchemaFactory DRAFT = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

    private static final String SHEET = """
            sheet: Long rough days
            author: head coach
            values:
              long day: {value: 6 h, because: Most of us are done by then.}
              gear in hand: {value: 0.95, source: A journal}
              usual gear: {value: 34x50, because: It is what we ride.}
            advice:
              - id: tired-hands
                when:
                  slow hours: [the long day, "7:00 h"]
                  sunless hours: between 1:00 h and the long day
                  decided: {bike: "one of [cross-country full suspension, trail]"}
                  roughness: at least rough
                  worst roughness: over 2.5
                  descent per km: over 18 m
                  hours: over 4:00 h
                  role: race
                  skill: [novice, fair]
                  hookless: no
                  distance: between 50 km and 62 mi
                  mtb:scale: 2
                say:
                  fork travel: prefer 120 mm
                  seatpost: [prefer dropper, avoid rigid]
                  front tyre casing: at least reinforced
                  easiest gear: [at most 0.95 x ratio needed on the last climb, prefer the usual gear]
                  hardest gear: [prefer 34x10, at least the gear in hand x ratio useful at speed]
                force: must
                evidence: published
                source: A journal
                because: After four hours, rough descents punish tired hands first.
              - id: sealant-overnight
                when:
                  any stretch: {sharp stones: yes, length: over 1 km}
                  no stretch: [{surface: sand}, {surface: "one of [mud, snow]", length: over 200 m}]
                  share of course: {where: {smoothness: at least bad}, is: over 10 %}
                  any of:
                    - {hours: over 4 h}
                    - {decided: {front sealant: tubeless, power meter: none}}
                  none of:
                    - any of: [{mud: over 10 %}]
                do:
                  what: Top up sealant
                  find: No hiss
                  by: two days before
                  needs: 12:00 h
                  part: tyres
                  after: tired-hands
                because: Fresh sealant needs a night.
            leave out:
              - rule: shipped/some-rule
                because: We ride lower pressures.
            """;

    @TempDir
    private Path folder;

    static List<String> kinds() {
        return Schemas.KINDS;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void eachIsASchema(String kind) {
        JsonSchema meta = DRAFT.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(JSON.valueToTree(Schemas.of(kind)))).isEmpty();
    }

    static Stream<Path> files() throws IOException {
        List<Path> out = new ArrayList<>();
        for (String place : List.of("course-profiles", "docs/examples/stages", "docs/examples/riders", "docs/examples/events", "docs/examples/by-the-hour",
                "docs/examples/workshops", "docs/examples/debriefs")) {
            try (Stream<Path> all = Files.list(Path.of(place))) {
                all.filter(path -> path.toString().endsWith(".yaml")).sorted().forEach(out::add);
            }
        }
        out.add(Path.of("docs", "examples", "season.yaml"));
        out.add(Path.of("docs", "examples", "cellar-log.yaml"));
        return out.stream();
    }

    @ParameterizedTest
    @MethodSource("files")
    void shippedFilesConform(Path file) throws IOException {
        String kind = file.endsWith("season.yaml") ? "season" : file.endsWith("cellar-log.yaml") ? "log" : file.startsWith("course-profiles") || file.getParent().endsWith("stages") ? "course" : file.getParent().endsWith("riders") ? "rider"
                : file.getParent().endsWith("workshops") ? "workshop" : file.getParent().endsWith("debriefs") ? "debrief" : "event";
        assertThat(validate(kind, Files.readString(file))).isEmpty();
    }

    static Stream<Path> sheets() throws IOException {
        List<Path> out = new ArrayList<>();
        try (Stream<Path> all = Files.walk(Path.of("rules"))) {
            all.filter(path -> path.toString().endsWith(".yaml") && !path.toString().endsWith(".cases.yaml")
                    && !path.endsWith("real-pairs.yaml") && !RulesFolder.isOtherTable(path.toString().replace('\\', '/'))).sorted().forEach(out::add);
        }
        return out.stream();
    }

    /** The shipped sheets are in the coaches' language, save that they may say what safety hangs on. */
    @ParameterizedTest
    @MethodSource("sheets")
    void shippedSheetsConform(Path file) throws IOException {
        JsonNode tree = YAML.readTree(Files.readString(file));
        for (JsonNode row : tree.path("advice")) {
            if (row.has("do")) {
                ((ObjectNode) row.get("do")).remove("critical");
            }
        }
        assertThat(messages("sheet", tree)).isEmpty();
    }

    static Stream<Path> cases() throws IOException {
        List<Path> out = new ArrayList<>(List.of(Path.of("docs/examples/sheets/hill-country.cases.yaml"),
                Path.of("src/main/resources/courseworthy/new/sheet.cases.yaml")));
        try (Stream<Path> all = Files.walk(Path.of("rules"))) {
            all.filter(path -> path.toString().endsWith(".cases.yaml") && !path.startsWith("rules/fit") && !RulesFolder.isOtherTable(path.toString().replace('\\', '/'))).sorted().forEach(out::add);
        }
        return out.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void shippedCasesConform(Path file) throws IOException {
        assertThat(validate("cases", Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"{rule: x, fires: {a: {hourz: 3 h}}}", "{rule: x, fires: {a: {hours: 3}}}", "{rule: x, fires: {a: {hours: over 3 h}}}",
        "{rule: x, sounds: {a: {hours: 3 h}}}", "{rule: x, fires: {a: {decided: {bike: tandem}}}}", "{rule: x, fires: {a: {stretches: [{ascent: 3 m}]}}}",
        "{rule: x, fires: {a: {date: 9 May}}}", "{fires: {a: {hours: 3 h}}}", "{call: a day, course: x, expect: {fork travl: 3 mm}}",
        "{call: a day, course: x, expect: {fork travel: soft}}", "{call: a day, course: x, firmness: {fork travel: sure}}", "{call: a day, course: x}",
        "{call: a day, course: x, rider: {mass: 58}, fires: y}", "{call: a day, course: x, event: {laps: 0}, fires: y}"})
    void wrongCasesAreRefusedByReaderAndSchema(String text) throws IOException {
        assertThat(validate("cases", "cases for: Mine\ncases:\n  - " + text + "\n")).as("the schema").isNotEmpty();
        if (!text.contains("rider: {") && !text.contains("event: {")) {
            assertThat(faults("cases", "cases for: Mine\ncases:\n  - " + text + "\n")).as("the reader").isNotEmpty();
        }
    }

    @Test
    void aCoachsSheetConforms() throws IOException {
        assertThat(faults("sheet", SHEET)).isEmpty();
        assertThat(validate("sheet", SHEET)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sheet | fork travel: prefer 120 mm | fork travl: prefer 120 mm",
        "sheet | fork travel: prefer 120 mm | fork travel: prefer 120",
        "sheet | fork travel: prefer 120 mm | fork travel: prefer 120 kg",
        "sheet | fork travel: prefer 120 mm | fork travel: avoid 120 mm",
        "sheet | fork travel: prefer 120 mm | fork travel: 120 mm",
        "sheet | seatpost: [prefer dropper, avoid rigid] | seatpost: at least dropper",
        "sheet | at least reinforced | at least stiff",
        "sheet | 0.95 x ratio needed on the last climb | 0.95 x hours",
        "sheet | roughness: at least rough | roughness: at least hilly",
        "sheet | descent per km: over 18 m | descent per km: more than 18 m",
        "sheet | descent per km: over 18 m | descent per km: over 1,8 m",
        "sheet | hours: over 4:00 h | hours: over 4:60 h",
        "sheet | skill: [novice, fair] | skill: [novice, master]",
        "sheet | hookless: no | hookless: maybe",
        "sheet | role: race | role: at least race",
        "sheet | {surface: sand} | {surface: sandy}",
        "sheet | is: over 10 % | is: over 10",
        "sheet | force: must | force: perhaps",
        "sheet | id: tired-hands | id: Tired hands",
        "sheet | source: A journal | critical: yes",
        "sheet | source: A journal | rank: limit",
        "sheet | 'because: Fresh sealant needs a night.' | evidence: practice",
        "sheet | by: two days before | by: tomorrow",
        "sheet | author: head coach | writer: head coach",
        "sheet | - any of: [{mud: over 10 %}] | - any of: {mud: over 10 %}",
        "sheet | distance: between 50 km and 62 mi | distance: between 50 km and 99.000 m",
        "sheet | role: race | rider tag: 'first season, juniors'",
        "sheet | hours: over 4:00 h | hours: over long day",
        "sheet | value: 6 h | value: long",
        "sheet | 'usual gear: {' | 'Usual gear: {'",
        "sheet | '{value: 6 h, because: Most of us are done by then.}' | 6 h",
    })
    void aWrongSheetIsRefusedByReaderAndSchema(String kind, String right, String wrong) throws IOException {
        assertThat(SHEET).contains(right);
        refused(kind, SHEET.replace(right, wrong));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stretches: [{length: 3}]", "stretches: [{length: 3 km, surface: tarmac}]", "stretches: []", "name: x",
        "stretches: [{length: 3 km, to: 4 km}]", "stretches: [{ascent: 4 m}]", "stretches: [{length: 3 km, mtb:scale: 7}]",
        "stretches: [{length: 3 km}]\nlatitude: 4 deg", "stretches: [{length: 3 km, sharp stones: some}]",
        "stretches: [{length: 3 km, colour: red}]", "stretches: [{length: 03 km}]"})
    void aWrongCourseIsRefusedByReaderAndSchema(String text) throws IOException {
        refused("course", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mass: 70", "mass: 70 W", "skill: pro", "races a year: 2.5", "power: [{for: 20 min}]", "bike: {kind: tandem}",
        "bike: {hookless: 1}", "bike: {tyre clearance: 34 mm}", "bike: {lights: 2 h, shock stroke: 45 mm}",
        "bike: {rebound clicks: 0}", "weight: 70 kg", "constraints: [{id: x, say: {saddle: prefer new}, because: y}]",
        "mass: 70.000 g", "height: 1.785 m", "tags: 'under 15, beginner'"})
    void aWrongRiderIsRefusedByReaderAndSchema(String text) throws IOException {
        refused("rider", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"role: commute", "date: 9 May", "start: 7:30", "laps: 0", "forecast: {ground: icy}", "forecast: {wind: 3 m}",
        "forecast: {wind from: NNNW}", "support: [{water: yes}]", "support: [{at: 4 km}]", "rules: {tyre width: 45 mm}",
        "rules: {lights: yes}", "day: x", "forecast: {or: wet}", "forecast: {or: {or: {going: wet}}}", "cut-offs: [{at: 3 km}]",
        "cut-offs: [{within: 3 h}]", "pumped at: home", "time to change: {tyres: soon}", "time to change: {soup: 3 min}", "stages: [{course: x}]",
        "stages: [{date: 2026-05-09}]", "stages: [{course: x, date: 9 May}]", "{stages: [{course: x, date: 2026-05-09}], changes between stages: tubes}"})
    void aWrongEventIsRefusedByReaderAndSchema(String text) throws IOException {
        refused("event", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"shed: x", "bikes: [{mass: 2 kg}]", "bikes: [{name: x, mass: 2}]", "parts: [{name: x}]", "parts: [{name: x, kind: horn}]",
        "parts: [{name: x, kind: tyre, travel: 100 mm}]", "parts: [{name: x, kind: tyre, casing: soft}]", "minutes: {horn: 3 min}",
        "parts: [{name: x, kind: cassette, sprockets: [9.5]}]", "parts: [{name: x, kind: sealant, added: 9 May}]",
        "bikes: [{name: x, tyre clearance: [{width: 40 mm}]}]"})
    void aWrongWorkshopIsRefusedByReaderAndSchema(String text) throws IOException {
        refused("workshop", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"debrief: x", "brief: x.json", "hours: 4", "hours: 4 km", "weather: wet", "weather: {ground: icy}", "punctures: some",
        "punctures: [{at: 3 km}]", "punctures: [{wheel: left}]", "punctures: [{wheel: rear, cause: nail}]", "punctures: [{wheel: rear, repaired with: glue}]",
        "rim strikes: [left]", "slid: yes", "spun out: often", "spun out at: [3]", "walked: [{at: 3 km}]", "walked: [{why: tired}]",
        "ran out of: [patience]", "clothes: warm", "cramps: some", "changed on the day: {fork travl: 120 mm}",
        "would change: {rear tyre casing: thick}", "would change: {rear tyre width: 45}", "verdict: good"})
    void aWrongDebriefIsRefusedByReaderAndSchema(String text) throws IOException {
        boolean whole = !text.startsWith("debrief") && !text.startsWith("brief");
        refused("debrief", text + (whole ? "\ndebrief: x\nbrief: none.json\n" : "\n"));
        assertThat(faults("debrief", text + "\n")).anyMatch(fault -> !fault.contains("no such file"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"riders: []", "riders: [{name: A}]", "riders: [{workshop: w.yaml}]", "events: []", "events: [{date: 2026-05-09}]",
        "events: [{course: c, date: 9 May}]", "events: [{course: c, role: commute}]", "events: [{course: c, starts: [{bike: x}]}]",
        "time for work: 2", "after each event: wait", "a minute is worth: 5 km", "shed: x"})
    void aWrongSeasonIsRefusedByReaderAndSchema(String text) throws IOException {
        String riders = text.startsWith("riders") ? "" : "\nriders: [{name: A, workshop: w.yaml}]";
        String events = text.startsWith("events") ? "" : "\nevents: [{course: c}]";
        refused("season", text + riders + events + "\n");
        assertThat(faults("season", (riders.isEmpty() ? "riders: [{name: A, workshop: w.yaml}]" : riders.strip())
                + (events.isEmpty() ? "\nevents: [{course: c}]" : events) + "\n")).isEmpty();
    }

    /** What a log may say, each way once. */
    private static final String LOG = """
            log: Spring
            rides:
              - {date: 2026-03-01, bike: pony, hours: 2:30 h, length: 30 km, punctures: [tubes, not at all], going: wet, mud: 20 %, with: [hoop]}
              - {from: 2026-01-05, to: 2026-02-01, bike: pony, hours: 20 h}
              - {date: 2026-03-04, bike: pony, debrief: race.yaml}
              - {bike: pony, recordings: rides, going: dry, with: hoop}
            service:
              - {date: 2026-03-02, part: links, job: renew}
              - {date: 2026-03-09, part: pads, left: 1.2 mm}
              - {date: 2026-03-09, part: links, wear: 0.3 %}
              - {date: 2026-03-09, part: disc, thickness: 1.6 mm}
            used:
              - {date: 2026-03-03, stock: jug, quantity: 60 ml}
              - {date: 2026-03-03, stock: tubes, quantity: 2}
              - {date: 2026-03-03, stock: tubes}
            each week:
              - {bike: pony, hours: 5 h, length: 70 km, going: dry}
            """;

    @Test
    void aLogConforms() throws IOException {
        assertThat(faults("log", LOG)).isEmpty();
        assertThat(validate("log", LOG)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"log: Spring | name: Spring", "rides: | ride:", "date: 2026-03-01 | date: 1 March", "bike: pony, hours: 2:30 h | hours: 2:30 h",
        "hours: 2:30 h | hours: 2.5", "length: 30 km | length: 30", "going: wet | going: muddy", "mud: 20 % | mud: much", "[tubes, not at all] | [glue]",
        "with: [hoop] | without: [hoop]", "from: 2026-01-05 | from: winter", "to: 2026-02-01 | to: spring", "part: links, job: renew | job: renew",
        "date: 2026-03-02, part | part", "left: 1.2 mm | left: 1.2 kg", "wear: 0.3 % | wear: some", "thickness: 1.6 mm | width: 1.6 mm", "stock: jug, quantity | quantity",
        "quantity: 60 ml | quantity: much", "quantity: 2 | quantity: 2.5", "date: 2026-03-03, stock: tubes} | stock: tubes}", "pony, hours: 5 h | pony",
        "length: 70 km | far: 70 km", "hours: 5 h | hours: daily"})
    void aWrongLogIsRefusedByReaderAndSchema(String right, String wrong) throws IOException {
        assertThat(LOG).contains(right);
        refused("log", LOG.replace(right, wrong));
    }

    @Test
    void theKeysAreThoseOfTheReaders() throws IOException {
        assertThat(keys("season", "/properties")).containsExactlyInAnyOrderElementsOf(SeasonReader.KEYS);
        assertThat(keys("season", "/properties/riders/items/properties")).containsExactlyInAnyOrderElementsOf(SeasonReader.RIDER_KEYS);
        assertThat(keys("season", "/properties/events/items/properties")).containsExactlyInAnyOrderElementsOf(SeasonReader.EVENT_KEYS);
        assertThat(keys("season", "/properties/events/items/properties/starts/items/properties"))
                .containsExactlyInAnyOrderElementsOf(SeasonReader.START_KEYS);
        assertThat(keys("log", "/properties")).containsExactlyInAnyOrderElementsOf(RideLogReader.KEYS);
        assertThat(keys("debrief", "/properties")).containsExactlyInAnyOrderElementsOf(DebriefReader.KEYS);
        assertThat(keys("debrief", "/properties/weather/properties")).containsExactlyInAnyOrderElementsOf(DebriefReader.WEATHER_KEYS);
        assertThat(keys("debrief", "/properties/punctures/anyOf/1/anyOf/0/properties")).containsExactlyInAnyOrderElementsOf(DebriefReader.PUNCTURE_KEYS);
        assertThat(keys("debrief", "/properties/walked/anyOf/1/anyOf/0/properties")).containsExactlyInAnyOrderElementsOf(DebriefReader.WALKED_KEYS);
        assertThat(keys("course", "/properties")).containsExactlyInAnyOrderElementsOf(CourseReader.PROFILE_KEYS);
        List<String> stretch = new ArrayList<>(CourseReader.STRETCH_KEYS);
        stretch.addAll(GroundReader.KEYS);
        stretch.addAll(GroundOriginReader.KEYS);
        assertThat(keys("course", "/properties/stretches/items/properties")).containsExactlyInAnyOrderElementsOf(stretch);
        assertThat(keys("rider", "/properties")).containsExactlyInAnyOrderElementsOf(RiderReader.KEYS);
        assertThat(keys("rider", "/properties/power/anyOf/1/items/properties")).containsExactlyInAnyOrderElementsOf(RiderReader.EFFORT_KEYS);
        assertThat(keys("rider", "/properties/bike/properties")).containsExactlyInAnyOrderElementsOf(BikeReader.KEYS);
        assertThat(keys("workshop", "/properties")).containsExactlyInAnyOrderElementsOf(WorkshopReader.KEYS);
        assertThat(keys("event", "/properties")).containsExactlyInAnyOrderElementsOf(EventReader.KEYS);
        assertThat(keys("event", "/properties/forecast/properties")).containsExactlyInAnyOrderElementsOf(ForecastReader.KEYS);
        assertThat(keys("event", "/properties/forecast/properties/hours/anyOf/1/items/properties"))
                .containsExactlyInAnyOrderElementsOf(ForecastReader.HOUR_KEYS);
        assertThat(keys("event", "/properties/support/anyOf/1/items/properties"))
                .containsExactlyInAnyOrderElementsOf(EventReader.SUPPORT_KEYS);
        assertThat(keys("event", "/properties/stages/items/properties")).containsExactlyInAnyOrderElementsOf(StageReader.KEYS);
        assertThat(keys("event", "/properties/pits/items/properties")).containsExactlyInAnyOrderElementsOf(PitReader.KEYS);
        assertThat(keys("event", "/properties/rules/properties")).containsExactlyInAnyOrderElementsOf(EventReader.RULES_KEYS);
    }

    /** An editor shows it where the key is typed. */
    @Test
    void anAmountIsDescribedByWhatItIsAboutAndByHowItIsWritten() {
        assertThat(description("rider", "/properties/mass")).isEqualTo("Body mass: a mass with its unit, such as 64 kg, 141 lb or 50 g");
        assertThat(description("rider", "/properties/skill")).isEqualTo("Skill on rough ground");
        assertThat(description("event", "/properties/forecast/properties/or/properties/wind")).startsWith("Mean wind: a speed with its unit");
        assertThat(description("course", "/properties/stretches/items/properties/ledge height")).startsWith("Highest ledge that must be ridden: a length");
        assertThat(description("workshop", "/properties/bikes/items/properties/mass")).startsWith("as weighed: a mass");
    }

    private static String description(String kind, String pointer) {
        return JSON.valueToTree(Schemas.of(kind)).at(pointer + "/description").asText();
    }

    /** Or a key would be taken by its reader and refused by editors. */
    @Test
    void aKeyOfAFormOfItsOwnNeedsAShape() {
        List<FileKey<?>> keys = new FileKeys().others("power").all();
        assertThatThrownBy(() -> new SchemaFragments.KeyBlock().keys(keys).shape()).hasMessage("no shape of the key power");
        assertThat(new SchemaFragments.KeyBlock().keys(keys).key("power", SchemaFragments.text()).shape()).containsKey("properties");
    }

    /** The reader lists what it takes when it meets a key it does not know. */
    @Test
    void theKeysOfASheetAreThoseOfItsReader() throws IOException {
        String unknown = "zzz: 1\nsheet: x\nauthor: x\nadvice:\n  - zzz: 1\n    id: x\n    because: x\n    do: {zzz: 1, what: x, find: x, by: night before}\n"
                + "    when: {zzz: 1}\n";
        List<List<String>> listed = new ArrayList<>();
        for (String fault : faults("sheet", unknown)) {
            if (fault.contains("an unknown key") || fault.contains("unknown measure")) {
                String list = fault.substring(fault.indexOf("one of: ") + "one of: ".length()).lines().findFirst().orElseThrow();
                listed.add(Arrays.stream(list.replaceAll("\\.$", "").split(", ")).map(String::trim).toList());
            }
        }
        assertThat(listed).anySatisfy(list -> assertThat(list).containsExactlyInAnyOrderElementsOf(keys("sheet", "/properties")));
        assertThat(listed).anySatisfy(list -> assertThat(list).containsExactlyInAnyOrderElementsOf(keys("sheet", "/$defs/row/properties")));
        List<String> task = new ArrayList<>(keys("sheet", "/$defs/row/properties/do/properties"));
        task.add("critical");
        assertThat(listed).anySatisfy(list -> assertThat(list).containsExactlyInAnyOrderElementsOf(task));
        assertThat(listed).anySatisfy(list -> assertThat(keys("sheet", "/$defs/conditions/properties")).containsAll(list));
    }

    @Test
    void theWordsForFirmnessAreThoseThereAre() {
        assertThat(CaseReader.FIRMNESS).containsExactlyElementsOf(FirmnessTable.words());
    }

    private static List<String> keys(String kind, String pointer) {
        List<String> out = new ArrayList<>();
        JSON.valueToTree(Schemas.of(kind)).at(pointer).fieldNames().forEachRemaining(out::add);
        return out;
    }

    private void refused(String kind, String text) throws IOException {
        assertThat(faults(kind, text)).as("the reader").isNotEmpty();
        assertThat(validate(kind, text)).as("the schema").isNotEmpty();
    }

    private List<String> faults(String kind, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("x.yaml"), text);
        Faults faults = new Faults();
        switch (kind) {
            case "course" -> CourseReader.read(file, "x.yaml", null, faults);
            case "event" -> EventReader.read(file, "x.yaml", faults);
            case "workshop" -> WorkshopReader.read(file, "x.yaml", faults);
            case "sheet" -> SheetReader.read(file, "x.yaml", 0, faults);
            case "cases" -> CaseReader.read(file, "x.yaml", "Mine", faults);
            case "debrief" -> DebriefReader.read(file, "x.yaml", faults);
            case "log" -> RideLogReader.read(file, "x.yaml", null, faults);
            case "season" -> SeasonReader.read(file, "x.yaml", faults);
            default -> SheetReader.rider(RiderReader.read(file, "x.yaml", faults).constraints(), "x.yaml", faults);
        }
        return faults.faults().stream().map(fault -> fault.text()).toList();
    }

    private static List<String> validate(String kind, String text) throws IOException {
        return messages(kind, YAML.readTree(text));
    }

    private static List<String> messages(String kind, JsonNode tree) {
        JsonSchema schema = COMPILED.computeIfAbsent(kind, of -> DRAFT.getSchema(JSON.<JsonNode>valueToTree(Schemas.of(of))));
        Set<ValidationMessage> found = schema.validate(tree);
        return found.stream().map(ValidationMessage::getMessage).toList();
    }
}
