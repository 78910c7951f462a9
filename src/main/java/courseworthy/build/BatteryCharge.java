package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topics;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/** Whether the battery of a build lasts: the slow estimate of the ride, and the reserve that is called, against what is left in it. */
final class BatteryCharge {

    private static final Resolution MINUTES = Resolution.of(Unit.MIN, "1");

    private BatteryCharge() {
    }

    /** What to do about a battery, as sentences without a full stop; empty where it lasts, or where nothing is known of it. */
    static List<WearNote> of(Part battery, Call call) {
        Double needed = needed(call);
        Double charge = battery.number(PartDetail.CHARGE);
        Double full = battery.number(PartDetail.RUN_TIME);
        if (needed == null || charge == null && full == null) {
            return List.of();
        }
        String needs = "the ride and its reserve need " + time(needed);
        if (full == null) {
            return charge > 1 - 1e-9 ? List.of() : List.of(new WearNote(battery.name(), "charged to " + percent(charge) + ", and its run time from full is not given", "charge it"));
        }
        if (full < needed - 1e-6) {
            return List.of(new WearNote(battery.name(), "runs " + time(full) + " from full, and " + needs, "take a second one"));
        }
        return charge == null || full * charge >= needed - 1e-6 ? List.of()
                : List.of(new WearNote(battery.name(), "charged to " + percent(charge) + ", which lasts " + time(full * charge) + ", and " + needs, "charge it"));
    }

    /** The slow estimate with the reserve on top, s; null where either is not known. */
    private static Double needed(Call call) {
        MeasureValue slow = call.demands().get(Measure.SLOW_HOURS);
        Decision reserve = call.on(Topics.BATTERY_RESERVE);
        if (slow == null || reserve.status() != Status.SETTLED) {
            return null;
        }
        return Measure.SLOW_HOURS.scale().resolution().base(slow.high()) * (1 + reserve.topic().resolution().base(reserve.value()));
    }

    private static String time(double seconds) {
        return MINUTES.text(Math.round(seconds / 60));
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
