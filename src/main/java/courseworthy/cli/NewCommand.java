package courseworthy.cli;

import courseworthy.task.NewTask;
import java.util.List;

/** Writes a folder of commented files to begin with. */
final class NewCommand extends Command {

    private final SourceFunction<String> folder = parameter("DIR", "The folder to make; it must be new or empty.");

    NewCommand(Terminal terminal) {
        super("new", terminal, "Writes a folder of commented files to begin with: course, rider, event, workshop and a sheet of advice.",
                "courseworthy new my-race");
    }

    @Override
    public void run() {
        String in = folder.value().endsWith("/") ? folder.value() : folder.value() + "/";
        List<String> files = NewTask.of(workspace(), folder.value());
        print("Wrote " + String.join(", ", files) + " to " + in + "\nReady to use. Edit them to match your own course and bike, then run:\n\n"
                + "    courseworthy brief " + in + "course.yaml --rider " + in + "rider.yaml --event " + in + "event.yaml --sheet " + in
                + "sheet.yaml --workshop " + in + "workshop.yaml\n");
    }
}
