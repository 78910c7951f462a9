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
    private final List<Claim> taken = new ArrayList<>();
    private final List<Lost> lost = new ArrayList<>();

    Sides(Topic topic, long value, Bounds bounds, Ballot ballot) {
        this.topic = topic;
        this.value = value;
        this.bounds = bounds;
        this.ballot = ballot;
        this.existing = bounds.room().members();
        taken.addAll(bounds.taken());
        lost.addAll(bounds.lost());
        ballot.prefers().forEach(this::voter);
        ballot.avoids().forEach(this::dislike);
        ballot.strikes().forEach(this::dislike);
        ballot.unheard().forEach(this::unheard);
    }

    List<Claim> taken() {
        return taken;
    }

    List<Lost> lost() {
        return lost;
    }

    /** Voting weight within one step of the value. */
    long weightFor() {
        return ballot.prefers().stream().filter(this::near).mapToLong(Ballot::weight).sum();
    }

    /** All voting weight; a dislike has a say only where it is for the very value. */
    long weight() {
        return ballot.prefers().stream().mapToLong(Ballot::weight).sum() + Ballot.weightOn(value, ballot.avoids());
    }

    /** Whether anything of a rank was overruled. */
    boolean overruled(Rank rank) {
        return lost.stream().anyMatch(one -> one.how() == How.OVERRULED && one.claim().author().rank() == rank);
    }

    private void voter(Claim claim) {
        if (near(claim)) {
            taken.add(claim);
        } else if (bounds.room().inTheory().contains(claim.value()) && sensible(claim.value())) {
            lost.add(new Lost(claim, Bounds.ids(against(claim)), How.OUTVOTED));
        } else {
            lost.add(new Lost(claim, Bounds.blockers(Room.of(topic).only(claim.value()), bounds.taken()), How.OVERRULED));
        }
    }

    private boolean sensible(long wanted) {
        return wanted >= topic.least() && wanted <= topic.most();
    }

    /** The votes that prevailed, dislikes of what was wanted among them; where the value lies between, all that voted otherwise. */
    private List<Claim> against(Claim claim) {
        List<Claim> out = new ArrayList<>(ballot.prefers());
        out.removeIf(other -> !near(other));
        if (out.isEmpty()) {
            out.addAll(ballot.prefers());
            out.removeIf(other -> other.value() == claim.value());
        }
        ballot.avoids().stream().filter(other -> other.value() == claim.value()).forEach(out::add);
        ballot.strikes().stream().filter(other -> other.value() == claim.value()).forEach(out::add);
        return out;
    }

    private void dislike(Claim claim) {
        if (claim.value() != value) {
            taken.add(claim);
            return;
        }
        List<String> blockers = Bounds.blockers(Room.of(topic).without(value), bounds.taken());
        if (blockers.isEmpty()) {
            lost.add(new Lost(claim, Bounds.ids(ballot.prefers().stream().filter(this::near).toList()), How.OUTVOTED));
        } else {
            lost.add(new Lost(claim, blockers, How.OVERRULED));
        }
    }

    private void unheard(Claim claim) {
        boolean agrees = (claim.verb() == Verb.PREFER) == (claim.value() == value);
        if (agrees) {
            taken.add(claim);
        } else {
            lost.add(new Lost(claim, Bounds.ids(against(claim)), How.OUTVOTED));
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
