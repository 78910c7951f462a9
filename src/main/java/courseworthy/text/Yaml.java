package courseworthy.text;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.events.StreamEndEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads one YAML file into a tree, walking the parser's events so that raw text, quoting and lines are kept and nothing is coerced.
 * Refuses anchors, aliases, tags, merge keys, duplicate keys, several documents, complex keys, empty values, files over 1 MB and
 * nesting deeper than 20; collects what it refuses.
 */
public final class Yaml {

    /** Largest file read, in bytes. */
    public static final int MOST_BYTES = 1_000_000;

    /** Deepest nesting read. */
    public static final int DEEPEST = 20;

    private final String file;
    private final String[] lines;
    private final ParserImpl events;
    private final Faults faults;

    private Yaml(String file, String text, Faults faults) {
        this.file = file;
        this.lines = text.split("\n", -1);
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(Integer.MAX_VALUE);
        options.setCodePointLimit(Integer.MAX_VALUE);
        this.events = new ParserImpl(new StreamReader(new StringReader(text)), options);
        this.faults = faults;
    }

    /**
     * Reads a file whose top is a block of keys.
     *
     * @param path  where it lies
     * @param shown its path as the user typed it, for messages
     * @return the tree, or null where nothing could be read; the faults say why
     */
    public static Node.Mapping read(Path path, String shown, Faults faults) {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (java.nio.file.NoSuchFileException e) {
            faults.add(shown, 0, "", "no such file", "a file that can be read", "Check the spelling of the path.");
            return null;
        } catch (IOException e) {
            faults.add(shown, 0, "", Files.isDirectory(path) ? "a folder" : "a file that cannot be read", "a file that can be read",
                    "Check the path and its permissions.");
            return null;
        }
        return read(bytes, shown, faults);
    }

    /** Reads bytes as {@link #read(Path, String, Faults)} reads a file. */
    public static Node.Mapping read(byte[] bytes, String shown, Faults faults) {
        if (bytes.length > MOST_BYTES) {
            faults.add(shown, 0, "", "a file over 1 MB", "at most 1 MB", "Split it into several files.");
            return null;
        }
        String text = decode(bytes, shown, faults);
        return text == null ? null : new Yaml(shown, text, faults).document();
    }

