package courseworthy.analysis;

import courseworthy.analysis.Impact.Kind;
import courseworthy.analysis.Impact.ChangedRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some of a roster or of a library, named in few words.
 *
 * @param all   whether it is all of them but {@code but}
 * @param but   those left out; empty unless {@code all}
 * @param kinds all of these kinds
 * @param names and these besides
 */
public record GroupPhrase(boolean all, List<String> but, List<Kind> kinds, List<String> names) {

    /** As many may be left out for "all but", and no more than half as many as are meant; else the names of these are easier to read. */
    private static final int FEW = 4;
    /** From here on a kind is easier to read than the names. */
    private static final int MANY = 3;

    /** @param chosen names of some of them, at least one */
    public static GroupPhrase of(List<ChangedRule> everyone, Set<String> chosen) {
        List<String> but = everyone.stream().map(ChangedRule::name).filter(name -> !chosen.contains(name)).toList();
        if (but.isEmpty() && everyone.size() > 1) {
            return new GroupPhrase(true, List.of(), List.of(), List.of());
        }
        List<Kind> kinds = new ArrayList<>();
        Set<String> open = new LinkedHashSet<>();
        everyone.stream().map(ChangedRule::name).filter(chosen::contains).forEach(open::add);
        Map<Kind, Set<String>> within = kinds(everyone);
        within.values().removeIf(members -> !chosen.containsAll(members));
        for (Kind kind = largest(within, open); kind != null; kind = largest(within, open)) {
            kinds.add(kind);
            open.removeAll(within.get(kind));
        }
        GroupPhrase named = new GroupPhrase(false, List.of(), kinds, List.copyOf(open));
        GroupPhrase others = new GroupPhrase(true, but, List.of(), List.of());
        return but.size() <= FEW && 2 * but.size() <= chosen.size() && others.words() < named.words() ? others : named;
    }

    /** How many things are named. */
    int words() {
        return (all ? 1 : 0) + but.size() + kinds.size() + names.size();
    }

    private static Kind largest(Map<Kind, Set<String>> kinds, Set<String> open) {
        Kind out = null;
        long most = MANY - 1;
        for (Map.Entry<Kind, Set<String>> kind : kinds.entrySet()) {
            long holds = kind.getValue().stream().filter(open::contains).count();
            if (holds > most) {
                out = kind.getKey();
                most = holds;
            }
        }
        return out;
    }

    /** The names of each kind. */
    static Map<Kind, Set<String>> kinds(List<ChangedRule> all) {
        Map<Kind, Set<String>> out = new LinkedHashMap<>();
        for (ChangedRule each : all) {
            each.kinds().forEach(kind -> out.computeIfAbsent(kind, k -> new LinkedHashSet<>()).add(each.name()));
        }
        return out;
    }
}
