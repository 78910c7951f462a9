package courseworthy.report;

import courseworthy.sheet.SheetInForce;
import java.util.ArrayList;
import java.util.List;

/**
 * Names the sheets in force: whose advice it is, which version, on what terms, and the digest it is known by. Every output that advice bears
 * on names them from here; where there are none, text says nothing of them, and JSON has an empty list.
 */
public final class SheetNames {

    /** Digits of a digest that are shown to people. */
    private static final int SHORT = 12;

    private SheetNames() {
    }

    /** In one sentence, in the order in which they were given. */
    public static String of(List<SheetInForce> sheets) {
        return "With " + advice(sheets) + ".";
    }

    /** The same as part of a sentence: {@code the advice of "Mine" 2 by me (mine.yaml, sha256 0123456789ab)}. */
    static String advice(List<SheetInForce> sheets) {
        List<String> out = new ArrayList<>();
        for (SheetInForce sheet : sheets) {
            out.add(one(sheet));
        }
        return out.isEmpty() ? "no sheet" : "the advice of " + String.join("; of ", out);
    }

    private static String one(SheetInForce sheet) {
        String version = sheet.version().isEmpty() ? "" : " " + sheet.version();
        String author = sheet.author().isEmpty() ? "" : " by " + sheet.author();
        String licence = sheet.licence().isEmpty() ? "" : ", " + sheet.licence();
        String digest = sheet.sha256().substring(0, Math.min(SHORT, sheet.sha256().length()));
        return "\"" + sheet.name() + "\"" + version + author + " (" + sheet.file() + licence + (digest.isEmpty() ? "" : ", sha256 " + digest) + ")";
    }

    /** A sentence for each rule left out: {@code shipped/some-rule is left out by "Mine" (mine.yaml:12): We ride lower pressures.} */
    static List<String> leftOut(List<SheetInForce> sheets) {
        List<String> out = new ArrayList<>();
        for (SheetInForce sheet : sheets) {
            for (SheetInForce.LeftOut each : sheet.leftOut()) {
                out.add(each.rule() + " is left out by \"" + sheet.name() + "\" (" + each.where() + "): " + each.because());
            }
        }
        return out;
    }

    /** The sheets in force and the rules that they leave out, a paragraph each; none where there are no sheets. */
    static List<RichText> paragraphs(List<SheetInForce> sheets) {
        List<RichText> out = new ArrayList<>();
        if (!sheets.isEmpty()) {
            out.add(RichText.ofQuoted(of(sheets)));
            leftOut(sheets).forEach(line -> out.add(RichText.ofQuoted(line)));
        }
        return out;
    }
}
