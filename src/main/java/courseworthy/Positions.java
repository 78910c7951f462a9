package courseworthy;

import courseworthy.brief.JsonPosition;
import courseworthy.brief.PositionMarkdown;
import courseworthy.brief.PositionText;
import courseworthy.build.Carried;
import courseworthy.build.Carrying;
import courseworthy.build.Position;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.rider.Rider;
import courseworthy.rulebase.Load;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Bar and saddle positions of a workshop's bikes. */
final class Positions {

    private Positions() {
    }

    /**
     * @param from  the name of the bike whose position is carried over; null, as {@code to}, to show all
     * @param check stops where there are faults, after warnings are told
     */
    static String of(Path home, String file, String from, String to, String riderFile, Courseworthy.Format format, boolean colours,
            Consumer<Faults> check) {
        Faults faults = new Faults();
        Inputs inputs = new Inputs(home, faults);
        Workshop workshop = inputs.workshop(file);
        Rider rider = inputs.rider(riderFile);
        if (from == null != (to == null)) {
            faults.add(from == null ? "--from" : "--to", 0, "", "none beside " + (from == null ? "--to" : "--from"), "both, or neither", "");
        }
        Part one = bike(workshop, "--from", from, faults);
        Part other = bike(workshop, "--to", to, faults);
        if (one != null && one == other) {
            faults.add("--to", 0, "", "the bike of --from", "another bike", "");
        }
        check.accept(faults);
        if (one == null) {
            List<Position> all = new ArrayList<>();
            workshop.bikes().forEach(bike -> all.add(Position.of(workshop, bike)));
            return switch (format) {
                case TEXT -> PositionText.of(workshop.name(), all, colours);
                case JSON -> JsonPosition.of(workshop.name(), all);
                case MARKDOWN -> PositionMarkdown.of(workshop.name(), all);
            };
        }
        Carried carried = Carrying.of(workshop, one, other, new Load(rider.mass(), null, null));
        return switch (format) {
            case TEXT -> PositionText.of(workshop.name(), carried, colours);
            case JSON -> JsonPosition.of(workshop.name(), carried);
            case MARKDOWN -> PositionMarkdown.of(workshop.name(), carried);
        };
    }

    private static Part bike(Workshop workshop, String option, String name, Faults faults) {
        if (workshop == null || name == null) {
            return null;
        }
        List<String> names = new ArrayList<>();
        for (Part bike : workshop.bikes()) {
            if (bike.name().equals(name)) {
                return bike;
            }
            names.add(bike.name());
        }
        String near = Spelling.didYouMean(name, names);
        faults.add(option, 0, "", Inputs.quoted(name), names.isEmpty() ? "a bike of the workshop, which lists none"
                : "a bike of the workshop: " + String.join(", ", names), near);
        return null;
    }
}
