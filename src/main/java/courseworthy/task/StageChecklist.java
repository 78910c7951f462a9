package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.build.RaceBuild;
import courseworthy.call.Call;
import courseworthy.checklist.Checklist;
import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.checklist.RaceChecklistMaker;
import courseworthy.checklist.RaceChecklistMaker.Extra;
import courseworthy.claim.Deadline;
import courseworthy.decision.Decision;
import courseworthy.engine.DroolsRules;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSetUp;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.topic.Topic;
import courseworthy.topic.Work;
import courseworthy.wear.ServiceWork;
import courseworthy.wear.WearCounter.Outlook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The checklist of a race over several days: that of each day for the race's set-up and builds, with what is changed and renewed on the evenings. */
final class StageChecklist {

    private static final String RACE = "race";

    private final DroolsRules rules;
    private final StageSetUp setUp;
    private final List<RaceBuild> builds;
    private final List<Outlook> wear;

    /** @param builds empty where there is no workshop */
    StageChecklist(DroolsRules rules, StageSetUp setUp, List<RaceBuild> builds, List<Outlook> wear) {
        this.rules = rules;
        this.setUp = setUp;
        this.builds = builds;
        this.wear = wear;
    }

    Checklist made() {
        List<Call> mounted = setUp.days().stream().map(day -> BuildCall.of(rules, day.settled(), build(day), day.ride()::on)).toList();
        Map<Topic, Decision> upkeep = upkeep(mounted);
        List<Checklist> days = new ArrayList<>();
        for (int i = 0; i < mounted.size(); i++) {
            days.add(ChecklistMaker.of(with(mounted.get(i), upkeep), setUp.days().get(i).ride().event(), build(setUp.days().get(i))));
        }
        List<Extra> extras = new ArrayList<>();
        wear.stream().filter(each -> each.due().contains(0) && !isSaid(each)).forEach(each -> extras.add(new Extra(Deadline.WEEK_BEFORE, due(each, ""))));
        extras.add(new Extra(Deadline.TWO_DAYS_BEFORE, check("Pack the bag for the race", "Everything listed under the bag, counted",
                "Between stages there is no time to buy what was left at home.", false, 15)));
        for (StageDay day : setUp.days()) {
            String before = "Before stage " + day.number() + ": ";
            setUp.changes().stream().filter(each -> each.before() == day.number()).forEach(each -> extras.add(new Extra(Deadline.NIGHT_BEFORE, change(each, before))));
            wear.stream().filter(each -> day.number() > 1 && each.due().contains(day.number() - 1)).forEach(each -> extras.add(new Extra(Deadline.NIGHT_BEFORE, due(each, before))));
        }
        return RaceChecklistMaker.of(days, extras);
    }

    private Build build(StageDay day) {
        return builds.isEmpty() ? null : builds.get(setUp.bikeOn(day.number())).build();
    }

    /** What is seen to once before the race, as the day that asks most wants it. */
    private static Map<Topic, Decision> upkeep(List<Call> days) {
        Map<Topic, Decision> out = new LinkedHashMap<>();
        for (Call day : days) {
            for (Decision each : day.decisions()) {
                boolean ranked = each.topic().work() == Work.UPKEEP && each.topic().safe() != Topic.Safe.NONE && each.value() != null;
                if (ranked) {
                    out.merge(each.topic(), each, StageChecklist::safer);
                }
            }
        }
        return out;
    }

    private static Decision safer(Decision one, Decision other) {
        boolean more = other.value() > one.value();
        return more == (one.topic().safe() == Topic.Safe.UP) ? other : one;
    }

    private static Call with(Call call, Map<Topic, Decision> decisions) {
        return new Call(call.demands(), call.decisions().stream().map(each -> each.value() == null ? each : decisions.getOrDefault(each.topic(), each)).toList(),
                call.tasks(), call.undetermined());
    }

    /** Whether the build says already that a part is worn or due. */
    private boolean isSaid(Outlook each) {
        return builds.stream().flatMap(build -> build.build().wear().stream()).anyMatch(note -> note.part().equals(each.part().name()));
    }

    private static ChecklistItem due(Outlook each, String before) {
        String what = ServiceWork.task(each.interval().job()) + ": " + each.part().name();
        String lead = before.isEmpty() ? Character.toUpperCase(what.charAt(0)) + what.substring(1) : before + what;
        return check(lead, "Done, or measured and found good for the rest of the race", "At its shortest usual life it may not last the race.",
                each.interval().work().safety(), each.interval().work().minutes());
    }

    private ChecklistItem change(EveningChange change, String before) {
        List<String> to = new ArrayList<>();
        for (Map.Entry<Topic, Long> each : change.to().entrySet()) {
            to.add(each.getKey().name() + " " + setUp.text(each.getKey(), each.getValue()));
        }
        return check(before + "change " + change.work().word(), "Mounted: " + String.join(", ", to), "It saves more on the road than it takes in the evening.", false, change.minutes());
    }

    private static ChecklistItem check(String what, String find, String because, boolean critical, double minutes) {
        return new ChecklistItem(what, find, because, critical, RACE, "", null, minutes);
    }
}
