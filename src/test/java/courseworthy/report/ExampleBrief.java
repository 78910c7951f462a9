package courseworthy.report;

import courseworthy.call.Call;
import courseworthy.call.Flip;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Task;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.TrackRepair;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.UndeterminedRule;
import courseworthy.event.Event;
import courseworthy.rider.Rider;
import courseworthy.task.Brief;
import courseworthy.task.BriefAssembler;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A call made by hand, so that what is written of it can be checked without rules: invented course, rider and rules. */
public final class ExampleBrief {

    public static final String HOSTILE = "\u001b[31mRed\u0007 | `rm` <b>*x*</b> [a](http://b.c)\nnext\tline \u202eoff \ud800 \u5c71\u5c71\u5c71";

    private final Map<String, Decision> decisions = new LinkedHashMap<>();
    private final Map<Measure, MeasureValue> demands = new EnumMap<>(Measure.class);
    public final List<Task> tasks = new ArrayList<>();
    private final List<UndeterminedRule> undetermined = new ArrayList<>();
    public String name = "Heather Ridge";
    public Event event = Event.UNKNOWN;

    public ExampleBrief() {
        for (Topic topic : Topics.all()) {
            decisions.put(topic.name(), new Decision(topic, Status.SETTLED, topic.standard(), "", Consensus.DEFAULT, List.of(), List.of(), ""));
        }
        demand(Measure.DISTANCE, 246, 246, 246);
        demand(Measure.LAPS, 3, 3, 3);
        demand(Measure.ASCENT, 69, 69, 69);
        demand(Measure.DESCENT, 69, 69, 69);
        demand(Measure.ROUGHNESS, 23, 23, 23);
        demand(Measure.WORST_ROUGHNESS, 34, 34, 34);
        demand(Measure.HOURS, 70, 82, 100);
        demand(Measure.HOOKLESS, 1, 1, 1);
        demand(Measure.ROLE, 1, 1, 1);
        demand(Measure.GOING, 0, 0, 1);
        demand(Measure.COLDEST_TEMPERATURE, -2, -2, -2);
        demand(Measure.HOTTEST_TEMPERATURE, 18, 18, 18);
    }

    public ExampleBrief demand(Measure measure, long low, long mid, long high) {
        demands.put(measure, new MeasureValue(low, mid, high));
        return this;
    }

    public static RuleOrigin origin(String rule, Rank rank, Force force, Evidence evidence, String because) {
        return new RuleOrigin(rule, rank, 0, force, evidence, evidence == Evidence.PUBLISHED ? "ISO 4210-2" : "", because,
                new SourceLocation("rules/tyres/width.yaml", 12));
    }

    public ExampleBrief decided(String topic, long value, Consensus standing, List<Claim> taken, List<LosingClaim> lost) {
        decisions.put(topic, new Decision(Topics.of(topic), Status.SETTLED, value, "", standing, taken, lost, ""));
        return this;
    }

    public ExampleBrief notApplicable(String topic) {
        decisions.put(topic, new Decision(Topics.of(topic), Status.NOT_APPLICABLE, null, "", null, List.of(), List.of(), "bike is gravel"));
        return this;
    }

    public ExampleBrief nonePossible(String topic, String why) {
        decisions.put(topic, new Decision(Topics.of(topic), Status.NONE_POSSIBLE, null, "", null, List.of(), List.of(), why));
        return this;
    }

    public static Claim claim(String rule, String topic, Verb verb, long value, TestedFact... grounds) {
        RuleOrigin author = origin(rule, rule.startsWith("shipped/") ? Rank.SHIPPED : Rank.COACH, Force.SHOULD,
                rule.startsWith("shipped/") ? Evidence.PRACTICE : Evidence.OPINION, "Sharp stones cut what is narrow and light.");
        return Claim.of(author, Topics.of(topic), verb, value, Topics.of(topic).text(value), List.of(grounds));
    }

    public ExampleBrief task(String rule, String what, String find, Deadline due, long hours, boolean critical, String part, String... after) {
        tasks.add(new Task(origin(rule, Rank.SHIPPED, Force.SHOULD, Evidence.PRACTICE, "It is likely to be missed."), what, find, due,
                hours * 3600, critical, part, List.of(after), List.of()));
        return this;
    }

    public ExampleBrief untold(String rule, List<String> topics, String... wanting) {
        undetermined.add(new UndeterminedRule(origin(rule, Rank.SHIPPED, Force.SHOULD, Evidence.PRACTICE, "Why."), topics, List.of(wanting)));
        return this;
    }

