package courseworthy.cli;

import courseworthy.render.MarkdownRenderer;
import courseworthy.render.Renderer;
import courseworthy.render.html.HtmlRenderer;
import courseworthy.report.CataloguePages;
import courseworthy.task.PageSet;
import courseworthy.task.PagesTask;
import java.util.List;

/** Writes a page for each topic, each measure and each rule. */
final class PagesCommand extends Command {

    private static final String MARKDOWN = "markdown";
    private static final String HTML = "html";

    private final SourceFunction<String> folder = parameter("DIR", "The folder to write: a new or an empty one, or one that this command wrote before.");
    private final SourceFunction<String> format = choice("--format", "FORMAT", "markdown (the default) or html.", List.of(MARKDOWN, HTML));

    PagesCommand(Terminal terminal) {
        super("pages", terminal, "Writes a page for each topic, each measure and each rule: what it is, what rules say of it and why, and their cases.",
                "courseworthy pages handbook",
                "courseworthy pages handbook --format html");
    }

    @Override
    public void run() {
        boolean html = format.value().equals(HTML);
        Renderer renderer = html ? new HtmlRenderer() : new MarkdownRenderer();
        String first = html ? "index.html" : "README.md";
        PageSet pages = PageSet.ofCatalogue();
        pages.check(workspace(), folder.value());
        new CataloguePages(PagesTask.of(workspace()), first, html ? ".html" : ".md").pages().forEach((path, page) -> pages.add(path, renderer.render(page)));
        pages.write(workspace(), folder.value());
        print("Wrote " + pages.size() + " pages; begin with " + (folder.value().endsWith("/") ? folder.value() : folder.value() + "/") + first + "\n");
    }
}
