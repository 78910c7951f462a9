package courseworthy.task;

import courseworthy.analysis.Findings;
import java.util.List;

/**
 * A sheet looked over.
 *
 * @param file     the sheet as typed
 * @param rows     how many rows it has
 * @param findings what is to be looked at
 * @param examples for each finding the file that shows it, empty where there is none; no entries where none were asked for
 */
public record CheckResult(String file, int rows, Findings findings, List<String> examples) {

    public CheckResult {
        examples = List.copyOf(examples);
    }
}
