package courseworthy.text;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
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
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * Reads one YAML file into a tree, walking the parser's events so that raw text, quoting and lines are kept and nothing is coerced.
 * Refuses anchors, aliases, tags, merge keys, duplicate keys, several documents, complex keys, empty values, files over 1 MB (or as the kind of file has it) and
 * nesting deeper than 20; collects what it refuses. Text that is not YAML at all, or too deep, ends the reading where it stands.
 */
public final class YamlReader {

    /** Largest file read, in bytes. */
    public static final int MOST_BYTES = 1_000_000;

    private static final int MEGABYTE = 1_000_000;

    /** Deepest nesting read. */
    public static final int DEEPEST = 20;

    /** After so many refusals the rest of the file is left unread: nobody mends more at one sitting. */
    static final int MOST_REFUSALS = 100;

    private static final int MOST_MENDED = 20;

    private final String file;
    private final int[] points;
    private final int lastLine;
    private final CodePoints characters;
    private final ParserImpl events;
    private final Faults faults;
    private int refusals;
    /** The line in which {@code ": "} inside a text ended the reading; 0 for none. */
    private int colonAt;

    private YamlReader(String file, String text, Faults faults) {
        this.file = file;
        this.points = codePoints(text);
        this.lastLine = lineAt(points, points.length);
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(Integer.MAX_VALUE);
        options.setCodePointLimit(Integer.MAX_VALUE);
        this.characters = new CodePoints(points);
        this.events = new ParserImpl(characters, options);
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
        return read(path, shown, MOST_BYTES, faults);
    }

    /**
     * Reads a file as {@link #read(Path, String, Faults)} does, of another kind of size.
     *
     * @param most largest file read, in bytes: whole millions
     */
    public static Node.Mapping read(Path path, String shown, int most, Faults faults) {
        byte[] bytes = bytes(path, shown, most, faults);
        return bytes == null ? null : read(bytes, shown, most, faults);
    }

