package courseworthy.analysis;

import courseworthy.analysis.Impact.ChangedRule;
import courseworthy.analysis.Impact.ImpactRide;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some rides told in few words: blocks of riders on courses that together hold exactly these rides, each ride in one of them.
 *
 * <p>Each time the block is taken that tells most rides for each thing it names (the greedy cover, which needs at most ln n times as much as
 * the shortest: Chvatal 1979, Mathematics of Operations Research 4:233-235).
 */
public record RideCover(List<CoverBlock> blocks) {

    /** Some riders, each on each of some courses. */
    public record CoverBlock(GroupPhrase riders, GroupPhrase courses) {

        /** How many things are named, and one for the block itself. */
        int words() {
            return riders.words() + courses.words() + 1;
        }
    }

    /** All of some riders on all of some courses. */
    private record Product(Set<String> riders, Set<String> courses) {

        CoverBlock named(List<ChangedRule> roster, List<ChangedRule> library) {
            return new CoverBlock(GroupPhrase.of(roster, riders), GroupPhrase.of(library, courses));
        }

        int holding(Set<ImpactRide> open) {
            int count = 0;
            for (ImpactRide ride : open) {
                count += riders.contains(ride.rider()) && courses.contains(ride.course()) ? 1 : 0;
            }
            return count;
        }
    }

    /** @param rides some of the rides of an impact */
    public static RideCover of(Set<ImpactRide> rides, List<ChangedRule> riders, List<ChangedRule> courses) {
        Set<ImpactRide> open = new LinkedHashSet<>(rides);
        List<CoverBlock> out = new ArrayList<>();
        while (!open.isEmpty()) {
            Product best = best(products(open, riders, courses), open, riders, courses);
            out.add(best.named(riders, courses));
            open.removeIf(ride -> best.riders().contains(ride.rider()) && best.courses().contains(ride.course()));
        }
        return new RideCover(out);
    }

    private static Product best(List<Product> products, Set<ImpactRide> open, List<ChangedRule> riders, List<ChangedRule> courses) {
        Product best = null;
        double most = 0;
        for (Product product : products) {
            int holds = product.holding(open);
            double worth = holds == 0 ? 0 : (double) holds / product.named(riders, courses).words();
            if (worth > most) {
                best = product;
                most = worth;
            }
        }
        return best;
    }

    /** The largest blocks of each set of riders that could be named, and of each such set of courses. */
    private static List<Product> products(Set<ImpactRide> rides, List<ChangedRule> riders, List<ChangedRule> courses) {
        Map<String, Set<String>> ridersOf = new LinkedHashMap<>();
        Map<String, Set<String>> coursesOf = new LinkedHashMap<>();
        for (ImpactRide ride : rides) {
            ridersOf.computeIfAbsent(ride.course(), course -> new LinkedHashSet<>()).add(ride.rider());
            coursesOf.computeIfAbsent(ride.rider(), rider -> new LinkedHashSet<>()).add(ride.course());
        }
        List<Product> out = new ArrayList<>();
        for (Set<String> some : sets(riders, ridersOf)) {
            out.add(new Product(some, holding(some, ridersOf)));
        }
        for (Set<String> some : sets(courses, coursesOf)) {
            out.add(new Product(holding(some, coursesOf), some));
        }
        return out;
    }

    /** All, those of a kind, those that belong together, and each alone. */
    private static Set<Set<String>> sets(List<ChangedRule> all, Map<String, Set<String>> together) {
        Set<Set<String>> out = new LinkedHashSet<>();
                Set<String> everyone = new LinkedHashSet<>();
        all.forEach(each -> everyone.add(each.name()));
        out.add(everyone);
        out.addAll(GroupPhrase.kinds(all).values());
        out.addAll(together.values());
        together.values().forEach(set -> set.forEach(name -> out.add(Set.of(name))));
        return out;
    }

    /** The keys whose set holds all of some. */
    private static Set<String> holding(Set<String> some, Map<String, Set<String>> by) {
        Set<String> out = new LinkedHashSet<>();
        by.forEach((key, set) -> {
            if (set.containsAll(some)) {
                out.add(key);
            }
        });
        return out;
    }
}
