package courseworthy;

import courseworthy.problem.Faults;
import courseworthy.rulebase.House;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Rulebook;
import courseworthy.rulebase.Sheet;
import courseworthy.rulebase.SheetReader;
import courseworthy.rulebase.check.Remarks;
import courseworthy.rulebase.check.SheetCheck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A sheet looked over.
 *
 * @param rows    how many rows it has
 * @param remarks what is to be looked at
 */
record SheetLook(int rows, Remarks remarks) {

    /** @param stopOrWarn shows warnings, and throws where the sheet cannot be used */
    static SheetLook at(Path home, String file, Consumer<Faults> stopOrWarn) {
        Faults faults = new Faults();
        Path path = new Inputs(home, faults).path(file);
        Sheet sheet = path == null ? null : SheetReader.read(path, file, 0, faults);
        House house = House.load();
        if (sheet != null) {
            Rulebook.of(house.sheets(), List.of(), List.of(sheet), faults);
        }
        stopOrWarn.accept(faults);
        List<Row> shipped = new ArrayList<>();
        house.sheets().forEach(one -> shipped.addAll(one.rows()));
        return new SheetLook(sheet.rows().size(), SheetCheck.of(sheet.rows(), shipped));
    }
}
