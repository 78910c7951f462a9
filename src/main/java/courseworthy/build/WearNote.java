package courseworthy.build;

/**
 * One part of a build that is worn, old or due for service, and what to do about it.
 *
 * @param part   its name
 * @param state  how it is, in a phrase
 * @param action what to do, as an order
 */
public record WearNote(String part, String state, String action) {

    /** {@code old chain: worn to its limit; change it}. */
    public String text() {
        return part + ": " + state + "; " + action;
    }
}
