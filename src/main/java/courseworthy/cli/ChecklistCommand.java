package courseworthy.cli;

import courseworthy.Courseworthy;
import courseworthy.Courseworthy.Format;
import courseworthy.Request;

/** Prints the checklist alone. */
final class ChecklistCommand extends RequestCommand {

    ChecklistCommand(Terminal terminal) {
        super("checklist", terminal, "Lists what to do before, at and after the ride, and how it is known to be done.",
                "courseworthy checklist heather-ridge --format markdown -o checklist.md");
    }

    @Override
    String answer(Courseworthy tool, Request request, Format format, boolean colours) {
        return tool.checklist(request, format, colours);
    }
}
