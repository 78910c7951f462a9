package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.Lost;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;

/** Who speaks for a settled value and who lost against whom. */
final class Sides {

    private final Topic topic;
    private final long value;
    private final Bounds bounds;
    private final Ballot ballot;
    private final NavigableSet<Long> existing;
    private final List<Claim> nearby;
    private final List<String> idsNearby;
    private final List<Claim> taken = new ArrayList<>();
    private final List<Lost> lost = new ArrayList<>();

    Sides(Topic topic, long value, Bounds bounds, Ballot ballot) {
        this.topic = topic;
        this.value = value;
        this.bounds = bounds;
        this.ballot = ballot;
        this.existing = bounds.room().members();
        this.nearby = nearby();
        this.idsNearby = Bounds.ids(nearby);
        taken.addAll(bounds.taken());
        lost.addAll(bounds.lost());
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

    List<Lost> lost() {
        return lost;
    }

    /** Voting weight within one step of the value. */
    long weightFor() {
        return Ballot.weight(nearby);
    }

    private List<Claim> nearby() {
        List<Claim> out = new ArrayList<>();
        for (Claim claim : ballot.prefers()) {
            if (near(claim)) {
                out.add(claim);
            }
        }
        return out;
    }

    /** All voting weight; a dislike has a say only where it is for the very value. */
    long weight() {
        return Ballot.weight(ballot.prefers()) + Ballot.weightOn(value, ballot.avoids());
    }

    /** Whether anything of a rank was overruled. */
    boolean overruled(Rank rank) {
        for (Lost one : lost) {
            if (one.how() == How.OVERRULED && one.claim().author().rank() == rank) {
                return true;
            }
        }
        return false;
    }

    private void voter(Claim claim) {
        if (near(claim)) {
            taken.add(claim);
        } else if (bounds.room().inTheory().contains(claim.value()) && sensible(claim.value())) {
            lost.add(new Lost(claim, against(claim), How.OUTVOTED));
        } else {
            lost.add(new Lost(claim, Bounds.blockers(Room.of(topic).only(claim.value()), bounds.taken()), How.OVERRULED));
        }
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
        return Bounds.ids(out);
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
        List<String> blockers = Bounds.blockers(Room.of(topic).without(value), bounds.taken());
        if (blockers.isEmpty()) {
            lost.add(new Lost(claim, idsNearby, How.OUTVOTED));
        } else {
            lost.add(new Lost(claim, blockers, How.OVERRULED));
        }
    }

    private void unheard(Claim claim) {
        boolean agrees = (claim.verb() == Verb.PREFER) == (claim.value() == value);
        if (agrees) {
            taken.add(claim);
        } else {
            lost.add(new Lost(claim, against(claim), How.OUTVOTED));
        }
    }

    /** Whether a preference lies within one step of the value; where only some values exist, they are the steps. */
    private boolean near(Claim claim) {
        if (topic.kind() == Kind.OPTIONS) {
            return claim.value() == value;
        }
        if (Math.abs(claim.value() - value) <= topic.step()) {
            return true;
        }
        return topic.kind() == Kind.QUANTITY && existing != null && nextTo(claim.value());
    }

    private boolean nextTo(long wanted) {
        long nearest = new Rounding(topic).toMember(2 * wanted, existing);
        return nearest == value || Long.valueOf(nearest).equals(existing.lower(value)) || Long.valueOf(nearest).equals(existing.higher(value));
    }
}
