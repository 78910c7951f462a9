package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.GroundReader;
import courseworthy.course.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** What a person wrote into a profile since it was taken from a map, and how it goes into a profile that is imported again. */
public final class ProfileEdits {

    /** Ends of stretches nearer to each other than this are one, m. */
    private static final double SAME = 5;

    private final List<Stretch> old;
    private final List<ProfileChange> changes = new ArrayList<>();

    private ProfileEdits(List<Stretch> old) {
        this.old = old;
    }

    /**
     * A profile imported again with what was written into an older one.
     *
     * @param stretches by the map as it is now
     * @param changes   what was kept, and what the map says otherwise than then, in order
     */
    public record MergedProfile(List<Stretch> stretches, List<ProfileChange> changes) {

        public MergedProfile {
            stretches = List.copyOf(stretches);
            changes = List.copyOf(changes);
        }
    }

    /**
     * Puts edits into stretches.
     *
     * @param old   of the older profile, as long together as {@code fresh}
     * @param fresh by the map as it is now
     */
    public static MergedProfile into(List<Stretch> fresh, List<Stretch> old) {
        ProfileEdits edits = new ProfileEdits(old);
        List<Stretch> out = new ArrayList<>();
        double from = 0;
        for (Stretch stretch : fresh) {
            edits.cut(stretch, from, out);
            from += stretch.length();
        }
        return new MergedProfile(out, ProfileChange.joined(edits.changes));
    }

    /** A fresh stretch, cut where an edited one ends. */
    private void cut(Stretch fresh, double from, List<Stretch> out) {
        double to = from + fresh.length();
        TreeSet<Double> cuts = new TreeSet<>();
        double at = 0;
        for (Stretch each : old) {
            double start = at;
            at += each.length();
            if (!edits(each).isEmpty() || !each.alternatives().isEmpty() || each.steepest() != null || each.passage() != null) {
                cutAt(start, from, to, cuts);
                cutAt(at, from, to, cuts);
            }
        }
        cuts.add(to);
        double start = from;
        for (double end : cuts) {
            Stretch was = at((start + end) / 2);
            out.add(edited(part(fresh, end - start), was, start, end));
            start = end;
        }
    }

    /** A part of a stretch, with its share of the climbing. */
    private static Stretch part(Stretch whole, double length) {
        double share = length / whole.length();
        return whole.over(length, whole.ascent() == null ? null : Double.valueOf(whole.ascent() * share),
                whole.descent() == null ? null : Double.valueOf(whole.descent() * share));
    }

    private static void cutAt(double at, double from, double to, TreeSet<Double> cuts) {
        Double before = cuts.floor(at);
        if (at > from + SAME && at < to - SAME && (before == null || at - before > SAME)) {
            cuts.add(at);
        }
    }

    private Stretch at(double metres) {
        double end = 0;
        for (Stretch each : old) {
            end += each.length();
            if (metres <= end) {
                return each;
            }
        }
        return old.get(old.size() - 1);
    }

    /** Keys that a person wrote, with their values; null for one that was taken out. */
    static Map<String, String> edits(Stretch stretch) {
        Map<String, String> now = GroundPairs.of(stretch.ground());
        Map<String, String> then = stretch.origin() == null ? Map.of() : stretch.origin().imported();
        Map<String, String> out = new LinkedHashMap<>();
        for (String key : GroundReader.KEYS) {
            if (!Objects.equals(now.get(key), then.get(key))) {
                out.put(key, now.get(key));
            }
        }
        return out;
    }

    private Stretch edited(Stretch fresh, Stretch was, double from, double to) {
        Map<String, String> edits = edits(was);
        GroundOrigin origin = fresh.origin() == null ? GroundOrigin.UNMATCHED : fresh.origin();
        Map<String, String> then = was.origin() == null ? Map.of() : was.origin().imported();
        Map<String, String> map = GroundPairs.of(fresh.ground());
        Map<String, String> values = with(map, edits);
        for (String key : GroundReader.KEYS) {
            boolean kept = edits.containsKey(key);
            if (kept || was.origin() != null && !Objects.equals(map.get(key), then.get(key))) {
                changes.add(new ProfileChange(from, to, key, kept ? edits.get(key) : then.get(key), map.get(key), kept));
            }
        }
        Set<Map<String, String>> open = open(fresh.alternatives(), map, edits);
        Set<Map<String, String>> before = open(was.alternatives(), GroundPairs.of(was.ground()), edits);
        if (was.origin() != null && was.origin().sameBasis(origin) && !before.equals(open)) {
            // The map says what it said then, so that a person changed what it may be.
            changes.add(new ProfileChange(from, to, "may be", texts(before), texts(open), true));
            open = before;
        }
        List<Ground> alternatives = new ArrayList<>();
        for (Map<String, String> differs : open) {
            Map<String, String> both = with(values, differs);
            if (GroundPairs.agree(both)) {
                alternatives.add(GroundPairs.ground(both));
            }
        }
        Double steepest = was.steepest() == null ? fresh.steepest() : was.steepest();
        return new Stretch(fresh.length(), fresh.ascent(), fresh.descent(), steepest, GroundPairs.ground(values), alternatives, origin, 0)
                .passed(was.passage() == null ? fresh.passage() : was.passage());
    }

    /** What the ground may be instead, without what it is likely to be; what is edited is no longer open. */
    private static Set<Map<String, String>> open(List<Ground> alternatives, Map<String, String> likely, Map<String, String> edits) {
        Set<Map<String, String>> out = new LinkedHashSet<>();
        for (Ground other : alternatives) {
            Map<String, String> differs = new LinkedHashMap<>(GroundPairs.of(other));
            differs.entrySet().removeIf(each -> Objects.equals(likely.get(each.getKey()), each.getValue()));
            if (!differs.isEmpty() && differs.keySet().stream().noneMatch(edits::containsKey)) {
                out.add(differs);
            }
        }
        return out;
    }

    private static String texts(Set<Map<String, String>> open) {
        return open.isEmpty() ? null : String.join(" / ", open.stream().map(GroundPairs::text).toList());
    }

    /** What a person wrote counts; what the map says against it does not. */
    private static Map<String, String> with(Map<String, String> map, Map<String, String> edits) {
        Map<String, String> out = new LinkedHashMap<>(map);
        edits.forEach((key, value) -> {
            if (value == null) {
                out.remove(key);
            } else {
                out.put(key, value);
            }
        });
        for (String key = GroundPairs.contradiction(out); key != null; key = GroundPairs.contradiction(out)) {
            out.remove(edits.containsKey(key) ? other(out, edits) : key);
        }
        return out;
    }

    /** The first key that the map gave. */
    private static String other(Map<String, String> values, Map<String, String> edits) {
        return values.keySet().stream().filter(key -> !edits.containsKey(key)).findFirst().orElse(values.keySet().iterator().next());
    }
}
