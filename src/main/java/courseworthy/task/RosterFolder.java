package courseworthy.task;

import courseworthy.problem.Faults;
import courseworthy.rider.Rider;
import courseworthy.rider.SharedRider;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads a folder of riders' files, one for each rider, in the order of their names, with what {@link SharedRider} says of all. */
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
        if (folder == null) {
            return out;
        }
        List<YamlFolder.Found> files = YamlFolder.files(OPTION, folder, typed, faults);
        List<YamlFolder.Found> riders = files.stream().filter(each -> !each.path().endsWith(SharedRider.FILE)).toList();
        if (riders.isEmpty() && !files.isEmpty()) {
            faults.add(OPTION, 0, "", RequestReader.quoted(typed) + ", which has no file of a rider in it beside " + SharedRider.FILE, "a file for each rider", "");
        }
        SharedRider shared = SharedRider.in(folder, YamlFolder.shown(typed, ""), faults);
        for (YamlFolder.Found found : riders) {
            Faults own = new Faults();
            Rider rider = shared.read(found.path(), found.shown(), own);
            FileKind other = own.stop() ? FileKind.taken(own.faults(), FileKind.RIDER) : null;
            if (other != null) {
                faults.add(found.shown(), 0, "", other.words(), FileKind.RIDER.words(), "Move it out of the folder of riders.");
                continue;
            }
            faults.addAll(own);
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
