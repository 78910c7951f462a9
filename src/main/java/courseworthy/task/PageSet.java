package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * Pages that are written into one folder together. They are kept compressed until then, so that some hundred of them need little memory; they may
 * be added by several threads.
 */
public final class PageSet {

    private final PageManifest manifest;
    private final Map<String, byte[]> pages = new TreeMap<>();
    private int beside;

    private PageSet(PageManifest manifest) {
        this.manifest = manifest;
    }

    /** The pages of a season. */
    public static PageSet ofSeason() {
        return new PageSet(new PageManifest("season-pages.sha256"));
    }

    /** The briefs of a roster. */
    public static PageSet ofRoster() {
        return new PageSet(new PageManifest("roster-briefs.sha256"));
    }

    /** The pages of the catalogue. */
    public static PageSet ofCatalogue() {
        return new PageSet(new PageManifest("catalogue-pages.sha256"));
    }

    /**
     * The folder of pages of the catalogue that a page is to refer to.
     *
     * @param option where it was typed
     * @throws BadInput where there are none
     */
    public static Path catalogue(Workspace workspace, String option, String typed) {
        Path folder = workspace.path(typed);
        if (!Files.isRegularFile(folder.resolve(ofCatalogue().manifest.name())) || !Files.isRegularFile(folder.resolve("index.html"))) {
            throw new BadInput(Fault.of(option, 0, "", "\"" + typed + "\"", "a folder that \"courseworthy pages --format html\" wrote", ""));
        }
        return folder;
    }

    /** @param path in the folder, with slashes */
    public void add(String path, String page) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater fast = new Deflater(Deflater.BEST_SPEED);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, fast)) {
            out.write(page.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            fast.end();
        }
        synchronized (pages) {
            if (pages.put(path, packed.toByteArray()) != null) {
                throw new IllegalArgumentException("two pages at " + path);
            }
        }
    }

    /**
     * Adds what is no page, to be written along with them.
     *
     * @param path in the folder, with slashes
     */
    public void addBeside(String path, String text) {
        add(path, text);
        synchronized (pages) {
            beside++;
        }
    }

    /** How many pages there are, not counting the files beside them. */
    public int size() {
        return pages.size() - beside;
    }

    /**
     * To be asked before anything is worked out.
     *
     * @param typed the folder as the user typed it
     * @throws BadInput where the pages may not be written there
     */
    public void check(Workspace workspace, String typed) {
        Path folder = workspace.path(typed);
        workspace.mayWriteOver(folder, typed);
        NewFolder.check(folder, typed, manifest);
    }

    /**
     * Writes all pages, or none: into a new or an empty folder, or over pages that were written by this before and that nobody has changed since.
     *
     * @throws BadInput where that may not be
     * @throws OutputFailure where writing fails; the folder is then as it was before
     */
    public void write(Workspace workspace, String typed) {
        Path folder = workspace.path(typed);
        workspace.mayWriteOver(folder, typed);
        NewFolder.write(folder, typed, this::fill, manifest);
    }

    private void fill(Path into) throws IOException {
        StringBuilder list = new StringBuilder();
        for (Map.Entry<String, byte[]> page : pages.entrySet()) {
            byte[] text = new InflaterInputStream(new ByteArrayInputStream(page.getValue())).readAllBytes();
            Path file = into.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, text);
            list.append(PageManifest.line(page.getKey(), text));
        }
        Files.writeString(into.resolve(manifest.name()), list);
    }
}
