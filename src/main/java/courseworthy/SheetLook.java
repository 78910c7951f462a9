package courseworthy;

import courseworthy.problem.Faults;
import courseworthy.rulebase.House;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Rulebook;
import courseworthy.rulebase.Sheet;
import courseworthy.rulebase.SheetReader;
import courseworthy.rulebase.check.Remark;
import courseworthy.rulebase.check.Remarks;
import courseworthy.rulebase.check.SheetCheck;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A sheet looked over.
 *
 * @param rows    how many rows it has
 * @param remarks what is to be looked at
 * @param files   for each remark the file that shows it, empty where there is none; no entries where none were asked for
 * @param inForce all rows in force with the sheet
 */
record SheetLook(int rows, Remarks remarks, List<String> files, List<Row> inForce) {

    /**
     * @param gaps       whether to look for situations and shipped courses on which nobody speaks
     * @param stopOrWarn shows warnings, and throws where the sheet cannot be used
     */
    static SheetLook at(Path home, String file, boolean gaps, Consumer<Faults> stopOrWarn) {
        Faults faults = new Faults();
        Path path = new Inputs(home, faults).path(file);
        Sheet sheet = path == null ? null : SheetReader.read(path, file, 0, faults);
        House house = House.load();
        List<Row> inForce = sheet == null ? List.of() : Rulebook.of(house.sheets(), List.of(), List.of(sheet), faults).rows();
        stopOrWarn.accept(faults);
        List<Row> shipped = new ArrayList<>();
        house.sheets().forEach(one -> shipped.addAll(one.rows()));
        if (!gaps) {
            return new SheetLook(sheet.rows().size(), SheetCheck.of(sheet.rows(), shipped), List.of(), inForce);
        }
        Remarks remarks = SheetCheck.of(sheet.rows(), shipped, inForce, Set.copyOf(Topics.names()));
        List<Remark> all = new ArrayList<>(SheetExamples.confirmed(remarks.list(), inForce));
        all.addAll(LibraryGaps.of(home, inForce, house));
        return new SheetLook(sheet.rows().size(), new Remarks(all, remarks.unlisted()), List.of(), inForce);
    }

    /** The same, with an example of each remark written into a folder. */
    SheetLook withExamples(Path folder, String typed, String sheet) {
        return new SheetLook(rows, remarks, SheetExamples.write(remarks.list(), inForce, folder, typed, sheet), inForce);
    }
}
