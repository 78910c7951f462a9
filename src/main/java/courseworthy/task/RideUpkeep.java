package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.WearNote;
import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.wear.RideUse;
import courseworthy.wear.ServiceWork;
import courseworthy.wear.UpkeepPlan;
import courseworthy.wear.UpkeepPlanner;
import courseworthy.wear.UpkeepPlanner.TyreChange;
import courseworthy.wear.WorkTime;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How the ride of a call on a build wears its parts. */
final class RideUpkeep {

    /** In a brief nobody asks in which week it is done, min. */
    private static final int ANY_TIME = 24 * 60;

    private RideUpkeep() {
    }

    /** Null where there is no bike, or the hours are not known. */
    static RideUse use(Call call, Build build, LocalDate date, String event) {
        if (build.bike() == null || call.demands().estimated() == null) {
            return null;
        }
        Set<String> parts = new LinkedHashSet<>(Set.of(build.bike().name()));
        build.parts().forEach(each -> parts.add(each.part().name()));
        return use(call, build.bike().name(), parts, date, event);
    }

    /** The same for parts by their names, on a bike. */
    static RideUse use(Call call, String bike, Set<String> parts, LocalDate date, String event) {
        MeasureValue going = call.demands().get(Measure.GOING);
        MeasureValue mud = call.demands().get(Measure.MUD);
        MeasureValue length = call.demands().get(Measure.DISTANCE);
        return new RideUse(date, bike, parts, call.demands().estimated().estimate().riding(),
                length == null ? null : Double.valueOf(Measure.DISTANCE.scale().resolution().base(length.mid())),
                going == null ? null : Measure.GOING.scale().text(going.mid()),
                mud == null ? null : Double.valueOf(Measure.MUD.scale().resolution().base(mud.mid())), event);
    }

    /**
     * A build with what falls due on its parts before a ride or on it, by the log of the workshop; as it is where there is no log or no day.
     *
     * @param workshop from which it was made
     */
    static Build due(Build build, Workshop workshop, Call call, LocalDate date, String event) {
        RideUse use = workshop.log() == null || date == null ? null : use(call, build, date, event);
        if (use == null) {
            return build;
        }
        UpkeepPlan plan = UpkeepPlanner.of(workshop, List.of(use), changes(build, date), new WorkTime(ANY_TIME, Map.of()), date);
        Map<String, WearNote> due = new LinkedHashMap<>();
        for (ServiceWork work : plan.work()) {
            boolean covered = build.wear().stream().anyMatch(note -> note.part().equals(work.part()));
            if (use.parts().contains(work.part()) && !covered) {
                due.put(work.what(), new WearNote(work.part(), "due by " + work.due() + " (" + work.why() + ")", work.task()));
            }
        }
        return build.wearing(List.copyOf(due.values()));
    }

    /** The wheels that get another tyre for a ride. */
    static List<TyreChange> changes(Build build, LocalDate date) {
        Map<MountingPlace, String> inPlace = new EnumMap<>(MountingPlace.class);
        build.parts().forEach(each -> inPlace.put(each.place(), each.part().name()));
        List<TyreChange> out = new ArrayList<>();
        for (Build.Swap swap : build.swaps()) {
            String wheel = swap.place().kind() == PartKind.TYRE ? inPlace.get(swap.place().host()) : null;
            if (wheel != null && swap.on() != null) {
                out.add(new TyreChange(date, wheel));
            }
        }
        return out;
    }
}
