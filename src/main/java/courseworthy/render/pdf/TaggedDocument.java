package courseworthy.render.pdf;

import courseworthy.render.pdf.ColumnFiller.PlacedRow;
import courseworthy.render.pdf.PdfRow.RowMark;
import courseworthy.render.pdf.PdfRow.RowPiece;
import courseworthy.render.pdf.PdfRow.GlyphRun;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDListAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/**
 * Draws placed rows on pages and ties each piece of text to its element of the structure (ISO 32000-1, 14.7 and 14.8). What belongs to
 * no element, such as rules and the foot of a page, is marked as an artifact.
 */
final class TaggedDocument {

    private final PDDocument document;
    private final Faces faces;
    private final PaperSize paper;
    private final Map<StructureTag, PDStructureElement> elements = new IdentityHashMap<>();
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    /** The elements of the marked content of each page, in the order of their numbers. */
    private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();

    TaggedDocument(PDDocument document, Faces faces, PaperSize paper) {
        this.document = document;
        this.faces = faces;
        this.paper = paper;
    }

    /** @param feet what stands at the foot of each page: rows of artifacts, placed */
    void write(List<PlacedRow> rows, StructureTag structure, int pages, List<PlacedRow> feet) throws IOException {
        document.getDocumentCatalog().setStructureTreeRoot(root);
        element(structure, root);
        for (int number = 0; number < pages; number++) {
            PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
            document.addPage(page);
            page.setStructParents(number);
            int wanted = number;
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                new TaggedPage(page, out).write(rows.stream().filter(row -> row.page() == wanted).toList(), feet.stream().filter(row -> row.page() == wanted).toList());
            }
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(pages);
    }

    private void element(StructureTag tag, PDStructureNode parent) {
        PDStructureElement out = new PDStructureElement(tag.role(), parent);
        if (!tag.spoken().isEmpty()) {
            out.setActualText(tag.spoken());
        }
        if (!tag.scope().isEmpty()) {
            PDTableAttributeObject attribute = new PDTableAttributeObject();
            attribute.setScope(tag.scope());
            out.addAttribute(attribute);
        }
        if (tag.role().equals("L")) {
            PDListAttributeObject attribute = new PDListAttributeObject();
            attribute.setListNumbering(PDListAttributeObject.LIST_NUMBERING_DISC);
            out.addAttribute(attribute);
        }
        parent.appendKid(out);
        elements.put(tag, out);
        tag.kids().forEach(kid -> element(kid, out));
    }

    /** The content of one page. */
    private final class TaggedPage {
        private final PDPage page;
        private final PDPageContentStream out;
        private final COSArray marked = new COSArray();

        TaggedPage(PDPage page, PDPageContentStream out) {
            this.page = page;
            this.out = out;
        }

        void write(List<PlacedRow> rows, List<PlacedRow> feet) throws IOException {
            for (PlacedRow each : rows) {
                row(each, false);
            }
            for (PlacedRow each : feet) {
                row(each, true);
            }
            parents.put(page.getStructParents(), new PDParentTreeValue(marked));
        }

        private void row(PlacedRow placed, boolean artifact) throws IOException {
            List<StructureTag> drawn = new ArrayList<>();
            for (RowPiece piece : placed.row().pieces()) {
                begin(artifact ? null : piece.tag());
                for (RowMark mark : placed.row().marks()) {
                    if (mark.tag() == piece.tag() && mark.tag() != null) {
                        mark(placed, mark);
                        drawn.add(mark.tag());
                    }
                }
                text(placed, piece);
                out.endMarkedContent();
            }
            for (RowMark mark : placed.row().marks()) {
                if (mark.tag() == null || !drawn.contains(mark.tag())) {
                    begin(mark.tag());
                    mark(placed, mark);
                    out.endMarkedContent();
                }
            }
        }

        private void begin(StructureTag tag) throws IOException {
            if (tag == null) {
                out.beginMarkedContent(COSName.ARTIFACT);
                return;
            }
            PDStructureElement element = elements.get(tag);
            int number = marked.size();
            PDMarkedContentReference reference = new PDMarkedContentReference();
            reference.setPage(page);
            reference.setMCID(number);
            element.appendKid(reference);
            marked.add(element);
            out.beginMarkedContent(COSName.getPDFName(tag.role()), number);
        }

        private void text(PlacedRow placed, RowPiece piece) throws IOException {
            out.beginText();
            double x = placed.x() + piece.x();
            double y = paper.height() - placed.top() - placed.row().ascent();
            double before = 0;
            out.newLineAtOffset((float) x, (float) y);
            for (GlyphRun run : piece.runs()) {
                out.setFont(faces.font(run.face()), (float) run.size());
                out.newLineAtOffset((float) (run.x() - before), 0);
                out.showText(run.text());
                before = run.x();
            }
            out.endText();
        }

        private void mark(PlacedRow placed, RowMark mark) throws IOException {
            double bottom = paper.height() - placed.top() - mark.y() - mark.height();
            out.addRect((float) (placed.x() + mark.x()), (float) bottom, (float) mark.width(), (float) mark.height());
            if (mark.line() > 0) {
                out.setLineWidth((float) mark.line());
                out.stroke();
            } else {
                out.fill();
            }
        }
    }
}
