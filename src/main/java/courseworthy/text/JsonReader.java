package courseworthy.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads what the tool wrote as JSON into the same tree as YAML, with lines. Numbers, truths and nothing keep their text and count as
 * unquoted. Refuses a key twice in one object, and nesting deeper than {@link YamlReader#DEEPEST}.
 */
public final class JsonReader {

    private static final int MEGABYTE = 1_000_000;

    private final JsonParser parser;

    private JsonReader(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * Reads a file whose top is an object.
     *
     * @param shown    its path as the user typed it, for messages
     * @param most     largest file read, in bytes: whole millions
     * @param expected what the file should be, for messages
     * @return the tree, or null where nothing could be read; the faults say why
     */
    public static Node.Mapping read(Path path, String shown, int most, String expected, Faults faults) {
        faults.reads(path);
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(most + 1);
        } catch (NoSuchFileException e) {
            faults.add(MissingFile.fault(path, shown, expected));
            return null;
        } catch (IOException e) {
            faults.add(shown, 0, "", Files.isDirectory(path) ? "a folder" : "a file that cannot be read", expected, "");
            return null;
        }
        if (bytes.length > most) {
            faults.add(shown, 0, "", "a file over " + most / MEGABYTE + " MB", expected, "");
            return null;
        }
        return read(new String(bytes, StandardCharsets.UTF_8), shown, expected, faults);
    }

    private static Node.Mapping read(String text, String shown, String expected, Faults faults) {
        JsonFactory factory = JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
        try (JsonParser parser = factory.createParser(text)) {
            JsonReader reader = new JsonReader(parser);
            if (parser.nextToken() == JsonToken.START_OBJECT) {
                Node.Mapping tree = reader.object(1);
                if (parser.nextToken() == null) {
                    return tree;
                }
            }
            faults.add(shown, parser.currentLocation().getLineNr(), "", "what is no JSON object", expected, "");
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            faults.add(shown, line, "", "what cannot be read as JSON", expected, "");
        } catch (IOException e) {
            faults.add(shown, 0, "", "a file that cannot be read", expected, "");
        }
        return null;
    }

    private Node.Mapping object(int depth) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        List<Node.Entry> entries = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            JsonLocation key = parser.currentTokenLocation();
            Node.Scalar name = new Node.Scalar(parser.currentName(), true, false, key.getLineNr(), key.getColumnNr());
            parser.nextToken();
            entries.add(new Node.Entry(name, value(depth + 1)));
        }
        return new Node.Mapping(List.copyOf(entries), at.getLineNr(), at.getColumnNr());
    }

    private Node value(int depth) throws IOException {
        if (depth > YamlReader.DEEPEST) {
            throw new com.fasterxml.jackson.core.JsonParseException(parser, "too deep");
        }
        JsonLocation at = parser.currentTokenLocation();
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return object(depth);
        }
        if (token != JsonToken.START_ARRAY) {
            return new Node.Scalar(parser.getText(), token == JsonToken.VALUE_STRING, false, at.getLineNr(), at.getColumnNr());
        }
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(depth + 1));
        }
        return new Node.Sequence(List.copyOf(items), at.getLineNr(), at.getColumnNr());
    }
}
