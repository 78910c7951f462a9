package courseworthy.task;

import courseworthy.course.AssumedGround;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Node;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.BiFunction;

/** Reads files that another file names. None may lie outside that file's folder, nor behind a link that leads out of it. */
final class SiblingFileReader {

    private static final String EXPECTED = "a file in the folder of this one or below it";

    private final RequestReader inputs;
    private final Faults faults;
    private final String from;

    /** @param from the path, as typed, of the file that names others */
    SiblingFileReader(RequestReader inputs, Faults faults, String from) {
        this.inputs = inputs;
        this.faults = faults;
        this.from = from;
    }

    /** The course of a path beside, or a shipped one by its name. */
    Course course(Node.Scalar named, Node.Scalar ground) {
        AssumedGround assumed = ground == null ? null : new AssumedGround("ground", ground.text(), from, ground.line());
        if (!named.text().contains("/") && !named.text().contains(".")) {
            Path shipped = inputs.shippedFile(named.text());
            if (shipped == null) {
                faults.add(from, named.line(), "course", named.describe(), "a shipped course, or a file in the folder of this one or below it",
                        Spelling.didYouMean(named.text(), inputs.names()));
                return null;
            }
            return CourseReader.onGround(shipped, RequestReader.shippedName(shipped), assumed, faults);
        }
        return read("course", named, (path, shown) -> CourseReader.onGround(path, shown, assumed, faults));
    }

    /** Reads a file with its path and its path as shown; null with a fault where it may not be read. */
    <T> T read(String key, Node named, BiFunction<Path, String, T> reader) {
        Node.Scalar name = (Node.Scalar) named;
        try {
            Path folder = inputs.path(from).toAbsolutePath().normalize().getParent();
            Path path = folder.resolve(name.text()).normalize();
            if (Path.of(name.text()).isAbsolute() || !path.startsWith(folder)) {
                return refuse(key, name, ", which lies outside the folder");
            }
            if (!Files.isRegularFile(path)) {
                return refuse(key, name, ", which is no file");
            }
            if (!path.toRealPath().startsWith(folder.toRealPath())) {
                return refuse(key, name, ", a link that leads out of the folder");
            }
            return reader.apply(path, from.substring(0, from.lastIndexOf('/') + 1) + name.text());
        } catch (IOException | InvalidPathException cannot) {
            return refuse(key, name, ", which cannot be read");
        }
    }

    private <T> T refuse(String key, Node.Scalar name, String why) {
        faults.add(from, name.line(), key, name.describe() + why, EXPECTED, "");
        return null;
    }
}
