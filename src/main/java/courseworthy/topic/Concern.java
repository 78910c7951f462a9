package courseworthy.topic;

/** What hangs on a topic besides speed, which bears on how it is compared and judged. */
public enum Concern {
    /** It is chosen for the weather, whatever rule spoke: another day asks for another answer. */
    WEATHER,
    /** It is chosen for dry or wet, and hardly for the cold: five degrees less do not turn a tread. */
    WET,
    /** A puncture may hang on it. */
    PUNCTURES,
    /** Less is no option, whatever time that saves. */
    SAFETY
}
