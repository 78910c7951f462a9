package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.render.MarkdownRenderer;
import courseworthy.task.Brief;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The Markdown page as a CommonMark parser with tables reads it. */
class BriefMarkdownTest {

    private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();

    private final Brief brief = ExampleBrief.rich().brief();

    @Test
    void headingsReadFromTheCourseDownToTheChecklist() {
        assertThat(headings(page(BriefReport.of(brief)))).containsExactly("Heather Ridge, set up for the race, 14 June 2025", "In short",
                "Recommended set-up, how firm", "Leave alone", "Reasons", "Advice that was not followed", "Assumed (not given in your files)",
                "Rules not checked: missing information", "Notes on the course file", "Cautions",
                "Checklist (! = safety-critical), 14 June 2025", "Two days before", "Night before", "Race morning");
    }

    @Test
    void everyTopicThatAppliesHasItsLine() {
        List<String> items = items(page(BriefReport.of(brief)));
        for (Decision decision : brief.decisions()) {
            if (decision.status() == Status.SETTLED) {
                assertThat(items).contains(decision.topic().name() + ": " + decision.phrase() + " (" + brief.firmness(decision).word() + ")");
            }
        }
        assertThat(items).contains("front tyre pressure: none possible: the floor against rim strikes lies above the marking");
    }

    /** What stands in a file shows as it was written and is never markup. */
    @ParameterizedTest
    @ValueSource(strings = {"*a* _b_ __c__ ~~d~~", "<b>x</b> &amp; <script>alert(1)</script>", "[a](http://b.c) ![i](j.png) <http://k.l>",
        "`code` ```", "# heading", "- item", "1. one", "1) one", "> quote", "| a | b |", "a \\* b", "---", "===", "+ plus", "    indented",
        "[x]: http://y.z", "$m$", "&#35; &copy;", "\\", "*", "http://plain.example", "** x **", "~~~", "=", "x\n===", "x\n\n# y"})
    void hostileNamesShowAsTheyAre(String name) {
        ExampleBrief hostile = ExampleBrief.rich();
        hostile.name = name;
        hostile.task("shipped/h", name, name, courseworthy.claim.Deadline.NIGHT_BEFORE, 0, false, "x");
        String page = page(BriefReport.of(hostile.brief()));
        String shown = name.strip().replaceAll("\\s+", " ");
        assertThat(headings(page).get(0)).isEqualTo(shown + ", set up for the race, 14 June 2025");
        assertThat(headings(page)).hasSize(14);
        assertThat(foreign(page)).isEmpty();
        String plain = text(PARSER.parse(page));
        assertThat(plain).contains("[ ] " + shown + " Done when: " + shown + " Why:");
    }

    @Test
    void aHostileReasonStaysInItsLine() {
        ExampleBrief hostile = ExampleBrief.rich();
        hostile.nonePossible("food", "a | b \\| c \\");
        assertThat(items(page(BriefReport.of(hostile.brief())))).contains("food: none possible: a | b \\| c \\");
    }

    @Test
    void theChecklistAloneCanBePrinted() {
        assertThat(headings(page(ChecklistReport.of(brief)))).containsExactly("Heather Ridge, set up for the race, 14 June 2025",
                "Checklist (! = safety-critical), 14 June 2025", "Two days before", "Night before", "Race morning");
    }

    private static List<String> headings(String page) {
        List<String> out = new ArrayList<>();
        PARSER.parse(page).accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                out.add(text(heading));
            }
        });
        return out;
    }

    private static String page(Report report) {
        return new MarkdownRenderer().render(report);
    }

    /** The text of each item of a list, without what stands below it. */
    private static List<String> items(String page) {
        List<String> out = new ArrayList<>();
        PARSER.parse(page).accept(new AbstractVisitor() {
            @Override
            public void visit(ListItem item) {
                out.add(text(item.getFirstChild()));
                super.visit(item);
            }
        });
        return out;
    }

    /** Markup that the page never uses by itself, beyond emphasised remarks and cautions. */
    private static List<String> foreign(String page) {
        List<String> out = new ArrayList<>();
        PARSER.parse(page).accept(new AbstractVisitor() {
            @Override
            protected void visitChildren(Node parent) {
                if (parent instanceof Link || parent instanceof Image || parent instanceof BlockQuote && !text(parent).startsWith("Caution: ") || parent instanceof OrderedList
                        || parent instanceof Emphasis && !text(parent).endsWith(".") && !text(parent).endsWith("\"")) {
                    out.add(parent.toString());
                }
                super.visitChildren(parent);
            }

            @Override
            public void visit(HtmlInline html) {
                out.add(html.getLiteral());
            }

            @Override
            public void visit(HtmlBlock html) {
                out.add(html.getLiteral());
            }

            @Override
            public void visit(Code code) {
                out.add(code.getLiteral());
            }

            @Override
            public void visit(FencedCodeBlock code) {
                out.add(code.getLiteral());
            }

            @Override
            public void visit(IndentedCodeBlock code) {
                out.add(code.getLiteral());
            }

            @Override
            public void visit(ThematicBreak line) {
                out.add("---");
            }
        });
        return out;
    }

    /** What a reader sees of it. */
    private static String text(Node node) {
        StringBuilder out = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                out.append(text.getLiteral());
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
