package courseworthy.task;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder of commented files to begin with, one of each kind, which work as they are. */
public final class NewTask {

    /** The files, in the order in which one fills them in. */
    static final List<String> FILES = List.of("course.yaml", "rider.yaml", "event.yaml", "workshop.yaml", "sheet.yaml", "sheet.cases.yaml");

    private NewTask() {
    }

    /** Writes the files into a folder, which must be new or empty ({@link NewFolder#write}). */
    static void write(Path folder, String typed) {
        NewFolder.write(folder, typed, NewTask::fill);
    }

    /** Writes the folder that was typed; returns the names of its files. */
    public static List<String> of(Workspace workspace, String typed) {
        write(workspace.path(typed), typed);
        return FILES;
    }

    private static void fill(Path folder) throws IOException {
        for (String file : FILES) {
            try (InputStream in = NewTask.class.getResourceAsStream("/courseworthy/new/" + file)) {
                if (in == null) {
                    throw new IllegalStateException("the starter file is missing: " + file);
                }
                Files.copy(in, folder.resolve(file));
            }
        }
    }
}
