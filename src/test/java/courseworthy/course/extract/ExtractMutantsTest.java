package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.protobuf.ByteString;
import courseworthy.RealData;
import courseworthy.course.Track;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import crosby.binary.Osmformat;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Maps drawn at random are read as a library (osmpbf) reads them, and spoilt ones end in what they hold or in one fault. */
class ExtractMutantsTest {

    private static final int EACH = Integer.getInteger("courseworthy.mutants", 100);

    private static final Corridor CORRIDOR = corridor();

    @TempDir
    Path folder;

    private static Corridor corridor() {
        double[] lat = {0, 0.003};
        return Corridor.around(new Track(List.of(new Track.TrackPiece(lat, new double[2], new double[] {0, 331}, lat)), Track.Elevation.MISSING), 300);
    }

    /** A map of a few hundred nodes, some near the track, in blocks of every form that the format has. */
    private static List<byte[]> blocks(Random random) {
        List<byte[]> blocks = new ArrayList<>();
        String[] texts = {"", "highway", "track", "surface", "gravel", "ford", "yes", "name", "Z\u00FCrich", "path", "barrier", "gate", "route", "ferry"};
        List<Long> ids = new ArrayList<>();
        long id = random.nextInt(1000) - 500;
        for (int block = 0; block < 4; block++) {
            int granularity = List.of(100, 1, 1000, 37).get(random.nextInt(4));
            long latitudeOffset = random.nextBoolean() ? 0 : random.nextInt(2_000_000) - 1_000_000;
            Osmformat.PrimitiveBlock.Builder out = block(texts).setGranularity(granularity).setLatOffset(latitudeOffset);
            boolean dense = random.nextBoolean();
            Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
            long[] before = new long[3];
            for (int i = 0; i < 60; i++) {
                id += 1 + random.nextInt(block == 2 ? 1_000_000_000 : 3);
                ids.add(id);
                long lat = (long) (random.nextGaussian() * 6e6) / granularity;
                long lon = (long) (random.nextGaussian() * 6e6) / granularity;
                boolean tagged = random.nextInt(4) == 0;
                int key = random.nextBoolean() ? 5 : 10;
                if (dense) {
                    Osmformat.DenseNodes.Builder nodes = group.getDenseBuilder();
                    nodes.addId(id - before[0]).addLat(lat - before[1]).addLon(lon - before[2]);
                    if (tagged) {
                        nodes.addKeysVals(key).addKeysVals(key + 1).addKeysVals(7).addKeysVals(8);
                    }
                    nodes.addKeysVals(0);
                    before = new long[] {id, lat, lon};
                } else {
                    Osmformat.Node.Builder node = group.addNodesBuilder().setId(id).setLat(lat).setLon(lon);
                    if (tagged) {
                        node.addKeys(key).addVals(key + 1).addKeys(7).addVals(8);
                    }
                }
            }
            blocks.add(out.addPrimitivegroup(group).build().toByteArray());
        }
        for (int block = 0; block < 3; block++) {
            Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
            for (int i = 0; i < 40; i++) {
                Osmformat.Way.Builder way = group.addWaysBuilder().setId(100L * block + i);
                int kind = random.nextInt(4);
                way.addKeys(kind == 0 ? 12 : kind == 1 ? 3 : 1).addVals(kind == 0 ? 13 : kind == 1 ? 4 : kind == 2 ? 2 : 9).addKeys(7).addVals(8);
                long last = 0;
                for (int k = random.nextInt(8); k >= 0; k--) {
                    long node = random.nextInt(20) == 0 ? 5_000_000_000_000L : ids.get(random.nextInt(ids.size()));
                    way.addRefs(node - last);
                    last = node;
                }
            }
            blocks.add(block(texts).addPrimitivegroup(group).build().toByteArray());
        }
        return blocks;
    }

    private static Osmformat.PrimitiveBlock.Builder block(String[] texts) {
        Osmformat.StringTable.Builder table = Osmformat.StringTable.newBuilder();
        for (String text : texts) {
            table.addS(ByteString.copyFrom(text, StandardCharsets.UTF_8));
        }
        return Osmformat.PrimitiveBlock.newBuilder().setStringtable(table);
    }

    private static PbfFile file(List<byte[]> blocks) {
        PbfFile file = PbfFile.withHeader();
        blocks.forEach(block -> file.block("OSMData", block));
        return file;
    }

    private MapExtract read(byte[] bytes, Faults faults) throws IOException {
        return ExtractReader.read(List.of(Files.write(folder.resolve("map"), bytes)), CORRIDOR, faults, Progress.UNSEEN);
    }

