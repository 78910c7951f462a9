package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.cli.DocPage.Block;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import picocli.CommandLine;

/**
 * What README and docs show is true: commands run, with the output shown; files and parts of files can be read; links lead somewhere. A block
 * that is not run says why in a comment above it. {@code -Dcourseworthy.approve=true} rewrites the output shown, to be reviewed as a difference.
 */
class DocsTest {

    /** Has a test of its own, which runs each example as a sheet. */
    private static final Path CHECKED_APART = Path.of("docs", "reference", "sheet-check.md");
    private static final String LEFT_OUT = "...";
    private static final Pattern INLINE = Pattern.compile("`\\./courseworthy ([^`]*)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]*))?\\)");

    @TestFactory
    Stream<DynamicTest> examples() throws IOException {
        return DocPage.all().stream().filter(file -> !file.equals(CHECKED_APART))
                .map(file -> DynamicTest.dynamicTest(file.toString(), () -> check(file)));
    }

    private void check(Path file) throws IOException {
        DocPage page = DocPage.read(file);
        DocSandbox sandbox = DocSandbox.fresh();
        DocSandbox.Result last = null;
        for (Block block : page.blocks()) {
            String at = page.place(block.first());
            boolean run = block.note("not run") == null;
            switch (block.language()) {
                case "sh" -> last = run ? commands(block, sandbox, at) : null;
                case "yaml" -> {
                    assertThat(run ? faults(block, sandbox, at) : "").as(at).isEmpty();
                    last = null;
                }
                case "text" -> {
                    if (block.follows() && last != null) {
                        output(page, block, last, at);
                    }
                    last = null;
                }
                default -> assertThat(run).as(at + ": a block of a kind that no test runs").isFalse();
            }
        }
        page.save();
    }

    private static DocSandbox.Result commands(Block block, DocSandbox sandbox, String at) throws IOException {
        int expected = block.note("exit code") == null ? 0 : Integer.parseInt(block.note("exit code"));
        DocSandbox.Result last = null;
        for (String line : String.join("\n", block.lines()).replace("\\\n", " ").split("\n")) {
            assertThat(last == null ? 0 : last.code()).as(at).isZero();
            last = sandbox.run(line);
        }
        assertThat(last.code()).as(at + ": " + last.text()).isEqualTo(expected);
        return last;
    }

    /** A whole file begins with a comment that names it, and commands after it find it; a part of one has its kind in a comment above. */
    private static String faults(Block block, DocSandbox sandbox, String at) throws IOException {
        String part = block.note("part");
        if (part != null) {
            String whole = DocFileReader.whole(part, block.lines());
            assertThat(whole).as(at + ": a part that is not known: " + part).isNotNull();
            return DocFileReader.faults(sandbox.write("part.yaml", List.of(whole.split("\n"))));
        }
        String first = block.lines().get(0);
        assertThat(first).as(at + ": a whole file begins with its name, '# NAME.yaml'").matches("# [a-z0-9/.-]+\\.yaml");
        return DocFileReader.faults(sandbox.write(first.substring(2), block.lines()));
    }

    private static void output(DocPage page, Block block, DocSandbox.Result run, String at) {
        assertThat(block.lines()).as(at + ": a block that any output fits").anyMatch(line -> !line.equals(LEFT_OUT));
        List<String> found = run.text().lines().toList();
        boolean same = run.rewrapped() ? sameWords(block.lines(), run.text()) : matches(block.lines(), found);
        int shown = block.lines().indexOf(LEFT_OUT);
        boolean tailLeftOut = shown == block.lines().size() - 1;
        if (!same && Boolean.getBoolean("courseworthy.approve") && (shown < 0 || tailLeftOut)) {
            List<String> now = new ArrayList<>(tailLeftOut ? found.subList(0, Math.min(shown, found.size())) : found);
            if (tailLeftOut) {
                now.add(LEFT_OUT);
            }
            page.replace(block, now);
        } else {
            assertThat(same).as("%s: shown%n%s%nnow%n%s%nrun with -Dcourseworthy.approve=true where the change is meant, and mend by hand what is "
                    + "left out in the middle, and lines that a longer path has broken elsewhere", at, String.join("\n", block.lines()), run.text()).isTrue();
        }
    }

    /** Whether the words are those shown, wherever lines break. */
    private static boolean sameWords(List<String> shown, String found) {
        return matches(words(String.join("\n", shown)), words(found));
    }

    private static List<String> words(String text) {
        return List.of(text.strip().split("\\s+"));
    }

    /** Whether the lines are those shown, any number of them standing for each line that says they are left out. */
    static boolean matches(List<String> shown, List<String> found) {
        StringBuilder pattern = new StringBuilder();
        for (String each : shown) {
            pattern.append(each.equals(LEFT_OUT) ? "(?s:|.*?\n)" : Pattern.quote(each) + "\n");
        }
        StringBuilder text = new StringBuilder();
        found.forEach(each -> text.append(each).append('\n'));
        return Pattern.matches(pattern.toString(), text);
    }

