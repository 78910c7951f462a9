package courseworthy.report;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief;
import courseworthy.debrief.Debrief.DebriefLine;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.Proportion;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.RuleTally;
import courseworthy.debrief.SavedBrief;
import courseworthy.debrief.Verdict;
import courseworthy.ride.Range;
import courseworthy.task.DebriefReading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A debrief against the brief that was given, or the record of each rule over many debriefs. */
public final class DebriefReport {

    private static final String MEANS = "Borne out: the day put it to the test and it held, this once. Not borne out: another value was needed. "
            + "Inconclusive: nothing was reported on it, it was not tried, or it was meant for other weather.";

    public static final List<String> CAUTIONS = List.of(
            "One day proves little: a ride without a puncture does not prove a casing. Limits are never judged by how a day went.",
            "These are for the coach to review; no rule is changed automatically.");

    /** What the shares in brackets are worked out from. */
    public static final String SHARES_SOURCE = "Wilson 1927, Journal of the American Statistical Association 22:209-212";

    private static final RichText NUMBERS = RichText.of("In brackets: the shares that fit what was seen, at " + percent(Proportion.CONFIDENCE) + " % confidence, as if each "
            + "debrief were of a new rider on a new day. Those of one rider or one event resemble each other, and say less.").footnote(SHARES_SOURCE);

    private DebriefReport() {
    }

    public static Report of(DebriefReading reading) {
        return reading.result() == null ? record(reading.folder(), reading.record()) : debrief(reading.result());
    }

    /** One debrief. */
    private static Report debrief(DebriefResult result) {
        List<Definition> day = new ArrayList<>();
        for (DebriefLine line : day(result)) {
            day.add(Definition.of(line.what(), RichText.ofQuoted(line.words())));
        }
        Report.Builder out = Report.builder(RichText.ofQuoted(result.debrief().name())).subtitle("debrief")
                .paragraph(RichText.ofQuoted(whose(result)))
                .paragraphs(SheetNames.paragraphs(result.given().sheets()))
                .paragraphs(GroundPhrases.attribution(result.given().attribution()))
                .section(Section.builder("day", "The day").definitions(day));
        for (AdviceOutcome outcome : AdviceOutcome.values()) {
            out.section(verdicts(outcome, reported(result, outcome)));
        }
        return out.section(Section.builder("not-reported", "Nothing reported on").paragraph(unreported(result)))
                .section(method()).build();
    }

