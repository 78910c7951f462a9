package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import java.util.Comparator;

/** Orders of claims, written out as classes because every run starts with them. */
enum ClaimOrder implements Comparator<Claim> {

    /** As output lists them: by rank, force, id. The rest only makes the order total. */
    OUTPUT {
        @Override
        public int compare(Claim one, Claim other) {
            int by = level(one, other);
            by = by != 0 ? by : one.origin().rule().compareTo(other.origin().rule());
            by = by != 0 ? by : one.verb().compareTo(other.verb());
            by = by != 0 ? by : Long.compare(one.value(), other.value());
            return by != 0 || one.equals(other) ? by : one.toString().compareTo(other.toString());
        }
    },

    /** Rank, then force, then the later sheet. */
    STRONGEST_FIRST {
        @Override
        public int compare(Claim one, Claim other) {
            int by = level(one, other);
            by = by != 0 ? by : Integer.compare(other.origin().sheet(), one.origin().sheet());
            return by != 0 ? by : OUTPUT.compare(one, other);
        }
    },

    BY_VALUE {
        @Override
        public int compare(Claim one, Claim other) {
            return Long.compare(one.value(), other.value());
        }
    },

    BY_VALUE_DOWN {
        @Override
        public int compare(Claim one, Claim other) {
            return Long.compare(other.value(), one.value());
        }
    },

    /** Lower bounds, tightest first, then upper bounds, tightest first. */
    LOWER_BOUNDS_FIRST {
        @Override
        public int compare(Claim one, Claim other) {
            int by = one.verb().compareTo(other.verb());
            return by != 0 ? by : tighter(one, other);
        }
    },

    /** Upper bounds, tightest first, then lower bounds, tightest first. */
    UPPER_BOUNDS_FIRST {
        @Override
        public int compare(Claim one, Claim other) {
            int by = other.verb().compareTo(one.verb());
            return by != 0 ? by : tighter(one, other);
        }
    };

    private static int level(Claim one, Claim other) {
        int by = one.origin().rank().compareTo(other.origin().rank());
        return by != 0 ? by : one.origin().force().compareTo(other.origin().force());
    }

    private static int tighter(Claim one, Claim other) {
        return one.verb() == Verb.AT_LEAST ? Long.compare(other.value(), one.value()) : Long.compare(one.value(), other.value());
    }
}
