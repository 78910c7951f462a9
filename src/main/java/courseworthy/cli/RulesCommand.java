package courseworthy.cli;

import courseworthy.report.CatalogueReport;
import courseworthy.report.json.JsonCatalogue;
import courseworthy.task.RuleEntry;
import courseworthy.task.RulesTask;
import java.util.List;

/** Lists every shipped rule. */
final class RulesCommand extends Command {

    private final SourceFunction<String> topic = option("--topic", "NAME", "Only rules on this topic.");
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    RulesCommand(Terminal terminal) {
        super("rules", terminal, "Lists the shipped rules: what each says, why, on what evidence, and in which file.",
                "courseworthy rules --topic 'front tyre width'");
    }

    @Override
    public void run() {
        List<RuleEntry> rules = RulesTask.of(topic.value());
        output.write(render(format.value(), output, () -> CatalogueReport.rules(rules), () -> JsonCatalogue.rules(rules)));
    }
}
