package courseworthy.report;

import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;
import courseworthy.worth.DayPlan;
import courseworthy.worth.PlanB;
import java.util.List;

/** Writes for the terminal what to set, the plan for the day and what changes if the forecast turns. */
final class PlanText {

    private static final int AT = 10;
    private static final int TIME = 25;
    private static final int SETTING = 13;
    private static final int NAME = 24;

    private final Page page;
    private final Brief brief;

    PlanText(Page page, Brief brief) {
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
            page.heading("TO SET");
        }
        for (SettingWords.Row row : rows) {
            page.row(row.about(), SETTING, row.values(), Weight.PLAIN, "", 0, Weight.PLAIN);
        }
        page.texts("  ! ", SettingWords.alerts(brief));
        if (brief.outlook().suspension() != null) {
            page.text(2, 2, SettingWords.CHART, Weight.FAINT);
        }
    }

    private void plan(DayPlan plan) {
        page.gap();
        page.spread("PLAN FOR THE DAY", plan.start() == null ? "time from the start" : "start " + PlanWords.ofDay(plan.start()), Weight.BOLD);
        for (PlanWords.Place place : PlanWords.places(plan)) {
            String lead = right(place.at(), AT) + "  " + left(place.time(), TIME);
            if (lead.length() > AT + TIME + 2) {
                page.drawn(lead.stripTrailing(), Weight.PLAIN);
                lead = " ".repeat(AT + TIME + 2);
            }
            for (String line : Columns.wrap(place.what(), Columns.PAGE - AT - TIME - 2)) {
                page.drawn((lead + line).stripTrailing(), Weight.PLAIN);
                lead = " ".repeat(AT + TIME + 2);
            }
        }
        for (String line : PlanWords.beyond(plan)) {
            page.text(2, 4, line, Weight.ALERT);
        }
        page.text(2, 4, PlanWords.power(brief), Weight.PLAIN);
        page.text(2, 4, PlanWords.carry(plan), Weight.PLAIN);
        page.text(2, 4, PlanWords.light(plan, brief), Weight.PLAIN);
        page.gap();
        line(PlanWords.NEEDS.get(0), PlanWords.NEEDS.get(2), PlanWords.NEEDS.get(3), PlanWords.NEEDS.get(4), PlanWords.NEEDS.get(5), Weight.FAINT);
        for (PlanWords.Needs needs : PlanWords.needs(plan)) {
            line(needs.hour(), needs.energy(), needs.food(), needs.drink(), needs.temperature(), Weight.PLAIN);
        }
        for (String line : PlanWords.fuel(plan)) {
            page.text(2, 4, line, Weight.PLAIN);
        }
    }

    private void line(String hour, String energy, String food, String drink, String heat, Weight weight) {
        page.drawn(("  " + left(hour, 16) + left(energy, 20) + left(food, 18) + left(drink, 17) + heat).stripTrailing(), weight);
    }

    private void otherwise(PlanB other) {
        page.gap();
        page.spread(PlanWords.turns(other).toUpperCase(java.util.Locale.ROOT), other.lines().isEmpty() ? "" : "begin by", Weight.BOLD);
        page.text(2, 2, PlanWords.about(other), Weight.PLAIN);
        if (!other.lacking().isEmpty()) {
            page.text(2, 4, PlanWords.lacking(other), Weight.PLAIN);
        }
        if (other.lines().isEmpty()) {
            page.text(2, 2, PlanWords.nothingDiffers(other), Weight.PLAIN);
            return;
        }
        for (PlanB.Line line : other.lines()) {
            String by = PlanWords.latest(line, brief.outlook().plan());
            page.row(line.topic(), NAME, line.second() + " instead of " + line.first(), Weight.BOLD, by, by.length(), Weight.PLAIN);
        }
        page.text(2, 2, PlanWords.takes(other), Weight.FAINT);
    }

    private static String left(String text, int columns) {
        return text + " ".repeat(Math.max(1, columns - text.length()));
    }

    private static String right(String text, int columns) {
        return " ".repeat(Math.max(0, columns - text.length())) + text;
    }
}
