package courseworthy.build;

import courseworthy.topic.Topic;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.util.List;

/**
 * The count of a build, term by term: what the search made as small as could be. Costs are in millionths of a notch.
 *
 * @param perKilogram seconds that 1 kg costs on the course, over all days; 0 where time counts for nothing
 * @param departures  decisions that the build does not meet
 * @param empty       places that a bike needs and that stay empty
 * @param masses      parts whose mass counts
 * @param works       swaps
 * @param pairs       what two parts cost together
 */
public record BuildCount(long perKilogram, List<Departure> departures, List<MountingPlace> empty, List<Mass> masses, List<WorkCount> works, List<PairCount> pairs) {

    public BuildCount {
        departures = List.copyOf(departures);
        empty = List.copyOf(empty);
        masses = List.copyOf(masses);
        works = List.copyOf(works);
        pairs = List.copyOf(pairs);
    }

    /**
     * A decision that is not met.
     *
     * @param parts     what realises it
     * @param wanted    the decision, in the topic's ticks or positions
     * @param got       what the parts have; null where they do not say
     * @param shortfall how far they are off
     */
    public record Departure(Topic topic, List<Part> parts, Long wanted, Long got, Shortfall shortfall) {
        public Departure {
            parts = List.copyOf(parts);
        }

        public long cost() {
            return shortfall.loss() * BuildVariables.LOSS;
        }
    }

    /**
     * How far a part is off a decision.
     *
     * @param weight  of the decision
     * @param apart   notches between what is decided and what the part has
     * @param seconds between them on the course, whichever is faster
     * @param bounds  notches for bounds that are broken and options that are ruled out, times their force
     */
    public record Shortfall(int weight, long apart, long seconds, long bounds) {

        /** In notches; what a limit forbids is never taken. */
        public long loss() {
            return bounds >= BuildObjective.FORBIDDEN ? BuildObjective.FORBIDDEN : weight * (apart + seconds / BuildObjective.NOTCH_SECONDS) + bounds;
        }
    }

    /** The mass of a part. @param grams as they count, which are not the part's own where it is new or not weighed */
    public record Mass(MountingPlace place, Part part, long grams, long cost) {
    }

    /** What is done with a part. */
    public enum WorkStep {
        FIT("fit"), MOVE("move over"), REMOVE("remove");

        private final String words;

        WorkStep(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A swap.
     *
     * @param minutes  of a swap of this kind
     * @param times    2 where the part has to go back to what it is taken off, else 1
     * @param otherEnd whether it changes ends
     */
    public record WorkCount(MountingPlace place, Part part, WorkStep step, double minutes, int times, boolean otherEnd, long cost) {
    }

    /** What two parts cost together. @param what in words */
    public record PairCount(String what, List<Part> parts, long cost) {
        public PairCount {
            parts = List.copyOf(parts);
        }
    }

    public long ofDepartures() {
        return departures.stream().mapToLong(Departure::cost).sum();
    }

    public long ofEmpty() {
        return empty.size() * costOfEmpty();
    }

    /** What one place that stays empty costs. */
    public static long costOfEmpty() {
        return BuildObjective.EMPTY * BuildVariables.LOSS;
    }

    public long ofMasses() {
        return masses.stream().mapToLong(Mass::cost).sum();
    }

    public long ofWorks() {
        return works.stream().mapToLong(WorkCount::cost).sum();
    }

    public long ofPairs() {
        return pairs.stream().mapToLong(PairCount::cost).sum();
    }

    public long total() {
        return ofDepartures() + ofEmpty() + ofMasses() + ofWorks() + ofPairs();
    }
}
