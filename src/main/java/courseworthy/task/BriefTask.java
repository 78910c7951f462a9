package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.build.BuildFinder;
import courseworthy.build.Recommendation;
import courseworthy.build.WorkDeadline;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.call.CloseThreshold;
import courseworthy.call.CloseThresholdFinder;
import courseworthy.call.Flip;
import courseworthy.call.WhatIfCall;
import courseworthy.checklist.Checklist;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.course.Course;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.Pit;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.sheet.Sheet;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Workshop;
import courseworthy.worth.BikeAtHand;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.DayPlan;
import courseworthy.worth.GearShortfall;
import courseworthy.worth.PlanB;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.util.List;

/** Answers for one course, one rider and one day: reads what a request names, surveys it, makes the recommendation and finds the build. */
public final class BriefTask {

    private final Workspace workspace;
    private final boolean outlook;
    private final boolean ahead;
    private final boolean margins;

    /**
     * @param outlook whether to work out what to set, the day's plan and what changes if the forecast turns
     * @param ahead   whether to work out what a plain brief shows of worth while the recommendation is made
     * @param margins whether to work out which decisions are close
     */
    private BriefTask(Workspace workspace, boolean outlook, boolean ahead, boolean margins) {
        this.workspace = workspace;
        this.outlook = outlook;
        this.ahead = ahead;
        this.margins = margins;
    }

    /** The whole brief. */
    public static BriefResult of(Workspace workspace, Request request) {
        return new BriefTask(workspace, true, true, true).answer(request);
    }

    /** Without what to set, the day's plan and what changes if the forecast turns; with what waits in pits. */
    public static BriefResult withoutOutlook(Workspace workspace, Request request) {
        return new BriefTask(workspace, false, false, false).answer(request);
    }

    /** Likewise, with which decisions are close. */
    static BriefResult withoutOutlookButMargins(Workspace workspace, Request request) {
        return new BriefTask(workspace, false, false, true).answer(request);
    }

    /** One topic of the brief in full, with what would change it. */
    public static TopicResult topic(Workspace workspace, Request request, String name, Progress progress) {
        Topic topic = Workspace.topic("--topic", name);
        BriefResult answer = new BriefTask(workspace, true, false, true).answer(request);
        List<Flip> flips = WhyTask.flips(answer.rules(), answer.call(), topic, progress).any();
        return new TopicResult(answer.brief(), topic, flips);
    }

    private BriefResult answer(Request request) {
        Faults faults = new Faults();
        RequestReader inputs = workspace.reader(faults);
        Rider rider = inputs.rider(request.rider());
        RuleLoader loading = RuleLoader.start(workspace.home(), rider, request.sheets());
        inputs.recordedBy(rider);
        Course course = inputs.course(request.course(), request.ground(), request.map());
        Event event = inputs.event(request);
        Workshop workshop = inputs.workshop(request);
        Bike bike = rider == null || event == null ? null : bike(rider, event, faults);
        ConsistencyCheck.check(course, event, faults);
        RideInput ride = new RideInput(course, rider, event, bike);
        Demands demands = faults.stop() ? null : ride.atHand();
        Sensitivity sensitivity = sensitivity(demands);
        DroolsRules rules = loading.finish(faults);
        workspace.stopOrWarn(faults);
        Call call = CallMaker.call(rules, demands, ride::on);
        WorthCalculator worths = new WorthCalculator(call, call.demands().choosing() == null ? sensitivity : Sensitivity.of(call.demands()));
        CallContext called = new CallContext(rules, call, ride, worths, workshop == null ? null : workshop.as(rider.name()));
        FitRules fit = workshop == null ? null : FitRules.load();
        Build build = workshop == null ? null : BuildFinder.of(Recommendation.of(rules, call, worths, ride::on), called.workshop(),
                WorkDeadline.of(event.date(), event.plan().travel(), event.plan().hours()), fit, null);
        Build ready = build == null ? null : RideUpkeep.due(build, called.workshop(), call, event.date(), event.name().isEmpty() ? course.name() : event.name());
        return assemble(called, fit, ready, loading.given());
    }

