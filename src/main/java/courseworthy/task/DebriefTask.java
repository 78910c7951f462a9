package courseworthy.task;

import courseworthy.debrief.DebriefReader;
import courseworthy.debrief.DebriefReader.DebriefPair;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.RuleRecord;
import courseworthy.problem.Faults;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A debrief held against the brief it names, or all debriefs of a folder. */
public final class DebriefTask {

    private static final String ENDING = ".yaml";

    private DebriefTask() {
    }

    /** @param typed the debrief's file, or a folder of debriefs */
    public static DebriefReading of(Workspace workspace, String typed) {
        Faults faults = new Faults();
        Path path = workspace.reader(faults).path(typed);
        if (path != null && Files.isDirectory(path)) {
            return folder(workspace, path, typed);
        }
        DebriefPair pair = path == null ? null : read(path, typed, faults);
        workspace.stopOrWarn(faults);
        return new DebriefReading(DebriefResult.of(pair), "", null);
    }

    private static DebriefPair read(Path path, String typed, Faults faults) {
        Faults own = new Faults();
        DebriefPair out = DebriefReader.read(path, typed, own);
        FileKind.take(own, typed, FileKind.DEBRIEF, faults);
        return out;
    }

    private static DebriefReading folder(Workspace workspace, Path path, String typed) {
        Faults faults = new Faults();
        faults.reads(path);
        String in = typed.endsWith("/") ? typed : typed + "/";
        List<DebriefResult> all = new ArrayList<>();
        List<String> names = names(path);
        if (names.isEmpty()) {
            faults.add(typed, 0, "", "no debrief in the folder", "files that end in " + ENDING, "");
        }
        for (String name : names) {
            DebriefPair pair = read(path.resolve(name), in + name, faults);
            if (pair != null) {
                all.add(DebriefResult.of(pair));
            }
        }
        workspace.stopOrWarn(faults);
        return new DebriefReading(null, in, RuleRecord.of(all));
    }

    /** Sorted, so that the order of the disk says nothing. */
    private static List<String> names(Path folder) {
        List<String> out = new ArrayList<>();
        File[] files = folder.toFile().listFiles();
        for (File file : files == null ? new File[0] : files) {
            if (file.getName().endsWith(ENDING) && !file.isDirectory()) {
                out.add(file.getName());
            }
        }
        out.sort(null);
        return out;
    }
}
