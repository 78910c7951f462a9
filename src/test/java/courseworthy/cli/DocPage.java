package courseworthy.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A Markdown page of the docs, with its fenced blocks. */
final class DocPage {

    private static final Pattern COMMENT = Pattern.compile("<!-- (.*) -->");

    private final Path file;
    private final List<String> lines;
    private final List<Block> blocks = new ArrayList<>();
    private final TreeMap<Integer, List<String>> replacements = new TreeMap<>();

    private DocPage(Path file, List<String> lines) {
        this.file = file;
        this.lines = lines;
    }

    /**
     * A fenced block.
     *
     * @param language what stands after the opening fence
     * @param comment  the HTML comment right above it, empty where there is none
     * @param first    index of its first line in the page, after the opening fence
     * @param follows  whether nothing but blank lines and a comment lies between it and the block before
     */
    record Block(String language, String comment, int first, List<String> lines, boolean follows) {

        /** What follows a word and a colon in the comment, such as the reason after {@code not run}; null where the word is not there. */
        String note(String word) {
            return comment.startsWith(word + ": ") ? comment.substring(word.length() + 2) : null;
        }
    }

    /** README and every page under {@code docs}, in the order of their paths. */
    static List<Path> all() throws IOException {
        try (Stream<Path> pages = Stream.concat(Stream.of(Path.of("README.md")), Files.walk(Path.of("docs")))) {
            return pages.filter(page -> page.toString().endsWith(".md")).sorted().toList();
        }
    }

    static DocPage read(Path file) throws IOException {
        DocPage page = new DocPage(file, Files.readAllLines(file));
        page.split();
        return page;
    }

    private void split() {
        String comment = "";
        boolean follows = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Matcher remark = COMMENT.matcher(line);
            if (line.startsWith("```")) {
                int end = i + 1 + lines.subList(i + 1, lines.size()).indexOf("```");
                if (end == i) {
                    throw new AssertionError(place(i) + ": a block that never ends");
                }
                blocks.add(new Block(line.substring(3), comment, i + 1, List.copyOf(lines.subList(i + 1, end)), follows));
                i = end;
                comment = "";
                follows = true;
            } else if (remark.matches()) {
                comment = remark.group(1);
            } else if (!line.isBlank()) {
                comment = "";
                follows = false;
            }
        }
    }

    List<Block> blocks() {
        return blocks;
    }

    List<String> lines() {
        return lines;
    }

    /** The page outside its fenced blocks. */
    String prose() {
        List<String> out = new ArrayList<>(lines);
        for (Block block : blocks) {
            for (int i = block.first() - 1; i <= block.first() + block.lines().size(); i++) {
                out.set(i, "");
            }
        }
        return String.join("\n", out);
    }

    String place(int line) {
        return file + ":" + (line + 1);
    }

    void replace(Block block, List<String> with) {
        replacements.put(block.first(), with);
    }

    /** Writes the page with the blocks that were replaced, if any. */
    void save() throws IOException {
        if (replacements.isEmpty()) {
            return;
        }
        List<String> out = new ArrayList<>(lines);
        for (Integer first : replacements.descendingKeySet()) {
            int end = first + lines.subList(first, lines.size()).indexOf("```");
            out.subList(first, end).clear();
            out.addAll(first, replacements.get(first));
        }
        Files.writeString(file, String.join("\n", out) + "\n");
    }
}
