package courseworthy.cli;

import courseworthy.report.ImportReport;
import courseworthy.task.ImportResult;
import courseworthy.task.ImportTask;
import courseworthy.task.MapRequest;

/** Writes a profile of a track and a map, to be edited. */
final class ImportCommand extends Command {

    private final SourceFunction<String> track = parameter("TRACK", "A GPX track (.gpx).");
    private final SourceFunction<MapRequest> map = map();
    private final SourceFunction<String> from = option("--from", "OLD", "An earlier import of the same track: what you edited in it is kept.");
    private final SourceFunction<String> output = option(String.class, "PROFILE", "The profile to write (.yaml); nothing is overwritten.", "-o", "--output");

    ImportCommand(Terminal terminal) {
        super("import", terminal, "Writes a course profile from a track and a map, for you to correct.",
                "courseworthy import track.gpx --map region.osm.pbf -o course.yaml",
                "courseworthy import track.gpx --map region.osm.pbf --from old.yaml -o new.yaml");
    }

    @Override
    public void run() {
        ImportResult result = ImportTask.of(workspace(), new ImportTask.Order(track.value(), map.value(), from.value(), output.value()));
        print(text(ImportReport.of(result)));
    }
}