    private static String decode(byte[] bytes, String shown, Faults faults) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
            return (text.startsWith("\uFEFF") ? text.substring(1) : text).replace("\r\n", "\n");
        } catch (CharacterCodingException e) {
            faults.add(shown, 0, "", "bytes that are not UTF-8 text", "a text file in UTF-8", "Save the file as UTF-8 text.");
            return null;
        }
    }

    private Node.Mapping document() {
        try {
            return top();
        } catch (MarkedYAMLException e) {
            malformed(e);
        } catch (YAMLException e) {
            faults.add(file, 0, "", "a character that YAML does not allow", "printable text", "Remove control characters.");
        }
        return null;
    }

    private Node.Mapping top() {
        Node root = null;
        int documents = 0;
        while (!(events.peekEvent() instanceof StreamEndEvent)) {
            Event event = events.getEvent();
            if (event instanceof DocumentStartEvent) {
                documents++;
                if (documents == 2) {
                    faults.add(file, line(event), "---", "a second document", "one document in a file", "Put it in a file of its own.");
                    break;
                }
                root = node(1);
            }
        }
        if (root == null) {
            faults.add(file, 0, "", "an empty file", "a block of keys", "Write at least one \"key: value\" line.");
            return null;
        }
        if (root instanceof Node.Mapping mapping) {
            return mapping;
        }
        faults.add(file, root.line(), "", root.describe(), "a block of keys at the top of the file", "");
        return null;
    }

    private Node node(int depth) {
        Event event = events.getEvent();
        if (event instanceof NodeEvent marked && !(event instanceof AliasEvent) && marked.getAnchor() != null) {
            refuse(event, "&" + marked.getAnchor(), "an anchor");
        }
        if (depth == DEEPEST + 1) {
            faults.add(file, line(event), "", "nesting deeper than " + DEEPEST, "at most " + DEEPEST + " levels", "");
        }
        if (event instanceof AliasEvent alias) {
            refuse(event, "*" + alias.getAnchor(), "an alias");
            return new Node.Scalar("*" + alias.getAnchor(), true, false, line(event), column(event));
        }
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        if (event instanceof SequenceStartEvent start) {
            tag(start, start.getTag());
            return sequence(start, depth);
        }
        MappingStartEvent start = (MappingStartEvent) event;
        tag(start, start.getTag());
        return mapping(start, depth);
    }

    private Node.Scalar scalar(ScalarEvent event) {
        tag(event, event.getTag());
        boolean plain = event.getScalarStyle() == ScalarStyle.PLAIN;
        return new Node.Scalar(event.getValue(), !plain, plain && cutAfter(event), line(event), column(event));
    }

    private Node.Sequence sequence(SequenceStartEvent start, int depth) {
        List<Node> items = new ArrayList<>();
        while (!(events.peekEvent() instanceof SequenceEndEvent)) {
            Node item = node(depth + 1);
            notEmpty(item, "a list item");
            if (depth <= DEEPEST) {
                items.add(item);
            }
        }
        events.getEvent();
        return new Node.Sequence(List.copyOf(items), line(start), column(start));
    }

    private Node.Mapping mapping(MappingStartEvent start, int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        while (!(events.peekEvent() instanceof MappingEndEvent)) {
            Node key = node(depth + 1);
            Node value = node(depth + 1);
            if (key instanceof Node.Scalar name) {
                entry(entries, seen, name, value, depth);
            } else {
                faults.add(file, key.line(), "", "a key that is " + key.describe(), "a plain word or words as key", "");
            }
        }
        events.getEvent();
        return new Node.Mapping(List.copyOf(entries), line(start), column(start));
    }

    private void entry(List<Node.Entry> entries, Map<String, Integer> seen, Node.Scalar key, Node value, int depth) {
        String name = key.text();
        if (name.equals("<<") && !key.quoted()) {
            faults.add(file, key.line(), "<<", "a merge key", "plain keys", "Write the keys out where they apply.");
            return;
        }
        Integer first = seen.putIfAbsent(name, key.line());
        if (first != null) {
            faults.add(file, key.line(), name, "the key a second time", "each key once", "It first stands in line " + first + ".");
            return;
        }
        notEmpty(value, name);
        if (depth <= DEEPEST) {
            entries.add(new Node.Entry(key, value));
        }
    }

    private void notEmpty(Node value, String name) {
        if (value instanceof Node.Scalar text && text.text().isEmpty()) {
            faults.add(file, value.line(), name, "nothing", "a value", "Write the value after the colon, or remove the line.");
        }
    }

    private void tag(Event event, String tag) {
        if (tag != null) {
            refuse(event, "!" + tag.substring(tag.lastIndexOf(':') + 1).replace("!", ""), "a tag");
        }
    }

    private void refuse(Event event, String found, String what) {
        faults.add(file, line(event), "", what + " \"" + found + "\"", "plain text, lists and keys",
                "Quote the text if it should start with this character.");
    }

    private void malformed(MarkedYAMLException e) {
        Mark mark = e.getProblemMark();
        int line = mark == null ? 0 : Math.min(mark.getLine() + 1, lines.length);
        String problem = String.valueOf(e.getProblem());
        if (problem.contains("mapping values are not allowed")) {
            faults.add(file, line, "", "\": \" inside a text", "text with \": \" in quotes", "Put the whole text in double quotes.");
        } else if (problem.contains("\\t") || problem.contains("'\t") || problem.contains("(TAB)")) {
            faults.add(file, line, "", "a tab", "spaces for indenting", "Indent with spaces.");
        } else {
            faults.add(file, line, "", "text that is not YAML (" + oneLine(problem) + ")", "\"key: value\" lines with even indenting",
                    "Check indenting, quotes and brackets in this line and the one above.");
        }
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").trim();
    }

    /** Whether a comment follows an unquoted scalar on its last line. */
    private boolean cutAfter(ScalarEvent event) {
        Mark end = event.getEndMark();
        if (end.getLine() >= lines.length) {
            return false;
        }
        String rest = lines[end.getLine()];
        int from = Math.min(rest.offsetByCodePoints(0, Math.min(end.getColumn(), rest.codePointCount(0, rest.length()))), rest.length());
        return rest.substring(from).matches("\\s+#.*");
    }

    private static int line(Event event) {
        return event.getStartMark().getLine() + 1;
    }

    private static int column(Event event) {
        return event.getStartMark().getColumn() + 1;
    }

    /** A warning that a text may have been cut by a comment. */
    static Fault cut(String file, Node.Scalar text, String field) {
        return Fault.warning(file, text.line(), field, text.describe() + " followed by \" #\"", "the whole text",
                "What follows \" #\" is a comment; quote the text if it belongs to it.");
    }
}
