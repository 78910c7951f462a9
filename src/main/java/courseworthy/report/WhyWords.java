package courseworthy.report;

import courseworthy.call.Explainer.Instead;
import courseworthy.call.RuleTrace;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.decision.Decision.Status;
import courseworthy.sheet.ConditionTrace;
import courseworthy.sheet.Truth;
import courseworthy.topic.Topic;
import courseworthy.units.PressureSteps;
import java.util.ArrayList;
import java.util.List;

/** Phrases for why and why not, the same in text and Markdown. */
public final class WhyWords {

    static final String MARKS = "+ holds, - does not hold, ? cannot be told.";

    private WhyWords() {
    }

    /** {@code + roughness: rough (2.7), asked: at least rough}. */
    static String test(ConditionTrace test) {
        StringBuilder out = new StringBuilder(mark(test.truth())).append(' ').append(test.what());
        if (test.asked().isEmpty()) {
            return out.append(':').toString();
        }
        out.append(": ").append(test.value()).append(", asked: ").append(test.asked());
        return out.append(test.off().isEmpty() ? "" : ", " + test.off()).toString();
    }

    private static String mark(Truth truth) {
        return switch (truth) {
            case TRUE -> "+";
            case FALSE -> "-";
            case UNKNOWN -> "?";
        };
    }

    /** Whether a rule spoke, and in a word why not. */
    static String spoke(RuleTrace hearing) {
        if (hearing.spoke()) {
            return "It spoke.";
        }
        if (hearing.says().isEmpty()) {
            return "It kept silent: what it joins is not settled so that it has something to say.";
        }
        if (!hearing.wanting().isEmpty() && hearing.truth() == Truth.TRUE) {
            return "It kept silent: its value comes from " + hearing.wanting() + ", which is unknown.";
        }
        return hearing.truth() == Truth.UNKNOWN ? "It kept silent: it cannot be told whether its conditions hold."
                : "It kept silent: its conditions do not all hold.";
    }

    /** {@code prefer 45 mm}; several things joined. */
    static String says(RuleTrace hearing) {
        return hearing.says().isEmpty() ? "joins topics" : String.join(", ", hearing.says());
    }

    /** The lines of conditions that keep a rule silent; of those that hold, none. */
    static List<ConditionTrace> unmet(RuleTrace hearing) {
        List<ConditionTrace> out = new ArrayList<>();
        boolean in = false;
        boolean none = false;
        for (ConditionTrace test : hearing.tests()) {
            if (test.depth() == 0) {
                in = test.truth() != Truth.TRUE;
                none = test.what().equals("none of");
            }
            if (in && !(none && test.depth() > 0 && test.truth() == Truth.FALSE)) {
                out.add(test);
            }
        }
        return out;
    }

    /** What beat a value, in sentences; the claims they speak of follow them. */
    public static String beaten(Instead instead, Decision decision) {
        if (decision.status() != Status.SETTLED) {
            return "There is no value: " + (decision.why().isEmpty() ? decision.status().words() + "." : decision.why());
        }
        if (!instead.excluding().isEmpty()) {
            return "It is left out by:";
        }
        if (!instead.against().isEmpty()) {
            return "What was preferred to it:";
        }
        return "Nothing asks for it, and nothing is preferred: " + decision.text() + " is "
                + (decision.value() == decision.topic().standard() ? "the common value." : "the common value, brought inside the bounds.");
    }

    /** Where a topic is settled in steps and a value is none of them. */
    static String offStep(Topic topic) {
        return "It is settled in steps of " + steps(topic)
                + ", so this value comes only where a bound or what exists lies on it.";
    }

    /** {@code 10 mm}; {@code 0.05 bar, and of 0.1 bar from 2.5 bar on}. */
    static String steps(Topic topic) {
        String step = topic.resolution().text(topic.step());
        long wide = topic.step(topic.most());
        return wide == topic.step() ? step : step + ", and of " + PressureSteps.WIDE;
    }

    static String brings(Instead instead) {
        if (!instead.bring().isEmpty()) {
            return "The smallest single change that brings it: " + FlipWords.change(instead.bring().get(0)) + ".";
        }
        String none = "No change of a single measure brings it.";
        return instead.toward() == null ? none : none + " Nearest to it comes " + instead.toward().decision().text() + ", with "
                + FlipWords.change(instead.toward()) + ".";
    }

    /** {@code prefer 45 mm: house/x, should}. */
    static String claim(Claim claim) {
        return Phrases.says(claim) + Phrases.computed(claim) + ": " + claim.author().rule() + ", " + claim.author().force().word();
    }

    static String lost(Lost lost) {
        return claim(lost.claim()) + "; " + Phrases.lost(lost);
    }

    /** The value asked about, with its unit. */
    public static String value(Instead instead) {
        return instead.topic().text(instead.value());
    }
}
