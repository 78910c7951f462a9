package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.DayDemands.PitPlace;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.Walking;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import courseworthy.worth.PitPlan.PitChoice;
import courseworthy.worth.PitPlan.Kind;
import courseworthy.worth.PitPlan.PitPassage;
import courseworthy.worth.PitPlan.LapPiece;
import courseworthy.worth.PitPlan.PitStop;
import courseworthy.worth.PitPlan.Walk;
import courseworthy.worth.PitPlan.Wheels;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Plans the pits of a race of laps. */
final class PitPlanner {

    private static final double BOTTLE = PitPlan.BOTTLE;
    /** How much more than is drunk is taken along (practice). */
    private static final double RESERVE = 1.15;
    /** Both wheels taken out and put in with somebody's help, and alone, s (common practice, no source). */
    private static final Range WHEELS_HELPED = new Range(50, 80, 140);
    private static final Range WHEELS_ALONE = new Range(80, 140, 240);
    /** Getting off one bike and away on another, s (common practice, no source). */
    private static final Range BIKE = new Range(6, 12, 25);
    /** Two wheels looked over and pumped, and a second bike brought to the same position and gears, s (estimates, common practice, no source). */
    private static final double WHEELS_WORK = 30 * 60;
    private static final double BIKE_WORK = 2 * 3600;
    /** Where a hand can be off the bar: gradients, speed in m/s, roughness and mtb:scale up to these (common practice, no source). */
    private static final double EASY_FROM = -0.03;
    private static final double EASY_TO = 0.08;
    private static final double EASY_SPEED = 8;
    private static final double EASY_ROUGHNESS = 2.5;
    private static final double EASY_GRADE = 0.5;
    /** Shorter is over before the bottle is back, m; and the most that are listed (judgement). */
    private static final double LEAST_EASY = 100;
    private static final int MOST_EASY = 3;
    private static final List<Topic> TYRES = List.of(Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH, Topics.FRONT_TYRE_TREAD, Topics.REAR_TYRE_TREAD,
            Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE);

    private final Call call;
    private final EstimatedRide on;
    private final ArrivalTimes arrivals;
    private final List<PitPlace> pits;
    private final double lap;
    private final int laps;

    private PitPlanner(Call call) {
        this.call = call;
        on = call.demands().estimated();
        arrivals = new ArrivalTimes(on);
        pits = on.day().pits();
        lap = on.estimate().way().length();
        laps = on.estimate().basis().laps();
    }

    /**
     * The plan of a call.
     *
     * @param plan of the day; null where none is made
     * @param wet  the call for wet ground; null where none is made
     */
    static PitPlan of(Call call, DayPlan plan, Call wet) {
        return plan == null || call.demands().estimated().day().pits().isEmpty() ? PitPlan.NONE : new PitPlanner(call).plan(plan, wet);
    }

    private PitPlan plan(DayPlan plan, Call wet) {
        List<PitStop> stops = new ArrayList<>();
        List<PitPassage> all = passages(plan);
        for (PitPlace pit : pits) {
            stops.add(new PitStop(pit, all.stream().filter(each -> Math.abs(each.at() - (each.lap() - 1) * lap - pit.at()) < 1).toList()));
        }
        List<String> tyres = wet == null ? null : wetTyres(wet);
        MeasureValue help = call.demands().get(Measure.OUTSIDE_HELP);
        return new PitPlan(stops, new Wheels(wheel(Topics.FRONT_TYRE_WIDTH.end()), wheel(Topics.REAR_TYRE_WIDTH.end())),
                help == null ? null : Boolean.valueOf(help.mid() > 0), walk(), easy(), choices(tyres, new PitWorthCalculator(call, tyres == null || tyres.isEmpty() ? null : wet)), tyres);
    }

    private String wheel(End end) {
        return call.on(Topics.FRONT_TYRE_WIDTH.at(end)).text() + " " + call.on(Topics.FRONT_TYRE_TREAD.at(end)).text() + " tread at "
                + call.on(Topics.FRONT_TYRE_PRESSURE.at(end)).text();
    }

