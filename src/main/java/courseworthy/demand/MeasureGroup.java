package courseworthy.demand;

/** What a measure belongs to, which says when it is known and for how long it holds. */
public enum MeasureGroup {
    /** How long, high and steep the course is. */
    COURSE("course"),
    /** What the course is ridden on. */
    TERRAIN("ground"),
    /** What riding it takes: time, light, gears, brakes, water. */
    RIDE("ride"),
    /** What the forecast brings. */
    DAY("weather"),
    /** Who rides, and what for. */
    RIDER("rider and aim"),
    /** What the rider has, whatever bike is called. */
    EQUIPMENT("equipment"),
    /** Figures of the bike at hand, which hold only where a bike of its kind is called. */
    BIKE("bike at hand"),
    /** What the event demands and permits. */
    EVENT("rules of the event"),
    /** What follows from decisions. */
    DECISIONS("follows from decisions");

    private final String word;

    MeasureGroup(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
