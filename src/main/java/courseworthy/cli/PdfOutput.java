package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.render.pdf.PaperSize;
import courseworthy.render.pdf.PdfRenderer;
import courseworthy.report.PrintedReport;
import java.util.List;

/** {@code --format pdf} with its size of paper. Only where it is asked for are classes that write PDF loaded. */
final class PdfOutput {

    private static final String PAPER = "--paper";
    private static final List<String> SIZES = List.of("a4", "letter");

    private final Command.SourceFunction<String> paper;

    /** Adds the option to a command. */
    PdfOutput(Command command) {
        paper = command.optionalChoice(PAPER, "SIZE", "For --format pdf: a4 (the default) or letter.", SIZES);
    }

    /**
     * Whether PDF is to be written.
     *
     * @throws BadInput where it cannot go where it would go, or paper is chosen for what is not printed
     */
    boolean isAsked(Format format, Output to) {
        if (format != Format.PDF) {
            if (paper.value() != null) {
                throw new BadInput(Fault.of(PAPER, 0, "", "--format " + format + " beside it", "--format pdf", "Only PDF has a size of paper."));
            }
            return false;
        }
        if (!to.toFile() && isTerminal()) {
            throw new BadInput(Fault.of("--format pdf", 0, "", "no -o FILE", "a file to write to", "PDF is no text for a terminal: add -o checklist.pdf, say."));
        }
        return true;
    }

    /** @param source the same result as JSON */
    void write(Output to, PrintedReport report, String source) {
        to.write(PdfRenderer.render(report, source, "letter".equals(paper.value()) ? PaperSize.LETTER : PaperSize.A4));
    }

    private static boolean isTerminal() {
        String set = System.getProperty("courseworthy.tty");
        return set == null ? System.console() != null : "1".equals(set);
    }
}
