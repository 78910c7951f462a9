package courseworthy.report;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.Verdict;
import courseworthy.demand.MeasureValue;
import courseworthy.scout.DecisionDifference;
import courseworthy.scout.MeasureDifference;
import courseworthy.scout.MeasureWeight;
import courseworthy.scout.SimilarCourse;
import courseworthy.task.SimilarResult;
import courseworthy.topic.BothEnds;
import java.util.ArrayList;
import java.util.List;

/** The courses that ask for the most similar set-ups: how they differ, and what was learned there. */
public final class SimilarReport {

    /** Measures, decisions and pieces of advice that are named one by one; the rest is counted. */
    private static final int MOST_MEASURES = 6;
    private static final int MOST_DECISIONS = 8;
    private static final int MOST_ADVICE = 4;
    private static final int MOST_WEIGHTS = 10;

    private static final String WEIGHTS = "Each measure of the course, its ground and the ride was set to the lowest and to the highest value of all courses "
            + "compared, all else as it is here. It counts by the number of decisions that change, the mean of the two.";
    private static final String ALIKE = "100 % alike: the same in all that counts. 0 %: as far apart as any two courses compared, in every measure. A measure that is "
            + "known on one course only counts as half apart. The figure holds for this rider, this day and these courses.";
    private static final String NO_WEIGHT = "No measure changes a decision here by itself: every course compared is as similar as any other.";

    private SimilarReport() {
    }

    public static Report of(SimilarResult result) {
        Report.Builder out = ReportHead.of(result.brief(), "similar courses");
        result.attributions().forEach(names -> out.paragraphs(GroundPhrases.attribution(names)));
        out.paragraph(RichText.of("Compared with " + Phrases.count(result.courses().courses().size(), "course") + " in ").quoted(result.folder()).text("."));
        out.paragraph(result.leftOut() == 0 ? "" : Phrases.count(result.leftOut(), "more file") + " in the folder not looked at.");
        out.paragraph(result.courses().deciding().isEmpty() ? NO_WEIGHT : "");
        int number = 0;
        for (SimilarCourse course : result.courses().nearest()) {
            out.section(course(course, result.debriefsOf(course.library()), ++number));
        }
        return out.section(others(result)).section(method(result)).build();
    }

    private static Section.Builder course(SimilarCourse course, List<DebriefResult> debriefs, int number) {
        Section.Builder out = Section.builder("similar-" + number, RichText.of(number + ". ").quoted(course.library().course().name()))
                .aside(alike(course)).paragraph(RichText.ofQuoted(course.library().file()));
        List<MeasureDifference> differing = course.differing();
        out.paragraph(differing.isEmpty() ? "The same in every measure that decides anything here." : "");
        out.table(measures(differing)).paragraph(more(differing.size() - MOST_MEASURES, "measure differs", "measures differ"));
        List<List<String>> decisions = rows(course.decisions());
        out.paragraph(decisions.isEmpty() ? "The recommendation is the same on every topic." : "");
        out.table(decisions(decisions)).paragraph(more(decisions.size() - MOST_DECISIONS, "line of the set-up differs", "lines of the set-up differ"));
        return out.bullets("Learned there:", debriefs.stream().map(SimilarReport::learned).toList());
    }

    private static String alike(SimilarCourse course) {
        return Figures.percent(1 - course.difference()) + " alike";
    }

    private static String more(int count, String one, String many) {
        return count <= 0 ? "" : count + " more " + (count == 1 ? one : many) + "; --format json lists all.";
    }

    private static Table measures(List<MeasureDifference> differing) {
        Table.Builder out = Table.builder().column("What differs most").column("Here").column("There");
        for (MeasureDifference each : differing.subList(0, Math.min(MOST_MEASURES, differing.size()))) {
            out.row(each.measure().written(), text(each, each.here()), text(each, each.there()));
        }
        return out.build();
    }

