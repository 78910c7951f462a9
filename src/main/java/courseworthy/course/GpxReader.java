package courseworthy.course;

import courseworthy.problem.Faults;
import courseworthy.text.MissingFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import javax.xml.stream.Location;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads GPX 1.0 and 1.1 (topografix.com/GPX/1/1) with a pull parser, straight into arrays. Tracks are read, or routes where
 * there is no track; extensions are passed over. Coordinates must be decimal degrees within -90..90 and -180..180.
 *
 * <p>The file is hostile until proven otherwise: document types and entities are refused, nothing but the named file is opened, and
 * characters, points, depth and the size of any one element are bounded, so that reading stays within 256 MB.
 */
final class GpxReader {

    /** Most points read. */
    static final int MOST_POINTS = 400_000;
    private static final int DEEPEST = 100;
    private static final int MOST_ATTRIBUTES = 1000;
    private static final int LONGEST_NAME = 200;
    /** Names of so many way points are kept. */
    private static final int MOST_NAMED = 10;
    private static final List<String> NAMESPACES =
            List.of("http://www.topografix.com/GPX/1/1", "http://www.topografix.com/GPX/1/0", "");
    private static final String WANTED = "a GPX file, version 1.0 or 1.1";

    private final Path path;
    private final String shown;
    private final Faults faults;
    private final boolean timed;
    private final XmlText source;
    private XMLStreamReader2 xml;
    private String space;
    private int depth;
    private String open = "";

    private final List<GpxFile.Segment> tracks = new ArrayList<>();
    private final List<GpxFile.Segment> routes = new ArrayList<>();
    private final TrackPoints run = new TrackPoints();
    private String trackName = "";
    private String fileName = "";
    private int wayPoints;
    private final List<String> named = new ArrayList<>();
    private int points;
    private int badPoints;
    private int badLine;
    private String badField = "";
    private String badText = "";
    private String badExpected = "";

    private GpxReader(Path path, String shown, boolean timed, XmlText source, Faults faults) {
        this.path = path;
        this.shown = shown;
        this.timed = timed;
        this.source = source;
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it, for messages
     * @return what is written there, or null with one fault that says why not
     */
    static GpxFile read(Path path, String shown, Faults faults) {
        return read(path, shown, false, faults, characters -> { });
    }

    /** Reads the times of points too. */
    static GpxFile timed(Path path, String shown, Faults faults) {
        return read(path, shown, true, faults, characters -> { });
    }

    /** @param taken told how many characters the parser took in */
    static GpxFile read(Path path, String shown, boolean timed, Faults faults, LongConsumer taken) {
        faults.reads(path);
        try (InputStream in = GzipFile.unpacked(Files.newInputStream(path)); XmlText text = XmlText.of(in)) {
            GpxFile gpx = new GpxReader(path, shown, timed, text, faults).read();
            taken.accept(text.total());
            return gpx;
        } catch (IllegalArgumentException e) {
            faults.add(shown, 1, "", "an encoding that is not known here", "UTF-8 or another common encoding", "Save the file as UTF-8.");
        } catch (GzipFile.DamagedGzipException e) {
            faults.add(e.fault(shown));
        } catch (NoSuchFileException e) {
            faults.add(MissingFile.fault(path, shown, "a file that can be read"));
        } catch (IOException e) {
            faults.add(shown, 0, "", Files.isDirectory(path) ? "a folder" : "a file that cannot be read", "a file that can be read",
                    "Check the path and its permissions.");
        }
        return null;
    }

    private GpxFile read() {
        if (source.isWebPage()) {
            faults.add(shown, 0, "", "a web page (HTML)", WANTED, "Fetch the file itself: its address gave a page instead.");
            return null;
        }
        try {
            xml = HardenedXml.reader(source);
            document();
            return result();
        } catch (RefusedTrack e) {
            faults.add(shown, e.line, e.field, e.found, e.expected, e.mend);
        } catch (XMLStreamException | RuntimeException e) {
            // Parsers let some malformed bytes out as unchecked exceptions.
            malformed(e);
        }
        return null;
    }

    /** Ends the reading with a fault. */
    private static final class RefusedTrack extends RuntimeException {

        private static final long serialVersionUID = 1L;

        final int line;
        final String field;
        final String found;
        final String expected;
        final String mend;

        RefusedTrack(int line, String field, String found, String expected, String mend) {
            super(found, null, false, false);
            this.line = line;
            this.field = field;
            this.found = found;
            this.expected = expected;
            this.mend = mend;
        }
    }

    private int line() {
        return xml == null ? 0 : Math.max(0, xml.getLocationInfo().getCurrentLocation().getLineNumber());
    }

    private int next() throws XMLStreamException {
        source.step();
        int event = xml.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new RefusedTrack(line(), "", "a document type or entity of its own", WANTED + " without one",
                    "Export the track again, or remove the <!DOCTYPE ...> part.");
        }
        if (event == XMLStreamConstants.START_ELEMENT && xml.getAttributeCount() > MOST_ATTRIBUTES) {
            throw new RefusedTrack(line(), "", "an element with more than " + MOST_ATTRIBUTES + " attributes", WANTED,
                    "Export the track again.");
        }
        return event;
    }

