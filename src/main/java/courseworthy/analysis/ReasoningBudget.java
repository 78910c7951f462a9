package courseworthy.analysis;

/** How much reasoning is still to be spent on something; counted, not timed, so that the same sheet gives the same remarks. */
class ReasoningBudget {

    /** There are too many alternatives to reason about. */
    static final class TooMany extends Exception {
        private static final long serialVersionUID = 1L;

        TooMany() {
            super("too many alternatives", null, false, false);
        }
    }

    private long left;

    ReasoningBudget(long left) {
        this.left = left;
    }

    void spend(long steps) throws TooMany {
        left -= steps;
        if (left < 0) {
            throw new TooMany();
        }
    }

    /** A part of what is left, to be spent on one thing; what is spent is gone here as well. */
    ReasoningBudget atMost(long most) {
        ReasoningBudget whole = this;
        return new ReasoningBudget(most) {
            @Override
            void spend(long steps) throws TooMany {
                super.spend(steps);
                whole.spend(steps);
            }
        };
    }
}
