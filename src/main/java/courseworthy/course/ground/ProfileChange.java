package courseworthy.course.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A difference between a profile as it was and the map as it is now.
 *
 * @param from m along the course
 * @param to   m along the course
 * @param key  of the ground
 * @param old  what the older profile has; null where it has nothing
 * @param map  what the map says now, mapped or inferred; null where nothing
 * @param kept whether a person wrote the old value, so that it was kept
 */
public record ProfileChange(double from, double to, String key, String old, String map, boolean kept) {

    /** Shorter differences come of stretches that end a little elsewhere, m. */
    private static final double LEAST = 30;

    /** The same difference on neighbouring stretches as one; what the map says otherwise over a few metres is left out. */
    static List<ProfileChange> joined(List<ProfileChange> changes) {
        List<ProfileChange> sorted = new ArrayList<>(changes);
        sorted.sort(Comparator.comparing(ProfileChange::key).thenComparing(ProfileChange::from));
        List<ProfileChange> out = new ArrayList<>();
        for (ProfileChange each : sorted) {
            ProfileChange last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && last.goesOn(each)) {
                out.set(out.size() - 1, new ProfileChange(last.from, each.to, each.key, each.old, each.map, each.kept));
            } else {
                out.add(each);
            }
        }
        out.removeIf(each -> !each.kept && each.to - each.from < LEAST);
        out.sort(Comparator.comparing(ProfileChange::from).thenComparing(ProfileChange::key));
        return List.copyOf(out);
    }

    private boolean goesOn(ProfileChange next) {
        return key.equals(next.key) && next.from - to < 1 && kept == next.kept && Objects.equals(old, next.old) && Objects.equals(map, next.map);
    }
}
