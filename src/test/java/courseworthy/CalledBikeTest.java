package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.cli.Format;
import courseworthy.course.CourseReader;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ExampleDay;
import courseworthy.problem.Faults;
import courseworthy.report.json.OutputSchema;
import courseworthy.rider.Bike;
import courseworthy.rider.RiderReader;
import courseworthy.task.Request;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is said is said of the bike that is called: figures of the bike at hand hold for it and no other, and outside the part on the bike
 * at hand no time, figure or line of the plan is of a bike that is not called.
 */
class CalledBikeTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final Topic BIKE = Topics.BIKE;
    private static final int DRAWN = Draws.of(1000);
    private static final int WHOLE_BRIEFS = Draws.of(24);
    /** The narrowest tyre made for mountain bikes, mm (common practice, no source: 2.0 in and wider, or 1.9 in at the narrowest). */
    private static final long NARROWEST_MOUNTAIN_BIKE_TYRE = 48;

    @TempDir
    Path folder;

    private final ToolOutput tool = new ToolOutput();

    /**
     * A rider whose bike at hand is not called gets what a rider gets who has the bike that is called and wrote nothing of it: the same
     * decisions for the same reasons, the same hours, the same tasks.
     */
    @Test
    void figuresOfABikeThatIsNotCalledNeverAppear() {
        int others = 0;
        for (long n = 0; n < DRAWN; n++) {
            RideInput ride = ride(GeneratedRequest.nth(n));
            Call call = CallMaker.call(RULES, ride);
            Decision bike = call.on(BIKE);
            if (bike.value() == null) {
                continue;
            }
            assertThat(call.demands().ridden()).as("request %d", n).isEqualTo(bike.text());
            if (ride.bike().kind() != null && !ride.bike().kind().equals(bike.text())) {
                others++;
                nothingIsBound(call, n);
                Call own = CallMaker.call(RULES, new RideInput(ride.course(), ride.rider(), ride.event(), nothingKnown(bike.text(), ride.bike())));
                alike(call, own, n);
            }
        }
        assertThat(others).isGreaterThan(DRAWN / 8);
    }

    /** So the whole brief: only what is said of the bike at hand, and how the kind was chosen, differs. */
    @Test
    void theBriefIsThatOfTheBikeThatIsCalled() {
        int others = 0;
        for (long n = 0; others < WHOLE_BRIEFS; n++) {
            GeneratedRequest request = GeneratedRequest.nth(n);
            RideInput ride = ride(request);
            String called = CallMaker.call(RULES, ride).on(BIKE).text();
            if (ride.bike().kind() == null || called.equals(ride.bike().kind()) || CallMaker.call(RULES, ride).on(BIKE).value() == null) {
                continue;
            }
            others++;
            ObjectNode brief = brief(request);
            assertThat(brief.remove("bike_at_hand")).as("request %d", n).isNotNull();
            request.eventBike = null;
            request.riderBike = new GeneratedRequest.BikeBlock();
            request.riderBike.kind = called;
            if (ride.bike().lights() != null) {
                request.riderBike.figures.add("lights: " + Math.round(ride.bike().lights()) + " s");
            }
            ObjectNode own = brief(request);
            assertThat(own.has("bike_at_hand")).isFalse();
            assertThat(withoutTheChoice(brief)).as("request %d", n).isEqualTo(withoutTheChoice(own));
        }
    }

    private RideInput ride(GeneratedRequest request) {
        GeneratedRequest.Read read = request.read(folder);
        return new RideInput(read.course(), read.rider(), read.event(), read.bike());
    }

    private static Bike nothingKnown(String kind, Bike atHand) {
        return atHand.as(kind);
    }

    private static void nothingIsBound(Call call, long n) {
        for (Measure measure : Measure.values()) {
            assertThat(measure.ofTheBike() && call.demands().known(measure)).as("request %d: %s", n, measure).isFalse();
        }
        for (Decision decision : call.decisions()) {
            List<Claim> claims = new ArrayList<>(decision.taken());
            decision.lost().forEach(lost -> claims.add(lost.claim()));
            for (Claim claim : claims) {
                for (TestedFact ground : claim.grounds()) {
                    Measure measure = Measure.find(ground.measure());
                    assertThat(measure != null && measure.ofTheBike()).as("request %d: %s", n, claim).isFalse();
                }
            }
        }
    }

    private static void alike(Call call, Call own, long n) {
        assertThat(own.on(BIKE).text()).as("request %d", n).isEqualTo(call.on(BIKE).text());
        for (Decision decision : call.decisions()) {
            if (!decision.topic().equals(BIKE)) {
                assertThat(decision).as("request %d", n).isEqualTo(own.on(decision.topic()));
            }
        }
        assertThat(call.tasks()).as("request %d", n).isEqualTo(own.tasks());
        for (Measure measure : Measure.values()) {
            if (measure != Measure.BIKE_AT_HAND) {
                assertThat(call.demands().get(measure)).as("request %d: %s", n, measure).isEqualTo(own.demands().get(measure));
            }
        }
        assertThat(call.demands().estimated().day().shockStroke()).isNull();
        assertThat(call.demands().estimated().day().clicks(true, true)).isNull();
        assertThat(call.demands().estimated().estimate().trace().total()).isEqualTo(own.demands().estimated().estimate().trace().total());
    }

    private ObjectNode brief(GeneratedRequest request) {
        return (ObjectNode) OutputSchema.tree(tool.brief(request.request(folder), Format.JSON));
    }

    /** Without what tells how the kind was chosen: the decision on it, the bike at hand, and the caution on its figures. */
    private static ObjectNode withoutTheChoice(ObjectNode brief) {
        drop((ArrayNode) brief.get("decisions"), "topic", "bike");
        // A threshold at which another bike would be called makes that decision close and no other, so what else is close hangs on the choice.
        brief.get("decisions").forEach(decision -> ((ObjectNode) decision).remove(List.of("close", "close_to")));
        // What rests on the kind of bike is no firmer than that choice, which is none where the bike at hand is ridden: firmness hangs on it too.
        brief.get("decisions").forEach(decision -> ((ObjectNode) decision).remove(List.of("firmness", "firmness_from")));
        // For the same reason which three decisions are least firm, and what would change them, the bike at hand among it; and a bike of another
        // kind is the one thing that is not as usual.
        brief.remove(List.of("least_firm", "would_change", "differences"));
        drop((ArrayNode) brief.get("demands"), "name", "bike at hand");
        drop((ArrayNode) brief.get("could_not_tell"), "rule", "limit/bike-above-its-marks");
        Iterator<JsonNode> cautions = brief.get("cautions").iterator();
        while (cautions.hasNext()) {
            if (cautions.next().asText().contains("under bike, with its kind")) {
                cautions.remove();
            }
        }
        return brief;
    }

    private static void drop(ArrayNode list, String field, String value) {
        Iterator<JsonNode> each = list.iterator();
        while (each.hasNext()) {
            if (each.next().get(field).asText().equals(value)) {
                each.remove();
            }
        }
    }

    /** Eight riders with narrow bikes on every shipped course: a mountain bike that is called has a mountain bike's tyres. */
    @Test
    void noMountainBikeIsCalledOnAnotherBikesTyres() throws IOException {
        List<String> bikes = List.of("{kind: road, tyre clearance: 34 mm, rim inner width: 21 mm}",
                "{kind: road, tyre clearance: 28 mm, rim inner width: 17 mm, hookless: yes}", "{kind: gravel, tyre clearance: 38 mm}",
                "{kind: gravel, tyre clearance: 45 mm, rim inner width: 24 mm, marked tyre pressure: 4 bar}",
                "{kind: gravel, tyre clearance: 47 mm, most rotor: 140 mm, mass: 8.5 kg}", "{kind: road, most rotor: 140 mm, mass limit: 90 kg}",
                "{kind: gravel, tyre clearance: 40 mm, use category: EN 2}", "{kind: road, tyre clearance: 34 mm, most fork travel: 20 mm}");
        int mountain = 0;
        for (Path course : courses()) {
            for (String bike : bikes) {
                Call call = CallMaker.call(RULES, read(course, "docs/examples/events/" + course.getFileName(),
                        "mass: 72 kg\npower: 250 W\nheld for: 1:00 h\nbike: " + bike + "\n"));
                String called = call.on(BIKE).text();
                if (called.startsWith("cross-country") || called.equals("trail")) {
                    mountain++;
                    for (String end : List.of("front", "rear")) {
                        assertThat(call.on(Topics.of(end + " tyre width")).value()).as("%s %s", course, bike)
                                .isGreaterThanOrEqualTo(NARROWEST_MOUNTAIN_BIKE_TYRE);
                    }
                }
            }
        }
        assertThat(mountain).isGreaterThan(20);
    }

    private static List<Path> courses() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private static JsonNode decision(JsonNode brief, String topic) {
        for (JsonNode each : brief.get("decisions")) {
            if (each.get("topic").asText().equals(topic)) {
                return each;
            }
        }
        throw new IllegalArgumentException(topic);
    }

    private static String text(JsonNode brief, String topic) {
        return decision(brief, topic).get("text").asText();
    }

    private static long value(JsonNode brief, String topic) {
        return decision(brief, topic).get("value").asLong();
    }

    private static final String MILD = """
            name: Mild
            stretches:
              - {length: 30 km, ascent: 300 m, descent: 300 m, surface: gravel, smoothness: intermediate}
            """;
    private static final String RUGGED = """
            name: Rugged
            stretches:
              - {length: 30 km, ascent: 600 m, descent: 600 m, surface: rock, smoothness: horrible, mtb:scale: 2, ledge height: %s}
            """;
    private static final String ROAD_RIDER = """
            mass: 72 kg
            power: 250 W
            held for: 1:00 h
            bike: {kind: road, tyre clearance: 34 mm, rim inner width: 21 mm, power meter: yes}
            """;

    private Request request(String course, String rider) throws IOException {
        return Request.builder(Files.writeString(folder.resolve("c.yaml"), course).toString())
                .rider(Files.writeString(folder.resolve("r.yaml"), rider).toString()).role("race").build();
    }

    /** The bike at hand is set up with all that is written of it, and its time is held against that of the bike that is called. */
    @Test
    void theBikeAtHandStandsBesideTheOneThatIsCalled() throws IOException {
        Request request = request(RUGGED.formatted("0 m"), ROAD_RIDER);
        JsonNode brief = OutputSchema.tree(tool.brief(request, Format.JSON));
        JsonNode atHand = brief.get("bike_at_hand");
        assertThat(text(brief, "bike")).isEqualTo("cross-country full suspension");
        assertThat(atHand.get("kind").asText()).isEqualTo("road");
        assertThat(atHand.get("possible").asBoolean()).isTrue();
        assertThat(OutputSchema.faults(brief.toString())).isEmpty();
        assertThat(brief.get("cautions").toString()).contains("apply to no other. They are not known for the cross-country full suspension bike recommended here");
        assertThat(decision(atHand, "bike").get("text").asText()).isEqualTo("road");
        assertThat(decision(atHand, "front tyre width").get("value").asLong()).isEqualTo(34);
        assertThat(decision(atHand, "front rim inner width").get("value").asLong()).isEqualTo(21);
        assertThat(atHand.get("given").findValuesAsText("name")).containsExactly("rim inner width", "least tyre width on the rim", "tyre clearance",
                "power meter at hand");
        assertThat(atHand.get("time_s").get("value").asDouble() - atHand.get("costs_s").get("value").asDouble())
                .isCloseTo(hours(brief), offset(120.0));
        String text = tool.brief(request, Format.TEXT);
        assertThat(text).contains("IF YOU RIDE YOUR ROAD BIKE", "  Tyres     34 mm front and rear", " than the", "tyre clearance 34 mm");
        String markdown = tool.brief(request, Format.MARKDOWN);
        assertThat(markdown).contains("## If you ride your road bike", "34 mm front and rear");
    }

    /**
     * Sinking is worked out without the tyre's width, and in sand a narrow tyre goes deeper (sinkage grows with
     * ground pressure: Bekker 1956, from memory):
     * where that makes the bike at hand the faster one, the brief says what the time leaves out.
     */
    @Test
    void aNarrowTyreInSandIsNotSoldAsFaster() throws IOException {
        String rider = Files.writeString(folder.resolve("rae.yaml"), "name: Rae\nbike: {kind: road}\n").toString();
        Request sand = Request.builder("ochre-flats").event("docs/examples/events/ochre-flats.yaml").rider(rider).build();
        JsonNode costs = OutputSchema.tree(tool.brief(sand, Format.JSON)).get("bike_at_hand").get("costs_s");
        assertThat(costs.get("value").asDouble()).isNegative();
        assertThat(costs.get("high").asDouble()).isPositive();
        assertThat(tool.brief(sand, Format.TEXT).replaceAll("\\s+", " "))
                .contains(", about as long as (").contains("or how much deeper a narrow tyre sinks: do not take it for the faster bike here.");
    }

    private static double hours(JsonNode brief) {
        for (JsonNode each : brief.get("demands")) {
            if (each.get("name").asText().equals("hours")) {
                return each.get("value").asDouble();
            }
        }
        throw new IllegalArgumentException("hours");
    }

    /** EN 17406 classes road bikes for drops of up to 15 cm: of such a bike no set-up is given where a metre must be ridden. */
    @Test
    void aLimitIsNeverSetAsideForTheBikeAtHand() throws IOException {
        Request request = request(RUGGED.formatted("1 m"), ROAD_RIDER);
        String json = tool.brief(request, Format.JSON);
        JsonNode atHand = OutputSchema.tree(json).get("bike_at_hand");
        assertThat(OutputSchema.faults(json)).isEmpty();
        assertThat(atHand.get("possible").asBoolean()).isFalse();
        assertThat(atHand.get("decisions")).isEmpty();
        assertThat(atHand.has("costs_s")).isFalse();
        assertThat(atHand.get("against").toString()).contains("classed for ledges up to 15 cm");
        String text = tool.brief(request, Format.TEXT);
        assertThat(text).contains("A limit rules it out here").doesNotContain("34 mm");
    }

    @Test
    void whereTheBikeAtHandIsCalledNothingStandsBesideIt() throws IOException {
        Request request = request(MILD, ROAD_RIDER.replace("kind: road", "kind: gravel"));
        JsonNode brief = OutputSchema.tree(tool.brief(request, Format.JSON));
        assertThat(text(brief, "bike")).isEqualTo("gravel");
        assertThat(brief.has("bike_at_hand")).isFalse();
        assertThat(value(brief, "front tyre width")).isEqualTo(34);
        assertThat(brief.get("cautions").toString()).doesNotContain("under bike, with its kind");
    }

    /** Of a bike at hand of which nothing but the kind is written it is said all the same that the one called is not known. */
    @Test
    void thatTheBikeCalledIsNotKnownIsSaid() throws IOException {
        Request request = request(RUGGED.formatted("0 m"), "mass: 72 kg\nbike: {kind: gravel}\n");
        JsonNode brief = OutputSchema.tree(tool.brief(request, Format.JSON));
        assertThat(brief.get("cautions").toString()).contains("Your files give a gravel bike. Nothing is known of the cross-country full suspension bike "
                + "recommended here").doesNotContain("apply to no other");
        assertThat(brief.get("bike_at_hand").get("given")).isEmpty();
        assertThat(OutputSchema.tree(tool.brief(Request.builder(request.course()).build(), Format.JSON)).has("bike_at_hand")).isFalse();
    }

    /** What is known and said of the day is the called bike's: the rider's own mountain bike, heavier by what its kind weighs more. */
    @Test
    void massIsThatOfTheBikeCalled() throws IOException {
        RideInput ride = read(RUGGED.formatted("0 m"), ROAD_RIDER.replace("kind: road", "kind: road, mass: 7 kg"));
        Call call = CallMaker.call(RULES, ride);
        Demands bare = new RideInput(ride.course(), ride.rider(), ride.event(), Bike.of("cross-country full suspension")).atHand();
        assertThat(call.demands().get(Measure.START_LINE_MASS)).isEqualTo(bare.get(Measure.START_LINE_MASS));
        assertThat(call.demands().get(Measure.BIKE_AT_HAND)).isEqualTo(MeasureValue.exact(0));
        assertThat(call.demands().choosing().get(Measure.START_LINE_MASS)).isNotEqualTo(bare.get(Measure.START_LINE_MASS));
        assertThat(call.demands().choosing().ridden()).isEqualTo("road");
    }

    private RideInput read(String course, String rider) throws IOException {
        return read(Files.writeString(folder.resolve("c.yaml"), course), null, rider);
    }

    private RideInput read(Path course, String event, String rider) throws IOException {
        Faults faults = new Faults();
        Path who = Files.writeString(folder.resolve("r.yaml"), rider);
        RideInput ride = new RideInput(CourseReader.read(course, "c.yaml", null, faults), RiderReader.read(who, "r.yaml", faults),
                event == null ? Event.UNKNOWN : ExampleDay.on(EventReader.read(Path.of(event), event, faults), course), null);
        faults.throwIfAny();
        return new RideInput(ride.course(), ride.rider(), ride.event(), ride.rider().bike());
    }
}
