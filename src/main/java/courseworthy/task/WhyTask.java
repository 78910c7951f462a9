package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.Explainer;
import courseworthy.call.FlipFinder;
import courseworthy.call.RuleTrace;
import courseworthy.engine.DroolsRules;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.problem.Spelling;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.Topic;
import courseworthy.units.Amount;
import courseworthy.units.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Finds the reasons for one decision, or for one rule having its task on the checklist or not. */
public final class WhyTask {

    private final DroolsRules rules;
    private final Call call;
    private final Topic topic;
    private final Progress progress;
    private final Explainer why;

    public WhyTask(DroolsRules rules, Call call, Topic topic, Progress progress) {
        this.rules = rules;
        this.call = call;
        this.topic = topic;
        this.progress = progress;
        this.why = new Explainer(rules, call, topic);
    }

    /**
     * Why a decision is as it is, or, with {@link WhyResult#CHECKLIST} for the topic, why a rule's task is on the checklist or not.
     *
     * @param not  a value that was not chosen, as typed; null for none
     * @param rule the id of a rule to hold against the day; null for none
     */
    public static WhyResult of(Workspace workspace, Request request, String topic, String not, String rule, Progress progress) {
        boolean task = topic.equals(WhyResult.CHECKLIST) && rule != null && not == null;
        Topic asked = task ? null : Workspace.topic("TOPIC", topic);
        Long value = not == null ? null : value(asked, not);
        Path situation = workspace.reader(new Faults()).path(request.course());
        if (situation != null && SituationFile.isOne(situation)) {
            return SituationWhyTask.of(workspace, situation, request, asked, value, rule, progress);
        }
        BriefResult answer = BriefTask.withoutOutlookButMargins(workspace, request);
        return asked == null ? ofTask(answer.rules(), answer.call(), answer.brief(), rule)
                : new WhyTask(answer.rules(), answer.call(), asked, progress).of(answer.brief(), value, rule);
    }

    /** The search for what would change a decision. */
    static FlipFinder flips(DroolsRules rules, Call call, Topic topic, Progress progress) {
        return new FlipFinder(rules, call, topic, progress::at);
    }

    /**
     * The reasons for the decision as a whole; where a value or a rule is asked about, those alone.
     *
     * @param not  a value that was not chosen; null for none
     * @param rule the id of a rule; null for none
     */
    public WhyResult of(Brief brief, Long not, String rule) {
        mustBeInForce(brief, rule);
        RuleTrace hearing = rule == null ? null : trace(rule);
        if (not != null && not.equals(call.on(topic).value())) {
            throw refused("--not", "\"" + topic.text(not) + "\", which is the decision", "a value that was not chosen", "");
        }
        Explainer.Instead instead = not == null ? null : why.instead(not, flips(rules, call, topic, progress));
        if (hearing != null || instead != null) {
            return new WhyResult(brief, call.on(topic), List.of(), List.of(), List.of(), instead, hearing);
        }
        return new WhyResult(brief, call.on(topic), why.chain(), why.silent(), flips(rules, call, topic, progress).any(), null, null);
    }

    /** How a rule that has something to do came to be on the checklist, or not. */
    static WhyResult ofTask(DroolsRules rules, Call call, Brief brief, String rule) {
        mustBeInForce(brief, rule);
        RuleTrace hearing = Explainer.task(rules, call, rule);
        if (hearing == null) {
            List<String> known = new ArrayList<>();
            rules.rows().stream().filter(row -> row.task() != null).forEach(row -> known.add(row.origin().rule()));
            String near = Spelling.didYouMean(rule, known);
            throw refused("--rule", RequestReader.quoted(rule), "the id of a rule that has something to do", near.isEmpty() ? mend(rule, known,
                    "'courseworthy rules' lists the shipped ones.") : near);
        }
        return new WhyResult(brief, null, List.of(), List.of(), List.of(), null, hearing);
    }

    private static void mustBeInForce(Brief brief, String rule) {
        for (SheetInForce sheet : brief.sheets()) {
            for (SheetInForce.LeftOut each : sheet.leftOut()) {
                if (each.rule().equals(rule)) {
                    throw refused("--rule", RequestReader.quoted(rule) + ", left out by \"" + sheet.name() + "\" (" + each.where() + ")", "a rule in force",
                            "The reason there: " + each.because());
                }
            }
        }
    }

    private RuleTrace trace(String id) {
        List<String> known = why.rulesOnTopic();
        if (!known.contains(id)) {
            String near = Spelling.didYouMean(id, known);
            throw refused("--rule", RequestReader.quoted(id), "the id of a rule on " + topic,
                    near.isEmpty() ? mend(id, known, "'courseworthy rules --topic \"" + topic + "\"' lists the shipped ones.") : near);
        }
        return why.rule(id);
    }

    /** The rule's id without its sheet is a common slip. */
    private static String mend(String id, List<String> known, String list) {
        for (String one : known) {
            if (one.endsWith("/" + id)) {
                return "Did you mean \"" + one + "\"?";
            }
        }
        return list;
    }

    /** A value of a topic as typed, {@code 45 mm} or {@code dropper}. @throws BadInput where it is none */
    public static long value(Topic topic, String typed) {
        if (topic.kind() != Topic.Kind.QUANTITY) {
            int option = topic.option(typed);
            if (option < 0) {
                throw refused("--not", RequestReader.quoted(typed), "one of: " + String.join(", ", topic.options()),
                        Spelling.didYouMean(typed, topic.options()));
            }
            return option;
        }
        long value = quantity(topic, typed);
        if (value < topic.least() || value > topic.most()) {
            throw refused("--not", RequestReader.quoted(typed), "a value from " + topic.text(topic.least()) + " to " + topic.text(topic.most()), "");
        }
        return value;
    }

    private static long quantity(Topic topic, String typed) {
        try {
            Amount amount = Amount.parse(typed, topic.resolution().unit().dimension());
            return topic.resolution().ticks(amount);
        } catch (Amount.NotAnAmount e) {
            String question = topic.resolution().unit() == Unit.RATIO ? Amount.teethQuestion(typed) : Amount.question(typed);
            throw refused("--not", RequestReader.quoted(typed), e.getMessage(), question.isEmpty() ? example(topic) : question);
        } catch (ArithmeticException e) {
            throw refused("--not", RequestReader.quoted(typed), "a value from " + topic.text(topic.least()) + " to " + topic.text(topic.most()), "");
        }
    }

    private static String example(Topic topic) {
        return "The default of " + topic + " is " + topic.text(topic.standard()) + ".";
    }

    private static BadInput refused(String option, String found, String expected, String mend) {
        List<Fault> faults = new ArrayList<>();
        faults.add(Fault.of(option, 0, "", found, expected, mend));
        return new BadInput(faults);
    }
}
