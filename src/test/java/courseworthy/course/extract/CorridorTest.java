package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.course.Track;
import java.util.List;
import java.util.Random;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which places lie near a track, held against geodesics of GeographicLib-Java. */
class CorridorTest {

    private static Track track(double[] lat, double[] lon) {
        return new Track(List.of(new Track.TrackPiece(lat, lon, new double[lat.length], lat)), Track.Elevation.MISSING);
    }

    private static double distance(double lat1, double lon1, double lat2, double lon2) {
        return Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2, GeodesicMask.DISTANCE).s12;
    }

    /** What lies within the distance of a point of the track is in the corridor; what lies five times as far from all of them is not. */
    @ParameterizedTest
    @CsvSource({"0, 0, 200", "47.1, 9.5, 200", "-33.9, 151.2, 100", "69.6, 18.9, 200", "-17.8, 179.9995, 300", "60, -179.9997, 150",
        "51, 0, 50", "84.5, 30, 200"})
    void holdsWhatIsNear(double latitude, double longitude, double metres) {
        Random random = new Random(17);
        double[] lat = new double[200];
        double[] lon = new double[200];
        double heading = 40;
        lat[0] = latitude;
        lon[0] = longitude;
        for (int i = 1; i < lat.length; i++) {
            heading += 40 * random.nextGaussian();
            var next = Geodesic.WGS84.Direct(lat[i - 1], lon[i - 1], heading, 5 + 25 * random.nextDouble());
            lat[i] = next.lat2;
            lon[i] = next.lon2;
        }
        Corridor corridor = Corridor.around(track(lat, lon), metres);
        int far = 0;
        for (int i = 0; i < 4000; i++) {
            int at = random.nextInt(lat.length);
            boolean near = i % 2 == 0;
            var place = Geodesic.WGS84.Direct(lat[at], lon[at], 360 * random.nextDouble(), near ? metres * random.nextDouble() : metres * 30 * random.nextDouble());
            double nearest = Double.POSITIVE_INFINITY;
            for (int j = 0; j < lat.length; j++) {
                nearest = Math.min(nearest, distance(lat[j], lon[j], place.lat2, place.lon2));
            }
            if (nearest <= metres) {
                assertThat(corridor.contains(place.lat2, place.lon2)).as("%s m", nearest).isTrue();
            } else if (nearest > 5 * metres) {
                far++;
                assertThat(corridor.contains(place.lat2, place.lon2)).as("%s m", nearest).isFalse();
            }
        }
        assertThat(far).isGreaterThan(500);
    }

    /** Between points far apart, too: the middle of a leg of 20 km. */
    @Test
    void holdsWhatLiesAlongALongLeg() {
        Corridor corridor = Corridor.around(track(new double[] {47, 47.1}, new double[] {9, 9.2}), 200);
        for (int i = 0; i <= 1000; i++) {
            assertThat(corridor.contains(47 + 0.1 * i / 1000, 9 + 0.2 * i / 1000)).isTrue();
        }
        assertThat(corridor.contains(47.1, 9)).isFalse();
        Corridor round = Corridor.around(track(new double[] {0, 0}, new double[] {179.95, -179.95}), 200);
        assertThat(round.contains(0, 180)).isTrue();
        assertThat(round.contains(0, -180)).isTrue();
        assertThat(round.contains(0.001, -179.97)).isTrue();
        assertThat(round.contains(0, 0)).isFalse();
    }

    @Test
    void knowsWhichAreasItMayTouch() {
        Corridor corridor = Corridor.around(track(new double[] {47, 47.1}, new double[] {9, 9.2}), 200);
        assertThat(corridor.mayTouch(new Bounds(46, 8, 48, 10))).isTrue();
        assertThat(corridor.mayTouch(new Bounds(46, 8, 47.0001, 9.0001))).isTrue();
        assertThat(corridor.mayTouch(new Bounds(46, 8, 46.9, 10))).isFalse();
        assertThat(corridor.mayTouch(new Bounds(46, 9.3, 48, 10))).isFalse();
        assertThat(corridor.mayTouch(new Bounds(46, 170, 48, -170))).isTrue();
        assertThatThrownBy(() -> Corridor.around(track(new double[] {0}, new double[] {0}), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void boundsMaySpanThe180thMeridian() {
        Bounds pacific = new Bounds(-20, 177, -15, -178);
        assertThat(pacific.contains(-17, 179)).isTrue();
        assertThat(pacific.contains(-17, -179)).isTrue();
        assertThat(pacific.contains(-17, 0)).isFalse();
        assertThat(pacific.isEmpty()).isFalse();
        assertThat(Bounds.EMPTY.isEmpty()).isTrue();
        assertThat(Bounds.EMPTY.contains(0, 0)).isFalse();
    }
}
