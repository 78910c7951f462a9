package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The policy of settling done the slow way, as a second opinion: every value is listed, every claim is asked of every value, votes
 * are counted one by one. For topics whose claims all lie within their range.
 */
final class SlowSettling {

    private final Topic topic;
    private final List<Claim> claims;
    final Map<String, String> lost = new TreeMap<>();
    private Set<Long> left = new TreeSet<>();
    private boolean contradicted;
    String value = "none possible";
    String consensus = "null";

    SlowSettling(Topic topic, List<Claim> claims) {
        this.topic = topic;
        this.claims = claims;
        if (values(limits()).isEmpty()) {
            claims.stream().filter(c -> c.origin().rank() != Rank.LIMIT).forEach(c -> lost.put(id(c), "set aside"));
            return;
        }
        bounds(true);
        long settled = topic.kind() == Kind.QUANTITY ? quantity() : option();
        value = topic.text(settled);
        sides(settled);
    }

    private List<Claim> limits() {
        return claims.stream().filter(c -> c.origin().rank() == Rank.LIMIT).toList();
    }

    private Set<Long> values(List<Claim> all) {
        Set<Long> out = new TreeSet<>();
        for (long v = topic.least(); v <= topic.most(); v++) {
            long candidate = v;
            if (all.stream().allMatch(c -> lets(c, candidate))) {
                out.add(v);
            }
        }
        return out;
    }

    private static boolean lets(Claim c, long v) {
        return switch (c.verb()) {
            case AT_LEAST -> v >= c.value();
            case AT_MOST -> v <= c.value();
            case RULE_OUT -> v != c.value();
            case ONE_OF -> c.values().contains(v);
            default -> true;
        };
    }

    /** Ranks, forces and sheets from the strongest, one nested loop each. */
    private void bounds(boolean withExisting) {
        lost.clear();
        contradicted = false;
        left = values(withExisting ? limits() : limits().stream().filter(c -> c.verb() != Verb.ONE_OF).toList());
        for (String rank : List.of("rider", "coach", "shipped")) {
            for (String force : List.of("must", "should", "may")) {
                for (int sheet = 9; sheet >= 0; sheet--) {
                    int at = sheet;
                    level(claims.stream().filter(c -> c.origin().rank().word().equals(rank))
                            .filter(c -> c.origin().force().word().equals(force))
                            .filter(c -> (rank.equals("coach") ? c.origin().sheet() : 0) == at).toList());
                }
            }
        }
    }

    private void level(List<Claim> level) {
        List<Claim> up = only(level, Verb.AT_LEAST);
        up.sort((a, b) -> Long.compare(b.value(), a.value()));
        List<Claim> down = only(level, Verb.AT_MOST);
        down.sort((a, b) -> Long.compare(a.value(), b.value()));
        List<Claim> vetoes = only(level, Verb.RULE_OUT);
        vetoes.sort((a, b) -> Long.compare(a.value(), b.value()));
        if (topic.safe() != Safe.UP) {
            Collections.reverse(vetoes);
        }
        if (topic.safe() == Safe.NONE) {
            pairwise(up, down);
        } else {
            (topic.safe() == Safe.UP ? up : down).forEach(this::inTurn);
            (topic.safe() == Safe.UP ? down : up).forEach(this::inTurn);
        }
        vetoes.forEach(this::inTurn);
    }

    private void pairwise(List<Claim> up, List<Claim> down) {
        List<Claim> alive = new ArrayList<>();
        for (Claim c : up) {
            overruledOr(c, alive);
        }
        for (Claim c : down) {
            overruledOr(c, alive);
        }
        Set<Claim> aside = Collections.newSetFromMap(new java.util.IdentityHashMap<>());
        for (Claim a : alive) {
            for (Claim b : alive) {
                if (left.stream().noneMatch(v -> lets(a, v) && lets(b, v))) {
                    aside.add(a);
                    aside.add(b);
                }
            }
        }
        for (Claim c : alive) {
            if (aside.contains(c)) {
                contradicted = true;
                lost.put(id(c), "set aside");
            } else {
                left.removeIf(v -> !lets(c, v));
            }
        }
    }

