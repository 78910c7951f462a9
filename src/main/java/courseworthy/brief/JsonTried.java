package courseworthy.brief;

import courseworthy.rulebase.Tried;
import java.math.BigDecimal;
import java.util.List;

/** Writes how a sheet came out against its cases, as JSON, format 1. */
public final class JsonTried {

    private JsonTried() {
    }

    /** What failed and, where it was asked for, what no case touches. */
    public static String of(String file, Tried tried) {
        return Json.written(json -> {
            json.string("sheet", file);
            SheetWords.write(InForce.of(tried.sheets()), json);
            json.number("rows", BigDecimal.valueOf(tried.rows()));
            json.number("cases", BigDecimal.valueOf(tried.cases()));
            json.list("failed");
            for (Tried.Failed failed : tried.failed()) {
                json.open();
                json.string("where", failed.where().toString());
                json.string("rule", failed.rule());
                json.string("case", failed.sentence());
                json.strings("differences", failed.differences().stream().map(String::strip).toList());
                json.close();
            }
            json.endList();
            if (tried.missing() != null) {
                missing(json, tried);
            }
        });
    }

    private static void missing(Json json, Tried tried) throws java.io.IOException {
        json.list("untouched");
        for (Tried.Missing missing : tried.missing()) {
            json.open();
            json.string("where", missing.where().toString());
            json.string("rule", missing.rule());
            json.string("what", missing.what());
            json.string("add", missing.lacking());
            json.close();
        }
        json.endList();
    }
}
