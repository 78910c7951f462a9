package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.WorkRules;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The jobs of some swaps, with what each of them waits for: wheels go out and in once, and what follows from the work is a job too. */
final class WorkGraph {

    /** To take a wheel out, or to put it back in, min (common practice, no source). */
    private static final int WHEEL_MINUTES = 1;

    private final WorkRules rules;
    private final MountingState before;
    private final List<WorkJob> jobs = new ArrayList<>();

    private WorkGraph(WorkRules rules, MountingState before) {
        this.rules = rules;
        this.before = before;
    }

    /**
     * @param swaps  in any order
     * @param before what is mounted before the work
     */
    static WorkGraph of(List<Swap> swaps, MountingState before, WorkRules rules) {
        WorkGraph out = new WorkGraph(rules, before);
        Set<Part> roots = new LinkedHashSet<>();
        for (Swap swap : swaps) {
            roots.add(swap.bike());
        }
        for (Part root : roots) {
            List<Swap> own = swaps.stream().filter(each -> each.bike() == root).toList();
            out.jobsOn(root, own);
        }
        return out;
    }

    List<WorkJob> jobs() {
        return jobs;
    }

    /** Minutes from the end of one job to the start of another: -1 where the other does not wait for it. */
    int[][] waits() {
        int[][] out = new int[jobs.size()][jobs.size()];
        for (int i = 0; i < out.length; i++) {
            for (int j = 0; j < out.length; j++) {
                out[i][j] = i == j ? -1 : rules.wait(jobs.get(i).kind(), jobs.get(j).kind(), jobs.get(i).shared(jobs.get(j)));
            }
        }
        return out;
    }

    private void jobsOn(Part root, List<Swap> swaps) {
        boolean bike = root.kind() == PartKind.BIKE;
        for (MountingPlace wheel : bike ? List.of(MountingPlace.FRONT_WHEEL, MountingPlace.REAR_WHEEL) : List.<MountingPlace>of()) {
            if (before.places(root).get(wheel) != null && swaps.stream().anyMatch(each -> goesOut(each, root, wheel))) {
                jobs.add(wheelOut(root, wheel, swaps));
            }
        }
        for (Swap swap : swaps) {
            if (swap.place().kind() != PartKind.WHEEL || swap.on() != null) {
                jobs.add(job(root, swap, swaps));
            }
        }
        for (MountingPlace wheel : bike ? List.of(MountingPlace.FRONT_WHEEL, MountingPlace.REAR_WHEEL) : List.<MountingPlace>of()) {
            boolean stays = swaps.stream().noneMatch(each -> each.place() == wheel);
            if (stays && before.places(root).get(wheel) != null && swaps.stream().anyMatch(each -> goesOut(each, root, wheel))) {
                jobs.add(new WorkJob(WorkRules.WHEEL_IN, root, wheel.end(), Set.of(before.places(root).get(wheel).name()),
                        "Put the " + wheel.words() + " back into " + root + ", axle as marked", WHEEL_MINUTES, null));
            }
        }
        for (WorkRules.FollowUp each : bike ? rules.followUps() : List.<WorkRules.FollowUp>of()) {
            if (jobs.stream().anyMatch(job -> job.bike() == root && each.follows(job.kind()))) {
                jobs.add(new WorkJob(each.job(), root, null, Set.of(), each.what(), each.minutes(), null));
            }
        }
    }

    /** It makes the swap where no other wheel goes in. */
    private WorkJob wheelOut(Part root, MountingPlace wheel, List<Swap> swaps) {
        Swap removed = null;
        for (Swap each : swaps) {
            removed = each.place() == wheel && each.on() == null ? each : removed;
        }
        return new WorkJob(WorkRules.WHEEL_OUT, root, wheel.end(), Set.of(before.places(root).get(wheel).name()),
                "Take the " + wheel.words() + " out of " + root, WHEEL_MINUTES, removed);
    }

    /** Whether the wheel that is in has to come out for a swap: for itself, for what stands on it or comes off it, or out of the way. */
    private boolean goesOut(Swap swap, Part root, MountingPlace wheel) {
        Part in = before.places(root).get(wheel);
        if (swap.place() == wheel || swap.over() == in) {
            return true;
        }
        boolean atThatEnd = wheel.end().equals(end(swap.place()));
        boolean onIt = swap.place().host() == null || swap.off() == null || before.isOn(swap.off(), in);
        return atThatEnd && onIt && rules.wheelOut().contains(swap.place().kind().word());
    }

    private static String end(MountingPlace place) {
        return place.kind() == PartKind.FORK ? "front" : place.host() == MountingPlace.REAR_WHEEL ? "rear" : place.end();
    }

    private WorkJob job(Part root, Swap swap, List<Swap> swaps) {
        MountingPlace place = swap.place();
        Set<String> wheels = new LinkedHashSet<>();
        if (place.kind() == PartKind.WHEEL) {
            wheels.add(swap.on().name());
        } else if (isWheel(place.host())) {
            wheels.add(host(root, place, swaps));
            if (swap.over() != null) {
                wheels.add(swap.over().name());
            }
        }
        String kind = place.kind() == PartKind.WHEEL ? WorkRules.WHEEL_IN : place.kind().word();
        return new WorkJob(kind, root, end(place), wheels, swap.what(), (int) Math.ceil(swap.work().minutes()), swap);
    }

    private static boolean isWheel(MountingPlace place) {
        return place != null && place.kind() == PartKind.WHEEL;
    }

    /** The wheel on which a part is mounted once all is done. */
    private String host(Part root, MountingPlace place, List<Swap> swaps) {
        for (Swap each : swaps) {
            if (each.place() == place.host() && each.on() != null) {
                return each.on().name();
            }
        }
        Part in = root.kind() == PartKind.WHEEL ? root : before.places(root).get(place.host());
        return in == null ? root.name() + " " + place.host().words() : in.name();
    }
}
