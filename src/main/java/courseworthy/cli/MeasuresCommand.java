package courseworthy.cli;

import courseworthy.report.CatalogueReport;
import courseworthy.report.json.JsonCatalogue;

/** Lists every measure there is. */
final class MeasuresCommand extends Command {

    private final SourceFunction<Format> format = format();
    private final Output output = output();

    MeasuresCommand(Terminal terminal) {
        super("measures", terminal, "Lists what rules may test: each measure with its unit and definition.",
                "courseworthy measures --format json");
    }

    @Override
    public void run() {
        output.write(render(format.value(), output, CatalogueReport::measures, JsonCatalogue::measures));
    }
}
