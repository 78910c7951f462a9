package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;

/**
 * Who speaks for a settled value and who lost against whom. Both follow from the value alone: a claim that it meets is for it, even
 * where that claim had no say; one that it does not meet is against it.
 */
final class ClaimSides {

    private final Topic topic;
    private final long value;
    private final BoundSettler bounds;
    private final Ballot ballot;
    private final Agreement agreement;
    private final List<Claim> nearby;
    private final List<String> idsNearby;
    private final List<Claim> taken = new ArrayList<>();
    private final List<LosingClaim> lost = new ArrayList<>();

    ClaimSides(Topic topic, long value, BoundSettler bounds, Ballot ballot) {
        this.topic = topic;
        this.value = value;
        this.bounds = bounds;
        this.ballot = ballot;
        this.agreement = new Agreement(topic, value);
        this.nearby = nearby();
        this.idsNearby = BoundSettler.ids(nearby);
        taken.addAll(bounds.taken());
        for (LosingClaim each : bounds.lost()) {
            bound(each);
        }
        for (Claim claim : ballot.prefers()) {
            voter(claim);
        }
        for (Claim claim : ballot.avoids()) {
            dislike(claim);
        }
        for (Claim claim : ballot.strikes()) {
            dislike(claim);
        }
        for (Claim claim : ballot.unheard()) {
            unheard(claim);
        }
    }

    List<Claim> taken() {
        return taken;
    }

    List<LosingClaim> lost() {
        return lost;
    }

    /** Voting weight of the preferences that the value meets. */
    long weightFor() {
        return Ballot.weight(nearby);
    }

    private List<Claim> nearby() {
        List<Claim> out = new ArrayList<>();
        for (Claim claim : ballot.prefers()) {
            if (agreement.met(claim)) {
                out.add(claim);
            }
        }
        return out;
    }

    /** A bound that was set aside may be kept to all the same. */
    private void bound(LosingClaim each) {
        if (agreement.met(each.claim())) {
            taken.add(each.claim());
        } else {
            lost.add(each);
        }
    }

    /** All voting weight; a dislike has a say only where it is for the very value. */
    long weight() {
        return Ballot.weight(ballot.prefers()) + Ballot.weightOn(value, ballot.avoids());
    }

    /** Whether anything of a rank was overruled. */
    boolean overruled(Rank rank) {
        for (LosingClaim one : lost) {
            if (one.how() == How.OVERRULED && one.claim().origin().rank() == rank) {
                return true;
            }
        }
        return false;
    }

    private void voter(Claim claim) {
        if (agreement.met(claim)) {
            taken.add(claim);
            return;
        }
        List<String> blockers = blockers(claim.value());
        if (blockers.isEmpty() && sensible(claim.value())) {
            lost.add(new LosingClaim(claim, against(claim), How.OUTVOTED));
        } else {
            lost.add(new LosingClaim(claim, blockers, How.OVERRULED));
        }
    }

    /** The bounds and vetoes that keep a wish from being met, or what exists where that has nothing nearer; empty where only votes did. */
    private List<String> blockers(long wish) {
        FeasibleValues wanted = FeasibleValues.of(topic).only(wish);
        List<Claim> claimed = new ArrayList<>(bounds.taken());
        claimed.removeIf(claim -> claim.verb() == Verb.ONE_OF);
        List<String> out = BoundSettler.blockers(wanted, claimed);
        return out.isEmpty() && !offered(wish) ? BoundSettler.blockers(wanted, bounds.taken()) : out;
    }

    /** Whether something exists that is left and lies nearer to a wish than the value. */
    private boolean offered(long wish) {
        NavigableSet<Long> existing = bounds.room().members();
        for (long other : existing == null ? List.of(wish) : existing) {
            boolean nearer = topic.kind() == Kind.QUANTITY ? Math.abs(other - wish) < Math.abs(value - wish) : other == wish;
            if (nearer && bounds.room().contains(other)) {
                return true;
            }
        }
        return false;
    }

    private boolean sensible(long wanted) {
        return wanted >= topic.least() && wanted <= topic.most();
    }

    /** The votes that prevailed, dislikes of what was wanted among them; where the value lies between, all that voted otherwise. */
    private List<String> against(Claim claim) {
        List<Claim> more = new ArrayList<>();
        if (nearby.isEmpty()) {
            add(ballot.prefers(), claim.value(), false, more);
        }
        add(ballot.avoids(), claim.value(), true, more);
        add(ballot.strikes(), claim.value(), true, more);
        if (more.isEmpty()) {
            return idsNearby;
        }
        List<Claim> out = new ArrayList<>(nearby);
        out.addAll(more);
        return BoundSettler.ids(out);
    }

    /** Adds those of some claims that are for a value, or those that are not. */
    private static void add(List<Claim> claims, long value, boolean itself, List<Claim> out) {
        for (Claim claim : claims) {
            if ((claim.value() == value) == itself) {
                out.add(claim);
            }
        }
    }

    private void dislike(Claim claim) {
        if (claim.value() != value) {
            taken.add(claim);
            return;
        }
        List<String> blockers = BoundSettler.blockers(FeasibleValues.of(topic).without(value), bounds.taken());
        if (blockers.isEmpty()) {
            lost.add(new LosingClaim(claim, idsNearby, How.OUTVOTED));
        } else {
            lost.add(new LosingClaim(claim, blockers, How.OVERRULED));
        }
    }

    private void unheard(Claim claim) {
        if (agreement.met(claim)) {
            taken.add(claim);
        } else {
            lost.add(new LosingClaim(claim, against(claim), How.OUTVOTED));
        }
    }
}
