package courseworthy.worth;

/** What to know of a figure, in sentences. */
final class FigureNotes {

    static final String PARTS = "What parts weigh and cost in drag and rolling is common practice with a wide range; weigh or measure yours.";
    static final String STOPS = "No rate of punctures is published, so none is given: judge the odds by your own rides.";
    static final String MASS_ONLY = "Only its mass can be computed. What travel and control return on rough ground is not published, so it is not in"
            + " these figures.";
    static final String GRIP = "Grip is not in these figures; only rolling and mass are.";
    static final String WIDTH = "Comfort and grip are not in these figures. The pressure is taken to suit either width.";
    static final String WIND = "Deep rims also catch side wind; that is not in these figures.";
    static final String WATER = "The cost of carrying it is no reason to carry less than the gap needs.";
    static final String POWER_METER = "A power meter saves no time by itself, so no figure is given. It shows what is pedalled, so that the pace can be"
            + " held where it was planned, and shows afterwards what the course took.";
    static final String EXTENSIONS = "Used alone only, where it is smooth, straight and from 25 to 50 km/h; never in a group or on rough ground."
            + " Drag goes by published pairs of positions; the position must be one the rider can hold, and the event must allow it.";
    static final String TUBE = "Against a puncture that nothing carried can mend, with an hour on foot taken for it (half an hour to two).";
    static final String PLUG = "Against a puncture that takes a tube for want of a plug.";
    static final String BRAKES = "Only the mass is computed; how strong the brakes must be is decided by safety, never by time.";

    private FigureNotes() {
    }
}
