package courseworthy.course.extract;

import courseworthy.course.GzipFile;
import courseworthy.course.HardenedXml;
import courseworthy.course.XmlDecimal;
import courseworthy.course.XmlText;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads one map file in OpenStreetMap's XML, version 0.6, compressed by gzip or not.
 *
 * <p>Source: OpenStreetMap wiki, "OSM XML" (published description of the format).
 */
final class OsmXmlReader implements MapFileReader {

    /** Characters of a file: so many, and so many times the bytes of a compressed one, which real extracts stay far below. */
    private static final long MOST_CHARACTERS = 64_000_000;
    private static final long MOST_RATIO = 50;
    private static final int DEEPEST = 20;
    private static final int MOST_ATTRIBUTES = 100;
    private static final int MOST_NODES_OF_WAY = 100_000;
    private static final double E7 = 1e7;
    private static final String WANTED = RefusedExtract.WANTED;
    private static final String FETCH_AGAIN = "Fetch the file again.";

    private final int file;
    private final Path path;
    private final Corridor corridor;
    private final ExtractContents contents;
    private final BoundsE7 seen = new BoundsE7();

    private ExtractStream bytes;
    private XmlText text;
    private XMLStreamReader2 xml;
    private LongConsumer progress = at -> { };
    /** Ids of nodes; null where they are wanted by their place. */
    private LongSet wanted;
    private int depth;
    private String open = "";
    private Bounds bounds;
    private boolean attributionNeeded = true;
    private boolean anyWay;
    private boolean anyNode;
    private String digest = "";

    /** @param file its number among those that are read */
    OsmXmlReader(int file, Path path, Corridor corridor, ExtractContents contents) {
        this.file = file;
        this.path = path;
        this.corridor = corridor;
        this.contents = contents;
    }

    @Override
    public ExtractFile read(LongConsumer listener) throws IOException {
        progress = listener;
        try (ExtractStream stream = ExtractStream.of(path)) {
            bytes = stream;
            parse();
            if (!anyNode && !anyWay) {
                throw RefusedExtract.kind("an extract without data", FETCH_AGAIN);
            }
            if (!anyWay) {
                throw RefusedExtract.kind("an extract without a way", FETCH_AGAIN);
            }
            return new ExtractFile(path.toString(), digest, bounds != null ? bounds : seen.bounds(), attributionNeeded);
        }
    }

    /** Reads the file once more, up to its first way. */
    @Override
    public void find(LongSet ids) throws IOException {
        wanted = ids;
        progress = at -> { };
        anyWay = false;
        depth = 0;
        try (ExtractStream stream = ExtractStream.of(path)) {
            bytes = stream;
            parse();
        }
    }

    private void parse() throws IOException {
        long most = Math.max(MOST_CHARACTERS, bytes.size() * MOST_RATIO);
        try (XmlText source = XmlText.of(GzipFile.unpacked(bytes), most)) {
            text = source;
            if (source.isWebPage()) {
                throw RefusedExtract.kind("a web page (HTML)", "Fetch the file itself: its address gave a page instead.");
            }
            xml = HardenedXml.reader(source);
            document();
            digest = bytes.digest();
        } catch (IllegalArgumentException e) {
            throw RefusedExtract.at(1, "", "an encoding that is not known here", "UTF-8", FETCH_AGAIN);
        } catch (XMLStreamException e) {
            throw malformed(e);
        }
    }

    private void document() throws XMLStreamException {
        while (next() != XMLStreamConstants.START_ELEMENT) {
            // The root is the first element.
        }
        root();
        depth = 1;
        while (depth > 0 && !(wanted != null && anyWay)) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                element(xml.getLocalName());
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
        while (depth == 0 && xml.hasNext()) {
            next();
        }
    }

