package courseworthy.report;

/** How much weight a piece of text has beside what stands around it. */
public enum Style {
    PLAIN,
    /** Stressed within a sentence. */
    EMPHASIS,
    /** What a reader looks for, such as a value to set. */
    STRONG,
    /** Something a reader must not miss. */
    ATTENTION,
    /** Of less weight than what it stands beside, such as the range of a value. */
    SECONDARY,
    /** Not given by anybody, so taken as is usual. */
    ASSUMED
}
