package courseworthy.cli;

import courseworthy.report.json.JsonCatalogue;
import courseworthy.task.SchemaTask;

/** Prints what an editor needs to complete and check a kind of file. */
final class SchemaCommand extends Command {

    private final SourceFunction<String> kind = parameter("KIND", "course, rider, event, workshop, sheet, cases, debrief, season or log.");
    private final Output output = output();

    SchemaCommand(Terminal terminal) {
        super("schema", terminal, "Prints a JSON Schema of a kind of file, for completion and checking in your editor.",
                "courseworthy schema sheet -o sheet.schema.json");
    }

    @Override
    public void run() {
        output.write(JsonCatalogue.schema(SchemaTask.of(kind.value())));
    }
}
