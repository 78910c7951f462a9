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
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A sheet looked over.
 *
 * @param rows    how many rows it has
 * @param remarks what is to be looked at
 * @param files   for each remark the file that shows it, empty where there is none; no entries where none were asked for
 */
record SheetLook(int rows, Remarks remarks, List<String> files) {

    /**
     * @param beside     other sheets that are in force with it
     * @param every      whether to list all remarks, however many of a kind
     * @param gaps       whether to look for situations and shipped courses on which nobody speaks
     * @param stopOrWarn shows warnings, and throws where the sheet cannot be used
     */
    static SheetLook at(Path home, String file, List<String> beside, boolean gaps, boolean every, Consumer<Faults> stopOrWarn) {
        Faults faults = new Faults();
        Path path = new Inputs(home, faults).path(file);
        Sheet sheet = path == null ? null : SheetReader.read(path, file, 0, faults);
        House house = House.load();
        List<Sheet> all = SheetTrial.beside(beside, new Inputs(home, faults), faults);
        if (sheet != null) {
            all.add(sheet);
        }
        List<Row> inForce = sheet == null ? List.of() : Rulebook.of(house.sheets(), List.of(), all, faults).rows();
        stopOrWarn.accept(faults);
        Remarks remarks = SheetCheck.of(sheet.rows(), shipped(house, inForce), inForce, gaps ? Set.copyOf(Topics.names()) : Set.of(), every,
                new Opening(inForce, house));
        List<Remark> list = new ArrayList<>(remarks.list());
        list.addAll(gaps ? LibraryGaps.of(home, inForce, house) : List.of());
        return new SheetLook(sheet.rows().size(), new Remarks(list, remarks.unlisted()), List.of());
    }

    /** The shipped rows that are not left out. */
    private static List<Row> shipped(House house, List<Row> inForce) {
        Set<Row> still = Collections.newSetFromMap(new IdentityHashMap<>());
        still.addAll(inForce);
        List<Row> out = new ArrayList<>();
        house.sheets().forEach(one -> out.addAll(one.rows()));
        out.removeIf(row -> !still.contains(row));
        return out;
    }

    /** The same, with an example of each remark written into a folder. */
    SheetLook withExamples(Path folder, String typed, List<String> sheets) {
        return new SheetLook(rows, remarks, SheetExamples.write(remarks.list(), folder, typed, sheets));
    }
}