    private void overruledOr(Claim c, List<Claim> alive) {
        if (left.stream().anyMatch(v -> lets(c, v))) {
            alive.add(c);
        } else {
            lost.put(id(c), "overruled");
        }
    }

    private void inTurn(Claim c) {
        if (left.stream().anyMatch(v -> lets(c, v))) {
            left.removeIf(v -> !lets(c, v));
        } else {
            lost.put(id(c), "overruled");
        }
    }

    private static List<Claim> only(List<Claim> all, Verb verb) {
        return new ArrayList<>(all.stream().filter(c -> c.verb() == verb).toList());
    }

    private Rank voting() {
        return claims.stream().filter(c -> c.verb() == Verb.PREFER).map(c -> c.origin().rank()).sorted().findFirst().orElse(null);
    }

    private List<Claim> votes() {
        return claims.stream().filter(c -> c.verb() == Verb.PREFER && c.origin().rank() == voting()).toList();
    }

    /** Each vote as often as its weight, in order. */
    private List<Long> counted() {
        List<Long> out = new ArrayList<>();
        for (Claim c : votes()) {
            for (int i = 0; i < c.origin().force().weight(); i++) {
                out.add(c.value());
            }
        }
        Collections.sort(out);
        return out;
    }

    private double wish() {
        List<Long> all = counted();
        if (all.isEmpty()) {
            return topic.standard();
        }
        long low = all.get((all.size() - 1) / 2);
        long high = all.get(all.size() / 2);
        return topic.safe() == Safe.UP ? high : topic.safe() == Safe.DOWN ? low : (low + high) / 2.0;
    }

    private long quantity() {
        Set<Long> possible = new TreeSet<>(left);
        boolean existing = claims.stream().anyMatch(c -> c.verb() == Verb.ONE_OF);
        Map<String, String> kept = new TreeMap<>(lost);
        boolean was = contradicted;
        if (existing) {
            bounds(false);
        }
        double clamped = Math.max(Collections.min(left), Math.min(Collections.max(left), wish()));
        double least = Collections.min(left);
        double most = Collections.max(left);
        Set<Long> inTheory = left;
        left = possible;
        lost.clear();
        lost.putAll(kept);
        contradicted = was;
        if (existing) {
            return closest(possible, clamped, topic.safe() == Safe.UP);
        }
        Set<Long> steps = new TreeSet<>(inTheory);
        steps.removeIf(v -> v % topic.step() != 0);
        if (steps.isEmpty()) {
            return bound(clamped, (long) least, (long) most);
        }
        Set<Long> safeward = new TreeSet<>(steps);
        safeward.removeIf(v -> topic.safe() == Safe.UP ? v < clamped : topic.safe() == Safe.DOWN && v > clamped);
        return closest(safeward.isEmpty() ? steps : safeward, clamped, false);
    }

    private long bound(double clamped, long least, long most) {
        if (clamped == least || clamped == most) {
            return (long) clamped;
        }
        return switch (topic.safe()) {
            case UP -> most;
            case DOWN -> least;
            case NONE -> most - clamped < clamped - least ? most : least;
        };
    }

    private static long closest(Set<Long> values, double wanted, boolean upper) {
        double distance = values.stream().mapToDouble(v -> Math.abs(v - wanted)).min().orElseThrow();
        List<Long> best = values.stream().filter(v -> Math.abs(v - wanted) == distance).sorted().toList();
        return upper ? best.get(best.size() - 1) : best.get(0);
    }

    private long option() {
        List<Long> open = new ArrayList<>(left);
        for (Rank rank : Rank.values()) {
            if (voting() == null || rank.compareTo(voting()) < 0) {
                open = cheapest(open, v -> weight(Verb.AVOID, rank, v));
            }
        }
        if (voting() == null) {
            return fallback(open, topic.standard());
        }
        if (topic.kind() == Kind.OPTIONS) {
            List<Long> best = cheapest(open, v -> weight(Verb.AVOID, voting(), v) - weight(Verb.PREFER, voting(), v));
            return best.stream().filter(v -> weight(Verb.PREFER, voting(), v) > 0).findFirst()
                    .orElseGet(() -> fallback(best, topic.standard()));
        }
        List<Long> all = new ArrayList<>();
        for (long v = 0; v <= topic.most(); v++) {
            all.add(v);
        }
        long wanted = middle(cheapest(all, this::apart));
        return fallback(cheapest(open, this::apart), wanted);
    }

