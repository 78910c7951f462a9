package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Settles what rules claim on one topic into one decision. The order of the claims has no bearing, nor has one that is
 * given twice.
 *
 * <ol>
 * <li>Bounds and vetoes, strongest level first; levels compare rank, then force, then for coaches the later sheet before the
 * earlier. Within a level each is taken in turn if it leaves something, else it is overruled: the safe side's bounds first, tightest
 * first, then the opposite ones, tightest first, then vetoes from the least safe option to the safest. Where no side is safe, bounds
 * of one level that contradict each other are set aside, and the advice is divided.</li>
 * <li>Limits are never overruled: where they leave nothing, no answer is possible.</li>
 * <li>Preferences: only the highest rank that prefers anything votes, with weights must 4, should 2, may 1. Quantities and ordered
 * options take the weighted median, ties to the safe side (none: the middle), then the nearest value inside the bounds. Other options
 * take the highest weight, dislikes counting against, ties by the topic's order. What a higher rank dislikes without preferring
 * anything is struck from the vote where anything else is left. A preference never bounds, whatever its force.</li>
 * <li>Bounds and no preference: the default, brought inside them. Nothing at all: the default.</li>
 * <li>A quantity is rounded to its step, inside the bounds, toward the safe side. Where only some values exist, it is the existing
 * value inside the bounds that is nearest; bounds that are no limits give way where none is inside.</li>
 * <li>For and against follow from the value, as {@link Agreement} has it, and the consensus from the voting weight that is for it.</li>
 * </ol>
 *
 * <p>A topic's sensible range holds defaults and preferences, and gives way to bounds.
 */
public final class Settler {

    private final Topic topic;
    private final List<Claim> bounding = new ArrayList<>();
    private final List<Claim> limits = new ArrayList<>();
    private final BoundSettler bounds;
    private final Ballot ballot;

    private Settler(Topic topic, List<Claim> claims) {
        List<Claim> sorted = eachOnce(claims);
        this.topic = topic;
        for (Claim claim : sorted) {
            check(topic, claim);
            boolean bounds = claim.verb() != Verb.PREFER && claim.verb() != Verb.AVOID;
            if (bounds) {
                bounding.add(claim);
            }
            if (bounds && claim.origin().rank() == Rank.LIMIT) {
                limits.add(claim);
            }
        }
        this.bounds = new BoundSettler(topic, FeasibleValues.of(topic), bounding);
        this.ballot = new Ballot(topic, sorted);
    }

    private static List<Claim> eachOnce(List<Claim> claims) {
        List<Claim> sorted = new ArrayList<>(claims);
        sorted.sort(ClaimOrder.STRONGEST_FIRST);
        List<Claim> out = new ArrayList<>(sorted.size());
        for (Claim claim : sorted) {
            if (out.isEmpty() || !claim.equals(out.get(out.size() - 1))) {
                out.add(claim);
            }
        }
        return out;
    }

    /**
     * Settles all claims on a topic.
     *
     * @throws IllegalArgumentException for a claim on another topic, or one whose verb the topic's kind or the rule's rank does not
     *                                  allow; readers refuse such rules
     */
    public static Decision settle(Topic topic, List<Claim> claims) {
        Settler settling = new Settler(topic, claims);
        List<Claim> conflict = BoundSettler.conflict(FeasibleValues.of(topic), settling.limits);
        return conflict.isEmpty() ? settling.settled() : nonePossible(topic, claims, conflict);
    }

    /** The decision on a topic that is as it is, whatever is claimed: for and against follow from the value. */
    public static Decision given(Topic topic, List<Claim> claims, long value) {
        Agreement agreement = new Agreement(topic, value);
        List<Claim> taken = new ArrayList<>();
        List<LosingClaim> lost = new ArrayList<>();
        for (Claim claim : eachOnce(claims)) {
            if (agreement.met(claim)) {
                taken.add(claim);
            } else {
                lost.add(new LosingClaim(claim, List.of(), How.SET_ASIDE));
            }
        }
        taken.sort(ClaimOrder.OUTPUT);
        return new Decision(topic, Status.SETTLED, value, label(claims, value), Consensus.BOUNDS_ALONE, taken, inOrder(lost), "");
    }

    /** The decision on a topic that does not apply: its claims are kept, unsettled. */
    public static Decision notApplicable(Topic topic, List<Claim> claims, String why) {
        List<LosingClaim> lost = new ArrayList<>();
        for (Claim claim : claims) {
            lost.add(new LosingClaim(claim, List.of(), How.SET_ASIDE));
        }
        return new Decision(topic, Status.NOT_APPLICABLE, null, "", null, List.of(), inOrder(lost), why);
    }

