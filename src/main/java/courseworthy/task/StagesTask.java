package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.RaceBuild;
import courseworthy.build.RaceBuildFinder;
import courseworthy.build.Recommendation;
import courseworthy.build.WorkDeadline;
import courseworthy.course.Course;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.event.Event;
import courseworthy.event.StageRace.RaceStage;
import courseworthy.fit.FitRules;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetInForce;
import courseworthy.stage.FreshParts;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSettler;
import courseworthy.stage.StageSetUp;
import courseworthy.stage.WeekBag;
import courseworthy.topic.Topics;
import courseworthy.wear.RideUse;
import courseworthy.wear.WearCounter;
import courseworthy.wear.WearCounter.Outlook;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Answers for a race over several days: reads it with the course of every stage, settles one set-up, and finds the build, the wear and the bag. */
public final class StagesTask {

    private final Workspace workspace;
    private final Event event;
    private final Rider rider;
    private final Workshop workshop;
    private final DroolsRules rules;
    private final List<Sheet> sheets;
    private final List<RideInput> rides;
    private final FitRules fit;

    private StagesTask(Workspace workspace, Event event, Rider rider, Workshop workshop, DroolsRules rules, List<Sheet> sheets, List<RideInput> rides) {
        this.workspace = workspace;
        this.event = event;
        this.rider = rider;
        this.workshop = workshop;
        this.rules = rules;
        this.sheets = sheets;
        this.rides = rides;
        fit = workshop == null ? null : FitRules.load();
    }

    /** The whole race. @param request names no course */
    public static StagesResult of(Workspace workspace, Request request) {
        return read(workspace, request).result();
    }

    /** The brief of one stage with the set-up of the race. @param number as typed */
    public static Brief brief(Workspace workspace, Request request, String number) {
        StagesTask task = read(workspace, request);
        int all = task.rides.size();
        int stage = number.matches("[0-9]{1,3}") ? Integer.parseInt(number) : 0;
        if (stage < 1 || stage > all) {
            throw new BadInput(Fault.of("--stage", 0, "", "\"" + number + "\"", "a stage from 1 to " + all, ""));
        }
        StageSetUp setUp = task.setUp();
        StageDay day = setUp.days().get(stage - 1);
        Workshop left = task.workshop;
        Build build = null;
        for (int bike = 0; task.workshop != null && bike <= setUp.bikeOn(stage); bike++) {
            left = build == null ? left : without(left, build);
            build = task.build(setUp.daysOn(bike), left).build();
        }
        BriefTask.CallContext called = new BriefTask.CallContext(task.rules, day.settled(), day.ride(), day.worths(), left);
        return BriefTask.of(workspace, called, task.fit, build, task.sheets);
    }

    private static StagesTask read(Workspace workspace, Request request) {
        Faults faults = new Faults();
        RequestReader inputs = workspace.reader(faults);
        Rider rider = inputs.rider(request.rider());
        RuleLoader loading = RuleLoader.start(workspace.home(), rider, request.sheets());
        Event event = inputs.stageRace(request.event());
        Workshop workshop = inputs.workshop(request.workshop());
        Bike fromEvent = event == null || event.bike() == null ? Bike.UNKNOWN : BikeReader.read(event.file(), event.bike(), faults);
        StageFiles files = new StageFiles(inputs, faults);
        List<RideInput> rides = new ArrayList<>();
        for (RaceStage stage : event == null ? List.<RaceStage>of() : event.plan().race().stages()) {
            Event day = stage.day().with(request.role(), null).onItsOwn();
            Course course = files.course(event, stage, inputs.sources(request.ground(), request.map()));
            ConsistencyCheck.check(course, day, faults);
            if (course != null && rider != null && fromEvent != null) {
                rides.add(new RideInput(course, rider, day, Survey.bike(rider.bike(), fromEvent)));
            }
        }
        DroolsRules rules = loading.finish(faults);
        workspace.stopOrWarn(faults);
        return new StagesTask(workspace, event, rider, workshop == null ? null : workshop.as(rider.name()), rules, loading.given(), rides);
    }

    private StageSetUp setUp() {
        Set<String> kinds = workshop == null ? null
                : workshop.bikes().stream().map(each -> each.word(PartDetail.KIND)).filter(Objects::nonNull).collect(Collectors.toCollection(LinkedHashSet::new));
        return StageSettler.of(rules, event.plan().race(), rides, kinds);
    }

