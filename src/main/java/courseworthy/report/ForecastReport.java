package courseworthy.report;

import courseworthy.task.Brief;
import courseworthy.worth.DayPlan;
import courseworthy.worth.PlanB;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What changes on the bike if the forecast turns, and by when the work has to start. */
final class ForecastReport {

    static final String ID = "forecast";
    private static final String ORDER_OF_WORK = "Assumes one person doing the jobs one after another, waiting times overlapping, and the bike on the line"
            + " 20 min before the start. Put your own times under \"time to change\" in the event file.";

    private ForecastReport() {
    }

    /** A section for each way the forecast may turn; empty where it states none. */
    static Section section(Brief brief) {
        Section.Builder out = Section.builder(ID, "If the forecast turns");
        List<PlanB> others = brief.outlook().otherwise();
        for (int i = 0; i < others.size(); i++) {
            out.section(turn(ID + "-" + (i + 1), others.get(i), brief.outlook().plan()));
        }
        return out.build();
    }

    /** A line for each way the forecast may turn, with when work on the bike has to start. */
    static List<RichText> inShort(Brief brief) {
        List<RichText> out = new ArrayList<>();
        for (PlanB other : brief.outlook().otherwise()) {
            Double starts = other.workStarts();
            out.add(RichText.of("If it turns " + other.turns() + ": ").text(starts == null ? "nothing on the bike changes." : Phrases.count(other.lines().size(), "change")
                    + ", start work by " + latest(starts, brief.outlook().plan()) + "."));
        }
        return out;
    }

    private static Section.Builder turn(String id, PlanB other, DayPlan plan) {
        Section.Builder out = Section.builder(id, "If it turns " + other.turns())
                .paragraph("About " + PlanReport.clock(other.time().mid()) + " h (" + PlanReport.clock(other.time().low()) + " to "
                        + PlanReport.clock(other.time().high()) + ").")
                .paragraph(lacking(other))
                .paragraph(tooLate(other));
        if (other.lines().isEmpty()) {
            return out.paragraph(other.lacking().isEmpty() ? "The set-up stays as it is." : "Nothing on the build changes.");
        }
        Table.Builder table = Table.builder().column("Change").column("Then").column("Instead of").figures("Start work by");
        for (PlanB.PlanBLine line : other.lines()) {
            table.row(RichText.of(line.topic()), RichText.ofStrong(line.second()), RichText.of(line.first()), RichText.of(latest(line.latest(), plan)));
        }
        return out.table(table.build()).remark(takes(other));
    }

    /** The last moment to begin: {@code 7:05}, {@code 18:55 the day before}. */
    private static String latest(double afterStart, DayPlan plan) {
        return plan == null || plan.start() == null ? PlanReport.clock(-afterStart) + " h before the start" : PlanReport.ofDay(plan.start() + afterStart);
    }

    /** How long each change takes: {@code By estimate, tyres take 45 min and 12 h of waiting.}. */
    private static String takes(PlanB other) {
        Set<String> written = new LinkedHashSet<>();
        Set<String> estimated = new LinkedHashSet<>();
        for (PlanB.PlanBLine line : other.lines()) {
            String each = line.change().word() + " " + Figures.time(line.takes() - line.waits()) + (line.waits() > 0 ? " and then "
                    + Figures.time(line.waits()) + " of waiting" : "");
            (line.written() ? written : estimated).add(each);
        }
        return takes("Work by your event file: ", written) + takes("Work by estimate: ", estimated) + ORDER_OF_WORK;
    }

    private static String takes(String by, Set<String> work) {
        return work.isEmpty() ? "" : by + String.join(", ", work) + ". ";
    }

    /** What would have to change longer before; empty where nothing has to. */
    private static String tooLate(PlanB other) {
        return other.tooLate().isEmpty() ? "" : "Recommended then, but too late once the forecast has turned: "
                + String.join("; ", other.tooLate().stream().map(each -> each.topic() + " " + each.wanted()).toList()) + ".";
    }

    /** What would have to change and stays; empty where nothing has to. */
    private static String lacking(PlanB other) {
        StringBuilder out = new StringBuilder();
        for (PlanB.MissingItem each : other.lacking()) {
            out.append(out.length() == 0 ? "Recommended then, but not met by your parts: " : "; ").append(each.topic()).append(' ').append(each.wanted())
                    .append(", stays ").append(each.has());
        }
        return out.length() == 0 ? "" : out.append('.').toString();
    }
}
