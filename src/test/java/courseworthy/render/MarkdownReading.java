package courseworthy.render;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** A Markdown page as a CommonMark parser with tables reads it. */
public final class MarkdownReading {

    private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();

    private final Node document;

    public MarkdownReading(String page) {
        document = PARSER.parse(page);
    }

    /** The kinds of node in the order in which they begin, with the text of those that hold text of their own. */
    public List<String> outline() {
        List<String> out = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            protected void visitChildren(Node parent) {
                for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
                    if (!(node instanceof Text)) {
                        out.add(node.getClass().getSimpleName());
                    }
                    node.accept(this);
                }
            }
        });
        return out;
    }

    public List<String> headings() {
        List<String> out = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                out.add(text(heading));
            }
        });
        return out;
    }

    /** The rows of all tables, heads included, cell by cell. */
    public List<List<String>> rows() {
        List<List<String>> out = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(CustomNode node) {
                if (node instanceof TableRow) {
                    List<String> cells = new ArrayList<>();
                    for (Node cell = node.getFirstChild(); cell instanceof TableCell; cell = cell.getNext()) {
                        cells.add(text(cell));
                    }
                    out.add(cells);
                }
                super.visit(node);
            }
        });
        return out;
    }

    /** What a reader sees of the whole page. */
    public String text() {
        return text(document);
    }

    /** What a reader sees of a node. */
    private static String text(Node node) {
        StringBuilder out = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                out.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                out.append(code.getLiteral());
            }

            @Override
            public void visit(FencedCodeBlock code) {
                out.append(code.getLiteral());
            }

            @Override
            public void visit(HardLineBreak lineBreak) {
                out.append(' ');
            }

            @Override
            public void visit(SoftLineBreak lineBreak) {
                out.append(' ');
            }
        });
        return out.toString();
    }
}
