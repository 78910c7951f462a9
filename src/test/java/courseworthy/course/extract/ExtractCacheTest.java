package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of a map: taken where nothing has changed, and never where anything has. */
class ExtractCacheTest {

    private static final String NODES = "<node id='1' lat='0' lon='0'><tag k='ford' v='yes'/></node><node id='2' lat='0.001' lon='-0.0005'/>"
            + "<node id='3' lat='0.002' lon='0'/>";
    private static final String WAYS = "<way id='-7'><nd ref='1'/><nd ref='2'/><tag k='highway' v='track'/><tag k='name' v='Z\u00FCrich'/></way>"
            + "<way id='9'><nd ref='2'/><nd ref='3'/><tag k='highway' v='path'/></way>";

    @TempDir
    Path folder;
    private Path cache;
    private Path map;

    @BeforeEach
    void writeMap() throws IOException {
        cache = folder.resolve("cache").resolve("maps");
        map = Files.writeString(folder.resolve("map.osm"), osm(WAYS));
    }

    private static String osm(String ways) {
        return "<osm version='0.6'><bounds minlat='-1' minlon='-2' maxlat='3' maxlon='4'/>" + NODES + ways + "</osm>";
    }

    private static Track track(double north) {
        double[] lat = {0, north};
        return new Track(List.of(new Track.TrackPiece(lat, new double[2], new double[] {0, 300}, lat)), Track.Elevation.MISSING);
    }

    /** Counts how often the map itself is read. */
    private int mapReads;

