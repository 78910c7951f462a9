package courseworthy.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every refusal of a reader has a test. In each {@code *Reader.java} the last two arguments of a call that adds a fault, what is expected and how
 * to mend it, are taken apart into the texts written there, or in a constant of that file; each text must stand in a test. Of texts under
 * {@value #SHORT} characters, which may stand anywhere, what is expected must stand behind the word itself.
 *
 * <p>Not judged: texts handed in from elsewhere (a range of {@code FieldReader.amount}, words of a list, the message of an exception, an argument of
 * the method), what {@code FieldReader} is told to expect of a missing key, and whether the test that has a text also asserts it.
 */
class RefusalsTest {

    private static final Path MAIN = Path.of("src", "main", "java");
    private static final Path TESTS = Path.of("src", "test");
    private static final Pattern ADDS = Pattern.compile("(?:faults\\.add|own\\.add|\\bfault|\\brefuse|Fault\\.of|Fault\\.warning|new Refused)\\(");
    private static final Pattern DECLARED = Pattern.compile("^(?:String|Node|Event|int|FieldReader|Node\\.Scalar) \\w+$");
    private static final Pattern CONSTANT = Pattern.compile("static final String (\\w+) = (\"[^;]*\");");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
    private static final int SHORT = 12;

    /** Comes of a file that vanishes or is locked between two looks at it. */
    private static final Set<String> NOT_TO_BE_BROUGHT_ABOUT = Set.of("Check its permissions.");

    @Test
    void everyRefusalOfAReaderStandsInATest() throws IOException {
        String tests = tests();
        List<String> missing = new ArrayList<>();
        int texts = 0;
        for (Path reader : files(MAIN, "Reader.java")) {
            for (String text : texts(Files.readString(reader))) {
                texts++;
                if (!tests.contains(text) && !NOT_TO_BE_BROUGHT_ABOUT.contains(text)) {
                    missing.add(reader.getFileName() + ": " + text);
                }
            }
        }
        assertThat(texts).isGreaterThan(250);
        assertThat(missing).as("write a test that brings the refusal about and asserts all that is said").isEmpty();
    }

    /** What the scan takes from a reader, on one written for it. */
    @Test
    void textsAreTakenFromWhatAddsAFault() {
        assertThat(texts("""
                private static final String RANGE = "a mass from 1 kg "
                        + "to 2 kg";
                void read() {
                    fault("mass", node.describe(), RANGE, many ? "" : "Weigh it (again), please.");
                    faults.add(shown, 1, "mass", "a, b", "one of: " + String.join(", ", words), Spelling.didYouMean(text, words));
                    faults.add(Fault.warning(shown, 1, "mass", "1 g", "more", "Add \\"kg\\"."));
                }
                private void fault(String key, String found, String expected, String mend) {
                }
                """)).containsExactly("a mass from 1 kg to 2 kg", "Weigh it (again), please.", "expected one of: ", "expected more", "Add \"kg\".");
    }

    private static List<String> texts(String source) {
        Map<String, String> constants = new HashMap<>();
        for (Matcher found = CONSTANT.matcher(source); found.find();) {
            constants.put(found.group(1), found.group(2));
        }
        List<String> out = new ArrayList<>();
        for (Matcher found = ADDS.matcher(source); found.find();) {
            List<String> arguments = arguments(source, found.end());
            int count = arguments.size();
            if (count >= 4 && !DECLARED.matcher(arguments.get(0)).matches()) {
                String expected = arguments.get(count - 2);
                out.addAll(texts(constants.getOrDefault(expected, expected), "expected "));
                out.addAll(texts(arguments.get(count - 1), ""));
            }
        }
        return out;
    }

    /** The long texts of an expression; where it has none, the one it begins with, behind a word. */
    private static List<String> texts(String expression, String word) {
        List<String> all = new ArrayList<>();
        for (Matcher text = TEXT.matcher(JOINED.matcher(expression).replaceAll("")); text.find();) {
            all.add(text.group(1).replace("\\\"", "\""));
        }
        List<String> longer = all.stream().filter(text -> text.length() >= SHORT).toList();
        return !longer.isEmpty() || all.isEmpty() || all.get(0).isEmpty() ? longer : expression.startsWith("\"") ? List.of(word + all.get(0)) : List.of();
    }

    /** The arguments of a call, from behind its opening parenthesis. */
    private static List<String> arguments(String source, int from) {
        List<String> out = new ArrayList<>();
        int depth = 1;
        int start = from;
        for (int at = from; depth > 0; at++) {
            char here = source.charAt(at);
            if (here == '"' || here == '\'') {
                at = closing(source, at);
            } else if (here == '(' || here == '{' || here == '[') {
                depth++;
            } else if (here == ')' || here == '}' || here == ']') {
                depth--;
            }
            if (depth == 0 || here == ',' && depth == 1) {
                out.add(source.substring(start, at).strip());
                start = at + 1;
            }
        }
        return out;
    }

    private static int closing(String source, int open) {
        int at = open + 1;
        while (source.charAt(at) != source.charAt(open)) {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        return at;
    }

    /** All test sources but this one and all test resources, texts in pieces joined. */
    private static String tests() throws IOException {
        StringBuilder out = new StringBuilder();
        for (Path file : files(TESTS, "")) {
            if (!file.endsWith("RefusalsTest.java")) {
                out.append(JOINED.matcher(text(file)).replaceAll("").replace("\\\"", "\"")).append('\n');
            }
        }
        return out.toString();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (java.nio.charset.MalformedInputException notText) {
            return "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending) && Files.isRegularFile(file)).sorted().toList();
        }
    }
}
