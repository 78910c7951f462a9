package courseworthy.course;

import java.util.ArrayList;
import java.util.List;

/** Fills ground that is not written with what the user assumes, and keeps account of it. */
final class AssumedGroundFiller {

    private AssumedGroundFiller() {
    }

    /** @param key what the assumption stands under, for the note that it changes nothing */
    static Course ground(Course course, Ground assumed, String key) {
        // Not equals: comparing records sets up method handles, which a cold start feels.
        if (assumed == Ground.UNKNOWN) {
            return course;
        }
        String[] given = GroundReader.said(assumed);
        double[] filled = new double[given.length];
        List<Stretch> stretches = new ArrayList<>(course.stretches().size());
        double kept = 0;
        for (Stretch s : course.stretches()) {
            Ground filledIn = s.ground().orElse(assumed);
            if (GroundReader.contradiction(filledIn) != null) {
                kept += s.length();
                stretches.add(s);
                continue;
            }
            String[] known = GroundReader.said(s.ground());
            boolean any = false;
            for (int i = 0; i < given.length; i++) {
                boolean here = given[i] != null && known[i] == null;
                any |= here;
                filled[i] += here ? s.length() : 0;
            }
            stretches.add(any ? s.filled(filledIn, alternatives(s, assumed)) : s.on(filledIn, alternatives(s, assumed)));
        }
        List<String> said = new ArrayList<>(course.assumed());
        List<String> notes = new ArrayList<>(course.notes());
        for (int i = 0; i < given.length; i++) {
            if (filled[i] > 0) {
                said.add(GroundReader.KEYS.get(i) + " " + given[i] + " on " + LengthPhrases.length(filled[i]));
            } else if (given[i] != null && kept == 0) {
                notes.add(key + " " + GroundReader.KEYS.get(i) + "=" + given[i] + " changes nothing: every stretch says its own.");
            }
        }
        if (kept > 0) {
            notes.add(key + " is not taken on " + LengthPhrases.length(kept) + ": it cannot be with what is written there.");
        }
        return course.filled(stretches, said, notes);
    }

    /** What the ground may be instead, filled in the same way; one that cannot be with what is assumed stays as it is. */
    private static List<Ground> alternatives(Stretch stretch, Ground assumed) {
        List<Ground> out = new ArrayList<>(stretch.alternatives().size());
        for (Ground other : stretch.alternatives()) {
            Ground filled = other.orElse(assumed);
            out.add(GroundReader.contradiction(filled) == null ? filled : other);
        }
        return out;
    }
}
