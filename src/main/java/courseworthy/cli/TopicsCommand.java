package courseworthy.cli;

import courseworthy.report.CatalogueReport;
import courseworthy.report.json.JsonCatalogue;

/** Lists every topic there is. */
final class TopicsCommand extends Command {

    private final SourceFunction<Format> format = format();
    private final Output output = output();

    TopicsCommand(Terminal terminal) {
        super("topics", terminal, "Lists what there is to decide: each topic with its range or options.",
                "courseworthy topics --format json");
    }

    @Override
    public void run() {
        output.write(render(format.value(), output, CatalogueReport::topics, JsonCatalogue::topics));
    }
}
