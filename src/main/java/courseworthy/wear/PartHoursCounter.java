package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Counts the hours on each part since it was fitted and since it was serviced. */
final class PartHoursCounter {

    private PartHoursCounter() {
    }

    /** @param from the first day that is not counted */
    static List<PartHours> of(Workshop workshop, Map<String, List<RideUse>> uses, LocalDate from) {
        List<Part> all = new ArrayList<>(workshop.bikes());
        all.addAll(workshop.parts());
        List<PartHours> out = new ArrayList<>();
        for (Part part : all) {
            List<RideUse> ridden = uses.getOrDefault(part.name(), List.of()).stream().filter(each -> each.date().isBefore(from)).toList();
            if (!ridden.isEmpty() || part.has(PartDetail.HOURS_USED)) {
                out.add(of(part, ridden, workshop.log()));
            }
        }
        return out;
    }

    private static PartHours of(Part part, List<RideUse> ridden, RideLog log) {
        LocalDate fitted = part.day(PartDetail.FITTED);
        LocalDate renewed = null;
        LocalDate serviced = null;
        for (RideLog.Service each : log.services()) {
            if (each.part().equals(part.name()) && each.job() != null) {
                serviced = later(serviced, each.date());
                renewed = each.job().equals(ServiceStart.RENEW) ? later(renewed, each.date()) : renewed;
            }
        }
        Double before = part.number(PartDetail.HOURS_USED);
        double hours = renewed != null ? since(ridden, renewed)
                : since(ridden, fitted == null ? null : fitted.minusDays(1)) + (before == null ? 0 : before);
        String bike = part.bike() == null ? "" : part.bike().name();
        boolean complete = renewed != null || fitted != null || before != null;
        return new PartHours(part.name(), bike, hours, complete, serviced == null ? null : Double.valueOf(since(ridden, serviced)), serviced);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one == null || other.isAfter(one) ? other : one;
    }

    private static double since(List<RideUse> ridden, LocalDate day) {
        return ridden.stream().filter(each -> day == null || each.date().isAfter(day)).mapToDouble(each -> each.hours().mid()).sum();
    }
}
