package courseworthy.report;

import courseworthy.report.picture.BackPlan;
import courseworthy.task.Brief;
import courseworthy.task.Preparation;
import courseworthy.task.Preparation.SwitchDeadline;
import courseworthy.task.Preparation.WorkSession;
import courseworthy.task.Preparation.WaitingTime;
import java.util.List;

/** The days before the start of a brief's ride, planned back from it. */
final class BackPlanFigure {

    private BackPlanFigure() {
    }

    /** Null where the day or the time of the start is not known, or nothing is to be done before. */
    static Figure of(Brief brief) {
        Preparation preparation = brief.preparation();
        if (preparation == null || preparation.sittings().isEmpty()) {
            return null;
        }
        int start = preparation.start().toLocalTime().toSecondOfDay();
        BackPlan plan = new BackPlan(start, preparation.start().toLocalDate().toString(), preparation.sittings().stream().map(BackPlanFigure::sitting).toList(),
                preparation.waits().stream().map(BackPlanFigure::wait).toList(), preparation.lastMoments().stream().map(BackPlanFigure::lastMoment).toList());
        return new Figure(RichText.of(title(preparation, start)), plan, RichText.ofQuoted(sentence(preparation, start)), data(preparation, start));
    }

    private static BackPlan.SessionBar sitting(WorkSession each) {
        return new BackPlan.SessionBar(each.when(), each.to(), each.items(), each.critical(), each.to() - each.from());
    }

    private static BackPlan.WaitBar wait(WaitingTime each) {
        return new BackPlan.WaitBar(each.part(), each.from(), each.to());
    }

    private static BackPlan.DeadlineMark lastMoment(SwitchDeadline each) {
        return new BackPlan.DeadlineMark(turn(each), each.at());
    }

    private static String turn(SwitchDeadline each) {
        return "if " + each.turns() + ": " + Phrases.count(each.changes(), "change");
    }

    /** The first moment that must not be missed: of plan B where there is one, else when work begins. */
    private static String title(Preparation preparation, int start) {
        if (!preparation.lastMoments().isEmpty()) {
            return "Plan B: start work by " + PlanReport.ofDay(start + preparation.lastMoments().get(0).at());
        }
        WorkSession first = preparation.sittings().get(0);
        return "Work begins at " + PlanReport.ofDay(start + first.from());
    }

    private static String sentence(Preparation preparation, int start) {
        int items = preparation.sittings().stream().mapToInt(WorkSession::items).sum();
        String waits = preparation.waits().isEmpty() ? "" : "; longest wait: " + longest(preparation.waits());
        return Phrases.count(items, "thing") + " to do in " + Phrases.count(preparation.sittings().size(), "sitting") + " before the start at "
                + PlanReport.ofDay(start) + waits + ".";
    }

    private static String longest(List<WaitingTime> waits) {
        WaitingTime longest = Preparation.longest(waits);
        return longest.part() + ", " + PlanReport.clock(longest.to() - longest.from()) + " h";
    }

    private static Table data(Preparation preparation, int start) {
        Table.Builder out = Table.builder().column("From").column("To").column("What");
        for (WorkSession each : preparation.sittings()) {
            row(out, start, each.from(), each.to(), each.when() + ": " + Phrases.count(each.items(), "thing") + " to do, " + each.critical() + " safety-critical");
        }
        for (WaitingTime each : preparation.waits()) {
            row(out, start, each.from(), each.to(), each.part() + " left alone: " + each.what());
        }
        for (SwitchDeadline each : preparation.lastMoments()) {
            row(out, start, each.at(), 0, "last moment to start work " + turn(each));
        }
        return out.build();
    }

    private static void row(Table.Builder out, int start, double from, double to, String what) {
        out.row(RichText.of(PlanReport.ofDay(start + from)), RichText.of(PlanReport.ofDay(start + to)), RichText.ofQuoted(what));
    }
}