    private static Decision nonePossible(Topic topic, List<Claim> claims, List<Claim> conflict) {
        List<Claim> limits = new ArrayList<>();
        List<LosingClaim> lost = new ArrayList<>();
        for (Claim claim : claims) {
            if (claim.origin().rank() == Rank.LIMIT) {
                limits.add(claim);
            } else {
                lost.add(new LosingClaim(claim, BoundSettler.ids(conflict), How.SET_ASIDE));
            }
        }
        limits.sort(ClaimOrder.OUTPUT);
        return new Decision(topic, Status.NONE_POSSIBLE, null, "", null, limits, inOrder(lost), inWords(conflict));
    }

    private static String inWords(List<Claim> conflict) {
        List<String> parts = conflict.stream().sorted(ClaimOrder.OUTPUT)
                .map(claim -> says(claim) + " (" + claim.origin().rule() + ")").toList();
        return parts.size() == 1
                ? "This limit leaves nothing: " + parts.get(0) + "."
                : "These limits leave nothing together: " + String.join("; ", parts) + ".";
    }

    private static String says(Claim claim) {
        if (claim.verb() == Verb.ONE_OF) {
            List<Long> values = claim.values();
            String from = claim.topic().text(values.get(0));
            return values.size() == 1 ? "only " + from + " exists"
                    : "only " + values.size() + " values exist, from " + from + " to " + claim.topic().text(values.get(values.size() - 1));
        }
        return claim.verb().word() + " " + claim.topic().text(claim.value());
    }

    private static void check(Topic topic, Claim claim) {
        boolean allowed = switch (claim.verb()) {
            case AT_LEAST, AT_MOST -> topic.kind() != Kind.OPTIONS;
            case AVOID, RULE_OUT -> topic.kind() != Kind.QUANTITY;
            case PREFER -> true;
            case ONE_OF -> claim.origin().rank() == Rank.LIMIT;
        };
        if (!allowed || !listed(topic, claim) || !claim.topic().equals(topic)) {
            throw new IllegalArgumentException(claim.origin().rule() + " cannot say " + claim.verb().word() + " " + claim.values()
                    + " of " + claim.topic() + " when " + topic + " is settled");
        }
    }

    private static boolean listed(Topic topic, Claim claim) {
        if (topic.kind() == Kind.QUANTITY) {
            return true;
        }
        for (long value : claim.values()) {
            if (value < topic.least() || value > topic.most()) {
                return false;
            }
        }
        return true;
    }

    private Decision settled() {
        long value = topic.kind() == Kind.QUANTITY ? quantity() : ballot.option(bounds.room());
        ClaimSides sides = new ClaimSides(topic, value, bounds, ballot);
        List<Claim> taken = new ArrayList<>(sides.taken());
        taken.sort(ClaimOrder.OUTPUT);
        return new Decision(topic, Status.SETTLED, value, label(limits, value), consensus(sides), taken, inOrder(sides.lost()), "");
    }

    private long quantity() {
        Rounding rounding = new Rounding(topic);
        long wish = ballot.rank() == null ? 2 * topic.standard() : ballot.medianInHalfTicks();
        if (bounds.room().members() == null) {
            return rounding.toStep(rounding.clamped(wish, bounds.room()), bounds.room());
        }
        List<Claim> claimed = new ArrayList<>();
        for (Claim claim : bounding) {
            if (claim.verb() != Verb.ONE_OF) {
                claimed.add(claim);
            }
        }
        FeasibleValues inTheory = new BoundSettler(topic, FeasibleValues.of(topic), claimed).room();
        NavigableSet<Long> possible = new TreeSet<>();
        for (long member : bounds.room().members()) {
            if (bounds.room().contains(member)) {
                possible.add(member);
            }
        }
        return rounding.toMember(rounding.clamped(wish, inTheory), possible);
    }

    /** The text that came with the value where only some values exist. */
    private static String label(List<Claim> claims, long value) {
        for (Claim limit : claims) {
            int at = limit.verb() == Verb.ONE_OF ? limit.values().indexOf(value) : -1;
            if (at >= 0 && at < limit.labels().size()) {
                return limit.labels().get(at);
            }
        }
        return "";
    }

    private Consensus consensus(ClaimSides sides) {
        if (bounds.contradicted()) {
            return Consensus.DIVIDED;
        }
        if (ballot.rank() == null) {
            return bounding.isEmpty() && ballot.strikes().isEmpty() ? Consensus.DEFAULT : Consensus.BOUNDS_ALONE;
        }
        if (sides.weightFor() == sides.weight() && !sides.overruled(ballot.rank())) {
            return Consensus.UNANIMOUS;
        }
        return 3 * sides.weightFor() >= 2 * sides.weight() ? Consensus.MAJORITY : Consensus.DIVIDED;
    }

    private enum LostOrder implements Comparator<LosingClaim> {
        BY_CLAIM;

        @Override
        public int compare(LosingClaim one, LosingClaim other) {
            return ClaimOrder.OUTPUT.compare(one.claim(), other.claim());
        }
    }

    private static List<LosingClaim> inOrder(List<LosingClaim> lost) {
        List<LosingClaim> sorted = new ArrayList<>(lost);
        sorted.sort(LostOrder.BY_CLAIM);
        return sorted;
    }
}
