package courseworthy.text;

import courseworthy.problem.Fault;
import courseworthy.problem.Spelling;
import java.io.File;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Says that a file is not there, and which one beside it may be meant. */
public final class MissingFile {

    /** Among names shorter than this any other is near. */
    private static final int SHORT = 4;

    private MissingFile() {
    }

    /**
     * The fault.
     *
     * @param shown    its path as the user typed it
     * @param expected what should be there
     */
    public static Fault fault(Path path, String shown, String expected) {
        Path name = path.getFileName();
        String near = name == null ? "" : near(name.toString(), path.toAbsolutePath().normalize().getParent().toFile());
        String folder = shown.substring(0, Math.max(0, shown.length() - (name == null ? 0 : name.toString().length())));
        return Fault.of(shown, 0, "", "no such file", expected, near.isEmpty() ? "Check the spelling of the path."
                : "Did you mean \"" + folder + near + "\"?");
    }

    /** The file of the nearest name, endings apart; of short names only the same with another ending. */
    private static String near(String name, File folder) {
        File[] inside = folder.listFiles(File::isFile);
        Map<String, String> byStem = new TreeMap<>();
        for (File file : inside == null ? new File[0] : inside) {
            byStem.put(stem(file.getName()), file.getName());
        }
        String stem = stem(name);
        String near = byStem.containsKey(stem) || stem.length() < SHORT ? stem : Spelling.nearest(stem, byStem.keySet());
        return byStem.getOrDefault(near, "");
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
