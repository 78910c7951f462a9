package courseworthy.text;

import courseworthy.problem.Fault;
import courseworthy.problem.Spelling;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Says that a file is not there, and which one beside it may be meant. */
public final class NoSuchFile {

    private NoSuchFile() {
    }

    /**
     * The fault.
     *
     * @param shown    its path as the user typed it
     * @param expected what should be there
     */
    public static Fault fault(Path path, String shown, String expected) {
        Path name = path.getFileName();
        File[] inside = name == null ? null : path.toAbsolutePath().normalize().getParent().toFile().listFiles(File::isFile);
        List<String> names = new ArrayList<>();
        for (File file : inside == null ? new File[0] : inside) {
            names.add(file.getName());
        }
        names.sort(null);
        String near = name == null ? "" : Spelling.nearest(name.toString(), names);
        String folder = shown.substring(0, Math.max(0, shown.length() - (name == null ? 0 : name.toString().length())));
        return Fault.of(shown, 0, "", "no such file", expected, near.isEmpty() ? "Check the spelling of the path."
                : "Did you mean \"" + folder + near + "\"?");
    }
}
