package courseworthy.cli;

import courseworthy.render.MarkdownRenderer;
import courseworthy.render.Renderer;
import courseworthy.render.TerminalRenderer;
import courseworthy.render.html.HtmlRenderer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How a result is written. A format with a renderer is one in which every command writes its report. */
public enum Format {
    TEXT(TerminalRenderer::new), JSON, MARKDOWN((width, colours) -> new MarkdownRenderer()), HTML((width, colours) -> new HtmlRenderer()), CSV, GPX, ICS, PDF;

    private final RendererMaker renderer;

    Format() {
        this(null);
    }

    Format(RendererMaker renderer) {
        this.renderer = renderer;
    }

    /** What every command offers, text first: each format of reports, and JSON; then those that one command has besides. */
    static List<Format> offered(Format... besides) {
        List<Format> out = new ArrayList<>();
        for (Format each : values()) {
            if (each.renderer != null || each == JSON) {
                out.add(each);
            }
        }
        out.addAll(List.of(besides));
        return out;
    }

    /** Writes reports on a page so many columns wide. Not for a format that has no renderer. */
    Renderer renderer(int width, boolean colours) {
        return renderer.make(width, colours);
    }

    /** As it is typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    @FunctionalInterface
    private interface RendererMaker {
        Renderer make(int width, boolean colours);
    }
}