    private long apart(long v) {
        long sum = weight(Verb.AVOID, voting(), v);
        for (long vote : counted()) {
            sum += Math.abs(vote - v);
        }
        return sum;
    }

    private long fallback(List<Long> open, long wanted) {
        if (open.contains(wanted)) {
            return wanted;
        }
        return topic.kind() == Kind.OPTIONS ? open.get(0) : middle(cheapest(open, v -> Math.abs(v - wanted)));
    }

    private long middle(List<Long> equals) {
        return switch (topic.safe()) {
            case UP -> Collections.max(equals);
            case DOWN -> Collections.min(equals);
            case NONE -> equals.get((equals.size() - 1) / 2);
        };
    }

    private interface Cost {
        long of(long option);
    }

    private static List<Long> cheapest(List<Long> options, Cost cost) {
        long least = Long.MAX_VALUE;
        for (long option : options) {
            least = Math.min(least, cost.of(option));
        }
        List<Long> out = new ArrayList<>();
        for (long option : options) {
            if (cost.of(option) == least) {
                out.add(option);
            }
        }
        return out;
    }

    private long weight(Verb verb, Rank rank, long option) {
        long sum = 0;
        for (Claim c : claims) {
            if (c.verb() == verb && c.origin().rank() == rank && c.value() == option) {
                sum += c.origin().force().weight();
            }
        }
        return sum;
    }

    private void sides(long settled) {
        long all = counted().size() + weight(Verb.AVOID, voting(), settled);
        lost.keySet().removeIf(id -> claims.stream().anyMatch(c -> id(c).equals(id) && lets(c, settled)));
        Set<Long> allowed = withoutExisting();
        long met = 0;
        for (Claim c : claims) {
            boolean votes = c.origin().rank() == voting();
            if (c.verb() == Verb.PREFER && met(c.value(), settled)) {
                met += votes ? c.origin().force().weight() : 0;
            } else if (c.verb() == Verb.PREFER) {
                boolean open = allowed.contains(c.value()) && !nothingNearer(c.value(), settled);
                lost.put(id(c), votes && !open ? "overruled" : "outvoted");
            }
            if (c.verb() == Verb.AVOID && c.value() == settled) {
                boolean heard = voting() == null || c.origin().rank().compareTo(voting()) <= 0;
                lost.put(id(c), heard && left.size() == 1 ? "overruled" : "outvoted");
            }
        }
        consensus = consensus(met, all);
    }

    private Set<Long> withoutExisting() {
        List<Claim> holding = claims.stream().filter(c -> c.verb() != Verb.ONE_OF && !lost.containsKey(id(c))).toList();
        return values(holding);
    }

    private String consensus(long near, long all) {
        if (contradicted) {
            return "divided";
        }
        if (voting() == null) {
            return claims.isEmpty() ? "default" : "bounds alone";
        }
        boolean clash = claims.stream().anyMatch(c -> c.origin().rank() == voting() && "overruled".equals(lost.get(id(c))));
        if (near == all && !clash) {
            return "unanimous";
        }
        return near * 3 >= all * 2 ? "majority" : "divided";
    }

    /** A wish is met by its own value, a quantity also by one that is no whole step away, or one tick where that is the step. */
    private boolean met(long wish, long settled) {
        long apart = Math.abs(wish - settled);
        return apart == 0 || topic.kind() == Kind.QUANTITY && (apart < topic.step() || topic.step() == 1 && apart == 1);
    }

    /** Whether what exists has nothing that is left and nearer to a wish. */
    private boolean nothingNearer(long wish, long settled) {
        if (claims.stream().noneMatch(c -> c.verb() == Verb.ONE_OF)) {
            return false;
        }
        return topic.kind() == Kind.QUANTITY ? left.stream().noneMatch(v -> Math.abs(v - wish) < Math.abs(settled - wish))
                : !left.contains(wish);
    }

    private static String id(Claim c) {
        return c.origin().rule();
    }
}