    @Test
    void linesLeftOutAreAnyNumber() {
        List<String> found = List.of("a", "b", "c");
        assertThat(matches(List.of("a", "...", "c"), found)).isTrue();
        assertThat(matches(List.of("...", "c"), found)).isTrue();
        assertThat(matches(List.of("a", "..."), found)).isTrue();
        assertThat(matches(List.of("a", "c"), found)).isFalse();
        assertThat(matches(List.of("...", "b"), found)).isFalse();
        assertThat(matches(List.of("a", "b"), found)).isFalse();
    }

    /** Everything in the docs that no test runs, so that a block cannot be taken out of the tests unseen. */
    @Test
    void whatIsNotRunIsListed() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : DocPage.all()) {
            for (Block block : DocPage.read(file).blocks()) {
                if (block.note("not run") != null) {
                    found.add(file.getFileName() + ": " + block.note("not run"));
                }
            }
        }
        assertThat(found).containsExactlyInAnyOrder(
                "README.md: it would run this test",
                "how-to.md: the track is yours", "how-to.md: the recording is yours");
    }

    /** Commands in running text are not run, but their names and options are there. */
    @Test
    void commandsInTextAreThere() throws IOException {
        Set<String> wrong = new TreeSet<>();
        int seen = 0;
        for (Path file : DocPage.all()) {
            Matcher command = INLINE.matcher(DocPage.read(file).prose());
            while (command.find()) {
                seen++;
                if (!known(DocSandbox.words(command.group(1)))) {
                    wrong.add(file + ": " + command.group(1));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(seen).isGreaterThan(10);
    }

    private static boolean known(List<String> words) {
        CommandLine at = CommandRunner.withAllCommands();
        for (String word : words) {
            CommandLine sub = at.getSubcommands().get(word);
            if (word.startsWith("-") && at.getParent() != null && at.getCommandSpec().findOption(word) == null) {
                return false;
            }
            at = sub == null ? at : sub;
        }
        return at.getParent() != null || words.get(0).startsWith("-") || words.get(0).equals("COMMAND");
    }

    @Test
    void linksLeadSomewhere() throws IOException {
        Set<String> broken = new TreeSet<>();
        List<Path> pages = new ArrayList<>(DocPage.all());
        pages.add(Path.of("DEVELOPERS.md"));
        for (Path file : pages) {
            Matcher link = LINK.matcher(DocPage.read(file).prose());
            while (link.find()) {
                Path target = link.group(1).isEmpty() ? file : file.resolveSibling(link.group(1)).normalize();
                boolean there = link.group(1).contains("://") || Files.exists(target) && (link.group(2) == null || anchors(target).contains(link.group(2)));
                if (!there) {
                    broken.add(file + ": " + link.group());
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    /** The page for developers names types as they are. */
    @Test
    void typesThatDevelopersReadOfAreThere() throws IOException {
        Set<String> types = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src"))) {
            sources.map(path -> path.getFileName().toString()).filter(name -> name.endsWith(".java")).forEach(name -> types.add(name.replace(".java", "")));
        }
        Matcher named = Pattern.compile("`(?:[a-z]+\\.)?([A-Z]\\w*[a-z]\\w*)[.`]").matcher(DocPage.read(Path.of("DEVELOPERS.md")).prose());
        Set<String> missing = new TreeSet<>();
        while (named.find()) {
            if (!types.contains(named.group(1))) {
                missing.add(named.group(1));
            }
        }
        assertThat(missing).isEmpty();
        assertThat(types).contains("ReadmeTest");
    }

    /** The anchors of a page's headings, made as hosts of repositories make them: small letters, hyphens for spaces, no other signs. */
    private static Set<String> anchors(Path page) throws IOException {
        Set<String> out = new TreeSet<>();
        for (String line : DocPage.read(page).prose().split("\n")) {
            if (line.matches("#+ .*")) {
                String heading = line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT);
                out.add(heading.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'));
            }
        }
        return out;
    }

    /** Indented commands would be run by nobody; the README has one, which {@code ReadmeTest} runs. */
    @Test
    void commandsStandInBlocksThatAreRun() throws IOException {
        List<String> indented = new ArrayList<>();
        for (Path file : DocPage.all()) {
            for (String line : DocPage.read(file).prose().split("\n")) {
                if (line.startsWith("    ./courseworthy")) {
                    indented.add(file + ": " + line.strip());
                }
            }
        }
        assertThat(indented).singleElement().asString().startsWith("README.md: ./courseworthy brief ");
    }
}
