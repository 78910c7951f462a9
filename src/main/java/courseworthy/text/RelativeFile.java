package courseworthy.text;

import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * A file that another file names, by a path that starts at the folder of the other and stays in it.
 *
 * @param owner what names it: {@code profile}
 * @param item  what it holds: {@code track}
 * @param kind  what it has to be: {@code a GPX file}
 */
public record RelativeFile(String owner, String item, String kind) {

    /**
     * Where the file lies; null with a fault where there is none within the folder.
     *
     * @param of     the file that names it
     * @param shown  the path of that as the user typed it
     * @param key    under which it is named
     * @param line   of that
     * @param name   the path as it is named
     */
    public Path find(Path of, String shown, String key, int line, String name, Faults faults) {
        String named = "\"" + name.replace('\n', ' ') + "\"";
        String expected = kind + " in the " + owner + "'s folder or below it";
        try {
            Path folder = of.toAbsolutePath().normalize().getParent();
            Path file = folder.resolve(name).normalize();
            if (!file.startsWith(folder) || Path.of(name).isAbsolute()) {
                faults.add(shown, line, key, named + ", which lies outside the " + owner + "'s folder", expected,
                        "Put the " + item + " beside the " + owner + ".");
            } else if (!Files.isRegularFile(file)) {
                faults.add(shown, line, key, named + ", which is no file", expected, "Check the spelling; the path starts at the " + owner + "'s folder.");
            } else if (!file.toRealPath().startsWith(folder.toRealPath())) {
                faults.add(shown, line, key, named + ", a link that leads out of the " + owner + "'s folder", expected,
                        "Put the " + item + " itself beside the " + owner + ".");
            } else {
                return file;
            }
        } catch (IOException | InvalidPathException e) {
            faults.add(shown, line, key, named + ", which cannot be read", expected, "");
        }
        return null;
    }

    /** The path of a file as a user would type it, from that of the file that names it. */
    public static String shown(String of, String name) {
        return of.substring(0, of.lastIndexOf('/') + 1) + name;
    }
}
