package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder whose files are written aside and moved to their place once all are whole: all of them or none, and nothing overwritten but what the
 * tool itself wrote, where that is listed in a manifest.
 *
 * <p>They are written into a hidden folder beside it, which is renamed in one step; an empty folder that is there already is replaced in
 * that same step. Only the folder the user stands in cannot be, without leaving the user nowhere: there the files are moved one by one, and
 * moved back where that fails. What a run that was killed has left is removed by the next.
 */
final class NewFolder {

    private static final String PREFIX = ".courseworthy-new.";
    private static final String SUFFIX = ".part";

    private NewFolder() {
    }

    /** Puts files into a folder. */
    interface FolderWriter {
        void into(Path folder) throws IOException;
    }

    /**
     * Makes the folder.
     *
     * @param typed as the user typed it; it must not exist, or hold nothing but what an interrupted run of this put there
     * @throws BadInput   where there is something already, or where it may not be written
     * @throws OutputFailure where writing fails; nothing is then left
     */
    static void write(Path folder, String typed, FolderWriter filling) {
        write(folder, typed, filling, null);
    }

    /** @throws BadInput where the folder holds what is neither the tool's own nor listed in the manifest as it is now */
    static void check(Path folder, String typed, PageManifest manifest) {
        try {
            if (isFolder(folder, typed)) {
                requireOwn(folder, typed, manifest);
            } else if (!Files.isDirectory(folder.toAbsolutePath().normalize().getParent())) {
                throw refused(typed, "no folder to put it in", "a new folder in one that exists");
            }
        } catch (IOException failed) {
            throw refused(typed, "a folder that cannot be read", "a new folder");
        }
    }

    private static void requireOwn(Path folder, String typed, PageManifest manifest) throws IOException {
        String foreign = manifest.foreign(folder, apartFromUnfinished(folder));
        if (!foreign.isEmpty()) {
            throw refused(typed, foreign, "a new or an empty folder, or one of pages that this command wrote and nobody changed");
        }
    }

