package courseworthy.cli;

import courseworthy.Courseworthy;
import courseworthy.Courseworthy.Format;
import courseworthy.Request;

/** Prints the brief: the call, its reasons and the checklist. */
final class BriefCommand extends RequestCommand {

    private final Given<String> topic = option("--topic", "NAME", "One topic in full: every claim, what it rested on, where it is written.");

    BriefCommand(Terminal terminal) {
        super("brief", terminal, "Says how the bike should be set up for a course, why, and what to do before the start.",
                "courseworthy brief heather-ridge --role race --date 2025-06-14",
                "courseworthy brief track.gpx --ground 'surface=gravel' --rider me.yaml",
                "courseworthy brief heather-ridge --workshop workshop.yaml",
                "courseworthy brief heather-ridge --topic 'front tyre width'");
    }

    @Override
    String answer(Courseworthy tool, Request request, Format format, boolean colours) {
        if (topic.value() == null) {
            return tool.brief(request, format, colours);
        }
        try (Meter meter = meter("looking for what would change it")) {
            return tool.topic(request, topic.value(), format, colours, meter);
        }
    }
}
