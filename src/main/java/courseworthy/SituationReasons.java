package courseworthy;

import courseworthy.brief.Brief;
import courseworthy.brief.Briefs;
import courseworthy.brief.Reasoning;
import courseworthy.call.Call;
import courseworthy.call.Calling;
import courseworthy.problem.Faults;
import courseworthy.rulebase.DroolsRules;
import courseworthy.topic.Topic;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** The reasons of a decision in a situation that is written down. */
final class SituationReasons {

    private SituationReasons() {
    }

    /**
     * @param topic      null where a rule is asked about that has something to do
     * @param stopOrWarn shows warnings, and throws where something cannot be used */
    static Reasoning of(Path home, Path path, Request request, Topic topic, Long not, String rule, Progress progress,
            Consumer<Faults> stopOrWarn) {
        Faults faults = new Faults();
        SituationFile file = SituationFile.read(path, request.course(), faults);
        alone(request, faults);
        RuleLoading loading = RuleLoading.start(home, null, request.sheets(), file == null ? List.of() : file.given());
        DroolsRules rules = loading.finish(faults);
        stopOrWarn.accept(faults);
        Call call = Calling.call(rules, file.situation().demands());
        Brief brief = Briefs.of(file.title(), file.file(), call, loading.given());
        return topic == null ? Reasons.ofTask(rules, call, brief, rule) : new Reasons(rules, call, topic, progress).of(brief, not, rule);
    }

    /** All that is known stands in the situation. */
    private static void alone(Request request, Faults faults) {
        refuse("--ground", request.ground(), faults);
        refuse("--event", request.event(), faults);
        refuse("--rider", request.rider(), faults);
        refuse("--role", request.role(), faults);
        refuse("--date", request.date(), faults);
        refuse("--workshop", request.workshop(), faults);
    }

    private static void refuse(String option, String given, Faults faults) {
        if (given != null) {
            faults.add(option, 0, "", Inputs.quoted(given), "no such option beside a situation",
                    "Write what is known into the situation, such as \"role: race\".");
        }
    }
}