    /**
     * As {@link #write(Path, String, Filling)}, also over what was written before.
     *
     * @param manifest names the files, and lets the next run replace it; null where nothing may be
     */
    static void write(Path folder, String typed, FolderWriter filling, PageManifest manifest) {
        try {
            boolean there = isFolder(folder, typed);
            Path whole = there ? folder.toRealPath() : folder.toAbsolutePath().normalize();
            Path above = whole.getParent();
            if (above == null || !Files.isDirectory(above)) {
                throw refused(typed, "no folder to put it in", "a new folder in one that exists");
            }
            Path in = there && !Files.isWritable(above) ? whole : above;
            sweep(in);
            write(in.resolve(PREFIX + ProcessHandle.current().pid() + SUFFIX), whole, there, typed, filling, manifest);
        } catch (AccessDeniedException denied) {
            throw refused(typed, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw new OutputFailure(typed, failed);
        }
    }

    /** A signal to end, such as Ctrl-C, waits until all is in place: it is a matter of milliseconds. */
    private static void write(Path aside, Path folder, boolean there, String typed, FolderWriter filling, PageManifest manifest) throws IOException {
        Object whole = new Object();
        Thread waiting = new Thread(() -> {
            synchronized (whole) {
                discardQuietly(aside);
            }
        }, "waiting");
        synchronized (whole) {
            Runtime.getRuntime().addShutdownHook(waiting);
            try {
                Files.createDirectory(aside);
                filling.into(aside);
                if (there && manifest != null && !apartFromUnfinished(folder).isEmpty()) {
                    exchange(aside, folder, typed, manifest);
                } else {
                    place(aside, folder, there, typed);
                }
            } finally {
                discard(aside);
                forget(waiting);
            }
        }
    }

    private static void place(Path aside, Path folder, boolean there, String typed) throws IOException {
        if (!there) {
            move(aside, folder, typed);
        } else if (aside.startsWith(folder) || folder.equals(Path.of("").toRealPath()) || !inside(folder).isEmpty()) {
            moveAll(aside, folder, typed);
        } else {
            moveOver(aside, folder, typed);
        }
    }

    /** In the place of an empty folder, with its permissions; where a system cannot do that in one step, into it. */
    private static void moveOver(Path aside, Path folder, String typed) throws IOException {
        try {
            Files.setPosixFilePermissions(aside, Files.getPosixFilePermissions(folder));
            Files.move(aside, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | UnsupportedOperationException notInOneStep) {
            moveAll(aside, folder, typed);
        }
    }

    private static void move(Path from, Path to, String typed) throws IOException {
        try {
            Files.move(from, to);
        } catch (FileAlreadyExistsException taken) {
            throw refused(typed, "something that came there meanwhile", "a new folder");
        }
    }

    /**
     * Moves what was written before out of the folder and what is new into it. The manifest goes last and comes first, so that whatever is there
     * at any moment is listed in it, and a run that was killed meanwhile is made good by the next.
     */
    private static void exchange(Path from, Path folder, String typed, PageManifest manifest) throws IOException {
        requireOwn(folder, typed, manifest);
        Path earlier = from.resolve(PREFIX + "earlier");
        List<Path> old = apartFromUnfinished(folder);
        List<Path> fresh = inside(from);
        Files.createDirectory(earlier);
        Path list = folder.resolve(manifest.name());
        old.sort(Comparator.comparing(list::equals));
        fresh.sort(Comparator.comparing((Path each) -> !each.getFileName().toString().equals(manifest.name())));
        List<Path> out = new ArrayList<>();
        List<Path> in = new ArrayList<>();
        boolean all = false;
        try {
            for (Path each : old) {
                out.add(Files.move(each, earlier.resolve(each.getFileName())));
            }
            for (Path each : fresh) {
                in.add(Files.move(each, folder.resolve(each.getFileName())));
            }
            all = true;
        } finally {
            if (!all) {
                in.forEach(NewFolder::discardQuietly);
                for (Path each : out) {
                    Files.move(each, folder.resolve(each.getFileName()));
                }
            }
        }
    }

    /** What lies in a folder but for what runs write that are under way or were killed. */
    private static List<Path> apartFromUnfinished(Path folder) throws IOException {
        List<Path> out = inside(folder);
        out.removeIf(each -> each.getFileName().toString().startsWith(PREFIX));
        return out;
    }

    /** Moves what is not there yet; what is there must be the same. Takes it away again where one cannot be moved. */
    private static void moveAll(Path from, Path to, String typed) throws IOException {
        List<Path> moved = new ArrayList<>();
        boolean all = false;
        try {
            for (Path each : missing(from, to, typed)) {
                Path place = to.resolve(each.getFileName());
                Files.move(each, place);
                moved.add(place);
            }
            all = true;
        } finally {
            if (!all) {
                moved.forEach(NewFolder::discardQuietly);
            }
        }
    }

    /** What is to be moved, where whatever is there already is part of it, byte by byte. */
    private static List<Path> missing(Path from, Path to, String typed) throws IOException {
        List<Path> out = inside(from);
        List<Path> there = inside(to);
        there.remove(from);
        for (Path each : there) {
            Path same = from.resolve(each.getFileName());
            boolean ours = Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS) && Files.isRegularFile(same) && Files.mismatch(each, same) < 0;
            if (!ours) {
                throw refused(typed, "a folder with something in it", "a new or an empty folder");
            }
            out.remove(same);
        }
        if (out.isEmpty()) {
            throw refused(typed, "a folder with something in it", "a new or an empty folder");
        }
        return out;
    }

    /** Whether the folder is there. */
    private static boolean isFolder(Path folder, String typed) {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(typed, "something that is not a folder", "a new folder");
        }
        return true;
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return new ArrayList<>(all.toList());
        }
    }

    /** Removes what runs left that ended before they could: of no process that is still there. */
    private static void sweep(Path in) throws IOException {
        for (Path each : inside(in)) {
            String name = each.getFileName().toString();
            if (name.startsWith(PREFIX) && name.endsWith(SUFFIX) && name.length() > PREFIX.length() + SUFFIX.length()) {
                String process = name.substring(PREFIX.length(), name.length() - SUFFIX.length());
                boolean gone = process.matches("[0-9]{1,10}") && (ProcessHandle.of(Long.parseLong(process)).isEmpty()
                        || ProcessHandle.current().pid() == Long.parseLong(process));
                if (gone) {
                    discardQuietly(each);
                }
            }
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // The process is being ended, and the hook runs.
        }
    }

    private static void discardQuietly(Path folder) {
        try {
            discard(folder);
        } catch (IOException left) {
            // The next run tries again.
        }
    }

    private static void discard(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> inside;
        try (Stream<Path> all = Files.walk(folder)) {
            inside = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : inside) {
            Files.deleteIfExists(each);
        }
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
