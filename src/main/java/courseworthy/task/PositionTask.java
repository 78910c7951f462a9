package courseworthy.task;

import courseworthy.build.Position;
import courseworthy.build.PositionMatcher;
import courseworthy.fit.BuildLoad;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.rider.Rider;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;

/** Bar and saddle positions of a workshop's bikes. */
public final class PositionTask {

    private PositionTask() {
    }

    /** @param from the name of the bike whose position is carried over; null, as {@code to}, to show all */
    public static PositionResult of(Workspace workspace, String file, String from, String to, String riderFile) {
        Faults faults = new Faults();
        RequestReader inputs = workspace.reader(faults);
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
        workspace.stopOrWarn(faults);
        if (one != null) {
            return new PositionResult(workshop.name(), List.of(), PositionMatcher.of(workshop, one, other, new BuildLoad(rider.mass(), null, null)));
        }
        List<Position> all = new ArrayList<>();
        workshop.bikes().forEach(bike -> all.add(Position.of(workshop, bike)));
        return new PositionResult(workshop.name(), all, null);
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
        faults.add(option, 0, "", RequestReader.quoted(name), names.isEmpty() ? "a bike of the workshop, which lists none"
                : "a bike of the workshop: " + String.join(", ", names), near);
        return null;
    }
}
