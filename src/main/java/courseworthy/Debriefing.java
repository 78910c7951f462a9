package courseworthy;

import courseworthy.debrief.DebriefMarkdown;
import courseworthy.debrief.DebriefReader;
import courseworthy.debrief.DebriefReader.Pair;
import courseworthy.debrief.DebriefText;
import courseworthy.debrief.Held;
import courseworthy.debrief.JsonDebrief;
import courseworthy.debrief.Keeping;
import courseworthy.problem.Faults;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A debrief held against the brief it names, or all debriefs of a folder. */
final class Debriefing {

    private static final String ENDING = ".yaml";

    private Debriefing() {
    }

    /** @param check stops where there are faults, after warnings are told */
    static String of(Path home, String typed, Courseworthy.Format format, boolean colours, Consumer<Faults> check) {
        Faults faults = new Faults();
        Path path = new Inputs(home, faults).path(typed);
        if (path != null && Files.isDirectory(path)) {
            return folder(path, typed, format, colours, check);
        }
        Pair pair = path == null ? null : DebriefReader.read(path, typed, faults);
        check.accept(faults);
        Held held = Held.of(pair);
        return switch (format) {
            case TEXT -> DebriefText.of(held, colours);
            case JSON -> JsonDebrief.of(held);
            case MARKDOWN -> DebriefMarkdown.of(held);
        };
    }

    private static String folder(Path path, String typed, Courseworthy.Format format, boolean colours, Consumer<Faults> check) {
        Faults faults = new Faults();
        faults.reads(path);
        String in = typed.endsWith("/") ? typed : typed + "/";
        List<Held> all = new ArrayList<>();
        List<String> names = names(path);
        if (names.isEmpty()) {
            faults.add(typed, 0, "", "no debrief in the folder", "files that end in " + ENDING, "");
        }
        for (String name : names) {
            Pair pair = DebriefReader.read(path.resolve(name), in + name, faults);
            if (pair != null) {
                all.add(Held.of(pair));
            }
        }
        check.accept(faults);
        Keeping keeping = Keeping.of(all);
        return switch (format) {
            case TEXT -> DebriefText.of(in, keeping, colours);
            case JSON -> JsonDebrief.of(in, keeping);
            case MARKDOWN -> DebriefMarkdown.of(in, keeping);
        };
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
