package courseworthy.cli;

import courseworthy.Courseworthy;
import courseworthy.Courseworthy.Format;
import courseworthy.Request;

/** Prints why a decision is as it is, why a rule kept silent, or why another value was not chosen. */
final class WhyCommand extends RequestCommand {

    private final Given<String> topic = parameter("TOPIC", "The topic asked about; 'courseworthy topics' lists them. Or "
            + "checklist, with --rule, for a rule that has something to do.");
    private final Given<String> not = option("--not", "VALUE",
            "A value that was not chosen: what beat it, and the smallest change of one measure that would bring it.");
    private final Given<String> rule = option("--rule", "ID",
            "A rule on the topic, such as house/dropper-on-mountain-bikes: each of its conditions with what was found.");

    WhyCommand(Terminal terminal) {
        super("why", terminal, "Explains one decision: the chain from measures to it, what kept silent, what would change it.",
                "courseworthy why heather-ridge 'front tyre width'",
                "courseworthy why heather-ridge 'front tyre width' --not '45 mm'",
                "courseworthy why fernbrake seatpost --rule house/dropper-on-mountain-bikes");
    }

    @Override
    String answer(Courseworthy tool, Request request, Format format, boolean colours) {
        try (Meter meter = meter("looking for what would change it")) {
            return tool.why(request, topic.value(), not.value(), rule.value(), format, colours, meter);
        }
    }
}