    private MapExtract read(ExtractCache from, Track track, double metres) {
        Faults faults = new Faults();
        boolean[] told = {false};
        Progress progress = (done, of) -> told[0] = true;
        MapExtract read = from.read(List.of(map), track, metres, faults, progress);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.read()).containsExactly(map);
        mapReads += told[0] ? 1 : 0;
        return read;
    }

    private MapExtract read() {
        return read(new ExtractCache(cache, 1_000_000), track(0.003), 100);
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            return files.toList();
        }
    }

    private static void areAlike(MapExtract one, MapExtract other) {
        assertThat(one.files()).isEqualTo(other.files());
        assertThat(one.nodes()).isEqualTo(other.nodes());
        assertThat(one.ways()).usingRecursiveComparison().isEqualTo(other.ways());
    }

    @Test
    void theSecondReadingIsLikeTheFirst() throws IOException {
        MapExtract first = read();
        assertThat(first.ways()).hasSize(2);
        assertThat(first.nodes()).hasSize(1);
        areAlike(read(), first);
        assertThat(mapReads).isEqualTo(1);
        assertThat(kept()).singleElement().satisfies(file -> assertThat(file.getFileName().toString()).matches("[0-9a-f]{32}\\.cut"));
        areAlike(read(ExtractCache.none(), track(0.003), 100), first);
        assertThat(mapReads).isEqualTo(2);
    }

    @Test
    void aChangedMapTrackOrWidthIsReadAnew() throws IOException {
        ExtractCache here = new ExtractCache(cache, 1_000_000);
        read();
        read(here, track(0.002), 100);
        read(here, track(0.003), 101);
        assertThat(mapReads).isEqualTo(3);
        FileTime changed = Files.getLastModifiedTime(map);
        Files.writeString(map, osm(WAYS.replace("track", "path")));
        Files.setLastModifiedTime(map, changed);
        assertThat(read().ways().get(0).tag("highway")).isEqualTo("path");
        Files.writeString(map, osm(WAYS.replace("track", "road")));
        Files.setLastModifiedTime(map, FileTime.fromMillis(changed.toMillis() + 1));
        assertThat(read().ways().get(0).tag("highway")).isEqualTo("road");
        assertThat(mapReads).isEqualTo(5);
        Path copy = Files.copy(map, folder.resolve("copy.osm"));
        Files.setLastModifiedTime(copy, FileTime.fromMillis(changed.toMillis() + 1));
        map = copy;
        read();
        assertThat(mapReads).isEqualTo(6);
    }

    @Test
    void damageIsPassedOverAndMended() throws IOException {
        MapExtract first = read();
        Path file = kept().get(0);
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            byte[] damaged = i < 20 ? java.util.Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            if (i >= 20) {
                damaged[random.nextInt(whole.length)] ^= (byte) (1 << random.nextInt(8));
            }
            Files.write(file, damaged);
            areAlike(read(), first);
            assertThat(mapReads).isEqualTo(i + 2);
            assertThat(file).hasBinaryContent(whole);
        }
    }

    /** Damage that the checksum does not show: the form itself must hold. */
    @Test
    void noBytesMakeItFail() {
        byte[] whole = StoredExtract.write(read());
        Random random = new Random(12);
        for (int i = 0; i < 3000; i++) {
            byte[] damaged = whole.clone();
            for (int j = 0; j <= random.nextInt(3); j++) {
                damaged[random.nextInt(whole.length)] = (byte) random.nextInt(256);
            }
            java.util.zip.CRC32C sum = new java.util.zip.CRC32C();
            sum.update(damaged, 0, damaged.length - 4);
            java.nio.ByteBuffer.wrap(damaged).putInt(damaged.length - 4, (int) sum.getValue());
            StoredExtract.read(damaged, List.of("map.osm"));
        }
        assertThat(StoredExtract.read("courseworthy extract 0\n0000".getBytes(StandardCharsets.US_ASCII), List.of())).isNull();
    }

    @Test
    void whatWasKeptFirstGoesFirst() throws IOException {
        read();
        long size = Files.size(kept().get(0));
        Files.setLastModifiedTime(kept().get(0), FileTime.fromMillis(1000));
        Path oldest = kept().get(0);
        Path unfinished = Files.write(cache.resolve("map1.part"), new byte[(int) size]);
        Files.setLastModifiedTime(unfinished, FileTime.fromMillis(500));
        Path others = Files.write(cache.resolve("notes.txt"), new byte[(int) (3 * size)]);
        ExtractCache small = new ExtractCache(cache, 2 * size + size / 2);
        read(small, track(0.0031), 100);
        assertThat(unfinished).doesNotExist();
        assertThat(oldest).exists();
        read(small, track(0.0032), 100);
        assertThat(oldest).doesNotExist();
        assertThat(others).exists();
        assertThat(kept()).hasSize(3);
    }

    @Test
    void aCacheThatCannotBeWrittenChangesNothing() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        MapExtract read = read(new ExtractCache(file.resolve("maps"), 1_000_000), track(0.003), 100);
        assertThat(read.ways()).hasSize(2);
        Files.createDirectories(cache);
        read = read(new ExtractCache(cache, 10), track(0.003), 100);
        assertThat(read.ways()).hasSize(2);
        assertThat(kept()).isEmpty();
    }

    @Test
    void faultsOfTheMapAreSaidAndNothingIsKept() throws IOException {
        Files.writeString(map, "<osm version='0.6'/>");
        Faults faults = new Faults();
        assertThat(new ExtractCache(cache, 1_000_000).read(List.of(map), track(0.003), 100, faults, Progress.UNSEEN)).isNull();
        assertThat(faults.faults()).hasSize(1);
        assertThat(cache).doesNotExist();
        Files.delete(map);
        Faults missing = new Faults();
        assertThat(new ExtractCache(cache, 1_000_000).read(List.of(map), track(0.003), 100, missing, Progress.UNSEEN)).isNull();
        assertThat(missing.faults()).singleElement().satisfies(fault -> assertThat(fault.found()).isEqualTo("no such file"));
    }

    /** XDG Base Directory Specification 0.8: paths set in these variables must be absolute; ~/.cache where there is none. */
    @Test
    void theFolderIsThatOfTheUser() {
        assertThat(ExtractCache.folder("/var/tmp/c", "/home/me")).isEqualTo(Path.of("/var/tmp/c/courseworthy/maps"));
        assertThat(ExtractCache.folder("tmp/c", "/home/me")).isEqualTo(Path.of("/home/me/.cache/courseworthy/maps"));
        assertThat(ExtractCache.folder("", "/home/me")).isEqualTo(Path.of("/home/me/.cache/courseworthy/maps"));
        assertThat(ExtractCache.folder(null, "/home/me")).isEqualTo(Path.of("/home/me/.cache/courseworthy/maps"));
        assertThat(ExtractCache.folder(null, null)).isNull();
        assertThat(ExtractCache.folder(null, "?")).isNull();
    }
}
