package courseworthy.cli;

import courseworthy.report.BriefReport;
import courseworthy.report.TopicReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.task.Brief;
import courseworthy.task.BriefTask;
import courseworthy.task.Request;
import courseworthy.task.TopicResult;
import courseworthy.task.Workspace;

/** Prints the brief: the recommended set-up, its reasons and the checklist. */
final class BriefCommand extends RequestCommand {

    private final Given<String> topic = option("--topic", "NAME", "One topic in full: every rule for and against, the facts behind it, where it is written.");

    BriefCommand(Terminal terminal) {
        super("brief", terminal, "Says how the bike should be set up for a course, why, and what to do before the start.",
                "courseworthy brief heather-ridge --role race --date 2025-06-14",
                "courseworthy brief track.gpx --ground 'surface=gravel' --rider me.yaml",
                "courseworthy brief heather-ridge --workshop workshop.yaml",
                "courseworthy brief heather-ridge --topic 'front tyre width'");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        if (topic.value() != null) {
            return topic(workspace, request, format);
        }
        Brief brief = BriefTask.of(workspace, request).brief();
        return render(format, () -> BriefReport.of(brief), () -> JsonBrief.of(brief));
    }

    private String topic(Workspace workspace, Request request, Format format) {
        TopicResult result = topicResult(workspace, request);
        return render(format, () -> TopicReport.of(result), () -> JsonBrief.of(result.brief(), result.topic(), result.flips()));
    }

    private TopicResult topicResult(Workspace workspace, Request request) {
        try (ProgressMeter meter = meter("looking for what would change it")) {
            return BriefTask.topic(workspace, request, topic.value(), meter);
        }
    }
}
