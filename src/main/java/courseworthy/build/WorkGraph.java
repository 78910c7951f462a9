package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.WorkRules;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;

/** The jobs of some swaps, with what each of them waits for: wheels go out and in once, and what follows from the work is a job too. */
final class WorkGraph {

    /** To take a wheel out, or to put it back in, min (common practice, no source). */
    private static final int WHEEL_MINUTES = 1;

    private final WorkRules rules;
    private final MountingState before;
    private final BiPredicate<Part, WorkRules.FollowUp> follows;
    /** The wheel or crank that the part of a job goes on, by name. */
    private final Map<WorkJob, String> hosts = new IdentityHashMap<>();
    /** What goes on another bike. */
    private final Set<Part> lent = new LinkedHashSet<>();
    private final List<WorkJob> jobs = new ArrayList<>();
    /** What is in the places of each bike once all is done. */
    private final Map<Part, Map<MountingPlace, Part>> after = new IdentityHashMap<>();
    private int[][] waits;

    private WorkGraph(WorkRules rules, MountingState before, BiPredicate<Part, WorkRules.FollowUp> follows) {
        this.rules = rules;
        this.follows = follows;
        this.before = before;
    }

    /**
     * @param swaps  in any order
     * @param before what is mounted before the work
     */
    static WorkGraph of(List<Swap> swaps, MountingState before, WorkRules rules) {
        return of(swaps, before, rules, (bike, followUp) -> true);
    }

    /**
     * The same where not everything follows.
     *
     * @param follows what of the work that follows is done on a bike
     */
    static WorkGraph of(List<Swap> swaps, MountingState before, WorkRules rules, BiPredicate<Part, WorkRules.FollowUp> follows) {
        WorkGraph out = new WorkGraph(rules, before, follows);
        Set<Part> roots = new LinkedHashSet<>();
        for (Swap swap : swaps) {
            roots.add(swap.bike());
        }
        for (Part root : roots) {
            List<Swap> own = swaps.stream().filter(each -> each.bike() == root).toList();
            swaps.stream().filter(each -> each.bike() != root && each.on() != null).forEach(each -> out.lent.add(each.on()));
            out.jobsOn(root, own);
        }
        return out;
    }

    /** No jobs. */
    static WorkGraph none() {
        return new WorkGraph(WorkRules.shipped(), null, (bike, followUp) -> false);
    }

    List<WorkJob> jobs() {
        return jobs;
    }

    /** Minutes from the end of one job to the start of another: -1 where the other does not wait for it. */
    int[][] waits() {
        if (waits == null) {
            waits = new int[jobs.size()][jobs.size()];
            for (int i = 0; i < waits.length; i++) {
                for (int j = 0; j < waits.length; j++) {
                    waits[i][j] = i == j ? -1 : wait(jobs.get(i), jobs.get(j));
                }
            }
            handOvers();
        }
        return waits;
    }

    private int wait(WorkJob one, WorkJob other) {
        int out = rules.wait(one.kind(), other.kind(), one.shared(other));
        boolean bled = other.end() != null && one.bike() == other.bike() && OpenedHoses.ends(one.swap(), after.get(one.bike())).contains(other.end())
                && rules.followUps().stream().anyMatch(each -> each.followsOpenedHose() && each.job().equals(other.kind()));
        return bled ? Math.max(out, 0) : out;
    }

    /**
     * What one job takes off is put on by another only afterwards. Where two parts change places, somebody has to put one of them down: the
     * jobs are then done in the order given.
     */
    private void handOvers() {
        handOvers(true);
        handOvers(false);
    }

    /** @param asGiven between jobs in the order given, or else in the other, where nothing has them the other way round */
    private void handOvers(boolean asGiven) {
        for (int i = 0; i < waits.length; i++) {
            Set<Part> off = takenOff(jobs.get(i));
            for (int j = 0; j < waits.length; j++) {
                Swap swap = jobs.get(j).swap();
                boolean free = i < j == asGiven && swap != null && (asGiven && off.contains(swap.on()) || vacates(jobs.get(i).swap(), jobs.get(j)));
                if (i != j && waits[i][j] < 0 && (free || strips(jobs.get(i).swap(), jobs.get(j))) && !waitsFor(i, j, new boolean[waits.length])) {
                    waits[i][j] = 0;
                }
            }
        }
    }

    /** Whether a swap takes its part from a wheel that a job puts in. */
    private boolean strips(Swap swap, WorkJob job) {
        Part from = swap == null || swap.on() == null ? null : before.on(swap.on());
        return from != null && from.kind() == PartKind.WHEEL && job.kind().equals(WorkRules.WHEEL_IN) && job.wheels().contains(from.name())
                && swap.on() != (job.swap() == null ? null : job.swap().on()) && (job.swap() == null || !job.swap().with().contains(swap.on()));
    }

    /** Whether a swap takes a part from the very place in which a job puts another. */
    private boolean vacates(Swap swap, WorkJob job) {
        return swap != null && (vacates(swap.on(), job) || vacates(swap.off(), job));
    }

