package courseworthy.build;

import courseworthy.fit.FitRules;
import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds one build for several days: the one that loses least over all of them, with what it saves and costs on each. */
public final class RaceBuildFinder {

    private final List<Recommendation> days;
    private final Workshop workshop;

    private RaceBuildFinder(List<Recommendation> days, Workshop workshop) {
        this.days = days;
        this.workshop = workshop;
    }

    /**
     * @param days     what is recommended for each day
     * @param main     the place of the day for which work and worth are given
     * @param deadline when the work has to be done
     */
    public static RaceBuild of(List<Recommendation> days, int main, Workshop workshop, WorkDeadline deadline, FitRules rules) {
        Build build = BuildFinder.of(Recommendation.overDays(days, main), workshop, deadline, rules, null);
        return new RaceBuildFinder(days, workshop).judged(build);
    }

    private RaceBuild judged(Build build) {
        List<Range> saves = new ArrayList<>();
        List<Range> costs = new ArrayList<>();
        for (Recommendation day : build.bike() == null ? List.<Recommendation>of() : days) {
            saves.add(BuildFinder.returned(day, workshop, workshop.mounted(build.bike()), build));
            Build alone = BuildFinder.parts(day, workshop, build.bike().name());
            costs.add(alone.bike() == null ? null : loss(BuildFinder.returned(day, workshop, build.inPlace(), alone)));
        }
        return new RaceBuild(build, saves, costs);
    }

    private static Range loss(Range returned) {
        return returned == null ? null : new Range(Math.max(0, returned.low()), Math.max(0, returned.mid()), Math.max(0, returned.high()));
    }

    /** What certain parts lose over all days, in notches, as the search counts it without the work: to hold builds against each other. */
    static long loss(List<Recommendation> days, Workshop workshop, Part bike, Map<MountingPlace, Part> parts) {
        return BuildObjective.of(Recommendation.overDays(days, 0)).of(bike, parts, BuildVariables.candidates(workshop, bike).keySet(),
                parts.get(MountingPlace.METER));
    }
}
