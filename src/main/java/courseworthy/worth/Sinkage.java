package courseworthy.worth;

import courseworthy.demand.Demands;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import java.util.List;

/**
 * How much longer a narrow tyre may take in sand than is worked out. It sinks deeper than a wide one (sinkage grows with ground pressure:
 * Bekker 1956, Theory of Land Locomotion, from memory), and no figures of rolling in sand by width are published for bicycles, so that the
 * coefficient is one for all widths. A narrower tyre is taken to need anything up to twice the time there (judgement).
 */
final class Sinkage {

    /** The surface as maps and files tag it. */
    private static final String SAND = "sand";

    private Sinkage() {
    }

    /** Time that a bike saves against a reference, s, with what is not known of the narrower tyre's time in sand. */
    static Range between(Range saved, Demands reference, Demands other) {
        double width = width(other);
        double usual = width(reference);
        return width < usual ? narrower(saved, other) : width > usual ? wider(saved, reference) : saved;
    }

    /** Time that a narrower tyre saves on the same ride, s, likewise. */
    static Range narrower(Range saved, Demands on) {
        return new Range(saved.low() - secondsInSand(on), saved.mid(), saved.high());
    }

    private static Range wider(Range saved, Demands narrow) {
        return new Range(saved.low(), saved.mid(), saved.high() + secondsInSand(narrow));
    }

    private static double width(Demands demands) {
        return demands.estimated().estimate().basis().kind().tyreWidth();
    }

    /** Riding time on stretches of sand, or with loose sand to steer in, s. */
    static double secondsInSand(Demands demands) {
        RideEstimate estimate = demands.estimated().estimate();
        List<StretchFacts> stretches = demands.stretches();
        RideTrace trace = estimate.trace();
        double sum = 0;
        for (int i = 0; i < trace.size(); i++) {
            int stretch = estimate.way().stretch(trace.step(i));
            sum += stretch < stretches.size() && isSand(stretches.get(stretch)) ? trace.seconds(i) : 0;
        }
        return sum;
    }

    private static boolean isSand(StretchFacts facts) {
        long surface = facts.get(StretchMeasure.SURFACE);
        long loose = facts.get(StretchMeasure.SAND);
        boolean sand = surface != StretchFacts.UNKNOWN && StretchMeasure.SURFACE.scale().text(surface).equals(SAND);
        return sand || loose != StretchFacts.UNKNOWN && StretchMeasure.SAND.scale().text(loose).equals("yes");
    }
}
