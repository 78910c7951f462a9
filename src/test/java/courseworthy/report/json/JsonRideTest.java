package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.ride.InventedCourse;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The ride's inputs in the JSON are enough to work out its time again, here in small steps of time and by nothing of the tool's own. */
class JsonRideTest {

    private static final Ground ROAD = InventedCourse.ground(Surface.ASPHALT, Smoothness.GOOD, null, null);

    private static JsonNode ride(Course course) {
        Rider rider = Rider.builder().mass(70.0).kit(3.0).efforts(List.of(new Rider.MaximalEffort(3600, 260))).skill("good").build();
        return OutputSchema.tree(Json.written(json -> new JsonRide(json).of(Survey.of(course, rider, Event.UNKNOWN, Bike.UNKNOWN).estimated())))
                .get("ride");
    }

    private static double likely(JsonNode node, String name) {
        return node.get(name).get("value").asDouble();
    }

    /** Seconds for a distance at one gradient, from walking pace, at a power that falls in a line over the time; steps of 0.05 s. */
    private static double seconds(JsonNode ride, double distance, double gradient, double watts, double lasting) {
        JsonNode in = ride.get("inputs");
        double mass = likely(in, "mass_kg");
        double flat = 1 / Math.sqrt(1 + gradient * gradient);
        double rolling = likely(in.get("stretches").get(0), "rolling_resistance");
        double g = in.get("gravity_m_s2").asDouble();
        double air = 0.5 * in.get("density_at_the_start_kg_m3").asDouble()
                * (likely(in, "drag_area_m2") + in.get("wheel_drag_area_m2").asDouble());
        double v = in.get("walking_m_s").asDouble();
        double gone = 0;
        double time = 0;
        double step = 0.05;
        while (gone < distance) {
            double fresh = watts * (1 + likely(in, "power_lost_by_the_end") * (0.5 - time / lasting));
            double force = fresh * in.get("drive_efficiency").asDouble() / v - air * v * v
                    - mass * g * flat * (rolling + likely(in, "factor_on_gradients") * gradient)
                    - in.get("bearing_force_n").asDouble() - in.get("bearing_force_per_speed_n_s_m").asDouble() * v;
            v += step * force / (mass + in.get("wheel_inertia_kg").asDouble());
            gone += v * step;
            time += step;
        }
        return time;
    }

    /** 0.2 %: what the heights' air changes and the start leave. */
    @Test
    void theFlatCanBeWorkedOutAgain() {
        JsonNode ride = ride(InventedCourse.course(InventedCourse.stretch(40, 0, 0, ROAD)));
        double told = likely(ride, "riding_s");
        assertThat(seconds(ride, 40_000, 0, ride.get("power_pedalled_w").asDouble(), told)).isCloseTo(told, within(0.002 * told));
    }

    /** Uphill the air thins with height; at 6 % it is a tenth of what holds back, so 300 m of height change the time by 0.1 %. */
    @Test
    void aClimbCanBeWorkedOutAgain() {
        JsonNode ride = ride(InventedCourse.course(InventedCourse.stretch(10, 600, 0, ROAD)));
        double told = likely(ride, "riding_s");
        double gradient = 0.06;
        assertThat(seconds(ride, 10_000, gradient, ride.get("power_pedalled_w").asDouble(), told)).isCloseTo(told, within(0.004 * told));
    }

    /** Hour power, what of it can be held for the time, and what of that is ridden give the power held; ridden is that. */
    @Test
    void thePowerCanBeWorkedOutAgain() {
        JsonNode ride = ride(InventedCourse.course(InventedCourse.stretch(60, 800, 800, ROAD)));
        JsonNode in = ride.get("inputs");
        double held = likely(in, "hour_power_w") * likely(in, "share_of_hour_power_held") * likely(in, "share_of_that_ridden");
        assertThat(ride.get("power_that_can_be_held_w").asDouble()).isCloseTo(held, within(0.001 * held));
        assertThat(ride.get("power_fourth_power_mean_w").asDouble()).isCloseTo(held, within(0.001 * held));
    }
}
