package courseworthy.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;

/** Against GeographicLib (C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87, 2013), which is exact to nanometres. */
class GeodesicDistanceTest {

    private static double exact(double lat1, double lon1, double lat2, double lon2) {
        return Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2).s12;
    }

    @Test
    void shortStepsAreExactToATenthOfAMillimetre() {
        Random random = new Random(7);
        double worst = 0;
        for (int i = 0; i < 200_000; i++) {
            double lat = -90 + 180 * random.nextDouble();
            double lon = -180 + 360 * random.nextDouble();
            double scale = 0.006 * random.nextDouble();
            double lat2 = Math.max(-90, Math.min(90, lat + scale * (2 * random.nextDouble() - 1)));
            double lon2 = lon + scale * (2 * random.nextDouble() - 1);
            worst = Math.max(worst, Math.abs(GeodesicDistance.metres(lat, lon, lat2, lon2) - exact(lat, lon, lat2, lon2)));
        }
        assertTrue(worst < 1e-4, "worst " + worst + " m");
    }

    @Test
    void theEdgesOfShortAreExactToo() {
        double worst = 0;
        for (double lat = -79.999; lat < 80; lat += 0.7) {
            worst = Math.max(worst, Math.abs(GeodesicDistance.metres(lat, 7, lat + 0.0039999, 7.0039999)
                    - exact(lat, 7, lat + 0.0039999, 7.0039999)));
        }
        assertTrue(worst < 1e-4, "worst " + worst + " m");
    }

    @Test
    void longStepsAndStepsOverTheDateLineAreGeodesics() {
        assertEquals(exact(46, 7, 47, 9), GeodesicDistance.metres(46, 7, 47, 9), 1e-9);
        assertEquals(exact(10, 179.9999, 10, -179.9999), GeodesicDistance.metres(10, 179.9999, 10, -179.9999), 1e-9);
        assertEquals(exact(89.999, 0, 89.999, 180), GeodesicDistance.metres(89.999, 0, 89.999, 180), 1e-9);
    }
}
