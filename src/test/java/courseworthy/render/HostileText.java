package courseworthy.render;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Text that would do something if it were obeyed: control characters, terminal sequences, markup, tables, addresses, HTML. */
public final class HostileText {

    private static final List<String> PIECES = List.of("\u001b[31m", "\u001b]0;title\u0007", "\r", "\n", "\t", "\u0000", "\u009b2J", "\u202e",
            "\u2066", "\u200f", "\u2028", "\ud800", "|", "||", "\\", "\\|", "`", "```", "*", "**", "_", "~~~", "#", "# ", "- ", "+ ", "1. ",
            "2) ", "> ", "---", "===", "[a](http://b.c)", "![i](j)", "[x]: y", "<b>", "</td>", "<script>", "&amp;", "&#35;", "http://k.l",
            "www.m.n", "a@b.c", "$", "!", "[", "]", "(", ")", ":", " ", "  ", "    ", "a", "b c", "1", "12 mm", "7 km", "\u00e9", "\u0301",
            "\u4e2d\u6587", "\ud83d\udeb2", "\u00a0", "x".repeat(90), "'", "\"", "%", "{", "}", "=", ".");

    private HostileText() {
    }

    public static Arbitrary<String> any() {
        Arbitrary<String> pieces = Arbitraries.of(PIECES).list().ofMaxSize(12).map(list -> String.join("", list));
        return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(4, pieces), net.jqwik.api.Tuple.of(1, Arbitraries.strings().ofMaxLength(40)));
    }
}
