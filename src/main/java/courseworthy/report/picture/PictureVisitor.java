package courseworthy.report.picture;

/** One method for each kind of picture, so that a new kind is missed by no renderer that draws them. */
public interface PictureVisitor<T> {

    T elevationProfile(ElevationProfile profile);

    T barChart(BarChart chart);
}
