package courseworthy.report;

import courseworthy.task.Brief;
import courseworthy.worth.DayPlan;
import courseworthy.worth.PlanB;
import java.util.List;

/** Writes as Markdown what to set, the plan for the day and what changes if the forecast turns. */
final class PlanMarkdown {

    private final Marked page;
    private final Brief brief;

    PlanMarkdown(Marked page, Brief brief) {
        this.page = page;
        this.brief = brief;
    }

    void all() {
        settings();
        if (brief.outlook().plan() != null) {
            plan(brief.outlook().plan());
        }
        for (PlanB other : brief.outlook().otherwise()) {
            otherwise(other);
        }
        AtHandWords.add(page, brief.outlook().bikeAtHand());
    }

    private void settings() {
        List<SettingWords.Row> rows = SettingWords.rows(brief.outlook());
        if (!rows.isEmpty()) {
            page.heading(2, "To set");
        }
        for (SettingWords.Row row : rows) {
            page.bullet(row.about() + ":", row.values());
        }
        for (String alert : SettingWords.alerts(brief)) {
            page.bullet("(!)", alert);
        }
        if (brief.outlook().suspension() != null) {
            page.gap();
            page.emphasised(SettingWords.CHART);
        }
    }

    private void plan(DayPlan plan) {
        page.heading(2, "Plan for the day, " + (plan.start() == null ? "time from the start" : "start " + PlanWords.ofDay(plan.start())));
        page.tableHead("At", "Time", "What");
        for (PlanWords.Place place : PlanWords.places(plan)) {
            page.tableRow(place.at(), place.time(), place.what());
        }
        page.gap();
        for (String line : PlanWords.beyond(plan)) {
            page.bullet(line);
        }
        page.bullet(PlanWords.power(brief));
        page.bullet(PlanWords.carry(plan));
        page.bullet(PlanWords.light(plan, brief));
        page.gap();
        page.tableHead(PlanWords.NEEDS.toArray(new String[0]));
        for (PlanWords.Needs needs : PlanWords.needs(plan)) {
            page.tableRow(needs.hour(), needs.work(), needs.energy(), needs.food(), needs.drink(), needs.temperature());
        }
        page.gap();
        for (String line : PlanWords.fuel(plan)) {
            page.bullet(line);
        }
    }

    private void otherwise(PlanB other) {
        page.heading(2, PlanWords.turns(other));
        page.paragraph(PlanWords.about(other));
        if (!other.lacking().isEmpty()) {
            page.paragraph(PlanWords.lacking(other));
        }
        if (other.lines().isEmpty()) {
            page.paragraph(PlanWords.nothingDiffers(other));
            return;
        }
        page.tableHead("Topic", "Then", "Instead of", "Begin by");
        for (PlanB.Line line : other.lines()) {
            page.tableRow(line.topic(), line.second(), line.first(), PlanWords.latest(line, brief.outlook().plan()));
        }
        page.gap();
        page.emphasised(PlanWords.takes(other));
    }
}
