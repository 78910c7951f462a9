package courseworthy.cli;

import courseworthy.report.RuleLinks;
import courseworthy.report.WhyReport;
import courseworthy.report.json.JsonWhy;
import courseworthy.task.Request;
import courseworthy.task.WhyResult;
import courseworthy.task.WhyTask;
import courseworthy.task.Workspace;

/** Prints why a decision is as it is, why a rule did not apply, or why another value was not chosen. */
final class WhyCommand extends RequestCommand {

    private final SourceFunction<String> topic = parameter("TOPIC", "The topic asked about; 'courseworthy topics' lists them. Or "
            + "checklist, with --rule, for a rule that has something to do.");
    private final SourceFunction<String> not = option("--not", "VALUE",
            "A value that was not chosen: what was preferred over it, and the smallest single change that would lead to it.");
    private final SourceFunction<String> rule = option("--rule", "ID",
            "A rule on the topic, such as shipped/dropper-on-mountain-bikes: each of its conditions with what was found.");

    private final SourceFunction<String> rulePages = rulePages();

    WhyCommand(Terminal terminal) {
        super("why", terminal, "Explains one decision: the chain from measures to it, the rules that did not apply, what would change it.",
                "courseworthy why heather-ridge 'front tyre width'",
                "courseworthy why heather-ridge 'front tyre width' --not '45 mm'",
                "courseworthy why fernbrake seatpost --rule shipped/dropper-on-mountain-bikes");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        RuleLinks links = ruleLinks(rulePages, format, outputFolder());
        WhyResult result = result(workspace, request);
        return render(format, () -> WhyReport.of(result, links), () -> JsonWhy.of(result));
    }

    private WhyResult result(Workspace workspace, Request request) {
        try (ProgressMeter meter = meter("looking for what would change it")) {
            return WhyTask.of(workspace, request, topic.value(), not.value(), rule.value(), meter);
        }
    }
}
