package courseworthy.report.picture;

/** One method for each kind of picture, so that a new kind is missed by no renderer that draws them. */
public interface PictureVisitor<T> {

    T elevationProfile(ElevationProfile profile);

    T barChart(BarChart chart);

    T longSection(LongSection section);

    T gearLadder(GearLadder ladder);

    T worthChart(WorthChart chart);

    T dayStrip(DayStrip strip);

    T backPlan(BackPlan plan);

    T beforeAfter(BeforeAfter parts);

    T trackPlan(TrackPlan plan);

    T pressureLine(PressureLine line);
}
