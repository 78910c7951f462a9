package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.GeneratedRequest;
import courseworthy.analysis.ChangeCause;
import courseworthy.analysis.Impact;
import courseworthy.claim.Claim;
import courseworthy.course.CourseReader;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The kind of bike is settled on the bike at hand, all else on the bike that is called; what would change either holds when applied. */
class CalledKindTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final Topic BIKE = Topics.BIKE;
    private static final Topic WIDTH = Topics.FRONT_TYRE_WIDTH;
    private static final List<Measure> VARIED = List.of(Measure.WORST_ROUGHNESS, Measure.ROUGHNESS);
    private static final int TRIED = 4;

    @TempDir
    Path folder;

    @Test
    void theCallOfItsOwnDemandsIsTheSame() {
        int others = 0;
        for (long n = 0; n < 60; n++) {
            Call call = CallMaker.call(RULES, ride(n));
            Call again = CallMaker.call(RULES, call.demands());
            assertThat(again.decisions()).as("request %d", n).isEqualTo(call.decisions());
            assertThat(again.tasks()).isEqualTo(call.tasks());
            assertThat(again.demands().values()).isEqualTo(call.demands().values());
            others += call.demands().choosing() == null ? 0 : 1;
        }
        assertThat(others).isGreaterThan(10);
    }

    /** Both the kind of bike and what is set up on it turn where a search finds that they do, and nowhere nearer. */
    @Test
    void whatWouldChangeItIsFoundWhereEveryTickFindsIt() {
        int flips = 0;
        int tried = 0;
        for (long n = 0; tried < TRIED; n++) {
            Call call = CallMaker.call(RULES, ride(n));
            if (call.demands().choosing() == null || !call.demands().known(Measure.BIKE_AT_HAND)) {
                continue;
            }
            tried++;
            TickByTick every = new TickByTick(RULES, call.demands());
            for (Measure measure : VARIED) {
                flips += every.agree(measure, 0, 50, Topics.all());
            }
        }
        assertThat(flips).isGreaterThan(20);
    }

    /** The same where the bike at hand is called: in a trial on another kind its limits do not hold. */
    @Test
    void limitsOfTheBikeAtHandDoNotReachWhatWouldBeOnAnother() throws IOException {
        RideInput ride = ride(MILD, "mass: 70 kg\nbike: {kind: gravel, tyre clearance: 38 mm, most rotor: 140 mm}\n");
        Call call = CallMaker.call(RULES, ride);
        assertThat(call.on(BIKE).text()).isEqualTo("gravel");
        assertThat(call.on(WIDTH).value()).isLessThanOrEqualTo(38);
        int others = 0;
        for (Flip flip : new FlipFinder(RULES, call, WIDTH, (done, of) -> { }).any()) {
            Call then = CallMaker.call(RULES, call.demands().with(Map.of(flip.measure(), MeasureValue.exact(flip.to()))));
            assertThat(then.on(WIDTH).value()).as("%s to %s", flip.measure(), flip.to()).isEqualTo(flip.decision().value());
            if (!then.on(BIKE).text().equals("gravel") && !then.on(BIKE).text().equals("road") && then.on(WIDTH).value() != null) {
                others++;
                assertThat(flip.decision().value()).as("%s to %s", flip.measure(), flip.to()).isGreaterThanOrEqualTo(48);
            }
        }
        assertThat(others).isGreaterThan(2);
        TickByTick every = new TickByTick(RULES, call.demands());
        assertThat(every.agree(Measure.ROUGHNESS, 0, 50, Topics.all()) + every.agree(Measure.WORST_ROUGHNESS, 0, 50, Topics.all())).isPositive();
    }

    private static final String MILD = """
            name: Mild
            stretches:
              - {length: 40 km, ascent: 300 m, descent: 300 m, surface: gravel, smoothness: intermediate}
            """;

    /**
     * A sheet that lets the hours choose the bike could go round in circles: few hours on the bike at hand call another, on which they are
     * more. The kind stays as the bike at hand made it, and the reason says whose hours they are.
     */
    @Test
    void hoursThatChooseTheBikeAreThoseOfTheBikeAtHand() throws IOException {
        RideInput ride = ride(MILD.replace("gravel, smoothness: intermediate", "asphalt, smoothness: excellent"), "mass: 70 kg\nbike: {kind: road}\n");
        long onRoad = ride.atHand().get(Measure.HOURS).mid();
        long onTrail = ride.on("trail").get(Measure.HOURS).mid();
        assertThat(onTrail).isGreaterThan(onRoad + 4);
        long between = (onRoad + onTrail) / 2;
        DroolsRules rules = rules(String.format(Locale.ROOT, "hours: under %d:%02d h", between / 60, between % 60));
        Call call = CallMaker.call(rules, ride);
        assertThat(call.on(BIKE).text()).isEqualTo("trail");
        assertThat(call.demands().get(Measure.HOURS).mid()).isEqualTo(onTrail);
        Claim claim = call.on(BIKE).taken().stream().filter(each -> each.origin().rule().equals("Short days/by-the-hour")).findFirst().orElseThrow();
        assertThat(claim.grounds()).singleElement().satisfies(ground -> {
            assertThat(ground.value()).isEqualTo(Measure.HOURS.scale().text(onRoad) + " on a road bike");
            assertThat(ground.met()).isTrue();
        });
        assertThat(CallMaker.call(rules, call.demands()).decisions()).isEqualTo(call.decisions());
        List<Flip> hours = new ArrayList<>(new FlipFinder(rules, call, BIKE, (done, of) -> { }).any());
        hours.removeIf(flip -> flip.measure() != Measure.HOURS);
        assertThat(hours).singleElement().satisfies(flip -> {
            assertThat(flip.from()).isEqualTo(onRoad);
            assertThat(flip.to()).isEqualTo(between);
        });
        Explainer why = new Explainer(rules, call, BIKE);
        assertThat(why.rule("Short days/by-the-hour").tests()).singleElement().satisfies(test -> assertThat(test.value())
                .startsWith(Measure.HOURS.scale().text(onRoad)));
    }

    /** Where a sheet calls another kind of bike the ride itself is another: what turns with it turns because of the bike. */
    @Test
    void whatTurnsWithTheBikeIsSaidToComeOfIt() throws IOException {
        RideInput ride = ride(MILD.replace("gravel, smoothness: intermediate", "asphalt, smoothness: excellent"),
                "mass: 70 kg\npower: 230 W\nheld for: 1:00 h\nbike: {kind: road, tyre clearance: 28 mm, most rotor: 140 mm}\n");
        Call before = CallMaker.call(RULES, ride);
        Call after = CallMaker.call(rules("hours: under 99:00 h"), ride);
        assertThat(before.on(BIKE).text()).isEqualTo("road");
        assertThat(after.on(BIKE).text()).isEqualTo("trail");
        List<Impact.DecisionChange> turned = Impact.between(new Impact.ImpactRide("Mild", "one"), new Impact.Side(List.of(), before, before.tasks()),
                new Impact.Side(List.of(), after, after.tasks())).turned();
        assertThat(turned).hasSizeGreaterThan(15);
        for (Impact.DecisionChange each : turned) {
            ChangeCause cause = each.cause();
            if (!each.topic().equals(BIKE)) {
                assertThat(cause.through()).as("%s", each.topic()).isNotNull();
                assertThat(cause.through().topic()).as("%s", each.topic()).isEqualTo(BIKE);
            }
        }
    }

    private DroolsRules rules(String when) throws IOException {
        Path file = Files.writeString(folder.resolve("sheet.yaml"), "sheet: Short days\nauthor: me\nadvice:\n  - id: by-the-hour\n    when:\n      " + when
                + "\n    say:\n      bike: prefer trail\n    force: must\n    because: Short.\n");
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(file, "sheet.yaml", 0, faults);
        ShippedRules shipped = ShippedRules.load();
        Rulebook book = Rulebook.of(shipped.sheets(), List.of(), List.of(sheet), faults);
        faults.throwIfAny();
        return new DroolsRules(book.rows(), shipped);
    }

    private RideInput ride(long n) {
        GeneratedRequest.Read read = GeneratedRequest.nth(n).read(folder);
        return new RideInput(read.course(), read.rider(), read.event(), read.bike());
    }

    private RideInput ride(String course, String rider) throws IOException {
        Faults faults = new Faults();
        Rider who = RiderReader.read(Files.writeString(folder.resolve("r.yaml"), rider), "r.yaml", faults);
        RideInput ride = new RideInput(CourseReader.read(Files.writeString(folder.resolve("c.yaml"), course), "c.yaml", null, faults), who, Event.UNKNOWN,
                who.bike());
        faults.throwIfAny();
        return ride;
    }
}
