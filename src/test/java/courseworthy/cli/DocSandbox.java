package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder in which the commands of one page are run in their order: what one writes the next may read. It begins with fresh copies of the
 * shipped courses and examples. Paths in the commands are taken to lie in it, and results are shown as if it were the working folder.
 */
final class DocSandbox {

    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");
    private static final Set<String> FILE_OPTIONS = Set.of("-o", "--output", "--event", "--rider", "--sheet", "--workshop", "--examples",
            "--riders", "--courses", "--events", "--each");
    /** Commands whose argument is a file or a folder that need not be there yet. */
    private static final Set<String> MAKERS = Set.of("new", "pages");

    private final Path folder;

    /**
     * What came of a line.
     *
     * @param text      what it wrote, standard error first
     * @param rewrapped whether it named files of the folder, whose longer paths have moved its line breaks
     */
    record Result(int code, String text, boolean rewrapped) {
    }

    private DocSandbox(Path folder) {
        this.folder = folder;
    }

    /** An empty folder of this run of Java with the copies in it. Its path is short, so that it moves few line breaks of what names a file. */
    static DocSandbox fresh() throws IOException {
        Path folder = Path.of("target", "d" + System.getProperty("courseworthy.fork", ""));
        if (Files.exists(folder)) {
            try (Stream<Path> old = Files.walk(folder)) {
                for (Path each : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
        copy(Path.of("course-profiles"), folder.resolve("course-profiles"));
        copy(Path.of("docs", "examples"), folder.resolve("docs/examples"));
        return new DocSandbox(folder);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                Files.createDirectories(target.getParent());
                Files.copy(each, target);
            }
        }
    }

    /** Writes a file of the page and returns where it lies. */
    Path write(String name, List<String> lines) throws IOException {
        Path file = inside(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, String.join("\n", lines) + "\n");
    }

    private Path inside(String name) {
        Path path = folder.resolve(name).normalize();
        assertThat(path).as("a path of the docs stays in the folder").startsWithRaw(folder);
        return path;
    }

    /** Runs one line of a shell block: a command of the tool, {@code mkdir} or {@code cp}. */
    Result run(String line) throws IOException {
        List<String> words = words(line);
        switch (words.get(0)) {
            case "./courseworthy" -> {
                return tool(words.subList(1, words.size()));
            }
            case "mkdir" -> {
                for (String each : words.subList(1, words.size())) {
                    Files.createDirectory(inside(each));
                }
            }
            case "cp" -> {
                Path to = inside(words.get(words.size() - 1));
                for (String each : words.subList(1, words.size() - 1)) {
                    Files.copy(inside(each), Files.isDirectory(to) ? to.resolve(Path.of(each).getFileName()) : to);
                }
            }
            default -> throw new AssertionError("neither the tool nor mkdir nor cp: " + line);
        }
        return new Result(0, "", false);
    }

    static List<String> words(String line) {
        List<String> out = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            out.add(word.group(1) != null ? word.group(1) : word.group(2) != null ? word.group(2) : word.group(3));
        }
        return out;
    }

    private Result tool(List<String> words) {
        List<String> args = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            String before = i == 0 ? "" : words.get(i - 1);
            boolean path = i > 0 && !word.startsWith("-") && (FILE_OPTIONS.contains(before) || MAKERS.contains(before) || Files.exists(folder.resolve(word)));
            args.add(path ? inside(word).toString() : word);
        }
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            CommandRun run = CommandRun.of(args.toArray(String[]::new));
            String text = run.err() + run.out();
            return new Result(run.code(), text.replace(folder + "/", ""), text.contains(folder.toString()));
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }
}
