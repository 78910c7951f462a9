package courseworthy.brief;

import courseworthy.rulebase.Sheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Names the sheets in force: whose advice it is, which version, on what terms, and the digest it is known by. */
final class SheetWords {

    /** Digits of a digest that are shown to people. */
    private static final int SHORT = 12;

    private SheetWords() {
    }

    /** In one sentence, in the order in which they were given. */
    static String of(List<Sheet> sheets) {
        List<String> out = new ArrayList<>();
        for (Sheet sheet : sheets) {
            out.add(one(sheet));
        }
        return "With the advice of " + String.join("; of ", out) + ".";
    }

    private static String one(Sheet sheet) {
        Sheet.Origin origin = sheet.origin();
        String version = origin.version().isEmpty() ? "" : " " + origin.version();
        String licence = origin.licence().isEmpty() ? "" : ", " + origin.licence();
        return "\"" + sheet.title() + "\"" + version + " by " + sheet.by() + " (" + sheet.file() + licence + ", sha256 "
                + origin.sha256().substring(0, SHORT) + ")";
    }

    static void write(List<Sheet> sheets, Json json) throws IOException {
        json.list("sheets");
        for (Sheet sheet : sheets) {
            json.open();
            json.string("name", sheet.title());
            json.string("author", sheet.by());
            json.string("version", known(sheet.origin().version()));
            json.string("licence", known(sheet.origin().licence()));
            json.string("file", sheet.file());
            json.string("sha256", sheet.origin().sha256());
            json.close();
        }
        json.endList();
    }

    private static String known(String text) {
        return text.isEmpty() ? null : text;
    }
}
