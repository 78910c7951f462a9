package courseworthy.course.extract;

import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Keeps what lies near a track in the user's cache folder, so that the second reading of the same map for the same track costs little. It is
 * known by the map files' paths, sizes and times of change, by the track and by the width of the corridor. A cache that cannot be read or written
 * changes nothing but the time taken.
 */
public final class ExtractCache {

    /** Bytes of all that is kept; what was written first is removed first. */
    private static final long MOST_BYTES = 200_000_000;
    private static final String ENDING = ".cut";
    private static final String UNFINISHED = ".part";
    /** Goes up with every change of what is kept of a map, so that what an older version kept is not taken. */
    private static final int VERSION = 2;

    /** Null where nothing is kept. */
    private final Path folder;
    private final long mostBytes;

    ExtractCache(Path folder, long mostBytes) {
        this.folder = folder;
        this.mostBytes = mostBytes;
    }

    /** Keeps nothing, and reads the map each time. */
    public static ExtractCache none() {
        return new ExtractCache(null, 0);
    }

    /** The cache of the user, in the folder that the XDG Base Directory Specification names; none where there is no such folder. */
    public static ExtractCache ofUser() {
        return new ExtractCache(folder(System.getenv("XDG_CACHE_HOME"), System.getProperty("user.home")), MOST_BYTES);
    }

    /**
     * The folder of the tool's cache.
     *
     * @param cacheHome what XDG_CACHE_HOME says; it counts only as an absolute path
     * @param home      the user's own folder
     */
    static Path folder(String cacheHome, String home) {
        try {
            if (cacheHome != null && Path.of(cacheHome).isAbsolute()) {
                return Path.of(cacheHome, "courseworthy", "maps");
            }
            return home == null || !Path.of(home).isAbsolute() ? null : Path.of(home, ".cache", "courseworthy", "maps");
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /**
     * Reads what lies near a track, from what is kept or else from the map.
     *
     * @param files    .osm.pbf, .osm or .osm.gz, as the user typed them
     * @param metres   how far from the track a place may lie
     * @param progress is shown how far the reading of the map has come
     * @return what lies near, or null with faults that say why not
     */
    public MapExtract read(List<Path> files, Track track, double metres, Faults faults, Progress progress) {
        Path kept = folder == null ? null : place(files, track, metres);
        MapExtract extract = kept == null ? null : kept(kept, files);
        if (extract != null) {
            files.forEach(faults::reads);
            return extract;
        }
        extract = ExtractReader.read(files, Corridor.around(track, metres), faults, progress);
        if (extract != null && kept != null) {
            keep(kept, extract);
        }
        return extract;
    }

    /** The file in which an extract is kept; null where a map file cannot be looked at. */
    private Path place(List<Path> files, Track track, double metres) {
        try {
            MessageDigest key = MessageDigest.getInstance("SHA-256");
            add(key, VERSION, files.size(), Double.doubleToLongBits(metres));
            for (Path file : files) {
                BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
                byte[] path = file.toRealPath().toString().getBytes(StandardCharsets.UTF_8);
                add(key, path.length, attributes.size(), attributes.lastModifiedTime().toInstant().getEpochSecond(),
                        attributes.lastModifiedTime().toInstant().getNano());
                key.update(path);
            }
            for (Track.TrackPiece piece : track.pieces()) {
                add(key, piece.size());
                for (int i = 0; i < piece.size(); i++) {
                    add(key, Double.doubleToLongBits(piece.lat()[i]), Double.doubleToLongBits(piece.lon()[i]));
                }
            }
            return folder.resolve(HexFormat.of().formatHex(key.digest(), 0, 16) + ENDING);
        } catch (IOException e) {
            return null;
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java platform has SHA-256", never);
        }
    }

    private static void add(MessageDigest key, long... numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(8 * numbers.length);
        for (long number : numbers) {
            bytes.putLong(number);
        }
        key.update(bytes.array());
    }

    private MapExtract kept(Path place, List<Path> files) {
        try {
            if (!Files.isRegularFile(place) || Files.size(place) > mostBytes) {
                return null;
            }
            List<String> names = new ArrayList<>();
            for (Path file : files) {
                names.add(file.toString());
            }
            return StoredExtract.read(Files.readAllBytes(place), names);
        } catch (IOException e) {
            return null;
        }
    }

    /** Writes beside and moves, so that a file in the cache is whole or not there. */
    private void keep(Path place, MapExtract extract) {
        byte[] bytes = StoredExtract.write(extract);
        if (bytes.length > mostBytes) {
            return;
        }
        try {
            Files.createDirectories(folder);
            Path unfinished = Files.createTempFile(folder, "map", UNFINISHED);
            try {
                Files.write(unfinished, bytes);
                move(unfinished, place);
            } finally {
                Files.deleteIfExists(unfinished);
            }
            trim(place);
        } catch (IOException e) {
            // The map is read again next time.
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private record CachedExtract(Path file, long size, long changed) {
    }

    /** Removes what was written first, until the rest is small enough; the newest stays. */
    private void trim(Path newest) throws IOException {
        List<CachedExtract> all = new ArrayList<>();
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path file : inside.toList()) {
                String name = file.getFileName().toString();
                if ((name.endsWith(ENDING) || name.endsWith(UNFINISHED)) && Files.isRegularFile(file)) {
                    all.add(new CachedExtract(file, Files.size(file), Files.getLastModifiedTime(file).toMillis()));
                }
            }
        }
        all.sort(Comparator.comparingLong(CachedExtract::changed));
        long total = 0;
        for (CachedExtract each : all) {
            total += each.size();
        }
        for (CachedExtract each : all) {
            if (total > mostBytes && !each.file().equals(newest)) {
                Files.deleteIfExists(each.file());
                total -= each.size();
            }
        }
    }
}