    /** What would change the decision on food: something smaller, and something that cannot be told apart from what is. */
    public static List<Flip> flips() {
        Decision more = new Decision(Topics.FOOD, Status.SETTLED, 60L, "", Consensus.UNANIMOUS, List.of(), List.of(), "");
        Decision none = new Decision(Topics.FOOD, Status.NONE_POSSIBLE, null, "", null, List.of(), List.of(), "No room is left");
        return List.of(new Flip(Measure.HOURS, 82, 90, Flip.FlipDirection.UP, true, more, List.of()), new Flip(Measure.ROLE, 1, 0, Flip.FlipDirection.OVER, false, none, List.of()));
    }

    /** An example with something of everything. */
    public static ExampleBrief rich() {
        ExampleBrief out = new ExampleBrief();
        TestedFact rough = new TestedFact("roughness", "rough (2.3)", new BigDecimal("2.3"), "", "at least rough", true, true);
        Claim wide = claim("shipped/wide-on-rough", "front tyre width", Verb.PREFER, 45, rough);
        Claim narrow = claim("Fast lines/narrow", "front tyre width", Verb.PREFER, 38);
        out.decided("front tyre width", 45, Consensus.MAJORITY, List.of(wide),
                List.of(new LosingClaim(narrow, List.of("shipped/wide-on-rough", "shipped/x"), How.OUTVOTED)));
        out.decided("rear tyre width", 45, Consensus.UNANIMOUS, List.of(claim("shipped/wide-on-rough", "rear tyre width", Verb.PREFER, 45)),
                List.of());
        out.nonePossible("front tyre pressure", "the floor against rim strikes lies above the marking");
        for (String topic : List.of("fork travel", "rear travel", "fork chassis", "front sag", "rear sag", "rebound", "compression", "lockout",
                "dropper travel")) {
            out.notApplicable(topic);
        }
        out.untold("shipped/a", List.of("front tyre width"), "sharp stones", "roughness");
        out.untold("shipped/b", List.of("water"), "support gap");
        out.task("shipped/brakes", "Squeeze each brake", "Firm bite before half travel", Deadline.NIGHT_BEFORE, 0, true, "brakes");
        out.task("shipped/pressure", "Set both tyres", "Front {front tyre pressure}, rear {rear tyre pressure}", Deadline.RACE_MORNING, 0, true, "tyres");
        out.task("shipped/sealant", "Top up sealant", "No hiss, no wet spot", Deadline.TWO_DAYS_BEFORE, 12, false, "tyres");
        out.task("shipped/sag", "Set sag", "Front {front sag}", Deadline.WEEK_BEFORE, 0, false, "suspension");
        return out;
    }

    public Call call() {
        return new Call(new Demands(demands, List.of(), List.of(new Demands.AssumedInput("rider mass", "75 kg"))), List.copyOf(decisions.values()),
                tasks, undetermined);
    }

    public Course course() {
        courseworthy.course.Ground gravel = courseworthy.course.Ground.builder().surface(Surface.GRAVEL).smoothness(Smoothness.BAD).build();
        List<Stretch> stretches = List.of(new Stretch(6200, 200.0, 20.0, null, gravel, 4),
                new Stretch(2000, 30.0, 210.0, null, courseworthy.course.Ground.UNKNOWN, 9));
        double[] distance = new double[83];
        double[] elevation = new double[83];
        for (int i = 0; i < distance.length; i++) {
            distance[i] = i * 100;
            elevation[i] = 300 + 60 * Math.sin(i / 9.0) + i;
        }
        return Course.builder(name, stretches).file("heather-ridge.yaml").line(new ElevationLine(distance, elevation, false, true))
                .climbing(Climbing.written(230.0, 230.0)).repairs(List.of(new TrackRepair("elevation spikes removed", 3))).assumed(List.of("surface gravel on 2.0 km"))
                .notes(List.of("The start height was given.")).build();
    }

    public Brief brief() {
        Event dated = Event.builder().name(event.name()).file(event.file()).role("race").date(LocalDate.of(2025, 6, 14)).start(event.start())
                .zone(event.offset()).laps(3).aim(event.aim()).timeLimit(event.timeLimit()).groupShare(event.groupShare()).forecast(event.forecast())
                .support(event.support()).supportKnown(event.supportKnown()).rules(event.rules()).startHeight(event.startHeight())
                .bike(event.bike()).build();
        return BriefAssembler.of(course(), Rider.UNKNOWN, dated, call(), ChecklistMaker.of(call(), dated));
    }
}
