package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/** Where a command's result goes: standard output, or a file that {@code -o} names. */
final class Output {

    private final Command.SourceFunction<String> file;
    private final Consumer<String> standardOutput;
    private final Consumer<byte[]> standardBytes;
    private final Consumer<Path> guard;

    /**
     * @param standardOutput takes text, and
     * @param standardBytes  what is no text
     * @param guard          throws where a file must not be written over
     */
    Output(Command.SourceFunction<String> file, Consumer<String> standardOutput, Consumer<byte[]> standardBytes, Consumer<Path> guard) {
        this.file = file;
        this.standardOutput = standardOutput;
        this.standardBytes = standardBytes;
        this.guard = guard;
    }

    /** The file that was named; null where none was. */
    String typed() {
        return file.value();
    }

    /** The folder of the file that was named, or the one the user stands in. */
    Path folder() {
        return toFile() ? path().toAbsolutePath().getParent() : Path.of("");
    }

    /** True where the result goes to a file, and so takes no colours. */
    boolean toFile() {
        return file.value() != null;
    }

    /**
     * Writes the whole result.
     *
     * @throws BadInput   where the file must not be written; it is then as it was before
     * @throws OutputFailure where writing it fails; it is then as it was before
     */
    void write(String text) {
        if (toFile()) {
            check();
            replace(path(), text);
        } else {
            standardOutput.accept(text);
        }
    }

    /** Writes the whole result where it is a file of a kind that is no text. As {@link #write(String)}. */
    void write(byte[] bytes) {
        if (toFile()) {
            check();
            replace(path(), bytes);
        } else {
            standardBytes.accept(bytes);
        }
    }

    /** @throws BadInput where the file must not be written over, as far as that is known before the command has read anything */
    void check() {
        if (toFile()) {
            guard.accept(path());
        }
    }

    private Path path() {
        try {
            return Path.of(file.value());
        } catch (InvalidPathException e) {
            throw new BadInput(Fault.of(file.value(), 0, "", "a path that cannot be", "the path of a file", "Nothing was written."));
        }
    }

    /**
     * Puts text, as UTF-8, in the place of a file: written beside it first, then moved over it in one step, so that a
     * reader sees the old or the new and never half of either. A device or pipe is written to as it is.
     *
     * @throws BadInput   where it may not be written
     * @throws OutputFailure where writing fails
     */
    static void replace(Path target, String text) {
        replace(target, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void replace(Path target, byte[] bytes) {
        try {
            if (Files.isDirectory(target)) {
                throw refused(target, "a folder", "the name of a file");
            }
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                Files.write(target, bytes);
                return;
            }
            moveOver(behindLinks(target), bytes);
        } catch (AccessDeniedException denied) {
            throw refused(target, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw new OutputFailure(target.toString(), failed);
        }
    }

    private static void moveOver(Path target, byte[] bytes) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw refused(target, "no folder " + folder.getFileName(), "a folder that exists");
        }
        Path beside = folder.resolve("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        Files.deleteIfExists(beside);
        try {
            Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** A link stays a link: what it points at is replaced. */
    private static Path behindLinks(Path target) throws IOException {
        return Files.exists(target, LinkOption.NOFOLLOW_LINKS) && Files.exists(target) ? target.toRealPath() : target;
    }

    private static BadInput refused(Path target, String found, String expected) {
        return new BadInput(Fault.of(target.toString(), 0, "", found, expected, "Nothing was written."));
    }
}