    private static String text(MeasureDifference difference, MeasureValue value) {
        return value == null ? "unknown" : difference.measure().scale().text(value.mid());
    }

    private static Table decisions(List<List<String>> decisions) {
        Table.Builder out = Table.builder().column("Set up").column("Here").column("There");
        for (List<String> each : decisions.subList(0, Math.min(MOST_DECISIONS, decisions.size()))) {
            out.row(each.toArray(new String[0]));
        }
        return out.build();
    }

    /** A row each: the topic, here, there; front and rear are one where they are the same on either course. */
    private static List<List<String>> rows(List<DecisionDifference> decisions) {
        List<List<String>> out = new ArrayList<>();
        for (int i = 0; i < decisions.size(); i++) {
            DecisionDifference each = decisions.get(i);
            DecisionDifference next = i + 1 < decisions.size() ? decisions.get(i + 1) : each;
            boolean pair = each.topic().isFrontOf(next.topic()) && each.here().equals(next.here()) && each.there().equals(next.there());
            out.add(List.of(pair ? BothEnds.name(each.topic()) : each.topic().name(), each.mine().phrase(), each.its().phrase()));
            i += pair ? 1 : 0;
        }
        return out;
    }

    /** {@code Heather Ridge Marathon, for Kim, 2026-06-20: not borne out: water 1.5 L; borne out: plugs 3 (debriefs/ridge.yaml)}. */
    private static RichText learned(DebriefResult debrief) {
        List<String> out = new ArrayList<>();
        for (AdviceOutcome outcome : List.of(AdviceOutcome.NOT, AdviceOutcome.BORNE_OUT)) {
            List<Verdict> verdicts = debrief.with(outcome);
            if (!verdicts.isEmpty()) {
                out.add(outcome.words() + ": " + advice(verdicts));
            }
        }
        String whose = debrief.debrief().name() + (debrief.given().rider().isEmpty() ? "" : ", for " + debrief.given().rider())
                + (debrief.given().date() == null ? "" : ", " + debrief.given().date());
        return RichText.ofQuoted(whose).text(": " + (out.isEmpty() ? "nothing was put to the test" : String.join("; ", out)) + " (")
                .quoted(debrief.debrief().file()).text(").");
    }

    private static String advice(List<Verdict> verdicts) {
        List<String> out = new ArrayList<>();
        for (Verdict each : verdicts.subList(0, Math.min(MOST_ADVICE, verdicts.size()))) {
            out.add(each.advice().topic().name() + " " + each.advice().text());
        }
        return String.join(", ", out) + (verdicts.size() > MOST_ADVICE ? " and " + (verdicts.size() - MOST_ADVICE) + " more" : "");
    }

    private static Section.Builder others(SimilarResult result) {
        Table.Builder table = Table.builder().column("Course").figures("Alike").column("File");
        for (SimilarCourse each : result.courses().others()) {
            table.row(RichText.ofQuoted(each.library().course().name()), RichText.of(Figures.percent(1 - each.difference())),
                    RichText.ofQuoted(each.library().file()));
        }
        return Section.builder("others", "The other courses").table(table.build());
    }

    private static Section.Builder method(SimilarResult result) {
        List<MeasureWeight> deciding = result.courses().deciding();
        Table.Builder table = Table.builder().column("Measure").figures("Decisions").column("From").column("To");
        for (MeasureWeight each : deciding.subList(0, Math.min(MOST_WEIGHTS, deciding.size()))) {
            table.row(each.measure().written(), Phrases.number(each.weight(), 1), each.measure().scale().text(each.lowest().mid()),
                    each.measure().scale().text(each.highest().mid()));
        }
        return Section.builder("method", "What counts, and how much").paragraph(WEIGHTS).table(table.build())
                .paragraph(more(deciding.size() - MOST_WEIGHTS, "measure counts", "measures count")).paragraph(ALIKE);
    }
}