    /**
     * The bytes of a file, one more than the largest read where it is larger.
     *
     * @param most largest file read, in bytes
     * @return null where it cannot be read; the faults say why
     */
    public static byte[] bytes(Path path, String shown, int most, Faults faults) {
        faults.reads(path);
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(most + 1);
        } catch (NoSuchFileException e) {
            faults.add(MissingFile.fault(path, shown, "a file that can be read"));
            return null;
        } catch (IOException e) {
            faults.add(shown, 0, "", Files.isDirectory(path) ? "a folder" : "a file that cannot be read", "a file that can be read",
                    "Check the path and its permissions.");
            return null;
        }
    }

    /** Reads bytes as {@link #read(Path, String, Faults)} reads a file. */
    public static Node.Mapping read(byte[] bytes, String shown, Faults faults) {
        return read(bytes, shown, MOST_BYTES, faults);
    }

    /** Reads bytes as {@link #read(Path, String, int, Faults)} reads a file. */
    public static Node.Mapping read(byte[] bytes, String shown, int most, Faults faults) {
        return read(bytes, shown, most, faults, looks -> { });
    }

    /** @param looks told how many characters the parser looked at, each as often as it was, at every reading of the text */
    static Node.Mapping read(byte[] bytes, String shown, int most, Faults faults, LongConsumer looks) {
        if (bytes.length > most) {
            String size = most / MEGABYTE + " MB";
            faults.add(shown, 0, "", "a file over " + size, "at most " + size, "Split it into several files.");
            return null;
        }
        String text = decode(bytes, shown, faults);
        return text == null || strange(text, shown, faults) ? null : document(text, shown, faults, looks);
    }

    /** Reads on past lines whose only trouble is an unquoted {@code ": "}, so that the faults behind them are found as well. */
    private static Node.Mapping document(String text, String shown, Faults faults, LongConsumer looks) {
        String readable = text;
        for (int mended = 0; ; mended++) {
            YamlReader yaml = new YamlReader(shown, readable, faults);
            Node.Mapping tree = yaml.document();
            looks.accept(yaml.characters.looks());
            String next = yaml.colonAt == 0 || mended == MOST_MENDED ? null : quoted(readable, yaml.colonAt);
            if (next == null) {
                return tree;
            }
            readable = next;
        }
    }

    /** The text with the value in a line put in quotes, or null where that line has no such value. */
    private static String quoted(String text, int line) {
        int from = 0;
        for (int i = 1; i < line; i++) {
            from = text.indexOf('\n', from) + 1;
        }
        int to = text.indexOf('\n', from);
        to = to < 0 ? text.length() : to;
        int value = text.indexOf(": ", from) + 2;
        if (value < 2 || value >= to || text.indexOf(": ", value) < 0 || text.indexOf(": ", value) >= to) {
            return null;
        }
        return text.substring(0, value) + "'" + text.substring(value, to).replace("'", "''") + "'" + text.substring(to);
    }

    /** Line ends that only some programs count would put every later line number in doubt. */
    private static boolean strange(String text, String shown, Faults faults) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\u0085' || c == '\u2028' || c == '\u2029') {
                faults.add(shown, lineAt(codePoints(text), i), "", "a character that YAML does not allow (" + hex(c) + ")",
                        "printable text", "Remove the character.");
                return true;
            }
        }
        return false;
    }

    static String decode(byte[] bytes, String shown, Faults faults) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(in, out, true);
        out.flip();
        if (result.isError()) {
            faults.add(shown, lineAt(codePoints(out.toString()), Integer.MAX_VALUE), "", "bytes that are not UTF-8 text",
                    "a text file in UTF-8", "Save the file as UTF-8 text.");
            return null;
        }
        String text = out.toString();
        return (text.startsWith("\uFEFF") ? text.substring(1) : text).replace("\r\n", "\n").replace('\r', '\n');
    }

    /** The text as the parser counts it, so that its marks can be looked up. */
    private static int[] codePoints(String text) {
        int[] out = new int[text.codePointCount(0, text.length())];
        for (int i = 0, at = 0; i < out.length; i++) {
            out[i] = text.codePointAt(at);
            at += Character.charCount(out[i]);
        }
        return out;
    }

    /** The 1-based line of an index. */
    private static int lineAt(int[] points, int index) {
        int line = 1;
        for (int i = 0; i < Math.min(index, points.length); i++) {
            if (points[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    private Node.Mapping document() {
        try {
            return top();
        } catch (YAMLException e) {
            notYaml(e);
        } catch (Unreadable e) {
            // What stopped the reading is among the faults.
        }
        return null;
    }

    private void notYaml(YAMLException e) {
        try {
            if (e instanceof MarkedYAMLException marked) {
                malformed(marked);
            } else if (e instanceof ReaderException strange) {
                faults.add(file, lineAt(points, strange.getPosition()), "", "a character that YAML does not allow (" + hex(strange.getCodePoint())
                        + ")", "printable text", "Remove the control character.");
            } else {
                faults.add(file, 0, "", "text that is not YAML", "\"key: value\" lines with even indenting", "");
            }
        } catch (Unreadable last) {
            // It was the last fault that is taken.
        }
    }

    private static String hex(int codePoint) {
        String digits = Integer.toHexString(codePoint).toUpperCase(java.util.Locale.ROOT);
        return "U+" + "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }

    /** Ends a reading that cannot go on. */
    private static final class Unreadable extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Unreadable() {
            super(null, null, false, false);
        }
    }

    private void fault(int line, String field, String found, String expected, String mend) {
        faults.add(file, line, field, found, expected, mend);
        refusals++;
        if (refusals == MOST_REFUSALS) {
            faults.add(file, line, "", "the " + MOST_REFUSALS + "th fault", "fewer", "Mend these first; the rest of the file was not read.");
            throw new Unreadable();
        }
    }

    private Node.Mapping top() {
        Node root = null;
        int documents = 0;
        while (!(events.peekEvent() instanceof StreamEndEvent)) {
            Event event = events.getEvent();
            if (event instanceof DocumentStartEvent) {
                documents++;
                if (documents == 2) {
                    fault(line(event), "---", "a second document", "one document in a file", "Put it in a file of its own.");
                    break;
                }
                root = node(1);
            }
        }
        if (root == null || root instanceof Node.Scalar text && text.text().isEmpty() && !text.quoted()) {
            fault(0, "", "an empty file", "a block of keys", "Write at least one \"key: value\" line.");
            return null;
        }
        if (root instanceof Node.Mapping mapping) {
            return mapping;
        }
        fault(root.line(), "", root.describe(), "a block of keys at the top of the file", "");
        return null;
    }

    private Node node(int depth) {
        Event event = events.getEvent();
        if (event instanceof NodeEvent marked && !(event instanceof AliasEvent) && marked.getAnchor() != null) {
            refuse(event, "&" + marked.getAnchor(), "an anchor");
        }
        if (depth > DEEPEST) {
            fault(line(event), "", "nesting deeper than " + DEEPEST, "at most " + DEEPEST + " levels", "");
            throw new Unreadable();
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
            notEmpty(item, "a list item", "Write the item, or remove its dash or comma.");
            items.add(item);
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
                entry(entries, seen, name, value);
            } else {
                fault(key.line(), "", "a key that is " + key.describe(), "a plain word or words as key", "");
            }
        }
        events.getEvent();
        return new Node.Mapping(List.copyOf(entries), line(start), column(start));
    }

    private void entry(List<Node.Entry> entries, Map<String, Integer> seen, Node.Scalar key, Node value) {
        String name = key.text();
        if (name.isEmpty()) {
            fault(key.line(), "", "a value without a key", "a plain word or words before the colon", "");
            return;
        }
        if (name.equals("<<") && !key.quoted()) {
            fault(key.line(), "<<", "a merge key", "plain keys", "Write the keys out where they apply.");
            return;
        }
        Integer first = seen.putIfAbsent(name, key.line());
        if (first != null) {
            fault(key.line(), name, "the key a second time", "each key once", "It first stands in line " + first + ".");
            return;
        }
        notEmpty(value, name, Faults.EMPTY);
        entries.add(new Node.Entry(key, value));
    }

    private void notEmpty(Node value, String name, String mend) {
        if (value instanceof Node.Scalar text && text.text().isEmpty()) {
            fault(value.line(), name, Faults.NOTHING, Faults.ANY_VALUE, mend);
        }
    }

    private void tag(Event event, String tag) {
        if (tag != null) {
            refuse(event, "!" + tag.substring(tag.lastIndexOf(':') + 1).replace("!", ""), "a tag");
        }
    }

    private void refuse(Event event, String found, String what) {
        fault(line(event), "", what + " \"" + found + "\"", "plain text, lists and keys",
                "Quote the text if it should start with this character.");
    }

    /** Puts what the parser could not read in the words of someone who writes such files. */
    private void malformed(MarkedYAMLException e) {
        String problem = String.valueOf(e.getProblem());
        String around = String.valueOf(e.getContext());
        int here = line(e.getProblemMark());
        int start = e.getContextMark() == null ? here : line(e.getContextMark());
        if (problem.contains("mapping values are not allowed")) {
            colonAt = here;
            fault(here, "", "\": \" inside a text", "text with \": \" in quotes",
                    "Put the whole text in double quotes; or, if this line is a key of its own, indent it like its neighbours.");
        } else if (problem.contains("(TAB)")) {
            fault(here, "", "a tab", "spaces for indenting", "Indent with spaces.");
        } else if (problem.contains("cannot start any token") || around.contains("alias") || around.contains("anchor")) {
            fault(here, "", "a text that starts with a sign YAML keeps for itself", "such text in quotes",
                    "Put the whole text in double quotes.");
        } else if (around.contains("quoted scalar") && problem.contains("end of stream")) {
            fault(start, "", "a quote that never closes", "a closing quote", "Close the quote.");
        } else if (problem.contains("unknown escape")) {
            fault(here, "", "a backslash that YAML cannot read", "text with backslashes in single quotes", "Use single quotes.");
        } else if (around.contains("flow") && problem.endsWith("got [")) {
            fault(here, "", "a \"[\" after a text between brackets", "a list alone, or the whole text in quotes",
                    "Write the list alone, such as \"key: [a, b]\", or put the whole text in double quotes.");
        } else if (around.contains("flow")) {
            fault(start, "", "a bracket that never closes, or a comma missing in it", "items between brackets, with commas",
                    "Close the bracket, and put a comma between items.");
        } else if (problem.contains("could not find expected ':'") || problem.contains("expected '<document start>'")) {
            fault(start, "", "a line without \": \"", "\"key: value\"", "Write a colon and a space between key and value.");
        } else if (problem.contains("sequence entries are not allowed")) {
            fault(here, "", "a list item after its key", "each item on a line of its own", "Start the list on the next line.");
        } else if (problem.contains("but found '<scalar>'")) {
            fault(here, "", "text after a closed quote", "one text as value", "Put the whole text in one pair of quotes.");
        } else if (around.contains("block mapping") || around.contains("block collection")) {
            fault(here, "", "a line that does not fit the lines above", "\"key: value\" lines with even indenting",
                    "Give keys that belong together the same indenting.");
        } else {
            fault(here, "", "text that is not YAML (" + oneLine(problem) + ")", "\"key: value\" lines with even indenting",
                    "Check indenting, quotes and brackets in this line and the one above.");
        }
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").trim();
    }

    /** Whether a comment follows an unquoted scalar on its last line. */
    private boolean cutAfter(ScalarEvent event) {
        int at = event.getEndMark().getIndex();
        int from = at;
        while (at < points.length && (points[at] == ' ' || points[at] == '\t')) {
            at++;
        }
        return at > from && at < points.length && points[at] == '#';
    }

    private static int line(Event event) {
        return event.getStartMark().getLine() + 1;
    }

    private int line(Mark mark) {
        return mark == null ? 0 : Math.min(mark.getLine() + 1, lastLine);
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
