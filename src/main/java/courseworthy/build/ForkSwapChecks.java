package courseworthy.build;

import courseworthy.fit.BrakeFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What goes with another fork: crown race, front caliper and its hose, the remote of a lockout, and what it does to the height of the bar and to
 * the steering (common practice, no source; the angles and lengths are plane trigonometry).
 */
final class ForkSwapChecks {

    private final Part bike;
    private final Map<MountingPlace, Part> before;
    private final Map<MountingPlace, Part> after;
    private final Part fork;

    private ForkSwapChecks(Part bike, Map<MountingPlace, Part> before, Map<MountingPlace, Part> after) {
        this.bike = bike;
        this.before = before;
        this.after = after;
        this.fork = after.get(MountingPlace.FORK);
    }

    /**
     * In sentences without a full stop.
     *
     * @param before what is on the bike before the work
     * @param after  what is on it once all is done, a fork among it
     */
    static List<String> of(Part bike, Map<MountingPlace, Part> before, Map<MountingPlace, Part> after) {
        ForkSwapChecks checks = new ForkSwapChecks(bike, before, after);
        List<String> out = new ArrayList<>(List.of(checks.crownRace(), checks.caliper()));
        checks.remote(out);
        out.add(checks.bar());
        checks.steering(out);
        return out;
    }

    private String crownRace() {
        Part race = after.get(MountingPlace.CROWN_RACE);
        if (race == null) {
            return "The crown race of your headset goes on it";
        }
        return race == before.get(MountingPlace.CROWN_RACE) ? "Move " + race + " over to it" : race + " is on it";
    }

    private String caliper() {
        Part caliper = after.get(MountingPlace.FRONT_CALIPER);
        Part adapter = after.get(MountingPlace.FRONT_ADAPTER);
        String where = adapter != null ? ", on " + adapter : fork.has(PartDetail.MOUNT_ROTOR) ? ", on its mount without an adapter" : "";
        Double spare = caliper == null ? null : BrakeFit.frontHoseSpare(caliper, fork, bike);
        return "Move " + (caliper == null ? "the front brake" : caliper.name()) + " over to it" + where
                + (spare == null ? ": see that its hose reaches with the bar turned either way" : "; its hose reaches, with " + millimetres(spare) + " to spare");
    }

    private void remote(List<String> out) {
        Part remote = after.get(MountingPlace.LOCKOUT_REMOTE);
        Part old = before.get(MountingPlace.FORK);
        if (isRemote(fork)) {
            out.add(remote == null ? "Its lockout remote goes on the bar" : "Connect " + remote + " to it");
        } else if (old != null && isRemote(old)) {
            out.add((remote == null ? "The lockout remote" : remote.name()) + " has nothing to work on it");
        }
    }

    private static boolean isRemote(Part fork) {
        return fork.has(PartDetail.REMOTE) || "remote".equals(fork.word(PartDetail.LOCKOUT));
    }

    /** What the fork alone does to where the hands are: everything else as before. */
    private String bar() {
        Point now = Position.of(bike, before).hands();
        Point then = Position.of(bike, withTheFork()).hands();
        boolean known = now != null && then != null && lengthKnown(before.get(MountingPlace.FORK)) && lengthKnown(fork);
        if (!known) {
            return "Measure the height of the bar before, and set it again after";
        }
        long up = Math.round((then.up() - now.up()) * 1000);
        long forward = Math.round((then.forward() - now.forward()) * 1000);
        if (up == 0 && forward == 0) {
            return "The bar stays where it is";
        }
        List<String> moves = new ArrayList<>();
        if (up != 0) {
            moves.add(Math.abs(up) + " mm " + (up > 0 ? "higher" : "lower"));
        }
        if (forward != 0) {
            moves.add(Math.abs(forward) + " mm " + (forward > 0 ? "farther forward" : "farther back"));
        }
        return "The bar comes " + String.join(" and ", moves) + ", with stem and spacers as they are now";
    }

    private boolean lengthKnown(Part one) {
        return one != null && one.has(PartDetail.LENGTH) && bike.has(PartDetail.DESIGN_FORK_LENGTH) && bike.has(PartDetail.WHEELBASE);
    }

    private void steering(List<String> out) {
        Part old = before.get(MountingPlace.FORK);
        Position now = Position.of(bike, before);
        Position then = Position.of(bike, withTheFork());
        if (old == null || !lengthKnown(old) || !lengthKnown(fork) || then.headAngle() == null) {
            out.add("Head angle and trail are not known: measure both forks from axle to crown");
            return;
        }
        long tenths = Math.round(then.headAngle() * 10) - Math.round(now.headAngle() * 10);
        String angle = "Head angle " + Position.degrees(then.headAngle())
                + (tenths == 0 ? ", as now" : ", " + Position.degrees(Math.abs(tenths) / 10.0) + (tenths > 0 ? " steeper" : " slacker") + " than now");
        Double trail = then.trail();
        Double was = now.trail();
        out.add(trail == null || was == null ? angle : angle + "; trail " + millimetres(trail) + trailChange(Math.round(trail * 1000) - Math.round(was * 1000)));
    }

    private static String trailChange(long millimetres) {
        return millimetres == 0 ? ", as now" : ", " + Math.abs(millimetres) + " mm " + (millimetres > 0 ? "more" : "less") + " than now";
    }

    private Map<MountingPlace, Part> withTheFork() {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        out.putAll(before);
        out.put(MountingPlace.FORK, fork);
        return out;
    }

    private static String millimetres(double metres) {
        return Math.round(metres * 1000) + " mm";
    }
}
