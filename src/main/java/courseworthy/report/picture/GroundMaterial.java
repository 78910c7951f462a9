package courseworthy.report.picture;

/** What ground is made of, as coarsely as a pattern can tell. */
public enum GroundMaterial {
    /** Asphalt, concrete, paving, cobbles. */
    PAVED,
    /** Compacted, fine gravel, unpaved without more. */
    FIRM,
    GRAVEL,
    /** Ground, dirt, earth, clay, woodchips. */
    EARTH,
    GRASS,
    ROCK,
    SAND,
    MUD,
    /** Snow and ice. */
    SNOW,
    UNKNOWN
}