    @Test
    void mapsDrawnAtRandomAreReadAsALibraryDoes() throws IOException {
        int lines = 0;
        for (int seed = 0; seed < 40; seed++) {
            Faults faults = new Faults();
            MapExtract read = read(file(blocks(new Random(seed))).bytes(), faults);
            assertThat(faults.faults()).isEmpty();
            MapLibrary all = MapLibrary.of(folder.resolve("map"));
            all.nodesOfWays.keySet().removeIf(way -> !MapTags.keepsWay(all.tagsOfWays.get(way)));
            Set<String> expected = new TreeSet<>();
            all.nodesOfWays.forEach((way, nodes) -> {
                for (int i = 1; i < nodes.size(); i++) {
                    double[] a = all.places.get(nodes.get(i - 1));
                    double[] b = all.places.get(nodes.get(i));
                    if (a != null && b != null && (near(a) || near(b))) {
                        expected.add(way + " " + nodes.get(i - 1) + " " + nodes.get(i));
                    }
                }
            });
            Set<String> found = new TreeSet<>();
            for (MapWay way : read.ways()) {
                for (int i = 1; i < way.size(); i++) {
                    found.add(way.id() + " " + way.nodes()[i - 1] + " " + way.nodes()[i]);
                    assertThat(way.latitude()[i]).isCloseTo(all.places.get(way.nodes()[i])[0], org.assertj.core.api.Assertions.within(0.51e-7));
                    assertThat(way.longitude()[i]).isCloseTo(all.places.get(way.nodes()[i])[1], org.assertj.core.api.Assertions.within(0.51e-7));
                }
            }
            assertThat(found).isEqualTo(expected);
            lines += found.size();
            Map<Long, Map<String, String>> tagged = new HashMap<>();
            read.nodes().forEach(node -> tagged.put(node.id(), node.tags()));
            all.tagsOfNodes.forEach((id, tags) -> {
                boolean kept = near(all.places.get(id)) && MapTags.keepsNode(tags);
                assertThat(tagged.get(id)).isEqualTo(kept ? tags : null);
            });
        }
        assertThat(lines).isGreaterThan(1000);
    }

    private static boolean near(double[] place) {
        return CORRIDOR.contains(Math.rint(place[0] * 1e7) / 1e7, Math.rint(place[1] * 1e7) / 1e7);
    }

    private void isReadOrRefused(byte[] bytes, String which) throws IOException {
        Faults faults = new Faults();
        MapExtract read = read(bytes, faults);
        assertThat(faults.faults()).as(which).hasSizeBetween(read == null ? 1 : 0, read == null ? 1 : 0);
        for (Fault fault : faults.faults()) {
            assertThat(fault.text()).as(which).hasSizeLessThan(1500).doesNotContain("Exception", "java.");
        }
    }

    private static byte[] spoilt(byte[] whole, Random random) {
        byte[] out = whole.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(out.length);
            switch (random.nextInt(4)) {
                case 0 -> out[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> out[at] = (byte) random.nextInt(256);
                case 2 -> out[at] = (byte) 0xFF;
                default -> {
                    int length = Math.min(out.length - at, 1 + random.nextInt(12));
                    byte[] shorter = new byte[Math.max(1, out.length - length)];
                    System.arraycopy(out, 0, shorter, 0, Math.min(at, shorter.length));
                    System.arraycopy(out, at + length, shorter, Math.min(at, shorter.length), Math.max(0, out.length - at - length));
                    out = shorter;
                }
            }
        }
        return out;
    }

    /** Damage to the file, and damage to what its blocks hold, which a checksum would not show. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void spoiltBlocksAreReadOrRefused(boolean inside) throws IOException {
        Random random = new Random(inside ? 5 : 6);
        List<byte[]> whole = blocks(new Random(1));
        byte[] bytes = file(whole).bytes();
        for (int i = 0; i < EACH; i++) {
            if (inside) {
                List<byte[]> blocks = new ArrayList<>(whole);
                int at = random.nextInt(blocks.size());
                blocks.set(at, spoilt(blocks.get(at), random));
                isReadOrRefused(file(blocks).bytes(), "blocks " + i);
            } else {
                isReadOrRefused(spoilt(bytes, random), "file " + i);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void spoiltXmlIsReadOrRefused(boolean packed) throws IOException {
        Random random = new Random(packed ? 7 : 8);
        byte[] text = ExampleMap.files().get(ExampleMap.MAP).substring(0, 6000).getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(text);
        }
        for (int i = 0; i < EACH; i++) {
            isReadOrRefused(spoilt(packed ? out.toByteArray() : text, random), "xml " + i);
        }
    }

    @Test
    void spoiltRealBlocksAreReadOrRefused() throws IOException {
        byte[] whole = Files.readAllBytes(RealData.at("osm/liechtenstein-2022.osm.pbf"));
        Random random = new Random(9);
        for (int i = 0; i < EACH / 20; i++) {
            isReadOrRefused(spoilt(whole, random), "real " + i);
        }
    }
}
