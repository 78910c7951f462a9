package courseworthy.report;

import java.util.List;

/** Names of the files of a roster's briefs: safe on every file system, and each another. */
public final class RosterBriefNames {

    private RosterBriefNames() {
    }

    /**
     * A name for each rider.
     *
     * @param ending with its dot
     */
    public static List<String> of(List<String> riders, String ending) {
        PageNames names = new PageNames(ending);
        return riders.stream().map(each -> names.path("", "rider", each)).toList();
    }
}
