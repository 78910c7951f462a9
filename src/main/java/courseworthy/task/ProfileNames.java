package courseworthy.task;

import java.util.ArrayList;
import java.util.List;

/** Names of files as the head of a profile has them. */
final class ProfileNames {

    private ProfileNames() {
    }

    /** Without their folders, on one line. */
    static String of(List<String> files) {
        List<String> out = new ArrayList<>();
        for (String file : files) {
            out.add(file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1).replaceAll("\\p{Cntrl}", " "));
        }
        return String.join(", ", out);
    }
}
