package courseworthy.task;

import courseworthy.course.CourseReader;
import courseworthy.debrief.DebriefReader;
import courseworthy.event.EventReader;
import courseworthy.event.SeasonReader;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.workshop.RideLogReader;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The kinds of file that people write, told apart by their keys, so that one in another's place is told of once and not key by key. */
enum FileKind {
    COURSE("a course", "", "Pass it first, after the command.", CourseReader.PROFILE_KEYS),
    RIDER("a rider's file", "--rider", "Pass it with --rider.", RiderReader.KEYS),
    EVENT("an event's file", "--event", "Pass it with --event.", EventReader.KEYS),
    WORKSHOP("a workshop", "--workshop", "Pass it with --workshop.", WorkshopReader.KEYS),
    SEASON("a season", null, "Its folder goes with: courseworthy season DIR", SeasonReader.KEYS),
    SHEET("a sheet of advice", "--sheet", "Pass it with --sheet.", List.of("sheet", "author", "version", "licence", "advice")),
    LOG("a log", null, "A workshop names it: log: FILE", RideLogReader.KEYS),
    DEBRIEF("a debrief", null, "Its file goes with: courseworthy debrief FILE", DebriefReader.KEYS);

    private static final String CASES = "cases for";
    /** So much of a file is looked at to tell its kind, bytes. */
    private static final int START = 64_000;

    /** So many keys of another kind that are not this one's, and the file is taken for one of that. */
    private static final int TELLING = 2;
    private static final String UNKNOWN = "an unknown key";

    private final String words;
    private final String option;
    private final String mend;
    private final List<String> keys;

    FileKind(String words, String option, String mend, List<String> keys) {
        this.words = words;
        this.option = option;
        this.mend = mend;
        this.keys = keys;
    }

    /**
     * The fault that a file is of another kind than is read behind an option.
     *
     * @param found  what is wrong with it as one of that kind
     * @param option empty for the course
     * @return null where its unknown keys do not tell
     */
    static Fault mistaken(List<Fault> found, String typed, String option) {
        FileKind meant = behind(option);
        FileKind most = taken(found, meant);
        return most == null ? null : Fault.of(typed, 0, "", most.words, meant.words, most.mend);
    }

    /** Takes over what is wrong with a file of one kind; where it is a file of another kind, that alone. */
    static void take(Faults own, String typed, FileKind meant, Faults to) {
        FileKind other = own.stop() ? taken(own.faults(), meant) : null;
        if (other == null) {
            to.addAll(own);
        } else {
            to.add(typed, 0, "", other.words, meant.words, other.mend);
        }
    }

    /** A sheet of advice; what is wrong with it goes to the faults. @param order its place among the sheets */
    static Sheet sheet(Path path, String typed, int order, Faults faults) {
        Faults own = new Faults();
        Sheet out = SheetReader.read(path, typed, order, own);
        take(own, typed, SHEET, faults);
        return out;
    }

    /** What kind a file is that was read as another; null where its unknown keys do not tell. */
    static FileKind taken(List<Fault> found, FileKind meant) {
        FileKind most = null;
        int keysOfIt = TELLING - 1;
        for (FileKind kind : values()) {
            int its = 0;
            for (Fault fault : found) {
                boolean unknown = fault.found().equals(UNKNOWN) && !meant.keys.contains(fault.field());
                its += unknown && kind.keys.contains(fault.field()) ? 1 : 0;
            }
            if (its > keysOfIt) {
                most = kind;
                keysOfIt = its;
            }
        }
        return most;
    }

    String words() {
        return words;
    }

    /**
     * The kind of a file that a person wrote, in words, told by its content and not by its name; null where it is none of them. One that is
     * damaged, as it is while somebody works on it, is still of its kind.
     */
    static String ofFile(Path path) {
        byte[] start;
        try (InputStream in = Files.newInputStream(path)) {
            start = in.readNBytes(START);
        } catch (IOException e) {
            return null;
        }
        if (start.length > 1 && (start[0] & 0xFF) == 0x1F && (start[1] & 0xFF) == 0x8B) {
            return "a packed file";
        }
        // Byte by byte, and without the noughts of UTF-16: the words looked for are plain in every encoding.
        String text = new String(start, StandardCharsets.ISO_8859_1).replace("\0", "");
        if (text.contains("<gpx") || text.contains(":gpx")) {
            return "a track";
        }
        if (SituationFile.isOne(path)) {
            return "a situation";
        }
        List<String> top = topKeys(text);
        return top.contains(CASES) ? "cases of a sheet" : ofKeys(top);
    }

    private static String ofKeys(List<String> top) {
        String most = null;
        int keysOfIt = top.size() / 2;
        for (FileKind kind : values()) {
            int its = 0;
            for (String key : top) {
                its += kind.keys.contains(key) ? 1 : 0;
            }
            if (its > keysOfIt) {
                most = kind.words;
                keysOfIt = its;
            }
        }
        return most;
    }

    /** What stands before the first colon of each line that is not indented, or of each key between braces; whatever else stands there counts as one. */
    private static List<String> topKeys(String text) {
        String body = text.startsWith("\u00ef\u00bb\u00bf") ? text.substring(3) : text;
        List<String> out = new ArrayList<>();
        for (String line : body.split("[\r\n]+")) {
            boolean none = line.isBlank() || "# \t-%}]".indexOf(line.charAt(0)) >= 0 || line.startsWith("...");
            if (!none && line.charAt(0) != '{') {
                out.add(key(line));
            }
        }
        return out.isEmpty() ? keysInBraces(body) : out;
    }

    /** The keys of the outermost braces, as JSON and YAML on one line have them; a file of the tool's own names its format and has none. */
    private static List<String> keysInBraces(String text) {
        List<String> out = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            if (c == '{' || c == ',') {
                from = i + 1;
            } else if (c == ':' && depth == 1 && from >= 0) {
                out.add(key(text.substring(from, i + 1).strip()));
                from = -1;
            }
        }
        return out.contains("format") || out.contains("$schema") ? List.of() : out;
    }

    private static String key(String line) {
        int colon = line.indexOf(':');
        return colon < 0 ? "" : line.substring(0, colon).strip().replace("\"", "").replace("'", "");
    }

    private static FileKind behind(String option) {
        for (FileKind kind : values()) {
            if (option.equals(kind.option)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(option);
    }
}