    private int next() throws XMLStreamException {
        text.step();
        int event = xml.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw RefusedExtract.at(line(), "", "a document type or entity of its own", WANTED + " without one", FETCH_AGAIN);
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
            open = xml.getLocalName();
            if (xml.getAttributeCount() > MOST_ATTRIBUTES) {
                throw RefusedExtract.at(line(), open, "more than " + MOST_ATTRIBUTES + " attributes", WANTED, FETCH_AGAIN);
            }
        }
        return event;
    }

    private int line() {
        return xml == null ? 0 : Math.max(0, xml.getLocationInfo().getCurrentLocation().getLineNumber());
    }

    private void root() {
        String name = xml.getLocalName();
        if (name.equals("osmChange")) {
            throw RefusedExtract.at(line(), "", "a file of changes", WANTED, "Take an extract of the map as it is now.");
        }
        if (!name.equals("osm")) {
            throw RefusedExtract.at(line(), "", "an XML file that starts with <" + name + ">", WANTED + ", which starts with <osm>", "");
        }
        String version = xml.getAttributeValue(null, "version");
        if (version != null && !version.equals("0.6")) {
            throw RefusedExtract.at(line(), "version", quoted(version), "\"0.6\"", "Take an extract of today's format.");
        }
        attributionNeeded = !namesAnotherHolder();
    }

    /**
     * Whether the file says that the rights in it are somebody else's: it names a holder (attribute copyright), and neither there nor in its
     * attribution and licence is it the map's contributors or their licence.
     */
    private boolean namesAnotherHolder() {
        String holder = xml.getAttributeValue(null, "copyright");
        if (holder == null || holder.isBlank()) {
            return false;
        }
        StringBuilder said = new StringBuilder(holder);
        for (String each : new String[] {"attribution", "license", "generator"}) {
            said.append(' ').append(xml.getAttributeValue(null, each));
        }
        String words = said.toString().toLowerCase(Locale.ROOT);
        return !words.contains("openstreetmap") && !words.contains("odbl") && !words.contains("opendatacommons") && !words.contains("overpass");
    }

    private void element(String name) throws XMLStreamException {
        switch (name) {
            case "bounds" -> bounds();
            case "node" -> node();
            case "way" -> way();
            default -> skip();
        }
        progress.accept(bytes.position());
    }

    private void skip() throws XMLStreamException {
        int from = depth;
        depth++;
        while (depth > from) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                if (depth > DEEPEST) {
                    throw RefusedExtract.at(line(), "", "elements nested deeper than " + DEEPEST, WANTED, FETCH_AGAIN);
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
    }

    private void bounds() throws XMLStreamException {
        double south = degrees("minlat", 90);
        double north = degrees("maxlat", 90);
        double west = degrees("minlon", 180);
        double east = degrees("maxlon", 180);
        if (south <= north) {
            bounds = new Bounds(south, west, north, east);
        }
        skip();
    }

    private double degrees(String attribute, double most) {
        String written = xml.getAttributeValue(null, attribute);
        double degrees = written == null ? Double.NaN : XmlDecimal.of(written);
        if (!(Math.abs(degrees) <= most)) {
            throw RefusedExtract.at(line(), attribute, written == null ? "nothing" : quoted(written),
                    "decimal degrees from -" + (int) most + " to " + (int) most, FETCH_AGAIN);
        }
        return degrees;
    }

    private long id(String attribute) {
        String written = xml.getAttributeValue(null, attribute);
        try {
            return Long.parseLong(written == null ? "" : written.strip());
        } catch (NumberFormatException e) {
            throw RefusedExtract.at(line(), attribute, written == null ? "nothing" : quoted(written), "a whole number", FETCH_AGAIN);
        }
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > 60 ? text.substring(0, 57) + "..." : text) + "\"";
    }

    /** Whether an editor has marked an element as deleted. */
    private boolean isDeleted() {
        if ("false".equals(xml.getAttributeValue(null, "visible"))) {
            throw RefusedExtract.at(line(), open, "a history file, with former versions of nodes and ways", WANTED,
                    "Take an extract of the map as it is now.");
        }
        return "delete".equals(xml.getAttributeValue(null, "action"));
    }

    private void node() throws XMLStreamException {
        if (anyWay) {
            throw RefusedExtract.waysBeforeNodes();
        }
        if (isDeleted()) {
            skip();
            return;
        }
        anyNode = true;
        long id = id("id");
        int latitude = (int) Math.rint(degrees("lat", 90) * E7);
        int longitude = (int) Math.rint(degrees("lon", 180) * E7);
        seen.add(latitude, longitude);
        if (wanted != null) {
            if (wanted.contains(id)) {
                contents.addBeyond(id, latitude, longitude);
            }
            skip();
        } else if (corridor.containsE7(latitude, longitude)) {
            contents.addNode(id, latitude, longitude);
            Map<String, String> tags = new HashMap<>();
            children(null, tags, MapTags.OF_NODES);
            if (MapTags.keepsNode(tags)) {
                contents.addTagged(new MapNode(id, latitude / E7, longitude / E7, tags));
            }
        } else {
            skip();
        }
    }

    private void way() throws XMLStreamException {
        if (isDeleted()) {
            skip();
            return;
        }
        anyWay = true;
        if (wanted != null) {
            return;
        }
        long id = id("id");
        NodeIds nodes = new NodeIds();
        Map<String, String> tags = new HashMap<>();
        children(nodes, tags, MapTags.OF_WAYS);
        if (nodes.near && MapTags.keepsWay(tags)) {
            contents.addWay(new WayDraft(file, id, Arrays.copyOf(nodes.ids, nodes.size), tags));
        }
    }

    /** The nodes of a way. */
    private static final class NodeIds {
        private long[] ids = new long[16];
        private int size;
        private boolean near;
    }

    /** Reads the tags of an element and, of a way, its nodes. */
    private void children(NodeIds nodes, Map<String, String> tags, Set<String> kept) throws XMLStreamException {
        depth++;
        for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("tag")) {
                String key = xml.getAttributeValue(null, "k");
                String value = xml.getAttributeValue(null, "v");
                if (value != null && key != null && kept.contains(key)) {
                    tags.put(key, value.substring(0, Math.min(MapTags.LONGEST, value.length())));
                }
            } else if (nodes != null && xml.getLocalName().equals("nd")) {
                reference(nodes);
            }
            skip();
        }
        depth--;
    }

    private void reference(NodeIds nodes) {
        if (nodes.size == MOST_NODES_OF_WAY) {
            throw RefusedExtract.at(line(), "way", "more than " + MOST_NODES_OF_WAY + " nodes", "fewer", FETCH_AGAIN);
        }
        if (nodes.size == nodes.ids.length) {
            nodes.ids = Arrays.copyOf(nodes.ids, nodes.size * 2);
        }
        long id = id("ref");
        nodes.ids[nodes.size++] = id;
        nodes.near |= contents.nodes().contains(id);
    }

    /** What is wrong, in words of our own: the parser's differ by version and language. */
    private RuntimeException malformed(XMLStreamException e) throws IOException {
        Throwable cause = e.getNestedException() == null ? e : e.getNestedException();
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        int line = e.getLocation() == null ? line() : Math.max(0, e.getLocation().getLineNumber());
        if (cause instanceof GzipFile.DamagedGzipException damaged) {
            throw damaged;
        }
        if (cause instanceof XmlText.TooMuch much) {
            return RefusedExtract.at(line, "", much.getMessage(), "less", FETCH_AGAIN);
        }
        if (cause instanceof CharacterCodingException) {
            return RefusedExtract.at(line, "", "bytes that do not fit the file's encoding", "text in the encoding its first line names", FETCH_AGAIN);
        }
        if (open.isEmpty()) {
            return RefusedExtract.kind("text that is not XML", "");
        }
        if (text.isEnded()) {
            return RefusedExtract.at(line, open, "the end of the file inside <" + open + ">", "a whole extract",
                    "The file was cut short: fetch it again.");
        }
        return RefusedExtract.at(line, open, "broken XML", "well-formed XML", FETCH_AGAIN);
    }
}
