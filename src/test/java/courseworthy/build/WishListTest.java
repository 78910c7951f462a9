package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.build.SeasonPlan.Wish;
import courseworthy.build.SeasonPlanner.Terms;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.EventReader;
import courseworthy.event.Travel;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.RiderReader;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The wish list: in sets, what is required first, minutes of the part alone. On the shipped workshop with wishes added. */
class WishListTest {

    private static final FitRules FIT = FitRules.load();

    private String workshop;
    private final List<Decision> decisions = new ArrayList<>();
    private Demands demands = new Demands(Map.of(), List.of(), List.of());
    private WorthCalculator worths;

    WishListTest() throws IOException {
        workshop = Files.readString(Path.of("docs/examples/workshops/cellar.yaml"));
        workshop = workshop.lines().filter(line -> !line.contains("owned: no")).collect(Collectors.joining("\n", "", "\n"));
    }

    private void wish(String part) {
        workshop += "  - " + part.replaceFirst(", kind:", ", owned: no, kind:") + "\n";
    }

    private void change(String from, String to) {
        assertThat(workshop.contains(from)).as(from).isTrue();
        workshop = workshop.replace(from, to);
    }

    private void claim(String topic, Rank rank, Force force, Verb verb, String value) {
        Topic on = Topics.of(topic);
        long ticks = on.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : on.option(value);
        RuleOrigin author = new RuleOrigin("shipped/x", rank, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        decisions.add(Settler.settle(on, List.of(Claim.of(author, on, verb, ticks, value, List.of()))));
    }

    private void prefer(String topic, String value) {
        claim(topic, Rank.SHIPPED, Force.MUST, Verb.PREFER, value);
    }

    /** As the hardtail is ridden at one event. */
    private List<Wish> wishes() {
        prefer("bike", "cross-country hardtail");
        Map<Topic, Decision> by = decisions.stream().collect(Collectors.toMap(Decision::topic, each -> each));
        List<Decision> all = new ArrayList<>();
        Topics.all().forEach(topic -> all.add(by.getOrDefault(topic, Settler.notApplicable(topic, List.of(), "not asked"))));
        Call call = new Call(demands, all, List.of(), List.of());
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(workshop.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        Outing outing = new Outing(0, "Ida", 1, new EventDay("Day", "course", LocalDate.of(2026, 6, 1), null, null, Travel.NONE, "race"), Recommendation.of(call, worths), "hardtail", null);
        List<Wish> out = new ArrayList<>(SeasonPlanner.of(read, List.of(outing), new Terms(WorkHours.every(60), true, 15.0), FIT, () -> { }).wishes());
        out.sort(Wish.byWorth());
        return out;
    }

    private static Wish find(List<Wish> wishes, String name) {
        return wishes.stream().filter(each -> each.name().equals(name)).findFirst().orElse(null);
    }

    private static final String WHEEL = "{name: dream wheel, kind: wheel, price: 500, end: rear, mass: 700 g, bead seat: 622 mm, rim inner width: 29 mm, rim depth: 26 mm,"
            + " rim material: carbon, hookless: no, tubeless: yes, marked pressure: 3 bar, valve length: 46 mm, axle: 12 mm screwed, axle width: 148 mm,"
            + " freehub: micro, rotor mount: spline, mass limit: 120 kg}";
    private static final String ROTOR = "{name: dream rotor, kind: rotor, price: 60, on: dream wheel, mass: 120 g, diameter: 160 mm, rotor mount: spline,"
            + " pads permitted: [organic, sintered]}";
    private static final String CASSETTE = "{name: dream cassette, kind: cassette, price: 240, on: dream wheel, mass: 380 g,"
            + " sprockets: [10, 12, 14, 16, 18, 21, 24, 28, 33, 39, 45, 51], speeds: 12, freehub: micro, drivetrain: hill twelve}";

    /** No rotor and no cassette of the workshop goes on the wheel: without its own it is of no use, with them it meets what is called for. */
    @Test
    void aWheelIsWishedWithItsRotorAndCassette() {
        change("rim material: carbon", "rim material: alloy");
        wish(WHEEL);
        wish(ROTOR);
        wish(CASSETTE);
        prefer("rear rim material", "carbon");
        List<Wish> wishes = wishes();
        assertThat(find(wishes, "dream wheel").rides()).isEmpty();
        Wish set = find(wishes, "dream wheel, dream rotor and dream cassette");
        assertThat(set.rides()).containsExactly("Ida, Day");
        assertThat(set.price()).isEqualTo(800);
        assertThat(set.serves()).containsExactly("rear rim material carbon");
        assertThat(wishes).hasSize(4);
    }

    /** Where the wheel takes the rotor and the cassette at hand, the set spares nothing more, and only the wheel is told of as of use. */
    @Test
    void aSetThatDoesNoMoreThanItsPartsIsLeftOut() {
        change("rim material: carbon", "rim material: alloy");
        wish(WHEEL.replace("freehub: micro", "freehub: short splines").replace("mount: spline", "mount: six bolts"));
        wish(ROTOR.replace("mount: spline", "mount: six bolts"));
        wish(CASSETTE.replace("freehub: micro", "freehub: short splines"));
        prefer("rear rim material", "carbon");
        List<Wish> wishes = wishes();
        assertThat(wishes).extracting(Wish::name).containsExactlyInAnyOrder("dream wheel", "dream rotor", "dream cassette");
        assertThat(find(wishes, "dream wheel").serves()).containsExactly("rear rim material carbon");
    }

    private static final String TYRE = "{name: dear tyre A, kind: tyre, price: 60, mass: 800 g, bead seat: 622 mm, width: 56 mm, measured width: 56 mm, casing: reinforced,"
            + " tread: all-round, tubeless: yes, hookless: yes, marked pressure: 2.9 bar}";

    /** One alone goes on at the rear; the pair meets both ends, at the price of two. */
    @Test
    void aPairOfTyresIsWishedTogether() {
        wish(TYRE.replace("all-round", "slick"));
        wish(TYRE.replace("all-round", "slick").replace("tyre A", "tyre B"));
        prefer("front tyre tread", "slick");
        prefer("rear tyre tread", "slick");
        List<Wish> wishes = wishes();
        Wish pair = find(wishes, "dear tyre A and dear tyre B");
        assertThat(pair.price()).isEqualTo(120);
        assertThat(pair.serves()).containsExactlyInAnyOrder("front tyre tread slick", "rear tyre tread slick");
        assertThat(find(wishes, "dear tyre A").serves()).hasSize(1);
        assertThat(pair.notches()).isGreaterThan(find(wishes, "dear tyre A").notches());
    }

    /** A light that the event demands comes before a tyre that saves minutes, whatever either costs. */
    @Test
    void whatIsRequiredComesFirst() throws IOException {
        workshop = workshop.lines().filter(line -> !line.contains("kind: lights")).collect(Collectors.joining("\n", "", "\n"));
        ride();
        wish(TYRE.replace("mass: 800 g", "mass: 300 g").replace("price: 60", "price: 10"));
        wish("{name: dear lamp, kind: lights, price: 400, mass: 190 g, end: front, light kind: to see by, run time: 4 h}");
        prefer("front tyre tread", "all-round");
        claim("lights", Rank.LIMIT, Force.MUST, Verb.AT_LEAST, "to see by");
        List<Wish> wishes = wishes();
        assertThat(wishes).extracting(Wish::name).containsExactly("dear lamp", "dear tyre A");
        assertThat(wishes.get(0).required()).containsExactly("lights to see by");
        assertThat(wishes.get(0).serves()).isEmpty();
        assertThat(wishes.get(0).returned().mid()).as("190 g more").isNegative();
        assertThat(wishes.get(1).required()).isEmpty();
        assertThat(wishes.get(1).perMoney().mid()).isPositive();
    }

    /** What goes with another part is no requirement of the event, the law or safety: a tyre for it comes after the lamp, by its minutes. */
    @Test
    void whatGoesWithAnotherPartIsNotRequired() throws IOException {
        wish(TYRE.replace("all-round", "slick"));
        prefer("rear tyre tread", "slick");
        Topic tread = Topics.REAR_TYRE_TREAD;
        RuleOrigin pairing = new RuleOrigin("pairing/tread", Rank.LIMIT, 0, Force.MUST, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        List<Claim> both = new ArrayList<>(decisions.remove(decisions.size() - 1).taken());
        both.add(Claim.of(pairing, tread, Verb.AT_MOST, tread.option("slick"), "slick", List.of()));
        decisions.add(Settler.settle(tread, both));
        Wish tyre = find(wishes(), "dear tyre A");
        assertThat(tyre.required()).isEmpty();
        assertThat(tyre.serves()).containsExactly("rear tyre tread slick");
    }

    /** With the wheel of another size come tyres that lie about and weigh 490 g less: its minutes are those of its own grams. */
    @Test
    void minutesAreThoseOfThePartAlone() throws IOException {
        change("rim material: carbon", "rim material: alloy");
        change("name: quick tyre 56 A, kind: tyre, on: light wheel front", "name: quick tyre 56 A, kind: tyre");
        change("name: quick tyre 56 B, kind: tyre, on: light wheel rear", "name: quick tyre 56 B, kind: tyre");
        change("mass: 695 g, bead seat: 622 mm, width: 56 mm", "mass: 205 g, bead seat: 584 mm, width: 56 mm");
        ride();
        wish(WHEEL.replace("freehub: micro", "freehub: short splines").replace("mount: spline", "mount: six bolts").replace("bead seat: 622", "bead seat: 584")
                .replace("mass: 700 g", "mass: 500 g"));
        prefer("rear rim material", "carbon");
        Wish wheel = find(wishes(), "dream wheel");
        assertThat(wheel.rides()).hasSize(1);
        double perKilogram = worths.perKilogram().mid();
        assertThat(wheel.returned().mid() / perKilogram).as("kg: 0.69 of the light wheel, 0.50 of this").isCloseTo(0.19, within(0.01));
    }

    /** A race that is estimated, so that time counts. */
    private void ride() throws IOException {
        Faults faults = new Faults();
        Course course = CourseReader.read(Path.of("course-profiles/larch-common.yaml"), "larch-common.yaml", null, faults);
        RideInput input = new RideInput(course, RiderReader.read(Path.of("docs/examples/riders/ida-hardtail.yaml"), "rider", faults),
                EventReader.read(Path.of("docs/examples/events/larch-common.yaml"), "event", faults), Bike.UNKNOWN);
        faults.throwIfAny();
        ShippedRules shipped = ShippedRules.load();
        Call call = CallMaker.call(new DroolsRules(ShippedRules.rules(), shipped), input);
        demands = call.demands();
        worths = new WorthCalculator(call, Sensitivity.of(demands));
    }
}
