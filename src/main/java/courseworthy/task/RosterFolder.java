package courseworthy.task;

import courseworthy.problem.Faults;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads a folder of riders' files, one for each rider, in the order of their names. */
final class RosterFolder {

    private static final String OPTION = "--riders";

    private RosterFolder() {
    }

    /**
     * A rider of a roster.
     *
     * @param name  the rider's own, with the file's where another has the same; the file's where the rider has none
     * @param rider as read
     */
    record Member(String name, Rider rider) {
    }

    /**
     * The riders that could be read; every fault of every file is collected.
     *
     * @param typed the folder as the user typed it
     */
    static List<Member> read(RequestReader inputs, String typed, Faults faults) {
        Path folder = inputs.path(typed);
        List<Member> out = new ArrayList<>();
        for (YamlFolder.Found found : folder == null ? List.<YamlFolder.Found>of() : YamlFolder.files(OPTION, folder, typed, faults)) {
            Rider rider = RiderReader.read(found.path(), found.shown(), faults);
            if (rider != null) {
                out.add(new Member(named(rider, found.name(), out), rider));
            }
        }
        return out;
    }

    private static String named(Rider rider, String file, List<Member> before) {
        boolean taken = before.stream().anyMatch(each -> each.name().equals(rider.name()));
        return rider.name().isEmpty() ? file : taken ? rider.name() + " (" + file + ")" : rider.name();
    }
}
