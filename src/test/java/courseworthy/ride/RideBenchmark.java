package courseworthy.ride;

import courseworthy.course.Course;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How fast the ride model is, over 200 km in 20,000 steps. DEVELOPERS.md says how to run it; it is no part of the tests. */
@State(Scope.Benchmark)
@Fork(1)
public class RideBenchmark {

    private static final int STEPS = 20_000;

    private final RideEstimate estimate = estimate();
    private final RideSimulator riding = estimate.another();
    private final RideParameters inputs = estimate.inputs(new double[UncertainInput.COUNT]);

    private static RideEstimate estimate() {
        Course course = InventedCourse.measured(
                InventedCourse.line(10.0 * STEPS, 10, d -> 500 + 150 * Math.sin(d / 9000) + 60 * Math.sin(d / 1900) + 6 * Math.sin(d / 310)),
                InventedCourse.ground(Surface.FINE_GRAVEL, Smoothness.INTERMEDIATE, null, null));
        return InventedCourse.estimate(course, InventedCourse.strongAmateur(BikeKind.GRAVEL, 1));
    }

    /** Model steps, one thread. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @OperationsPerInvocation(STEPS)
    @Warmup(iterations = 2, time = 1)
    @Measurement(iterations = 3, time = 2)
    public double steps() {
        riding.ride(inputs, 1, estimate.uphill(), estimate.basis().pacing().hourPower().mid(), estimate.riding().mid(), false);
        return riding.seconds;
    }

    /** The range over the whole sample of 300 rides. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @Warmup(iterations = 1)
    @Measurement(iterations = 5)
    public Range sample() {
        return SampledEstimate.of(estimate).riding();
    }
}
