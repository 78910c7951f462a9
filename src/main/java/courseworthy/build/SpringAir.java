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
 */
public record SpringAir(Part part, Double rider, Double pressure) {

    /** @return one for each fork and shock of the build that has a chart; none without a build */
    public static List<SpringAir> of(Build build, Demands demands) {
        List<SpringAir> out = new ArrayList<>();
        Map<MountingPlace, Part> parts = build == null || build.bike() == null ? Map.of() : build.inPlace();
        for (MountingPlace place : new MountingPlace[] {MountingPlace.FORK, MountingPlace.SHOCK}) {
            Part part = parts.get(place);
            if (part != null && part.has(PartDetail.AIR_CHART)) {
                MeasureValue mass = demands.get(Measure.RIDER_MASS);
                Double rider = mass == null ? null : Double.valueOf(Measure.RIDER_MASS.scale().resolution().base(mass.mid()));
                out.add(new SpringAir(part, rider, rider == null ? null : pressure(part.chart(PartDetail.AIR_CHART), rider)));
            }
        }
        return out;
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
