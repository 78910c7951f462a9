package courseworthy.task;

import courseworthy.problem.Faults;
import courseworthy.sheet.RulesFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The YAML files of a folder that a user names behind an option, by name; cases of sheets are none of them. */
final class YamlFolder {

    static final String ENDING = ".yaml";

    private YamlFolder() {
    }

    /**
     * A file of a folder.
     *
     * @param path  where it is
     * @param shown its path as shown to the user
     * @param name  its name without ending
     */
    record Found(Path path, String shown, String name) {
    }

    /**
     * The files, with a fault where there are none or the folder cannot be read.
     *
     * @param option behind which the folder is named
     * @param typed  as the user typed it
     */
    static List<Found> files(String option, Path folder, String typed, Faults faults) {
        List<Found> out = new ArrayList<>();
        faults.reads(folder);
        try (Stream<Path> all = Files.list(folder)) {
            for (String file : all.map(path -> path.getFileName().toString()).sorted().toList()) {
                if (file.endsWith(ENDING) && !file.endsWith(RulesFolder.CASES)) {
                    out.add(new Found(folder.resolve(file), shown(typed, file), file.substring(0, file.length() - ENDING.length())));
                }
            }
        } catch (IOException cannot) {
            faults.add(option, 0, "", RequestReader.quoted(typed) + ", which cannot be read as a folder", "a folder of .yaml files", "");
            return out;
        }
        if (out.isEmpty()) {
            faults.add(option, 0, "", RequestReader.quoted(typed) + ", which has no .yaml file in it", "a folder of .yaml files", "");
        }
        return out;
    }

    static String shown(String folder, String file) {
        return folder.endsWith("/") ? folder + file : folder + "/" + file;
    }
}