    private Sensitivity sensitivity(Demands demands) {
        if (demands == null) {
            return null;
        }
        Sensitivity sensitivity = Sensitivity.of(demands);
        if (ahead) {
            sensitivity.ahead(WorthCalculator.mayUseExtensions(demands), WorthCalculator.inCompany(demands));
            DayPlan.ahead(demands);
        }
        return sensitivity;
    }

    /**
     * The brief of a ride whose build is settled already, as those of a season are.
     *
     * @param called with the parts that the rider may use
     */
    static Brief of(Workspace workspace, CallContext called, FitRules fit, Build build, List<Sheet> sheets) {
        return new BriefTask(workspace, true, false, true).assemble(called, fit, build, sheets).brief();
    }

    /** What the rest of a brief is made from; without a workshop where none is given. */
    record CallContext(DroolsRules rules, Call call, RideInput ride, WorthCalculator worths, Workshop workshop) {
    }

    /** @param build null where there is no workshop */
    private BriefResult assemble(CallContext called, FitRules fit, Build build, List<Sheet> sheets) {
        RideInput ride = called.ride();
        Call call = called.call();
        Event event = ride.event();
        Call mounted = BuildCall.of(called.rules(), call, build, ride::on);
        RefitAfterTurn refit = RefitAfterTurn.of(called.rules(), fit, call, build, mounted, called.workshop(), event.date());
        DayOutlook day = outlook ? outlook(called, mounted, refit) : pits(called, mounted, refit);
        WhatIfCall trial = margins ? new WhatIfCall(called.rules(), call) : null;
        List<CloseThreshold> close = margins ? CloseThresholdFinder.of(called.rules(), call, trial) : List.of();
        Checklist checklist = ChecklistMaker.of(mounted, event, build, day.pits());
        return new BriefResult(called.rules(), call, mounted, BriefAssembler.of(ride.course(), ride.rider(), event, call, mounted, close,
                new Reliance(new GroundReliance(ride, called.rules(), call), new SingleChanges(called.rules(), call, trial)), checklist, day,
                called.worths(), build, sheets), ride);
    }

    private DayOutlook outlook(CallContext called, Call mounted, RefitAfterTurn refit) {
        return DayOutlook.of(called.call(), mounted, others(called, refit), BikeAtHand.of(called.rules(), called.call()))
                .with(shortfall(called.call(), mounted, called.ride()));
    }

    /** What waits in the pits; only where wheels may wait there is it asked which the wet wants. */
    private DayOutlook pits(CallContext called, Call mounted, RefitAfterTurn refit) {
        boolean wheels = called.ride().event().plan().pits().stream().anyMatch(Pit::wheels);
        return DayOutlook.ofPits(called.call(), mounted, wheels ? others(called, refit) : List.of());
    }

    private List<PlanB> others(CallContext called, RefitAfterTurn refit) {
        List<PlanB> out = AlternativeForecasts.of(called.rules(), called.ride(), called.call(), refit);
        Faults faults = new Faults();
        ConsistencyCheck.changes(called.ride().event(), out, faults);
        workspace.stopOrWarn(faults);
        return out;
    }

    /** Of the build's gears; where those are not known, or there is no build, of the recommended ones. */
    static GearShortfall shortfall(Call call, Call mounted, RideInput ride) {
        boolean build = mounted != call && mounted.on(Topics.EASIEST_GEAR).value() != null;
        GearShortfall out = GearShortfall.of(build ? mounted : call, ShippedRules.realPairs(), ride::on);
        return out == null || !build ? out : out.ofABuild();
    }

    private static Bike bike(Rider rider, Event event, Faults faults) {
        Bike fromEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(event.file(), event.bike(), faults);
        return fromEvent == null ? null : Survey.bike(rider.bike(), fromEvent);
    }
}
