package courseworthy.sheet;

import courseworthy.claim.Rank;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;

/** Rows and situations as tests write them, read as files are. */
final class SheetText {

    private SheetText() {
    }

    /** @param rest all of a row but its name and its reason, such as {@code say: {plugs: prefer 2}} */
    static Row row(String rest) {
        Faults faults = new Faults();
        String text = "sheet: S\nauthor: a\nadvice:\n  - {id: x, because: So., " + rest + "}\n";
        Node.Mapping tree = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", SheetReader.MOST_BYTES, faults);
        Sheet sheet = SheetReader.decode(tree, "s.yaml", Rank.SHIPPED, 0, faults);
        faults.throwIfAny();
        return sheet.rows().get(0);
    }

    /** A row that asks for some water where a condition holds. */
    static Row rowWhen(String condition) {
        return row("when: " + condition + ", say: {water: prefer 1.0 L}");
    }

    /** @param facts a block; {@code {}} for none */
    static Situation situation(String facts) {
        Faults faults = new Faults();
        Node.Mapping tree = YamlReader.read((facts + "\n").getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
        Situation out = facts.equals("{}") ? Situation.NONE : new SituationReader("s.yaml", faults).changed(Situation.NONE, "situation", tree);
        faults.throwIfAny();
        return out;
    }
}