    private static Section.Builder verdicts(AdviceOutcome outcome, List<Verdict> verdicts) {
        List<Definition> rows = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            rows.add(Definition.of(verdict.advice().topic().name(), RichText.ofQuoted(verdict(verdict)))
                    .details(quoted(rules(verdict))));
        }
        return Section.builder(outcome.words().replace(' ', '-'), title(outcome)).definitions(rows);
    }

    /** The record over many. */
    private static Report record(String folder, RuleRecord record) {
        List<RichText> review = new ArrayList<>();
        for (RuleTally rule : record.toLookAt()) {
            review.add(RichText.ofQuoted(look(rule)));
        }
        List<Definition> tested = new ArrayList<>();
        for (RuleTally rule : record.tested()) {
            tested.add(new Definition(RichText.ofQuoted(rule.rule()), RichText.of(counts(rule)), RichText.EMPTY,
                    List.of(RichText.of(rule.share().words()))));
        }
        return Report.builder(RichText.ofQuoted(folder)).subtitle(howMany(record))
                .paragraph(inTime(record))
                .paragraphs(SheetNames.paragraphs(record.sheets()))
                .section(Section.builder("to-review", "To review").bullets(review))
                .section(Section.builder("tested", "Rules put to the test").paragraph(tested.isEmpty() ? "None yet." : "").definitions(tested)
                        .paragraph(untested(record)).remark(NUMBERS))
                .section(method()).build();
    }

    private static Section.Builder method() {
        return Section.builder("method", "How to read this").paragraph(MEANS).paragraphs(CAUTIONS.stream().map(RichText::of).toList());
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }

    /** {@code for Kim, 2026-06-20, compared with kim.json}. */
    static String whose(DebriefResult held) {
        StringBuilder out = new StringBuilder();
        add(out, held.given().rider().isEmpty() ? "" : "for " + held.given().rider());
        add(out, held.given().date() == null ? "" : held.given().date());
        add(out, "compared with " + held.given().file());
        return out.toString();
    }

    private static void add(StringBuilder to, String words) {
        to.append(to.length() == 0 || words.isEmpty() ? "" : ", ").append(words);
    }

    /** What happened, line by line. */
    static List<DebriefLine> day(DebriefResult held) {
        List<DebriefLine> out = new ArrayList<>();
        if (held.debrief().hours() != null) {
            out.add(new DebriefLine("hours", hours(held)));
        }
        String weather = weather(held);
        if (!weather.isEmpty()) {
            out.add(new DebriefLine("weather", weather));
        }
        out.addAll(held.debrief().day());
        if (!held.debrief().notes().isEmpty()) {
            out.add(new DebriefLine("notes", held.debrief().notes()));
        }
        return out;
    }

    private static String hours(DebriefResult held) {
        String was = Figures.time(held.debrief().hours());
        if (held.inTime() == null) {
            return was + "; no time was predicted";
        }
        SavedBrief.Time predicted = held.given().time();
        String end = held.inTime() ? ", in range" : held.debrief().hours() < predicted.fast() ? ", faster" : ", slower";
        return was + "; predicted " + Figures.time(new Range(predicted.fast(), predicted.likely(), predicted.slow())) + end;
    }

    private static String weather(DebriefResult held) {
        Debrief.ReportedWeather was = held.debrief().weather();
        String now = weather(was.going(), was.low(), was.high());
        String predicted = weather(held.given().going(), held.given().coldest(), held.given().hottest());
        return now.isEmpty() ? "" : now + (predicted.isEmpty() ? "" : "; predicted " + predicted);
    }

    private static String weather(String ground, Double low, Double high) {
        StringBuilder out = new StringBuilder();
        add(out, ground == null ? "" : ground);
        add(out, low == null ? "" : "coldest " + Math.round(low) + " C");
        add(out, high == null ? "" : "hottest " + Math.round(high) + " C");
        return out.toString();
    }

    /** {@code reinforced: you would take heavy; ...}. */
    static String verdict(Verdict verdict) {
        return verdict.advice().text() + ": " + String.join("; ", verdict.reasons());
    }

    static String rule(Verdict.RuleVerdict rule) {
        return rule.said().rule() + " (" + rule.said().verb().word() + " " + rule.said().written() + "): " + rule.answer().words() + ", " + rule.reason();
    }

    /** What the day says of each rule, those it did not put to the test together; limits are left out. */
    static List<String> rules(Verdict verdict) {
        List<String> out = new ArrayList<>();
        Set<String> untested = new LinkedHashSet<>();
        for (Verdict.RuleVerdict rule : verdict.rules()) {
            if (rule.reason().equals(DebriefResult.UNTESTED)) {
                untested.add(rule.said().rule());
            } else if (!rule.said().limit()) {
                out.add(rule(rule));
            }
        }
        verdict.rules().stream().filter(rule -> !rule.reason().equals(DebriefResult.UNTESTED)).forEach(rule -> untested.remove(rule.said().rule()));
        if (!untested.isEmpty()) {
            out.add("not put to the test: " + String.join(", ", untested));
        }
        return out;
    }

    /** Whether anything was reported on the topic. */
    private static boolean reported(Verdict verdict) {
        return !verdict.reasons().isEmpty();
    }

    /** Topics on which nothing was reported. */
    private static String unreported(DebriefResult held) {
        List<String> out = new ArrayList<>();
        for (Verdict verdict : held.verdicts()) {
            if (!reported(verdict)) {
                out.add(verdict.advice().topic().name());
            }
        }
        return out.isEmpty() ? "" : String.join(", ", out) + ".";
    }

    /** Verdicts with one outcome on which something was reported. */
    private static List<Verdict> reported(DebriefResult held, AdviceOutcome answer) {
        List<Verdict> out = new ArrayList<>();
        for (Verdict verdict : held.with(answer)) {
            if (reported(verdict)) {
                out.add(verdict);
            }
        }
        return out;
    }

    static String title(AdviceOutcome answer) {
        return answer == AdviceOutcome.UNKNOWN ? "Inconclusive" : Phrases.capital(answer.words());
    }

    // The record over many

    static String inTime(RuleRecord keeping) {
        return keeping.inTime().of() == 0 ? "No time was predicted." : "The time was in the predicted range in " + keeping.inTime().held() + " of "
                + keeping.inTime().of() + " (" + percent(keeping.inTime().low()) + " to " + percent(keeping.inTime().high()) + " %).";
    }

    private static long percent(double share) {
        return Math.round(share * 100);
    }

    static String counts(RuleTally rule) {
        return "applied " + rule.spoke() + ": borne out " + rule.borneOut() + ", not borne out " + rule.not() + ", inconclusive " + rule.unknown();
    }

    static String look(RuleTally rule) {
        return rule.rule() + ": not borne out in " + String.join(", ", rule.where()) + "; borne out " + rule.share().words() + ".";
    }

    static String untested(RuleRecord keeping) {
        int others = keeping.untested();
        return others == 0 ? "" : others + (others == 1 ? " other rule" : " other rules") + " applied and " + (others == 1 ? "was" : "were")
                + " never put to the test; --format json lists " + (others == 1 ? "it." : "them.");
    }

    static String howMany(RuleRecord keeping) {
        return keeping.debriefs() + (keeping.debriefs() == 1 ? " debrief" : " debriefs");
    }
}
