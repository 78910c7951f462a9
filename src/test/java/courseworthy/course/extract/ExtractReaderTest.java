package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Extracts read along real tracks ((c) OpenStreetMap contributors, ODbL 1.0), held against what a library (osmpbf) and the JDK's document parser
 * read of the same files.
 */
class ExtractReaderTest {

    private static final String PBF = "osm/liechtenstein-2022.osm.pbf";
    private static final String XML = "osm/li_small_highways.osm";

    @TempDir
    Path folder;

    private static Track track(String name) {
        Faults faults = new Faults();
        Course course = CourseReader.read(RealData.at("tracks/" + name + ".gpx"), name, null, faults);
        assertThat(faults.faults()).isEmpty();
        return course.track();
    }

    private static MapExtract read(Corridor corridor, Path... files) {
        Faults faults = new Faults();
        MapExtract read = ExtractReader.read(List.of(files), corridor, faults, Progress.UNSEEN);
        assertThat(faults.faults()).isEmpty();
        return read;
    }

    /** Lines between two nodes of a way, of which one at least lies near the track: "way node node". */
    private static Set<String> lines(Map<Long, List<Long>> ways, Map<Long, double[]> places, Corridor corridor) {
        Set<String> out = new HashSet<>();
        ways.forEach((way, nodes) -> {
            for (int i = 1; i < nodes.size(); i++) {
                double[] a = places.get(nodes.get(i - 1));
                double[] b = places.get(nodes.get(i));
                if (a != null && b != null && (corridor.contains(a[0], a[1]) || corridor.contains(b[0], b[1]))) {
                    out.add(way + " " + nodes.get(i - 1) + " " + nodes.get(i));
                }
            }
        });
        return out;
    }

    private static Set<String> lines(MapExtract read) {
        Set<String> out = new HashSet<>();
        for (MapWay way : read.ways()) {
            for (int i = 1; i < way.size(); i++) {
                out.add(way.id() + " " + way.nodes()[i - 1] + " " + way.nodes()[i]);
            }
        }
        return out;
    }

    private static Map<String, String> kept(Map<String, String> tags, Set<String> keys) {
        Map<String, String> out = new HashMap<>(tags);
        out.keySet().retainAll(keys);
        return out;
    }

    private static void isAll(MapExtract read, MapLibrary all, Corridor corridor) {
        Map<Long, List<Long>> ridden = new HashMap<>(all.nodesOfWays);
        ridden.keySet().removeIf(way -> !MapTags.keepsWay(all.tagsOfWays.get(way)));
        assertThat(lines(read)).isEqualTo(lines(ridden, all.places, corridor));
        for (MapWay way : read.ways()) {
            assertThat(way.tags()).isEqualTo(kept(all.tagsOfWays.get(way.id()), MapTags.OF_WAYS));
            for (int i = 0; i < way.size(); i++) {
                // Both have units of 1e-7 degree; the library's double may miss them by its last digits.
                assertThat(way.latitude()[i]).isCloseTo(all.places.get(way.nodes()[i])[0], within(1e-9));
                assertThat(way.longitude()[i]).isCloseTo(all.places.get(way.nodes()[i])[1], within(1e-9));
            }
        }
        Map<Long, Map<String, String>> tagged = new HashMap<>();
        all.tagsOfNodes.forEach((id, tags) -> {
            if (corridor.contains(all.places.get(id)[0], all.places.get(id)[1]) && MapTags.keepsNode(tags)) {
                tagged.put(id, kept(tags, MapTags.OF_NODES));
            }
        });
        Map<Long, Map<String, String>> found = new HashMap<>();
        read.nodes().forEach(node -> found.put(node.id(), node.tags()));
        assertThat(found).isEqualTo(tagged).hasSameSizeAs(read.nodes());
    }

