package courseworthy.sheet;

/**
 * A value at which a test turns: it holds at {@code tick} and no longer one tick below it (above it, where it is not a lower end).
 *
 * @param subject what is tested
 * @param tick    the last value at which the test holds
 * @param lower   whether the test holds from here upward
 */
public record Threshold(TestSubject subject, long tick, boolean lower) {
}
