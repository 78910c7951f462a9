package courseworthy.report.json;

import courseworthy.sheet.SheetInForce;
import java.io.IOException;
import java.util.List;

/** Writes as JSON which coaches' sheets are in force; an empty list where none is. */
final class JsonSheets {

    private JsonSheets() {
    }

    static void write(List<SheetInForce> sheets, Json json) throws IOException {
        write("sheets", sheets, json);
    }

    static void write(String field, List<SheetInForce> sheets, Json json) throws IOException {
        json.objects(field, sheets, sheet -> {
            json.string("name", sheet.name());
            json.string("author", known(sheet.author()));
            json.string("version", known(sheet.version()));
            json.string("licence", known(sheet.licence()));
            json.string("file", known(sheet.file()));
            json.string("sha256", known(sheet.sha256()));
            if (!sheet.leftOut().isEmpty()) {
                json.objects("leaves_out", sheet.leftOut(), each -> {
                    json.string("rule", each.rule());
                    json.string("because", each.because());
                    json.string("where", each.where());
                });
            }
        });
    }

    private static String known(String text) {
        return text.isEmpty() ? null : text;
    }
}
