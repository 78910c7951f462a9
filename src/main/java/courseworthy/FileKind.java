package courseworthy;

import courseworthy.course.CourseReader;
import courseworthy.debrief.DebriefReader;
import courseworthy.event.EventReader;
import courseworthy.event.SeasonReader;
import courseworthy.problem.Fault;
import courseworthy.rider.RiderReader;
import courseworthy.workshop.WorkshopReader;
import java.util.List;

/** The kinds of file that people write, told apart by their keys, so that one in another's place is told of once and not key by key. */
enum FileKind {
    COURSE("a course", "", "Name it first, behind the command.", CourseReader.PROFILE_KEYS),
    RIDER("a rider's file", "--rider", "Name it behind --rider.", RiderReader.KEYS),
    EVENT("an event's file", "--event", "Name it behind --event.", EventReader.KEYS),
    WORKSHOP("a workshop", "--workshop", "Name it behind --workshop.", WorkshopReader.KEYS),
    SEASON("a season", null, "Its folder goes with: courseworthy season DIR", SeasonReader.KEYS),
    SHEET("a sheet of advice", "--sheet", "Name it behind --sheet.", List.of("sheet", "author", "version", "licence", "advice")),
    DEBRIEF("a debrief", null, "Its file goes with: courseworthy debrief FILE", DebriefReader.KEYS);

    /** So many keys of another kind that are not this one's, and the file is taken for one of that. */
    private static final int TELLING = 2;
    private static final String UNKNOWN = "an unknown key";

    private final String words;
    private final String option;
    private final String mend;
    private final List<String> keys;

    FileKind(String words, String option, String mend, List<String> keys) {
        this.words = words;
        this.option = option;
        this.mend = mend;
        this.keys = keys;
    }

    /**
     * The fault that a file is of another kind than is read behind an option.
     *
     * @param found  what is wrong with it as one of that kind
     * @param option empty for the course
     * @return null where its unknown keys do not tell
     */
    static Fault mistaken(List<Fault> found, String typed, String option) {
        FileKind meant = behind(option);
        FileKind most = null;
        int keysOfIt = TELLING - 1;
        for (FileKind kind : values()) {
            int its = 0;
            for (Fault fault : found) {
                boolean unknown = fault.found().equals(UNKNOWN) && !meant.keys.contains(fault.field());
                its += unknown && kind.keys.contains(fault.field()) ? 1 : 0;
            }
            if (its > keysOfIt) {
                most = kind;
                keysOfIt = its;
            }
        }
        return most == null ? null : Fault.of(typed, 0, "", most.words, meant.words, most.mend);
    }

    private static FileKind behind(String option) {
        for (FileKind kind : values()) {
            if (option.equals(kind.option)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(option);
    }
}
