package courseworthy.course;

import java.util.ArrayList;
import java.util.List;

/** Fills ground that is not written with what the user assumes, and keeps account of it. */
final class Assuming {

    private Assuming() {
    }

    static Course ground(Course course, Ground assumed) {
        // Not equals: comparing records sets up method handles, which a cold start feels.
        if (assumed == Ground.UNKNOWN) {
            return course;
        }
        String[] given = GroundReader.said(assumed);
        double[] filled = new double[given.length];
        List<Stretch> stretches = new ArrayList<>(course.stretches().size());
        for (Stretch s : course.stretches()) {
            String[] known = GroundReader.said(s.ground());
            for (int i = 0; i < given.length; i++) {
                filled[i] += given[i] != null && known[i] == null ? s.length() : 0;
            }
            stretches.add(new Stretch(s.length(), s.rise(), s.drop(), s.steepest(), s.ground().orElse(assumed), s.line()));
        }
        List<String> said = new ArrayList<>(course.assumed());
        List<String> notes = new ArrayList<>(course.notes());
        for (int i = 0; i < given.length; i++) {
            if (filled[i] > 0) {
                said.add(GroundReader.KEYS.get(i) + " " + given[i] + " on " + Say.length(filled[i]));
            } else if (given[i] != null) {
                notes.add("--ground " + GroundReader.KEYS.get(i) + "=" + given[i] + " changes nothing: every stretch says its own.");
            }
        }
        return new Course(course.name(), course.summary(), course.file(), stretches, course.track(), course.line(), course.ascent(),
                course.descent(), course.up(), course.down(), course.repairs(), said, notes, course.latitude(), course.longitude());
    }
}
