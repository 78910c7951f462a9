package courseworthy.course.extract;

import courseworthy.course.GzipFile;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.text.MissingFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;

/**
 * Reads from map files what lies near a track: ways that one can ride or push along, and nodes with tags. Memory follows what lies near, not the
 * files. Their nodes must stand before their ways, as all programs write them that make extracts.
 */
public final class ExtractReader {

    /** Steps of progress in a file. */
    private static final int STEPS = 1000;
    private static final int START = 512;

    private final Corridor corridor;
    private final ExtractContents contents;
    private final Faults faults;
    private final Progress progress;
    private final List<MapFileReader> readers = new ArrayList<>();
    private final List<ExtractFile> files = new ArrayList<>();

    private ExtractReader(Corridor corridor, Faults faults, Progress progress) {
        this.corridor = corridor;
        this.contents = new ExtractContents(corridor);
        this.faults = faults;
        this.progress = progress;
    }

    /**
     * Reads files.
     *
     * @param paths    .osm.pbf, .osm or .osm.gz, as the user typed them
     * @param corridor what is near
     * @param progress is shown how far the reading has come
     * @return what lies in the corridor, or null with faults that say why not
     */
    public static MapExtract read(List<Path> paths, Corridor corridor, Faults faults, Progress progress) {
        ExtractReader reader = new ExtractReader(corridor, faults, progress);
        for (Path path : paths) {
            reader.guarded(path, () -> reader.file(path, paths.size()));
        }
        if (faults.stop()) {
            return null;
        }
        reader.contents.joinWays();
        LongSet beyond = reader.contents.idsBeyond();
        for (int i = 0; i < paths.size() && beyond.size() > 0; i++) {
            MapFileReader again = reader.readers.get(i);
            reader.guarded(paths.get(i), () -> again.find(beyond));
        }
        return faults.stop() ? null : reader.contents.extract(reader.files);
    }

    /** Work on a file. */
    @FunctionalInterface
    private interface BlockTask {
        void run() throws IOException;
    }

    private void guarded(Path path, BlockTask work) {
        String shown = path.toString();
        faults.reads(path);
        try {
            work.run();
        } catch (RefusedExtract e) {
            faults.add(e.fault(shown));
        } catch (GzipFile.DamagedGzipException e) {
            faults.add(e.fault(shown));
        } catch (NoSuchFileException e) {
            faults.add(MissingFile.fault(path, shown, RefusedExtract.WANTED));
        } catch (IOException e) {
            faults.add(shown, 0, "", Files.isDirectory(path) ? "a folder" : "a file that cannot be read", RefusedExtract.WANTED,
                    "Check the path and its permissions.");
        }
    }

    private void file(Path path, int of) throws IOException {
        int number = readers.size();
        MapFileReader reader = reader(number, path);
        readers.add(reader);
        long size = Math.max(1, Files.size(path));
        LongConsumer listener = new LongConsumer() {
            private int last = -1;

            @Override
            public void accept(long bytes) {
                int step = (int) (bytes * STEPS / size);
                if (step > last) {
                    last = step;
                    progress.at(number * STEPS + step, of * STEPS);
                }
            }
        };
        files.add(reader.read(listener));
        listener.accept(size);
    }

    /** A reader for the format in which a file is, as its first bytes show. */
    private MapFileReader reader(int number, Path path) throws IOException {
        byte[] start;
        try (InputStream in = Files.newInputStream(path)) {
            start = in.readNBytes(START);
        }
        if (start.length == 0) {
            throw RefusedExtract.kind("an empty file", "Fetch the file again.");
        }
        if (GzipFile.is(start)) {
            byte[] unpacked = GzipFile.start(start);
            if (unpacked.length > 0 && !startsLikeXml(unpacked)) {
                throw RefusedExtract.kind("a compressed file (gzip) with no XML in it", "Unpack it first.");
            }
            return new OsmXmlReader(number, path, corridor, contents);
        }
        if (startsLikeXml(start)) {
            return new OsmXmlReader(number, path, corridor, contents);
        }
        if (starts(start, "BZh") || starts(start, "PK\3\4") || starts(start, "\u00FD7zXZ")) {
            throw RefusedExtract.kind("a file compressed by another method than gzip", "Unpack it first.");
        }
        return new PbfReader(number, path, corridor, contents);
    }

    private static boolean starts(byte[] bytes, String with) {
        for (int i = 0; i < with.length(); i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != with.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean startsLikeXml(byte[] start) {
        int at = starts(start, "\u00EF\u00BB\u00BF") ? 3 : starts(start, "\u00FF\u00FE") || starts(start, "\u00FE\u00FF") ? 2 : 0;
        while (at < start.length && start[at] <= ' ' && start[at] >= 0 && !(start[at] == 0 && at == 0)) {
            at++;
        }
        return at < start.length && start[at] == '<';
    }
}
