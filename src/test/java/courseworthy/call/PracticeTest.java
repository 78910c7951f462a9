package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.Survey;
import courseworthy.engine.RuleSet;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ExampleDay;
import courseworthy.problem.Faults;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Resolution;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole recommendations against facts of the trade, each an interval (common practice, no source). */
class PracticeTest {

    private static final RuleSet SHIPPED = ShippedRuleSet.read();
    private static final String TABLE = "practice.yaml";

    @TempDir
    private Path folder;

    /** One line of the table. */
    record Fact(String text, String course, String day, String rider, Map<String, String> calls, Map<String, String> measures) {
        @Override
        public String toString() {
            return text;
        }
    }

    static Stream<Fact> facts() throws IOException {
        Faults faults = new Faults();
        FieldReader top = new FieldReader(TABLE, YamlReader.read(table(), TABLE, faults), faults);
        Map<String, String> riders = texts(top.fields("riders"));
        Map<String, String> courses = texts(top.fields("courses"));
        List<Fact> out = new ArrayList<>();
        for (FieldReader fact : top.blocks("facts")) {
            String course = fact.prose("course");
            String shipped = "course-profiles/" + course + ".yaml";
            String role = fact.prose("role");
            String day = fact.has("day") ? fact.prose("day") : "role: " + role + "\n";
            Path event = Path.of("docs/examples/events", course + ".yaml");
            if (!fact.has("day") && Files.exists(event)) {
                day = Files.readString(event).replaceAll("role: .*", "role: " + role);
            }
            out.add(new Fact(fact.prose("fact"), courses.getOrDefault(course, shipped), day, riders.get(fact.prose("rider")),
                    texts(fact.fields("calls")), fact.has("measures") ? texts(fact.fields("measures")) : Map.of()));
            fact.done();
        }
        top.done();
        faults.throwIfAny();
        return out.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("facts")
    void theCallIsWhatPractitionersDo(Fact fact) throws IOException {
        Call call = call(fact);
        fact.calls().forEach((topic, wanted) -> {
            Decision decision = call.on(Topics.of(topic));
            assertThat(decision.status()).as(topic).isEqualTo(Status.SETTLED);
            assertThat(within(decision, wanted)).as("%s %s, wanted %s; for: %s", topic, decision.text(), wanted, decision.taken()).isTrue();
        });
        fact.measures().forEach((name, wanted) -> {
            Measure measure = Measure.find(name);
            long value = call.demands().get(measure).mid();
            String[] ends = wanted.split(" to ");
            assertThat(value).as(name).isBetween(ticks(measure.scale().resolution(), ends[0]), ticks(measure.scale().resolution(), ends[1]));
        });
    }

    private Call call(Fact fact) throws IOException {
        Faults faults = new Faults();
        Path profile = fact.course().endsWith(".yaml") ? Path.of(fact.course()) : Files.writeString(folder.resolve("course.yaml"), fact.course());
        Course course = CourseReader.read(profile, "course.yaml", null, faults);
        Rider rider = RiderReader.read(Files.writeString(folder.resolve("rider.yaml"), fact.rider()), "rider.yaml", faults);
        Event event = EventReader.read(Files.writeString(folder.resolve("event.yaml"), fact.day()), "event.yaml", faults);
        faults.throwIfAny();
        Demands demands = Survey.of(course, rider, ExampleDay.on(event, profile), rider.bike());
        return CallMaker.call(SHIPPED, demands);
    }

    private static boolean within(Decision decision, String wanted) {
        if (wanted.startsWith("one of ")) {
            return List.of(wanted.substring("one of ".length()).split(", ")).contains(decision.topic().text(decision.value()));
        }
        String[] ends = wanted.split(" to ");
        long least = value(decision.topic(), ends[0]);
        long most = value(decision.topic(), ends[ends.length - 1]);
        return decision.value() >= least && decision.value() <= most;
    }

    private static long value(Topic topic, String text) {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return ticks(topic.resolution(), text);
        }
        assertThat(topic.options()).contains(text);
        return topic.option(text);
    }

    private static long ticks(Resolution resolution, String text) {
        try {
            return resolution.ticks(Amount.parse(text, resolution.unit().dimension()));
        } catch (Amount.NotAnAmount e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static byte[] table() throws IOException {
        try (InputStream in = PracticeTest.class.getResourceAsStream(TABLE)) {
            return in.readAllBytes();
        }
    }

    private static Map<String, String> texts(FieldReader fields) {
        Map<String, String> out = new LinkedHashMap<>();
        for (Node.Entry entry : fields.block().entries()) {
            out.put(entry.key().text(), fields.prose(entry.key().text()));
        }
        return out;
    }
}
