package courseworthy.report;

import courseworthy.report.SetUpSummary.Entry;
import courseworthy.task.Brief;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.SupplyGap;
import courseworthy.worth.DayPlan.Split;
import courseworthy.worth.DayPlanSummary;
import courseworthy.worth.PressureSettings;
import java.util.ArrayList;
import java.util.List;

/** What a rider wants to read while riding, few words to a line: where to be when, food, water, pressures, gears. */
final class TopTubeCard {

    static final String ID = "top-tube";
    private static final double KM = 1000;
    /** Characters of a name: a card is small, and the sheet that it is cut from has the whole of it. */
    private static final int LONGEST_NAME = 40;

    private final Brief brief;
    private final DayPlan plan;

    private TopTubeCard(Brief brief) {
        this.brief = brief;
        plan = brief.outlook().plan();
    }

    /** The card; null where no plan was made. */
    static Section of(Brief brief) {
        return brief.outlook().plan() == null ? null : new TopTubeCard(brief).section();
    }

    private Section section() {
        String name = brief.event().isEmpty() ? brief.course().name() : brief.event();
        boolean whole = name.codePointCount(0, name.length()) <= LONGEST_NAME;
        String shown = whole ? name : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)) + "...";
        Section.Builder out = Section.builder(ID, RichText.ofQuoted(shown));
        return out.table(places()).definitions(values()).build();
    }

    private Table places() {
        Table.Builder out = Table.builder().keyColumns(2).figures("km").figures(plan.start() == null ? "h" : "at").column("");
        for (List<Split> place : DayPlanSummary.of(plan).places()) {
            List<String> what = new ArrayList<>();
            place.forEach(split -> what.add(what(split)));
            what.removeIf(String::isEmpty);
            Split first = place.get(0);
            out.row(RichText.of(Phrases.number(first.at() / KM, 1)), RichText.ofStrong(time(first.after().mid())), RichText.of(String.join("; ", what)));
        }
        return out.build();
    }

    private String time(double after) {
        return plan.start() == null ? PlanReport.clock(after) : PlanReport.ofDay(plan.start() + after);
    }

    private String what(Split split) {
        return switch (split.kind()) {
            case FOOT -> "climb, " + PlanReport.climb(split.climb());
            case TOP -> "top";
            case LAP -> "end of lap " + split.lap();
            case SUPPORT -> support(split);
            case CUT_OFF -> "cut-off " + time(split.latest());
            case FINISH -> "finish" + (split.latest() == null ? "" : ", cut-off " + time(split.latest()));
        };
    }

    private String support(Split split) {
        List<String> out = new ArrayList<>();
        SupplyGap gap = null;
        for (SupplyGap each : plan.fluids().gaps()) {
            gap = Math.abs(each.from() - split.at()) < 1 ? each : gap;
        }
        if (split.stop().water()) {
            out.add(gap == null ? "water" : "water, " + Figures.range(gap.carry(), 1, "L"));
        }
        if (split.stop().food()) {
            out.add("food");
        }
        if (split.stop().bag()) {
            out.add("own bag");
        }
        return String.join(", ", out);
    }

    private List<Definition> values() {
        List<Definition> out = new ArrayList<>();
        for (Entry entry : SetUpSummary.of(brief)) {
            String about = entry.about();
            if (about.equals(SetUpSummary.PRESSURE)) {
                out.add(row("Tyres", pressures(entry)));
            } else if (about.equals("Gears")) {
                out.add(row(about, entry.parts().get(0)));
            }
        }
        if (plan.energy().rate() != null) {
            out.add(row("Eat", Figures.range(plan.energy().rate(), 0, "g") + " an hour"));
        }
        out.add(row("Drink", "to thirst, " + Figures.range(plan.fluids().drink(), 1, "L") + " in all"));
        return out;
    }

    private static Definition row(String about, String value) {
        return Definition.of(about, RichText.ofQuoted(value).in(Style.STRONG));
    }

    /** Those of the tyres that are ridden. */
    private String pressures(Entry recommended) {
        PressureSettings set = brief.outlook().pressures();
        List<String> start = set == null ? List.of() : SettingReport.atTheStart(set);
        return start.isEmpty() ? recommended.values() : String.join(", ", start);
    }
}
