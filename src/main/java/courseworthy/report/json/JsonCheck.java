package courseworthy.report.json;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Findings;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes what is to be looked at in a sheet, as JSON, format 2. */
public final class JsonCheck {

    private JsonCheck() {
    }

    /**
     * The remarks in order, each with its rows and an example.
     *
     * @param files for each remark the file that shows it, empty where there is none; no entries where none were asked for
     */
    public static String of(String file, int rows, Findings remarks, List<String> files) {
        return Json.written(json -> {
            json.string("sheet", file);
            json.number("rows", BigDecimal.valueOf(rows));
            json.list("remarks");
            for (int i = 0; i < remarks.list().size(); i++) {
                remark(json, remarks.list().get(i), files.isEmpty() ? "" : files.get(i));
            }
            json.endList();
            json.objects("unlisted", remarks.unlisted().keySet(), kind -> {
                json.string("kind", kind.words());
                json.number("count", BigDecimal.valueOf(remarks.unlisted().get(kind)));
            });
        });
    }

    private static void remark(Json json, Finding remark, String file) throws IOException {
        json.open();
        json.string("kind", remark.kind().words());
        json.objects("rules", remark.rows(), author -> {
            json.string("rule", author.rule());
            json.string("where", author.where().toString());
        });
        json.string("topic", remark.rows().isEmpty() ? remark.topic() : remark.on());
        json.string("silent", remark.witness().silent() == null ? "" : remark.witness().silent().rule());
        json.string("text", remark.text());
        json.string("mend", remark.mend());
        json.number("more", remark.more());
        json.objects("example", remark.witness().facts(), fact -> {
            json.string("what", fact.what());
            json.string("value", fact.value());
        });
        json.string("shown_by", file);
        json.close();
    }
}
