package courseworthy.render;

import courseworthy.report.Report;

/** Writes reports in one format. */
public interface Renderer {

    /** The whole report, ending in a line feed; empty where the report is. */
    String render(Report report);
}
