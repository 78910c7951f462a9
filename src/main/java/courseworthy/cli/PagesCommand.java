package courseworthy.cli;

import courseworthy.render.MarkdownRenderer;
import courseworthy.report.CataloguePages;
import courseworthy.task.PagesTask;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a page for each topic and each measure. */
final class PagesCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder to make; it must be new or empty.");

    PagesCommand(Terminal terminal) {
        super("pages", terminal, "Writes a page for each topic and each measure, as Markdown: what it is, what rules say of it and why, and their cases.",
                "courseworthy pages handbook");
    }

    @Override
    public void run() {
        Map<String, String> pages = new LinkedHashMap<>();
        new CataloguePages(PagesTask.of(workspace())).pages().forEach((path, page) -> pages.put(path, new MarkdownRenderer().render(page)));
        PagesTask.write(workspace(), folder.value(), pages);
        print("Wrote " + pages.size() + " pages; begin with " + (folder.value().endsWith("/") ? folder.value() : folder.value() + "/") + "README.md\n");
    }
}
