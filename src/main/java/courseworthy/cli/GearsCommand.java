package courseworthy.cli;

import courseworthy.Courseworthy;
import courseworthy.Courseworthy.Format;
import courseworthy.Request;

/** Prints what a course asks of the gears. */
final class GearsCommand extends RequestCommand {

    GearsCommand(Terminal terminal) {
        super("gears", terminal, "Shows what a course asks of the gears, and what rings and cassettes ridden together give on it.",
                "courseworthy gears heather-ridge --rider me.yaml",
                "courseworthy gears track.gpx --ground 'surface=gravel' --rider me.yaml --format json");
    }

    @Override
    String answer(Courseworthy tool, Request request, Format format, boolean colours) {
        return tool.gears(request, format, colours);
    }
}
