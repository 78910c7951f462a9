package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.engine.UndeterminedRule;
import java.util.List;

/**
 * How firm a decision is, and what that follows from: the best evidence behind it, how far the advice agrees, and what was assumed or is
 * unknown under it. {@link FirmnessTable} has the word for each combination; whether the decision is close is a {@link CloseThreshold}.
 *
 * @param decision  the decision; it has a value
 * @param grade     the row of the table that holds
 * @param evidence  the best evidence of what leads to the value
 * @param agreement how far the advice agrees
 * @param carriers  the claims that lead to the value; none where nothing does
 * @param assumed   what was assumed of the facts that these rest on, as {@link courseworthy.demand.Demands.AssumedInput} has it
 * @param unknown   rules that could not be checked and would change the value if they applied
 * @param restsOn   how firm the decision is that makes this one less firm; null where none does
 */
public record Firmness(Decision decision, FirmnessTable.Grade grade, EvidenceGrade evidence, AgreementGrade agreement, List<Claim> carriers, List<String> assumed,
        List<UndeterminedRule> unknown, Firmness restsOn) {

    public Firmness {
        carriers = List.copyOf(carriers);
        assumed = List.copyOf(assumed);
        unknown = List.copyOf(unknown);
    }

    /** How firm, the firmest first. */
    public enum FirmnessLevel {
        FIRM("firm"), FAIR("fair"), THIN("thin");

        private final String word;

        FirmnessLevel(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The best evidence behind a decision, the best first. */
    public enum EvidenceGrade {
        /** A limit that decides, or what the rider has fixed. */
        LIMIT("limit"),
        /** A published source. */
        SOURCE("source"),
        /** Habits of the trade that rest on different facts, or are known from different people. */
        PRACTICES("practices"),
        /** One habit of the trade. */
        PRACTICE("practice"),
        /** One person's view. */
        OPINION("opinion"),
        /** Nothing: a common value. */
        NONE("none");

        private final String word;

        EvidenceGrade(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** How far the advice agrees, the best first. */
    public enum AgreementGrade {
        ALL("all"), MOST("most"), DIVIDED("divided");

        private final String word;

        AgreementGrade(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        static AgreementGrade of(Decision decision) {
            return switch (decision.consensus()) {
                case UNANIMOUS, DEFAULT -> ALL;
                case BOUNDS_ALONE -> decision.lost().isEmpty() ? ALL : MOST;
                case MAJORITY -> MOST;
                case DIVIDED -> DIVIDED;
            };
        }
    }

    /** What is known of the facts that a decision rests on, the best first. */
    public enum Knowledge {
        KNOWN("known"), ASSUMED("assumed"), UNKNOWN("unknown");

        private final String word;

        Knowledge(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        static Knowledge of(List<String> assumed, List<UndeterminedRule> unknown) {
            return !unknown.isEmpty() ? UNKNOWN : assumed.isEmpty() ? KNOWN : ASSUMED;
        }
    }

    public FirmnessLevel level() {
        return restsOn == null ? grade.level() : FirmnessTable.shipped().foundation(grade.level(), restsOn.level()).level();
    }

    /** The word, {@code fair}. */
    public String word() {
        return level().word();
    }
}