    /**
     * Every time the rider comes by a pit before the finish, with the bottles taken there: one is taken where what is left would not last to the next
     * place to take one.
     */
    private List<PitPassage> passages(DayPlan plan) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i < laps; i++) {
            for (PitPlace pit : pits) {
                double at = i * lap + pit.at();
                if (at > 1 && at < lap * laps - 1) {
                    places.add(new double[] {i + 1, at, pit.bottles() ? 1 : 0});
                }
            }
        }
        places.sort(Comparator.comparingDouble(each -> each[1]));
        double perSecond = plan.fluids().drink().mid() / on.estimate().total().mid();
        double left = Math.max(BOTTLE, plan.fluids().gaps().isEmpty() ? 0 : plan.fluids().gaps().get(0).carry().mid());
        double before = 0;
        List<PitPassage> out = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            double at = places.get(i)[1];
            Range after = arrivals.after(at);
            left = Math.max(0, left - perSecond * (after.mid() - before));
            before = after.mid();
            boolean bottle = places.get(i)[2] > 0 && left < RESERVE * perSecond * (nextBottle(places, i) - after.mid());
            left = bottle ? BOTTLE : left;
            out.add(new PitPassage((int) places.get(i)[0], at, after, bottle));
        }
        return out;
    }

    /** When the next place to take a bottle, or the finish, is reached, s. */
    private double nextBottle(List<double[]> places, int from) {
        for (int i = from + 1; i < places.size(); i++) {
            if (places.get(i)[2] > 0) {
                return arrivals.after(places.get(i)[1]).mid();
            }
        }
        return on.estimate().total().mid();
    }

    /** From just behind one pit to the next, round the lap; null where neither wheels nor a bike wait. */
    private Walk walk() {
        List<Double> at = pits.stream().filter(each -> each.wheels() || each.bike()).map(PitPlace::at).toList();
        if (at.isEmpty()) {
            return null;
        }
        double furthest = lap - at.get(at.size() - 1) + at.get(0);
        for (int i = 1; i < at.size(); i++) {
            furthest = Math.max(furthest, at.get(i) - at.get(i - 1));
        }
        return new Walk(furthest, new Range(furthest / Walking.SPEED.high(), furthest / Walking.SPEED.mid(), furthest / Walking.SPEED.low()), on.day().plugStop());
    }

    /** The longest pieces of a lap that are smooth, not technical, neither steep nor fast, in order. */
    private List<LapPiece> easy() {
        DiscretisedCourse way = on.estimate().way();
        List<LapPiece> out = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            double from = way.along(i) - way.length(i);
            LapPiece last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (isEasy(way, i) && last != null && from - last.to() < 1) {
                out.set(out.size() - 1, new LapPiece(last.from(), way.along(i)));
            } else if (isEasy(way, i)) {
                out.add(new LapPiece(from, way.along(i)));
            }
        }
        out.removeIf(each -> each.to() - each.from() < LEAST_EASY);
        out.sort(Comparator.comparingDouble(each -> each.from() - each.to()));
        return out.stream().limit(MOST_EASY).sorted(Comparator.comparingDouble(LapPiece::from)).toList();
    }

    private boolean isEasy(DiscretisedCourse way, int step) {
        StretchFacts facts = call.demands().stretches().get(way.stretch(step));
        return way.gradient(step) > EASY_FROM && way.gradient(step) < EASY_TO && on.estimate().speed(0, step) < EASY_SPEED
                && known(facts, StretchMeasure.ROUGHNESS) <= EASY_ROUGHNESS && known(facts, StretchMeasure.MTB_SCALE) <= EASY_GRADE;
    }

    /** In base units; 0 where it is not known. */
    private static double known(StretchFacts facts, StretchMeasure measure) {
        long value = facts.get(measure);
        return value == StretchFacts.UNKNOWN ? 0 : measure.scale().resolution().base(value);
    }

    private List<String> wetTyres(Call wet) {
        List<String> out = new ArrayList<>();
        for (Topic topic : TYRES) {
            Decision other = wet.on(topic);
            if (!other.text().equals(call.on(topic).text())) {
                out.add(topic.name() + " " + other.text());
            }
        }
        return out;
    }

    private List<PitChoice> choices(List<String> wetTyres, PitWorthCalculator worths) {
        List<PitChoice> out = new ArrayList<>();
        boolean helped = pits.stream().anyMatch(each -> each.wheels() && each.helper());
        Range exchange = helped ? WHEELS_HELPED : WHEELS_ALONE;
        if (pits.stream().anyMatch(PitPlace::wheels)) {
            out.add(choice(Kind.SPARE_WHEELS, exchange, WHEELS_WORK, worths));
            if (wetTyres != null && !wetTyres.isEmpty()) {
                out.add(choice(Kind.WET_WHEELS, exchange, WHEELS_WORK + PlanB.hands(Work.TYRES), worths));
            }
        }
        if (pits.stream().anyMatch(PitPlace::bike)) {
            out.add(choice(Kind.SECOND_BIKE, BIKE, BIKE_WORK, worths));
        }
        return out;
    }

    private PitChoice choice(Kind kind, Range exchange, double work, PitWorthCalculator worths) {
        return new PitChoice(kind, exchange, work, laps - 1, exchange.times(1.0 / (laps - 1)), worths.of(kind, exchange));
    }
}
