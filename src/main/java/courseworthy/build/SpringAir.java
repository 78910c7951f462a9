package courseworthy.build;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Part.ChartRow;
import courseworthy.workshop.PartDetail;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Air in a fork or shock to start from, from its manufacturer's chart in the workshop's file: between two rows in proportion, never beyond
 * the first and the last. Sag has the last word.
 *
 * @param part     the fork or shock
 * @param rider    mass of the rider, kg; null where it is not known
 * @param pressure Pa; null where the rider's mass is not known or the chart does not reach it
 * @param least    what the chart has for the lightest that the rider may be, Pa; null as the pressure is
 * @param most     what it has for the heaviest, Pa
 */
public record SpringAir(Part part, Double rider, Double pressure, Double least, Double most) {

    /** What is off by more than this share is felt in the sag (judgement, no source). */
    private static final double LOOSE = 0.1;

    /** @return one for each fork and shock of the build that has a chart; none without a build */
    public static List<SpringAir> of(Build build, Demands demands) {
        List<SpringAir> out = new ArrayList<>();
        Map<MountingPlace, Part> parts = build == null || build.bike() == null ? Map.of() : build.inPlace();
        for (MountingPlace place : new MountingPlace[] {MountingPlace.FORK, MountingPlace.SHOCK}) {
            Part part = parts.get(place);
            if (part != null && part.has(PartDetail.AIR_CHART)) {
                MeasureValue mass = demands.get(Measure.RIDER_MASS);
                out.add(of(part, mass));
            }
        }
        return out;
    }

    private static SpringAir of(Part part, MeasureValue mass) {
        if (mass == null) {
            return new SpringAir(part, null, null, null, null);
        }
        List<ChartRow> chart = part.chart(PartDetail.AIR_CHART);
        Double pressure = pressure(chart, kilograms(mass.mid()));
        return new SpringAir(part, kilograms(mass.mid()), pressure, pressure == null ? null : within(chart, kilograms(mass.low())), pressure == null ? null : within(chart, kilograms(mass.high())));
    }

    private static double kilograms(long ticks) {
        return Measure.RIDER_MASS.scale().resolution().base(ticks);
    }

    /** For a mass that the rider may have: the end of the chart where it lies beyond. */
    private static Double within(List<ChartRow> chart, double rider) {
        return pressure(chart, Math.max(chart.get(0).rider(), Math.min(chart.get(chart.size() - 1).rider(), rider)));
    }

    /** Whether the rider's mass is known too loosely for the chart to have one pressure for it. */
    public boolean isRange() {
        return pressure != null && most - least > LOOSE * pressure;
    }

    private static Double pressure(List<ChartRow> chart, double rider) {
        for (int i = 0; i < chart.size(); i++) {
            ChartRow row = chart.get(i);
            if (row.rider() == rider) {
                return row.pressure();
            }
            if (row.rider() > rider) {
                ChartRow below = i == 0 ? null : chart.get(i - 1);
                return below == null ? null : Double.valueOf(below.pressure()
                        + (row.pressure() - below.pressure()) * (rider - below.rider()) / (row.rider() - below.rider()));
            }
        }
        return null;
    }

    /** The lightest rider on the chart, kg. */
    public double lightest() {
        return part.chart(PartDetail.AIR_CHART).get(0).rider();
    }

    /** The heaviest rider on the chart, kg. */
    public double heaviest() {
        List<ChartRow> chart = part.chart(PartDetail.AIR_CHART);
        return chart.get(chart.size() - 1).rider();
    }
}