    @ParameterizedTest
    @CsvSource({"course_osm_valley, 200, 700", "course_osm_rhine, 200, 200", "course_osm_valley, 30, 100", "course_osm_valley, 5000, 3000"})
    void readsAllThatALibraryReadsInTheCorridor(String name, double metres, int atLeast) throws IOException {
        Corridor corridor = Corridor.around(track(name), metres);
        MapExtract read = read(corridor, RealData.at(PBF));
        assertThat(read.ways()).hasSizeGreaterThan(atLeast);
        isAll(read, MapLibrary.of(RealData.at(PBF)), corridor);
        assertThat(read.files()).singleElement().satisfies(file -> {
            assertThat(file.attributionNeeded()).isTrue();
            assertThat(file.digest()).matches("[0-9a-f]{64}");
        });
    }

    /** The border of the country (47.05 to 47.27 N, 9.47 to 9.64 E; CIA World Factbook gives 47 16 N, 9 32 E for its middle) lies in the bounds. */
    @Test
    void boundsHoldTheCountry() {
        Bounds bounds = read(Corridor.around(track("course_osm_valley"), 200), RealData.at(PBF)).files().get(0).bounds();
        assertThat(bounds.contains(47.06, 9.5)).isTrue();
        assertThat(bounds.contains(47.26, 9.53)).isTrue();
        assertThat(bounds.contains(47.8, 9.5)).isFalse();
        assertThat(bounds.contains(47.1, 10.2)).isFalse();
    }

    @Test
    void aTrackElsewhereFindsNothing() {
        MapExtract read = read(Corridor.around(track("course_flat_265km"), 200), RealData.at(PBF));
        assertThat(read.ways()).isEmpty();
        assertThat(read.nodes()).isEmpty();
        assertThat(read.files().get(0).bounds().isEmpty()).isFalse();
    }

    private static Document document(Path file) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static Map<String, String> tags(Element of) {
        Map<String, String> out = new HashMap<>();
        NodeList tags = of.getElementsByTagName("tag");
        for (int i = 0; i < tags.getLength(); i++) {
            out.put(((Element) tags.item(i)).getAttribute("k"), ((Element) tags.item(i)).getAttribute("v"));
        }
        return out;
    }

    private static MapLibrary fromDocument(Path file) throws Exception {
        MapLibrary all = new MapLibrary();
        NodeList children = document(file).getDocumentElement().getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (!(children.item(i) instanceof Element each)) {
                continue;
            }
            if (each.getTagName().equals("node")) {
                long id = Long.parseLong(each.getAttribute("id"));
                all.places.put(id, new double[] {Double.parseDouble(each.getAttribute("lat")), Double.parseDouble(each.getAttribute("lon"))});
                all.tagsOfNodes.put(id, tags(each));
            } else if (each.getTagName().equals("way")) {
                List<Long> nodes = new ArrayList<>();
                NodeList references = each.getElementsByTagName("nd");
                for (int j = 0; j < references.getLength(); j++) {
                    nodes.add(Long.parseLong(((Element) references.item(j)).getAttribute("ref")));
                }
                all.nodesOfWays.put(Long.parseLong(each.getAttribute("id")), nodes);
                all.tagsOfWays.put(Long.parseLong(each.getAttribute("id")), tags(each));
            }
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"course_osm_valley, 200", "course_osm_rhine, 1000"})
    void readsXmlPlainOrCompressedAsAnotherParserDoes(String name, double metres) throws Exception {
        Corridor corridor = Corridor.around(track(name), metres);
        MapExtract read = read(corridor, RealData.at(XML));
        isAll(read, fromDocument(RealData.at(XML)), corridor);
        assertThat(read.ways()).isNotEmpty();
        Path packed = folder.resolve("map.osm.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
            Files.copy(RealData.at(XML), out);
        }
        assertThat(lines(read(corridor, packed))).isEqualTo(lines(read));
    }

    /** The small cut-out is of the same country: where both files have a way it counts once. */
    @Test
    void aWayInTwoFilesCountsOnce() {
        Corridor corridor = Corridor.around(track("course_osm_valley"), 200);
        MapExtract alone = read(corridor, RealData.at(PBF));
        MapExtract both = read(corridor, RealData.at(PBF), RealData.at(PBF));
        assertThat(lines(both)).isEqualTo(lines(alone));
        assertThat(both.ways()).hasSameSizeAs(alone.ways());
        assertThat(both.nodes()).isEqualTo(alone.nodes());
        assertThat(both.files()).hasSize(2);
    }
}
