package courseworthy.report;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief;
import courseworthy.debrief.Debrief.Line;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.OfRule;
import courseworthy.debrief.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Debriefs in words, for text and Markdown alike. */
public final class DebriefWords {

    static final String MEANS = "Borne out: the day put it to the test and it held, this once. Not borne out: another value was wanted. Could not tell: "
            + "nothing told bears on it, it was not tried, or it was told for other weather.";

    public static final List<String> CAUTIONS = List.of(
            "One day proves little: a ride without a flat does not prove a casing. Limits are never judged by how a day went.",
            "What is worth a look is for the coach to look at; nothing is changed by itself.");

    static final String NUMBERS = "In brackets the shares that fit what was seen, at 95 % confidence (Wilson 1927), as if each debrief were a new rider "
            + "on a new day: those of one rider or one event are alike, and say less.";

    private DebriefWords() {
    }

    /** {@code for Kim, 2026-06-20, held against kim.json}. */
    static String whose(DebriefResult held) {
        StringBuilder out = new StringBuilder();
        add(out, held.given().rider().isEmpty() ? "" : "for " + held.given().rider());
        add(out, held.given().date() == null ? "" : held.given().date());
        add(out, "held against " + held.given().file());
        return out.toString();
    }

    private static void add(StringBuilder to, String words) {
        to.append(to.length() == 0 || words.isEmpty() ? "" : ", ").append(words);
    }

    /** What happened, line by line. */
    static List<Line> day(DebriefResult held) {
        List<Line> out = new ArrayList<>();
        if (held.debrief().hours() != null) {
            out.add(new Line("hours", hours(held)));
        }
        String weather = weather(held);
        if (!weather.isEmpty()) {
            out.add(new Line("weather", weather));
        }
        out.addAll(held.debrief().day());
        if (!held.debrief().notes().isEmpty()) {
            out.add(new Line("notes", held.debrief().notes()));
        }
        return out;
    }

    private static String hours(DebriefResult held) {
        String was = Figures.time(held.debrief().hours());
        if (held.inTime() == null) {
            return was + "; no time was told";
        }
        String end = held.inTime() ? ", within it" : held.debrief().hours() < held.given().fast() ? ", faster" : ", slower";
        return was + "; told " + Figures.time(held.given().hours()) + ", " + Figures.time(held.given().fast()) + " to "
                + Figures.time(held.given().slow()) + end;
    }

    private static String weather(DebriefResult held) {
        Debrief.Weather was = held.debrief().weather();
        String now = weather(was.ground(), was.low(), was.high());
        String told = weather(held.given().ground(), held.given().coldest(), held.given().hottest());
        return now.isEmpty() ? "" : now + (told.isEmpty() ? "" : "; told " + told);
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

    static String rule(Verdict.OfRule rule) {
        return rule.said().rule() + " (" + rule.said().verb().word() + " " + rule.said().written() + "): " + rule.answer().words() + ", " + rule.reason();
    }

    /** What the day says of each rule, those it did not put to the test together; limits are left out. */
    static List<String> rules(Verdict verdict) {
        List<String> out = new ArrayList<>();
        Set<String> untested = new LinkedHashSet<>();
        for (Verdict.OfRule rule : verdict.rules()) {
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

    /** Whether anything was told on the topic. */
    static boolean told(Verdict verdict) {
        return !verdict.reasons().isEmpty();
    }

    /** Topics on which nothing was told. */
    static String untold(DebriefResult held) {
        List<String> out = new ArrayList<>();
        for (Verdict verdict : held.verdicts()) {
            if (!told(verdict)) {
                out.add(verdict.advice().topic().name());
            }
        }
        return out.isEmpty() ? "" : String.join(", ", out) + ".";
    }

    /** Verdicts with an answer on which something was told. */
    static List<Verdict> told(DebriefResult held, AdviceOutcome answer) {
        List<Verdict> out = new ArrayList<>();
        for (Verdict verdict : held.with(answer)) {
            if (told(verdict)) {
                out.add(verdict);
            }
        }
        return out;
    }

    static String title(AdviceOutcome answer) {
        return answer == AdviceOutcome.UNKNOWN ? "Could not tell, although something was told" : capital(answer.words());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    // The record over many

    static String inTime(RuleRecord keeping) {
        return keeping.inTime().of() == 0 ? "No time was told." : "The time lay in the range told in " + keeping.inTime().held() + " of "
                + keeping.inTime().of() + " (" + percent(keeping.inTime().low()) + " to " + percent(keeping.inTime().high()) + " %).";
    }

    private static long percent(double share) {
        return Math.round(share * 100);
    }

    static String counts(OfRule rule) {
        return "spoke " + rule.spoke() + ": borne out " + rule.borneOut() + ", not " + rule.not() + ", could not tell " + rule.unknown();
    }

    static String look(OfRule rule) {
        return rule.rule() + ": not borne out in " + String.join(", ", rule.where()) + "; borne out " + rule.share().words() + ".";
    }

    /** Rules that were put to the test at least once. */
    static List<OfRule> tested(RuleRecord keeping) {
        List<OfRule> out = new ArrayList<>();
        for (OfRule rule : keeping.rules()) {
            if (rule.share().of() > 0) {
                out.add(rule);
            }
        }
        return out;
    }

    static String untested(RuleRecord keeping) {
        int others = keeping.rules().size() - tested(keeping).size();
        return others == 0 ? "" : others + (others == 1 ? " other rule" : " other rules") + " spoke and " + (others == 1 ? "was" : "were")
                + " never put to the test; --format json lists " + (others == 1 ? "it." : "them.");
    }

    static String howMany(RuleRecord keeping) {
        return keeping.debriefs() + (keeping.debriefs() == 1 ? " debrief" : " debriefs");
    }
}