    private StagesResult result() {
        StageSetUp setUp = setUp();
        List<RaceBuild> builds = builds(setUp);
        List<Outlook> wear = wear(setUp, builds);
        StageChecklist checklist = new StageChecklist(rules, setUp, builds, wear);
        return new StagesResult(event, rider.name(), setUp, builds, wear, WeekBag.of(setUp.days(), wear), charged(setUp, builds), checklist.made(), SheetInForce.of(sheets));
    }

    /** One for each bike, each from what those before it leave; empty where there is no workshop. */
    private List<RaceBuild> builds(StageSetUp setUp) {
        List<RaceBuild> out = new ArrayList<>();
        Workshop left = workshop;
        for (int bike = 0; workshop != null && bike < setUp.bikes().size(); bike++) {
            left = out.isEmpty() ? left : without(left, out.get(bike - 1).build());
            out.add(build(setUp.daysOn(bike), left));
        }
        return out;
    }

    private static Workshop without(Workshop workshop, Build build) {
        Set<String> names = new LinkedHashSet<>();
        build.parts().forEach(each -> names.add(each.part().name()));
        if (build.bike() != null) {
            names.add(build.bike().name());
        }
        return workshop.without(names);
    }

    /** Found for all days on which it is ridden; its work and worth are those of the longest. */
    private RaceBuild build(List<StageDay> days, Workshop from) {
        int longest = 0;
        for (int i = 0; i < days.size(); i++) {
            boolean known = days.get(i).hours() != null;
            longest = known && (days.get(longest).hours() == null || days.get(i).hours().mid() > days.get(longest).hours().mid()) ? i : longest;
        }
        List<Recommendation> each = days.stream().map(day -> Recommendation.of(rules, day.settled(), day.worths(), day.ride()::on)).toList();
        return RaceBuildFinder.of(each, longest, from, WorkDeadline.of(event.date(), event.plan().travel(), event.plan().hours()), fit);
    }

    private List<Outlook> wear(StageSetUp setUp, List<RaceBuild> builds) {
        List<Outlook> out = new ArrayList<>();
        for (int bike = 0; bike < setUp.bikes().size(); bike++) {
            List<StageDay> days = setUp.daysOn(bike);
            String of = setUp.bikes().size() == 1 ? "" : " of the " + setUp.bikes().get(bike).kind() + " bike";
            for (Outlook each : wear(days, of, builds.isEmpty() ? null : builds.get(bike).build())) {
                out.add(each.on(days.stream().map(day -> day.number() - 1).toList()));
            }
        }
        return WearCounter.inOrder(out);
    }

    private List<Outlook> wear(List<StageDay> days, String of, Build build) {
        boolean known = build != null && build.bike() != null;
        Set<String> fresh = new LinkedHashSet<>();
        List<Part> parts = new ArrayList<>(known ? List.of(build.bike()) : FreshParts.of(days.get(0).settled(), of));
        if (known) {
            build.parts().forEach(each -> parts.add(each.part()));
            build.parts().stream().filter(build::renewed).forEach(each -> fresh.add(each.part().name()));
        }
        Set<String> names = new LinkedHashSet<>();
        parts.forEach(each -> names.add(each.name()));
        List<RideUse> uses = new ArrayList<>();
        for (StageDay day : days) {
            if (day.settled().demands().estimated() != null) {
                uses.add(RideUpkeep.use(day.settled(), known ? build.bike().name() : PartKind.BIKE.word(), names, day.ride().event().date(), day.ride().event().name()));
            }
        }
        return uses.size() < days.size() ? List.of() : WearCounter.of(parts, uses, known ? workshop : null, fresh);
    }

    /** What is charged every night. */
    private static List<String> charged(StageSetUp setUp, List<RaceBuild> builds) {
        Set<String> out = new LinkedHashSet<>();
        for (StageDay day : setUp.days()) {
            String way = day.settled().on(Topics.NAVIGATION).text();
            out.add(way.contains("device") ? "the navigation device" : null);
            String lights = day.settled().on(Topics.LIGHTS).text();
            out.add(lights.startsWith("to ") ? Topics.LIGHTS.name() : null);
        }
        boolean electronic = builds.stream().flatMap(each -> each.build().parts().stream()).anyMatch(each -> "electronic".equals(each.part().has(PartDetail.ACTUATION) ? each.part().word(PartDetail.ACTUATION) : null));
        out.add(electronic ? "electronic shifting" : null);
        boolean meter = setUp.days().stream().anyMatch(day -> day.settled().on(Topics.POWER_METER).text().equals("fitted"));
        out.add(meter ? "the power meter if it is rechargeable" : null);
        return out.stream().filter(Objects::nonNull).toList();
    }
}
