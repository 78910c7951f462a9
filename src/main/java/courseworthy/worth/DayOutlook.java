package courseworthy.worth;

import courseworthy.call.Call;
import java.util.List;

/**
 * What a call means for the day: what to set, when to be where, and what changes if the forecast turns.
 *
 * @param pressures  null where the call was not surveyed
 * @param suspension null where the bike has none
 * @param plan       null where the call was not surveyed
 * @param otherwise  second calls; empty where the forecast states no other
 * @param bikeAtHand the bike at hand; null where it is the one that is called, or none is written
 * @param pits       of a race of laps
 * @param shortfall  gears harder than the legs need; null where they are easy enough, or that was not asked
 */
public record DayOutlook(PressureSettings pressures, SuspensionSettings suspension, DayPlan plan, List<PlanB> otherwise, BikeAtHand bikeAtHand,
        PitPlan pits, GearShortfall shortfall) {

    /** Where nobody asked. */
    public static final DayOutlook NONE = new DayOutlook(null, null, null, List.of(), null, PitPlan.NONE, null);

    public DayOutlook {
        otherwise = List.copyOf(otherwise);
    }

    /** The same with what the gears lack. */
    public DayOutlook with(GearShortfall lacking) {
        return new DayOutlook(pressures, suspension, plan, otherwise, bikeAtHand, pits, lacking);
    }

    /** The call on wet ground, where one was made; else null. */
    private static Call wet(List<PlanB> otherwise) {
        for (PlanB other : otherwise) {
            if (other.wet() != null) {
                return other.wet();
            }
        }
        return null;
    }

    /**
     * What waits in pits alone, with the plan that it goes by; nothing where there are no pits.
     *
     * @param mounted   the call for the parts of a build; the call itself where there is none
     * @param otherwise second calls, of which one on wet ground says what wheels for the wet have
     */
    public static DayOutlook ofPits(Call call, Call mounted, List<PlanB> otherwise) {
        if (call.demands().estimated() == null || call.demands().estimated().day().pits().isEmpty()) {
            return NONE;
        }
        DayPlan plan = DayPlan.of(call);
        return new DayOutlook(null, null, plan, List.of(), null, PitPlanner.of(mounted, plan, wet(otherwise)), null);
    }

    public static DayOutlook of(Call call, List<PlanB> otherwise, BikeAtHand bikeAtHand) {
        return of(call, call, otherwise, bikeAtHand);
    }

    /** @param mounted the call made anew for the parts of a build, which are what is set; the call itself where there is no build */
    public static DayOutlook of(Call call, Call mounted, List<PlanB> otherwise, BikeAtHand bikeAtHand) {
        boolean surveyed = call.demands().estimated() != null;
        DayPlan plan = DayPlan.of(call);
        return new DayOutlook(surveyed ? PressureSettings.of(mounted, wet(otherwise)) : null,
                surveyed ? SuspensionSettings.of(mounted) : null, plan, otherwise, bikeAtHand, PitPlanner.of(mounted, plan, wet(otherwise)), null);
    }
}