    private void document() throws XMLStreamException {
        int event = next();
        while (event != XMLStreamConstants.START_ELEMENT) {
            event = next();
        }
        root();
        children(ElementLevel.FILE);
        while (xml.hasNext()) {
            next();
        }
    }

    private void root() {
        String name = xml.getLocalName();
        space = xml.getNamespaceURI() == null ? "" : xml.getNamespaceURI();
        if (!name.equals("gpx")) {
            throw new RefusedTrack(line(), "", "an XML file that starts with <" + name + ">", WANTED + ", which starts with <gpx>",
                    "Export the course as GPX.");
        }
        if (!NAMESPACES.contains(space)) {
            throw new RefusedTrack(line(), "gpx", "the namespace \"" + space + "\"", "\"" + NAMESPACES.get(0) + "\"",
                    "Export the course as GPX 1.1.");
        }
    }

    /** The elements whose children matter. */
    private enum ElementLevel { FILE, METADATA, TRACK, SEGMENT, ROUTE }

    /** Reads to the end of the element whose start was just read, handing on its children in the GPX namespace. */
    private void children(ElementLevel level) throws XMLStreamException {
        String element = xml.getLocalName();
        deeper();
        for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (inGpx()) {
                    child(level, xml.getLocalName());
                } else {
                    skip();
                }
                open = element;
            }
        }
        depth--;
    }

    private void child(ElementLevel level, String name) throws XMLStreamException {
        switch (level) {
            case FILE -> top(name);
            case METADATA -> metadata(name);
            case TRACK -> track(name);
            case SEGMENT -> segment(name);
            case ROUTE -> routeChild(name);
        }
    }

    private boolean inGpx() {
        String uri = xml.getNamespaceURI();
        return uri == null ? space.isEmpty() : uri.equals(space);
    }

    private void deeper() {
        open = xml.getLocalName();
        depth++;
        if (depth > DEEPEST) {
            throw new RefusedTrack(line(), "", "elements nested deeper than " + DEEPEST, WANTED, "Export the track again.");
        }
    }

    private void skip() throws XMLStreamException {
        int from = depth;
        deeper();
        while (depth > from) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                deeper();
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
    }

    private void top(String name) throws XMLStreamException {
        switch (name) {
            case "metadata" -> children(ElementLevel.METADATA);
            case "name" -> fileName = name(fileName);
            case "trk" -> children(ElementLevel.TRACK);
            case "rte" -> {
                children(ElementLevel.ROUTE);
                routes.add(run.take());
            }
            case "wpt" -> wayPoint();
            default -> skip();
        }
    }

    private void metadata(String name) throws XMLStreamException {
        if (name.equals("name")) {
            fileName = name(fileName);
        } else {
            skip();
        }
    }

    private void track(String name) throws XMLStreamException {
        switch (name) {
            case "trkseg" -> {
                children(ElementLevel.SEGMENT);
                tracks.add(run.take());
            }
            case "name" -> trackName = name(trackName);
            case "wpt" -> wayPoint();
            default -> skip();
        }
    }

    private void segment(String name) throws XMLStreamException {
        if (name.equals("trkpt")) {
            point(name);
        } else {
            skip();
        }
    }

    private void routeChild(String name) throws XMLStreamException {
        switch (name) {
            case "rtept" -> point(name);
            case "name" -> trackName = name(trackName);
            default -> skip();
        }
    }

    private void wayPoint() throws XMLStreamException {
        wayPoints++;
        if (named.size() == MOST_NAMED) {
            skip();
            return;
        }
        String name = "";
        open = "wpt";
        depth++;
        for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            open = xml.getLocalName();
            if (inGpx() && xml.getLocalName().equals("name")) {
                name = name(name);
            } else {
                skip();
            }
            open = "wpt";
        }
        depth--;
        if (!name.isEmpty()) {
            named.add(name);
        }
    }

    /** The first name given, on one line and of bounded length. */
    private String name(String before) throws XMLStreamException {
        String text = text(LONGEST_NAME).strip();
        if (!before.isEmpty()) {
            return before;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            out.append(Character.isISOControl(c) ? ' ' : c);
        }
        return out.toString();
    }

    private void point(String element) throws XMLStreamException {
        double lat = coordinate(element, "lat", 90);
        double lon = coordinate(element, "lon", 180);
        double elevation = Double.NaN;
        double seconds = Double.NaN;
        open = element;
        depth++;
        for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (inGpx() && xml.getLocalName().equals("ele")) {
                elevation = elevation();
            } else if (timed && inGpx() && xml.getLocalName().equals("time")) {
                seconds = RecordedRide.seconds(text(60).strip());
            } else {
                skip();
            }
            open = element;
        }
        depth--;
        points++;
        if (points > MOST_POINTS) {
            throw new RefusedTrack(line(), element, "more than " + MOST_POINTS + " points", "at most " + MOST_POINTS,
                    "Thin the track out: one point every 5 m is plenty.");
        }
        run.add(lat, lon, elevation, seconds);
    }

    private double coordinate(String element, String attribute, double most) {
        String text = xml.getAttributeValue(null, attribute);
        if (text == null) {
            bad(line(), element, "no \"" + attribute + "\"", "lat and lon in decimal degrees");
            return 0;
        }
        double degrees = XmlDecimal.of(text);
        if (!(Math.abs(degrees) <= most)) {
            bad(line(), attribute, quoted(text),
                    "decimal degrees from -" + (int) most + " to " + (int) most + ", such as " + (most > 90 ? "9.5312" : "47.0756"));
            return 0;
        }
        return degrees;
    }

    /** Metres, NaN where the element is empty or says that nothing was measured. */
    private double elevation() throws XMLStreamException {
        String written = text(60);
        String text = written.strip();
        if (text.isEmpty() || text.equalsIgnoreCase("nan")) {
            return Double.NaN;
        }
        double metres = XmlDecimal.of(text);
        if (Double.isNaN(metres)) {
            bad(line() - (int) written.chars().filter(c -> c == '\n').count(), "ele", quoted(text), "metres as a decimal number, such as 450.5");
        }
        return metres;
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > 60 ? text.substring(0, 57) + "..." : text) + "\"";
    }

    private void bad(int line, String field, String found, String expected) {
        if (badPoints == 0) {
            badLine = line;
            badField = field;
            badText = found;
            badExpected = expected;
        }
        badPoints++;
    }

    /** The text of the element whose start was just read, up to a length; reads to its end. */
    private String text(int most) throws XMLStreamException {
        StringBuilder out = new StringBuilder(16);
        int from = depth;
        deeper();
        while (depth > from) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                deeper();
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
                int room = Math.min(most - out.length(), xml.getTextLength());
                out.append(xml.getTextCharacters(), xml.getTextStart(), room);
            }
        }
        return out.toString();
    }

    private GpxFile result() {
        if (badPoints > 0) {
            String many = badPoints == 1 ? "" : badPoints + " values in the file are wrong; this is the first. ";
            String comma = badText.indexOf(',') > 0 ? "Write decimals with a point. " : "";
            throw new RefusedTrack(badLine, badField, badText, badExpected, many + comma + "Correct or remove them, or export the track again.");
        }
        boolean route = tracks.isEmpty() && !routes.isEmpty();
        return new GpxFile(trackName.isEmpty() ? fileName : trackName, List.copyOf(route ? routes : tracks), route, wayPoints, List.copyOf(named));
    }

    /** One message of our own: the parser's differ by version and language. */
    private void malformed(Exception e) {
        Throwable cause = cause(e);
        Location at = e instanceof XMLStreamException broken ? broken.getLocation() : null;
        int line = at == null ? line() : Math.max(0, at.getLineNumber());
        if (cause instanceof XmlText.TooMuch much) {
            faults.add(shown, line, "", much.getMessage(), WANTED, "Thin the track out, or export it without extensions.");
        } else if (cause instanceof GzipFile.DamagedGzipException damaged) {
            faults.add(damaged.fault(shown));
        } else if (cause instanceof CharacterCodingException) {
            faults.add(shown, line, "", "bytes that do not fit the file's encoding", "text in the encoding its first line names",
                    "Save the file as UTF-8.");
        } else if (source.isEmpty()) {
            faults.add(shown, 0, "", "an empty file", WANTED, "Export the course again.");
        } else if (open.isEmpty()) {
            faults.add(shown, line, "", "text that is not XML", WANTED, "Export the course as GPX.");
        } else if (at != null && atEnd(at)) {
            faults.add(shown, line, open, "the end of the file inside <" + open + ">", "a complete GPX file",
                    "The file was cut short: fetch or export it again.");
        } else {
            faults.add(shown, line, open, "broken XML", "well-formed GPX", "Export the track again.");
        }
    }

    /** Whether the parser stopped in the last place of the file; counted anew, since only broken files need to know. */
    private boolean atEnd(Location at) {
        int lines = 1;
        int column = 1;
        char[] chars = new char[8192];
        try (InputStream in = GzipFile.unpacked(Files.newInputStream(path)); XmlText text = XmlText.of(in)) {
            for (int read = text.read(chars); read >= 0; read = text.read(chars)) {
                text.step();
                for (int i = 0; i < read; i++) {
                    column = chars[i] == '\n' ? 1 : column + 1;
                    lines += chars[i] == '\n' ? 1 : 0;
                }
            }
        } catch (IOException e) {
            return false;
        }
        return at.getLineNumber() == lines && at.getColumnNumber() >= column;
    }

    private static Throwable cause(Exception e) {
        Throwable cause = e instanceof XMLStreamException x && x.getNestedException() != null ? x.getNestedException() : e;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        return cause;
    }
}
