package courseworthy.report.picture;

/** The data of a picture: figures with their units, and labels in words. How it looks is the renderers'. */
public sealed interface Picture permits ElevationProfile, BarChart, LongSection, GearLadder, WorthChart, DayStrip, BackPlan,
        BeforeAfter, TrackPlan, PressureLine {

    /** Shows the picture to a visitor, and returns what that makes of it. */
    <T> T accept(PictureVisitor<T> visitor);
}