    private boolean vacates(Part part, WorkJob job) {
        Part from = part == null ? null : before.on(part);
        if (from == null || job.swap().on() == null || job.swap().on() == part) {
            return false;
        }
        MountingPlace place = job.swap().place();
        return place.host() == null ? root(part) == job.bike() && before.place(part) == place
                : part.kind() == place.kind() && from.name().equals(hosts.get(job));
    }

    /** The bike that a part is on, or the wheel or crank that lies loose; null where it lies loose itself. */
    private Part root(Part part) {
        Part at = before.on(part);
        while (at != null && before.on(at) != null) {
            at = before.on(at);
        }
        return at;
    }

    private Set<Part> takenOff(WorkJob job) {
        Set<Part> out = new LinkedHashSet<>();
        if (job.swap() != null && job.swap().off() != null) {
            out.add(job.swap().off());
        }
        if (job.kind().equals(WorkRules.WHEEL_OUT)) {
            out.addAll(before.places(job.bike()).values().stream().filter(each -> job.wheels().contains(each.name())).toList());
        }
        for (Part each : List.copyOf(out)) {
            out.addAll(before.carried(each));
        }
        return out;
    }

    /** Whether a job waits for another, or for one that waits for it. */
    private boolean waitsFor(int job, int other, boolean[] seen) {
        seen[job] = true;
        for (int i = 0; i < waits.length; i++) {
            if (waits[i][job] >= 0 && (i == other || !seen[i] && waitsFor(i, other, seen))) {
                return true;
            }
        }
        return false;
    }

    private void jobsOn(Part root, List<Swap> swaps) {
        boolean bike = root.kind() == PartKind.BIKE;
        Map<MountingPlace, Part> places = before.places(root);
        swaps.stream().filter(each -> each.on() != null).forEach(each -> places.put(each.place(), each.on()));
        after.put(root, places);
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
            Part in = before.places(root).get(wheel);
            boolean stays = swaps.stream().noneMatch(each -> each.place() == wheel) && !lent.contains(in);
            if (stays && in != null && swaps.stream().anyMatch(each -> goesOut(each, root, wheel))) {
                jobs.add(new WorkJob(WorkRules.WHEEL_IN, root, wheel.end(), Set.of(before.places(root).get(wheel).name()),
                        "Put the " + wheel.words() + " back into " + root + ", axle as marked", WHEEL_MINUTES, null));
            }
        }
        for (WorkRules.FollowUp each : bike ? rules.followUps() : List.<WorkRules.FollowUp>of()) {
            if (follows.test(root, each)) {
                follow(root, each);
            }
        }
    }

    private void follow(Part root, WorkRules.FollowUp each) {
        if (each.share() != WorkRules.SharePolicy.END) {
            if (jobs.stream().anyMatch(job -> job.bike() == root && each.follows(job.kind()))) {
                jobs.add(new WorkJob(each.job(), root, null, Set.of(), each.what(), each.minutes(), null));
            }
            return;
        }
        for (String end : List.of("front", "rear")) {
            if (jobs.stream().anyMatch(job -> job.bike() == root && (each.follows(job.kind()) && end.equals(job.end())
                    || each.followsOpenedHose() && OpenedHoses.ends(job.swap(), after.get(root)).contains(end)
                    || each.followsOpenedCable() && OpenedHoses.cabled(job.swap(), after.get(root)).contains(end)))) {
                jobs.add(new WorkJob(each.job(), root, end, Set.of(), each.what().replace("END", end), each.minutes(), null));
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
        if (OpenedHoses.ends(swap, after.get(root)).contains(wheel.end())) {
            return true;
        }
        boolean atThatEnd = wheel.end().equals(end(swap.place()));
        boolean onIt = swap.place().host() == null || swap.off() == null || before.isOn(swap.off(), in);
        return atThatEnd && onIt && rules.wheelOut().contains(swap.place().kind().word());
    }

    private static String end(MountingPlace place) {
        return place.kind() == PartKind.FORK || place.kind() == PartKind.HEADSET || place.host() == MountingPlace.FORK ? "front" : place.host() == MountingPlace.REAR_WHEEL ? "rear" : place.end();
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
        WorkJob out = new WorkJob(kind, root, end(place), wheels, swap.what(), (int) Math.ceil(swap.work().minutes()), swap);
        if (place.host() != null) {
            hosts.put(out, host(root, place, swaps));
        }
        return out;
    }

    private static boolean isWheel(MountingPlace place) {
        return place != null && place.kind() == PartKind.WHEEL;
    }

    /** The wheel or crank on which a part is mounted once all is done. */
    private String host(Part root, MountingPlace place, List<Swap> swaps) {
        for (Swap each : swaps) {
            if (each.place() == place.host() && each.on() != null) {
                return each.on().name();
            }
        }
        Part in = root.kind() != PartKind.BIKE ? root : before.places(root).get(place.host());
        return in == null ? root.name() + " " + place.host().words() : in.name();
    }
}
