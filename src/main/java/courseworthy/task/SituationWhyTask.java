package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.engine.DroolsRules;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.topic.Topic;
import java.nio.file.Path;
import java.util.List;

/** The reasons of a decision in a situation that is written down. */
final class SituationWhyTask {

    private SituationWhyTask() {
    }

    /**
     * @param topic null where a rule is asked about that has something to do
     */
    static WhyResult of(Workspace workspace, Path path, Request request, Topic topic, Long not, String rule, Progress progress) {
        Faults faults = new Faults();
        SituationFile file = SituationFile.read(path, request.course(), faults);
        alone(request, faults);
        RuleLoader loading = RuleLoader.start(workspace.home(), null, request.sheets(), file == null ? List.of() : file.given());
        DroolsRules rules = loading.finish(faults);
        workspace.stopOrWarn(faults);
        Call call = CallMaker.call(rules, file.situation().demands());
        Brief brief = BriefAssembler.of(file.title(), file.file(), call, loading.given());
        return topic == null ? WhyTask.ofTask(rules, call, brief, rule) : new WhyTask(rules, call, topic, progress).of(brief, not, rule);
    }

    /** All that is known stands in the situation. */
    private static void alone(Request request, Faults faults) {
        refuse("--ground", request.ground(), faults);
        refuse("--map", request.map().extracts().isEmpty() ? null : request.map().extracts().get(0), faults);
        refuse("--event", request.event(), faults);
        refuse("--rider", request.rider(), faults);
        refuse("--role", request.role(), faults);
        refuse("--date", request.date(), faults);
        refuse("--workshop", request.workshop(), faults);
    }

    private static void refuse(String option, String given, Faults faults) {
        if (given != null) {
            faults.add(option, 0, "", RequestReader.quoted(given), "no such option beside a situation",
                    "Write what is known into the situation, such as \"role: race\".");
        }
    }
}
