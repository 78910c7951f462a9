package courseworthy.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** A PDF as others read it: PDFBox its text and typefaces, veraPDF how it keeps to PDF/UA-1 (ISO 14289-1). */
public record ReadPdf(byte[] bytes) {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    public int pages() {
        return read(PDDocument::getNumberOfPages);
    }

    public String text() {
        return read(document -> new PDFTextStripper().getText(document));
    }

    /** Each word once. */
    public Set<String> words() {
        return words(text());
    }

    public static Set<String> words(String text) {
        return new TreeSet<>(Arrays.asList(text.strip().split("\\s+")));
    }

    /** The width of the first page in points. */
    public float width() {
        return read(document -> document.getPage(0).getMediaBox().getWidth());
    }

    /** Whether a typeface is in the file, by its name. */
    public Map<String, Boolean> embedded() {
        return read(document -> {
            Map<String, Boolean> out = new LinkedHashMap<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    out.put(font.getName(), font.isEmbedded());
                }
            }
            return out;
        });
    }

    /** The filled rectangles of a page of which one side is shorter than a point and the other no longer than 12: left, bottom, width, height. */
    public List<double[]> thinBars(int page) {
        return read(document -> {
            List<double[]> out = new ArrayList<>();
            List<Object> tokens = new PDFStreamParser(document.getPage(page - 1)).parse();
            for (int i = 4; i < tokens.size(); i++) {
                if (tokens.get(i) instanceof Operator operator && operator.getName().equals("re")) {
                    double[] bar = new double[4];
                    for (int j = 0; j < 4; j++) {
                        bar[j] = ((COSNumber) tokens.get(i - 4 + j)).floatValue();
                    }
                    if (Math.min(bar[2], bar[3]) < 1 && Math.max(bar[2], bar[3]) <= 12) {
                        out.add(bar);
                    }
                }
            }
            return out;
        });
    }

    /** What keeps it from being PDF/UA-1, clause by clause; nothing where it is. */
    public List<String> faults() {
        PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(bytes), flavour)) {
            ValidationResult result = Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
            assertThat(result.getTotalAssertions()).isGreaterThan(100);
            List<String> out = new ArrayList<>();
            result.getTestAssertions().forEach(each -> out.add(each.getRuleId().getClause() + "-" + each.getRuleId().getTestNumber() + " " + each.getMessage()));
            return out;
        } catch (IOException | ModelParsingException | EncryptedPdfException | ValidationException e) {
            throw new AssertionError(e);
        }
    }

    private <T> T read(Reading<T> reading) {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return reading.of(document);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @FunctionalInterface
    private interface Reading<T> {
        T of(PDDocument document) throws IOException;
    }
}
