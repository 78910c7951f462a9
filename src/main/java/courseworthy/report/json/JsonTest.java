package courseworthy.report.json;

import courseworthy.engine.CaseResults;
import courseworthy.sheet.SheetInForce;
import java.math.BigDecimal;

/** Writes how a sheet came out against its cases, as JSON, format 2. */
public final class JsonTest {

    private JsonTest() {
    }

    /** What failed and, where it was asked for, what no case covers. */
    public static String of(String file, CaseResults tried) {
        return Json.written(json -> {
            json.string("sheet", file);
            JsonSheets.write(SheetInForce.of(tried.sheets()), json);
            json.number("rows", BigDecimal.valueOf(tried.rows()));
            json.number("cases", BigDecimal.valueOf(tried.cases()));
            json.objects("failed", tried.failed(), failed -> {
                json.string("where", failed.where().toString());
                json.string("rule", failed.rule());
                json.string("case", failed.sentence());
                json.strings("differences", failed.differences().stream().map(String::strip).toList());
            });
            if (tried.missing() != null) {
                missing(json, tried);
            }
        });
    }

    private static void missing(Json json, CaseResults tried) throws java.io.IOException {
        json.objects("untouched", tried.missing(), missing -> {
            json.string("where", missing.where().toString());
            json.string("rule", missing.rule());
            json.string("what", missing.what());
            json.string("add", missing.lacking());
        });
    }
}
