package courseworthy.build;

import courseworthy.fit.BuildLoad;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Whether a build breaks a limit, written anew from what the limits say and from nothing of the tool's own checks. A limit with a
 * figure missing is broken unless every part it joins stands there now.
 */
final class IndependentCheck {

    private final Part bike;
    private final Map<MountingPlace, Part> build;
    private final StringBuilder wrong = new StringBuilder();

    private IndependentCheck(Part bike, Map<MountingPlace, Part> build) {
        this.bike = bike;
        this.build = build;
    }

    /** What is broken, empty where nothing is. */
    static String of(Part bike, Map<MountingPlace, Part> build, BuildLoad load) {
        IndependentCheck check = new IndependentCheck(bike, build);
        check.wheels();
        check.brakes();
        check.drivetrain();
        check.chain();
        check.rest();
        check.systems();
        check.lengths();
        check.order();
        check.loads(load);
        return check.wrong.toString();
    }

    private void wheels() {
        for (String end : List.of("FRONT", "REAR")) {
            MountingPlace tyre = MountingPlace.valueOf(end + "_TYRE");
            MountingPlace wheel = MountingPlace.valueOf(end + "_WHEEL");
            equal("bead", tyre, PartDetail.BEAD_SEAT, wheel, PartDetail.BEAD_SEAT);
            Part t = build.get(tyre);
            Part w = build.get(wheel);
            if (t != null && w != null) {
                Double width = t.number(PartDetail.WIDTH);
                Double rim = w.number(PartDetail.RIM_INNER_WIDTH);
                need("rim", width == null || rim == null ? null : width - rim >= 0.0049999, tyre, wheel);
                need("chart", !(width != null && w.has(PartDetail.MOST_TYRE) && width > w.number(PartDetail.MOST_TYRE) + 1e-6), tyre, wheel);
                need("chart", !(width != null && w.has(PartDetail.LEAST_TYRE) && width < w.number(PartDetail.LEAST_TYRE) - 1e-6), tyre, wheel);
                if (Boolean.TRUE.equals(w.yes(PartDetail.HOOKLESS))) {
                    need("hookless", t.yes(PartDetail.HOOKLESS), tyre, wheel);
                } else if (!w.has(PartDetail.HOOKLESS) && !Boolean.TRUE.equals(t.yes(PartDetail.HOOKLESS))) {
                    need("hookless", null, tyre, wheel);
                }
                Part holder = end.equals("FRONT") ? build.get(MountingPlace.FORK) : bike;
                if (holder != null && w.has(PartDetail.BEAD_SEAT)) {
                    Double clear = holder.clearance(w.number(PartDetail.BEAD_SEAT));
                    Double size = t.has(PartDetail.MEASURED_WIDTH) ? t.number(PartDetail.MEASURED_WIDTH) : width;
                    Boolean fits = clear == null || size == null ? null : Boolean.valueOf(size <= clear + 1e-6);
                    if (end.equals("FRONT")) {
                        need("clearance", fits, tyre, wheel, MountingPlace.FORK);
                    } else {
                        need("clearance", fits, tyre, wheel);
                    }
                }
            }
        }
        same("front axle", MountingPlace.FRONT_WHEEL, PartDetail.AXLE, MountingPlace.FORK, PartDetail.AXLE);
        equal("front axle", MountingPlace.FRONT_WHEEL, PartDetail.AXLE_WIDTH, MountingPlace.FORK, PartDetail.AXLE_WIDTH);
        sameAsBike("rear axle", MountingPlace.REAR_WHEEL, PartDetail.AXLE);
        equalToBike("rear axle", MountingPlace.REAR_WHEEL, PartDetail.AXLE_WIDTH);
        Part front = build.get(MountingPlace.FRONT_TYRE);
        Part rear = build.get(MountingPlace.REAR_TYRE);
        if (front != null && rear != null && front.has(PartDetail.TREAD) && rear.has(PartDetail.TREAD)) {
            List<String> order = List.of("slick", "file", "fast", "all-round", "aggressive", "mud");
            need("tread", order.indexOf(front.word(PartDetail.TREAD)) >= order.indexOf(rear.word(PartDetail.TREAD)), MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE);
        }
        if (new HashSet<>(build.values()).size() != build.size()) {
            wrong.append("a part twice; ");
        }
    }

    private void brakes() {
        for (String end : List.of("FRONT", "REAR")) {
            MountingPlace rotor = MountingPlace.valueOf(end + "_ROTOR");
            MountingPlace pads = MountingPlace.valueOf(end + "_PADS");
            same("rotor mount", rotor, PartDetail.ROTOR_MOUNT, MountingPlace.valueOf(end + "_WHEEL"), PartDetail.ROTOR_MOUNT);
            MountingPlace caliper = MountingPlace.valueOf(end + "_CALIPER");
            if (build.get(caliper) == null) {
                sameAsBike("pad shape", pads, PartDetail.PAD_SHAPE);
            } else {
                same("pad shape", pads, PartDetail.PAD_SHAPE, caliper, PartDetail.PAD_SHAPE);
            }
            mount(end.equals("FRONT"), rotor, MountingPlace.valueOf(end + "_ADAPTER"), caliper);
            Part r = build.get(rotor);
            Part p = build.get(pads);
            if (r != null && p != null) {
                List<String> permitted = r.words(PartDetail.PADS_PERMITTED);
                need("pads", permitted == null || !p.has(PartDetail.COMPOUND) ? null : permitted.contains(p.word(PartDetail.COMPOUND)), rotor, pads);
            }
        }
        Part rear = build.get(MountingPlace.REAR_ROTOR);
        if (rear != null) {
            need("rear rotor", !rear.has(PartDetail.DIAMETER) || !bike.has(PartDetail.MOST_ROTOR) ? null
                    : rear.number(PartDetail.DIAMETER) <= bike.number(PartDetail.MOST_ROTOR) + 1e-6, MountingPlace.REAR_ROTOR);
        }
    }

    /** A caliper reaches the rotor that its mount, or the adapter on it, is for; its own mount is that of what it is bolted to; its hose reaches. */
    private void mount(boolean front, MountingPlace rotor, MountingPlace adapter, MountingPlace caliper) {
        Part holder = front ? build.get(MountingPlace.FORK) : bike;
        Part on = build.get(adapter);
        if (holder == null) {
            return;
        }
        MountingPlace[] rotorAndHolder = front ? new MountingPlace[] {rotor, MountingPlace.FORK} : new MountingPlace[] {rotor};
        MountingPlace[] rotorAndAll = front ? new MountingPlace[] {rotor, MountingPlace.FORK, adapter} : new MountingPlace[] {rotor, adapter};
        Double size = build.get(rotor) == null ? null : build.get(rotor).number(PartDetail.DIAMETER);
        Double bare = holder.number(PartDetail.MOUNT_ROTOR);
        if (build.get(rotor) != null && on == null && bare != null) {
            need("no adapter", size == null ? null : mm(holder, PartDetail.MOUNT_ROTOR) == Math.round(size * 1000), rotorAndHolder);
        } else if (build.get(rotor) != null && on != null) {
            boolean other = size != null && on.has(PartDetail.DIAMETER) && mm(on, PartDetail.DIAMETER) != Math.round(size * 1000);
            Boolean made = !on.has(PartDetail.MOUNT_ROTOR) || bare == null ? null : mm(on, PartDetail.MOUNT_ROTOR) == Math.round(bare * 1000);
            need("adapter size", other || Boolean.FALSE.equals(made) && size != null && on.has(PartDetail.DIAMETER) ? Boolean.FALSE
                    : size == null || !on.has(PartDetail.DIAMETER) ? null : made, rotorAndAll);
        }
        if (on != null) {
            need("adapter mount", labels(on.word(PartDetail.BRAKE_MOUNT), holder.word(PartDetail.BRAKE_MOUNT)),
                    front ? new MountingPlace[] {adapter, MountingPlace.FORK} : new MountingPlace[] {adapter});
        }
        Part held = build.get(caliper);
        if (held != null) {
            String under = on == null ? holder.word(PartDetail.BRAKE_MOUNT) : on.word(PartDetail.CALIPER_MOUNT);
            MountingPlace[] places = on == null ? front ? new MountingPlace[] {caliper, MountingPlace.FORK} : new MountingPlace[] {caliper}
                    : front ? new MountingPlace[] {caliper, MountingPlace.FORK, adapter} : new MountingPlace[] {caliper, adapter};
            need("caliper mount", labels(held.word(PartDetail.BRAKE_MOUNT), under), places);
            hose(front, held, holder, caliper);
            Part levers = build.get(MountingPlace.SHIFTER);
            if (levers != null && levers.has(PartDetail.BRAKE_ACTUATION)) {
                need("levers", labels(held.word(PartDetail.BRAKE_ACTUATION), levers.word(PartDetail.BRAKE_ACTUATION)), caliper, MountingPlace.SHIFTER);
            }
        }
    }

    private void hose(boolean front, Part caliper, Part holder, MountingPlace place) {
        Double run = bike.number(front ? PartDetail.FRONT_HOSE : PartDetail.REAR_HOSE);
        if (run == null && !caliper.has(PartDetail.HOSE_LENGTH)) {
            return;
        }
        boolean known = run != null && caliper.has(PartDetail.HOSE_LENGTH)
                && (!front || holder.has(PartDetail.LENGTH) && bike.has(PartDetail.DESIGN_FORK_LENGTH));
        Boolean reaches = null;
        if (known) {
            long farther = front ? mm(holder, PartDetail.LENGTH) - mm(bike, PartDetail.DESIGN_FORK_LENGTH) : 0;
            reaches = mm(caliper, PartDetail.HOSE_LENGTH) >= Math.round(run * 1000) + farther;
        }
        need("hose", reaches, front ? new MountingPlace[] {place, MountingPlace.FORK} : new MountingPlace[] {place});
    }

    private static Boolean labels(String one, String other) {
        return one == null || other == null ? null : Boolean.valueOf(one.equals(other));
    }

    /** Headset, crown race, bottom bracket, battery, and what is worked from the bar. */
    private void systems() {
        sameAsBike("headset", MountingPlace.HEADSET, PartDetail.HEADSET_FIT);
        same("crown race", MountingPlace.CROWN_RACE, PartDetail.LOWER_BEARING, MountingPlace.HEADSET, PartDetail.LOWER_BEARING);
        equal("crown race", MountingPlace.CROWN_RACE, PartDetail.RACE_SEAT, MountingPlace.FORK, PartDetail.RACE_SEAT);
        sameAsBike("shell", MountingPlace.BOTTOM_BRACKET, PartDetail.SHELL);
        Part battery = build.get(MountingPlace.BATTERY);
        Part derailleur = build.get(MountingPlace.DERAILLEUR);
        if (battery != null && derailleur != null && !"cable".equals(derailleur.word(PartDetail.ACTUATION))) {
            String one = battery.word(PartDetail.DRIVETRAIN);
            String other = derailleur.word(PartDetail.DRIVETRAIN);
            need("battery", one == null || other == null ? null : Boolean.valueOf(one.equals(other) || lists(battery, other) || lists(derailleur, one)),
                    MountingPlace.BATTERY, MountingPlace.DERAILLEUR);
        }
        remote(MountingPlace.FORK, MountingPlace.LOCKOUT_REMOTE);
        remote(MountingPlace.SHOCK, MountingPlace.LOCKOUT_REMOTE);
        remote(MountingPlace.SEATPOST, MountingPlace.DROPPER_REMOTE);
        Part post = build.get(MountingPlace.SEATPOST);
        if (post != null && Boolean.TRUE.equals(post.yes(PartDetail.DROPPER)) && (post.has(PartDetail.ROUTING) || bike.has(PartDetail.DROPPER_ROUTING))) {
            need("routing", !post.has(PartDetail.ROUTING) || !bike.has(PartDetail.DROPPER_ROUTING) ? null
                    : Boolean.valueOf(bike.words(PartDetail.DROPPER_ROUTING).contains(post.word(PartDetail.ROUTING))), MountingPlace.SEATPOST);
        }
    }

    private void remote(MountingPlace worked, MountingPlace from) {
        Part part = build.get(worked);
        Part remote = build.get(from);
        if (part != null && part.has(PartDetail.REMOTE)) {
            need("remote", remote == null ? Boolean.FALSE : remote.words(PartDetail.REMOTES_WORKED) == null ? null
                    : Boolean.valueOf(remote.words(PartDetail.REMOTES_WORKED).contains(part.word(PartDetail.REMOTE))), worked, from);
        }
    }

    private void drivetrain() {
        same("freehub", MountingPlace.CASSETTE, PartDetail.FREEHUB, MountingPlace.REAR_WHEEL, PartDetail.FREEHUB);
        if (build.get(MountingPlace.BOTTOM_BRACKET) == null) {
            sameAsBike("bottom bracket", MountingPlace.CRANK, PartDetail.BOTTOM_BRACKET);
        }
        same("bottom bracket", MountingPlace.CRANK, PartDetail.BOTTOM_BRACKET, MountingPlace.BOTTOM_BRACKET, PartDetail.BOTTOM_BRACKET);
        same("ring mount", MountingPlace.CHAINRING, PartDetail.RING_MOUNT, MountingPlace.CRANK, PartDetail.RING_MOUNT);
        same("pedal thread", MountingPlace.PEDALS, PartDetail.PEDAL_THREAD, MountingPlace.CRANK, PartDetail.PEDAL_THREAD);
        Part derailleur = build.get(MountingPlace.DERAILLEUR);
        Part cassette = build.get(MountingPlace.CASSETTE);
        Part rings = build.get(MountingPlace.CHAINRING);
        if (cassette != null && derailleur != null) {
            int[] cogs = cassette.teeth(PartDetail.SPROCKETS);
            Double most = derailleur.number(PartDetail.LARGEST_SPROCKET);
            need("largest sprocket", cogs == null || most == null ? null : cogs[cogs.length - 1] <= most, MountingPlace.CASSETTE, MountingPlace.DERAILLEUR);
            need("speeds", speeds(cassette) < 0 || !derailleur.has(PartDetail.SPEEDS) ? null : speeds(cassette) == derailleur.number(PartDetail.SPEEDS),
                    MountingPlace.CASSETTE, MountingPlace.DERAILLEUR);
            String one = cassette.word(PartDetail.DRIVETRAIN);
            String other = derailleur.word(PartDetail.DRIVETRAIN);
            need("family", one == null || other == null ? null : Boolean.valueOf(one.equals(other) || lists(cassette, other) || lists(derailleur, one)),
                    MountingPlace.CASSETTE, MountingPlace.DERAILLEUR);
            if (rings != null) {
                int[] teeth = rings.teeth(PartDetail.TEETH);
                Double capacity = derailleur.number(PartDetail.CAPACITY);
                need("capacity", cogs == null || teeth == null || capacity == null ? null
                        : cogs[cogs.length - 1] - cogs[0] + teeth[0] - teeth[teeth.length - 1] <= capacity, MountingPlace.CASSETTE, MountingPlace.DERAILLEUR,
                        MountingPlace.CHAINRING);
            }
        }
        if (rings != null) {
            int[] teeth = rings.teeth(PartDetail.TEETH);
            need("ring size", teeth == null || !bike.has(PartDetail.LARGEST_RING) ? null : teeth[0] <= bike.number(PartDetail.LARGEST_RING), MountingPlace.CHAINRING);
        }
    }

    /**
     * An inch of chain is two links. Round the largest ring and sprocket go twice the longest stay, a quarter of the teeth of each (half a
     * turn of each at half an inch a tooth), and an inch more for the pair that joins it (the common sizing rule, from memory).
     */
    private void chain() {
        Part chain = build.get(MountingPlace.CHAIN);
        Part cassette = build.get(MountingPlace.CASSETTE);
        Part rings = build.get(MountingPlace.CHAINRING);
        if (chain != null && cassette != null && rings != null) {
            boolean still = bike.has(PartDetail.REAR_TRAVEL) && bike.number(PartDetail.REAR_TRAVEL) == 0;
            boolean known = chain.has(PartDetail.LINKS) && cassette.has(PartDetail.SPROCKETS) && rings.has(PartDetail.TEETH) && bike.has(PartDetail.CHAINSTAY)
                    && (still || bike.has(PartDetail.CHAIN_GROWTH));
            Boolean enough = null;
            if (known) {
                double millimetres = 1000 * (bike.number(PartDetail.CHAINSTAY) + (bike.has(PartDetail.CHAIN_GROWTH) ? bike.number(PartDetail.CHAIN_GROWTH) : 0));
                int[] cogs = cassette.teeth(PartDetail.SPROCKETS);
                double halfInches = 4 * millimetres / 25.4 + (rings.teeth(PartDetail.TEETH)[0] + cogs[cogs.length - 1]) / 2.0 + 2;
                int links = (int) Math.ceil(halfInches / 2 - 1e-7) * 2;
                enough = chain.number(PartDetail.LINKS) >= links;
            }
            need("chain length", enough, MountingPlace.CHAIN, MountingPlace.CASSETTE, MountingPlace.CHAINRING);
        }
        between("chainline", MountingPlace.CRANK, PartDetail.CHAINLINE, bike.number(PartDetail.LEAST_CHAINLINE), bike.number(PartDetail.MOST_CHAINLINE));
        for (MountingPlace place : List.of(MountingPlace.SHIFTER, MountingPlace.CHAIN)) {
            Part part = build.get(place);
            if (part != null && cassette != null) {
                need("speeds", !part.has(PartDetail.SPEEDS) || speeds(cassette) < 0 ? null : part.number(PartDetail.SPEEDS) == speeds(cassette), place,
                        MountingPlace.CASSETTE);
            }
        }
    }

    /** Valve, seatpost and steerer: what must stand out, stay inside, and reach through. */
    private void lengths() {
        for (MountingPlace place : List.of(MountingPlace.FRONT_WHEEL, MountingPlace.REAR_WHEEL)) {
            Part wheel = build.get(place);
            if (wheel != null) {
                need("valve", !wheel.has(PartDetail.VALVE_LENGTH) || !wheel.has(PartDetail.RIM_DEPTH) ? null
                        : mm(wheel, PartDetail.VALVE_LENGTH) >= mm(wheel, PartDetail.RIM_DEPTH) + 15, place);
            }
        }
        Part post = build.get(MountingPlace.SEATPOST);
        Part saddle = build.get(MountingPlace.SADDLE);
        if (post != null && saddle != null) {
            boolean known = post.has(PartDetail.LENGTH) && post.has(PartDetail.LEAST_INSERTION) && saddle.has(PartDetail.HEIGHT)
                    && bike.has(PartDetail.SADDLE_HEIGHT) && bike.has(PartDetail.SEAT_TUBE);
            Boolean inside = null;
            if (known) {
                long out = mm(bike, PartDetail.SADDLE_HEIGHT) - mm(bike, PartDetail.SEAT_TUBE) - mm(saddle, PartDetail.HEIGHT);
                long in = mm(post, PartDetail.LENGTH) - out;
                boolean least = in >= mm(post, PartDetail.LEAST_INSERTION)
                        && (!bike.has(PartDetail.LEAST_POST_INSERTION) || in >= mm(bike, PartDetail.LEAST_POST_INSERTION));
                inside = !least ? Boolean.FALSE : bike.has(PartDetail.MOST_POST_INSERTION) ? in <= mm(bike, PartDetail.MOST_POST_INSERTION) : null;
            }
            need("post insertion", inside, MountingPlace.SEATPOST, MountingPlace.SADDLE);
        }
        Part fork = build.get(MountingPlace.FORK);
        Part stem = build.get(MountingPlace.STEM);
        Part spacers = build.get(MountingPlace.SPACERS);
        if (fork != null && stem != null) {
            boolean known = fork.has(PartDetail.STEERER_LENGTH) && stem.has(PartDetail.CLAMP_HEIGHT) && bike.has(PartDetail.HEAD_TUBE)
                    && (spacers == null || spacers.has(PartDetail.HEIGHT));
            Boolean reaches = null;
            if (known) {
                long needed = mm(bike, PartDetail.HEAD_TUBE) + mm(stem, PartDetail.CLAMP_HEIGHT) + (spacers == null ? 0 : mm(spacers, PartDetail.HEIGHT));
                reaches = mm(fork, PartDetail.STEERER_LENGTH) >= needed && mm(fork, PartDetail.STEERER_LENGTH) <= needed + 40;
            }
            if (spacers != null && spacers.has(PartDetail.HEIGHT) && fork.has(PartDetail.MOST_SPACERS)) {
                need("spacers", mm(spacers, PartDetail.HEIGHT) <= mm(fork, PartDetail.MOST_SPACERS), MountingPlace.FORK, MountingPlace.STEM, MountingPlace.SPACERS);
            }
            if (stem.has(PartDetail.STEM_LENGTH)) {
                need("stem length", !(bike.has(PartDetail.LEAST_STEM) && mm(stem, PartDetail.STEM_LENGTH) < mm(bike, PartDetail.LEAST_STEM)
                        || bike.has(PartDetail.MOST_STEM) && mm(stem, PartDetail.STEM_LENGTH) > mm(bike, PartDetail.MOST_STEM)), MountingPlace.STEM);
            }
            if (spacers == null) {
                need("steerer", reaches, MountingPlace.FORK, MountingPlace.STEM);
            } else {
                need("steerer", reaches, MountingPlace.FORK, MountingPlace.STEM, MountingPlace.SPACERS);
            }
        }
    }

    /** Front never narrower nor smaller than rear, travels together, and the lower ends of what a frame takes. */
    private void order() {
        Part front = build.get(MountingPlace.FRONT_TYRE);
        Part rear = build.get(MountingPlace.REAR_TYRE);
        if (front != null && rear != null && width(front) != null && width(rear) != null) {
            need("tyre order", width(front) >= width(rear), MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE);
        }
        Part large = build.get(MountingPlace.FRONT_ROTOR);
        Part small = build.get(MountingPlace.REAR_ROTOR);
        if (large != null && small != null && large.has(PartDetail.DIAMETER) && small.has(PartDetail.DIAMETER)) {
            need("rotor order", mm(large, PartDetail.DIAMETER) >= mm(small, PartDetail.DIAMETER), MountingPlace.FRONT_ROTOR, MountingPlace.REAR_ROTOR);
        }
        Part fork = build.get(MountingPlace.FORK);
        if (fork != null && large != null && large.has(PartDetail.DIAMETER)) {
            need("front rotor", !fork.has(PartDetail.MOST_ROTOR) ? null : mm(large, PartDetail.DIAMETER) <= mm(fork, PartDetail.MOST_ROTOR)
                    && (!fork.has(PartDetail.LEAST_ROTOR) || mm(large, PartDetail.DIAMETER) >= mm(fork, PartDetail.LEAST_ROTOR)), MountingPlace.FORK, MountingPlace.FRONT_ROTOR);
        }
        if (fork != null && fork.has(PartDetail.TRAVEL) && bike.has(PartDetail.REAR_TRAVEL) && mm(fork, PartDetail.TRAVEL) > 0 && mm(bike, PartDetail.REAR_TRAVEL) > 0) {
            need("travel", Math.abs(mm(fork, PartDetail.TRAVEL) - mm(bike, PartDetail.REAR_TRAVEL)) <= 20, MountingPlace.FORK);
        }
        if (fork != null && fork.has(PartDetail.TRAVEL) && bike.has(PartDetail.LEAST_FORK_TRAVEL)) {
            need("fork travel", mm(fork, PartDetail.TRAVEL) >= mm(bike, PartDetail.LEAST_FORK_TRAVEL), MountingPlace.FORK);
        }
        if (fork != null && fork.has(PartDetail.LENGTH) && bike.has(PartDetail.LEAST_FORK_LENGTH)) {
            need("fork length", mm(fork, PartDetail.LENGTH) >= mm(bike, PartDetail.LEAST_FORK_LENGTH), MountingPlace.FORK);
        }
        Part rings = build.get(MountingPlace.CHAINRING);
        if (rings != null && rings.has(PartDetail.TEETH)) {
            int[] teeth = rings.teeth(PartDetail.TEETH);
            need("ring size", !bike.has(PartDetail.SMALLEST_RING) || teeth[teeth.length - 1] >= bike.number(PartDetail.SMALLEST_RING), MountingPlace.CHAINRING);
            need("two rings", teeth.length == 1 ? Boolean.TRUE : bike.yes(PartDetail.TWO_RINGS), MountingPlace.CHAINRING);
        }
    }

    /** As counted, else as written; -1 where neither is known. */
    private static double speeds(Part cassette) {
        return cassette.has(PartDetail.SPROCKETS) ? cassette.teeth(PartDetail.SPROCKETS).length : cassette.has(PartDetail.SPEEDS) ? cassette.number(PartDetail.SPEEDS) : -1;
    }

    private static Long width(Part tyre) {
        return tyre.has(PartDetail.MEASURED_WIDTH) ? Long.valueOf(mm(tyre, PartDetail.MEASURED_WIDTH)) : tyre.has(PartDetail.WIDTH) ? mm(tyre, PartDetail.WIDTH) : null;
    }

    private static long mm(Part part, PartDetail detail) {
        return Math.round(part.number(detail) * 1000);
    }

    private void between(String what, MountingPlace place, PartDetail detail, Double least, Double most) {
        Part part = build.get(place);
        if (part != null) {
            boolean under = part.has(detail) && least != null && part.number(detail) < least - 1e-7;
            boolean over = part.has(detail) && most != null && part.number(detail) > most + 1e-7;
            need(what, under || over ? Boolean.FALSE : part.has(detail) && least != null && most != null ? Boolean.TRUE : null, place);
        }
    }

    private static boolean lists(Part part, String family) {
        return part.words(PartDetail.PUBLISHED_WITH) != null && part.words(PartDetail.PUBLISHED_WITH).contains(family);
    }

    private void rest() {
        if (build.get(MountingPlace.HEADSET) == null) {
            sameAsBike("steerer", MountingPlace.FORK, PartDetail.STEERER);
        }
        same("steerer", MountingPlace.FORK, PartDetail.STEERER, MountingPlace.HEADSET, PartDetail.STEERER);
        sameAsBike("shock mount", MountingPlace.SHOCK, PartDetail.SHOCK_MOUNT);
        equalToBike("shock", MountingPlace.SHOCK, PartDetail.SHOCK_LENGTH);
        equal("steerer clamp", MountingPlace.STEM, PartDetail.STEERER_CLAMP, MountingPlace.FORK, PartDetail.STEERER_CLAMP);
        equal("bar clamp", MountingPlace.BAR, PartDetail.BAR_CLAMP, MountingPlace.STEM, PartDetail.BAR_CLAMP);
        same("levers", MountingPlace.SHIFTER, PartDetail.BAR_SHAPE, MountingPlace.BAR, PartDetail.BAR_SHAPE);
        same("rails", MountingPlace.SADDLE, PartDetail.RAILS, MountingPlace.SEATPOST, PartDetail.RAILS);
        equalToBike("post", MountingPlace.SEATPOST, PartDetail.POST_DIAMETER);
        if (build.get(MountingPlace.EXTENSIONS) != null && build.get(MountingPlace.BAR) != null) {
            need("extensions", build.get(MountingPlace.BAR).yes(PartDetail.EXTENSIONS_APPROVED), MountingPlace.EXTENSIONS, MountingPlace.BAR);
        }
        Part fork = build.get(MountingPlace.FORK);
        if (fork != null) {
            need("fork travel", !fork.has(PartDetail.TRAVEL) || !bike.has(PartDetail.MOST_FORK_TRAVEL) ? null
                    : fork.number(PartDetail.TRAVEL) <= bike.number(PartDetail.MOST_FORK_TRAVEL) + 1e-6, MountingPlace.FORK);
            need("fork length", !fork.has(PartDetail.LENGTH) || !bike.has(PartDetail.MOST_FORK_LENGTH) ? null
                    : fork.number(PartDetail.LENGTH) <= bike.number(PartDetail.MOST_FORK_LENGTH) + 1e-6, MountingPlace.FORK);
        }
    }

    private void loads(BuildLoad load) {
        for (Part part : build.values()) {
            boolean over = part.has(PartDetail.MASS_LIMIT) && load.system() > part.number(PartDetail.MASS_LIMIT)
                    || part.has(PartDetail.RIDER_LIMIT) && load.rider() > part.number(PartDetail.RIDER_LIMIT);
            if (over) {
                wrong.append("too heavy for ").append(part).append("; ");
            }
            if (part.kind() != PartKind.SHOCK && part.has(PartDetail.USE_CATEGORY) && part.word(PartDetail.USE_CATEGORY).equals("EN 2") && load.ledge() > 0.15 + 1e-6) {
                wrong.append("drop too high for ").append(part).append("; ");
            }
        }
        if (bike.has(PartDetail.MASS_LIMIT) && load.system() > bike.number(PartDetail.MASS_LIMIT)) {
            wrong.append("too heavy for the bike; ");
        }
    }

    private void same(String what, MountingPlace a, PartDetail mine, MountingPlace b, PartDetail theirs) {
        Part one = build.get(a);
        Part other = build.get(b);
        if (one != null && other != null) {
            need(what, !one.has(mine) || !other.has(theirs) ? null : Boolean.valueOf(Objects.equals(one.word(mine), other.word(theirs))), a, b);
        }
    }

    private void equal(String what, MountingPlace a, PartDetail mine, MountingPlace b, PartDetail theirs) {
        Part one = build.get(a);
        Part other = build.get(b);
        if (one != null && other != null) {
            need(what, !one.has(mine) || !other.has(theirs) ? null
                    : Boolean.valueOf(Math.abs(one.number(mine) - other.number(theirs)) < 0.0005), a, b);
        }
    }

    private void sameAsBike(String what, MountingPlace a, PartDetail detail) {
        Part one = build.get(a);
        if (one != null) {
            need(what, !one.has(detail) || !bike.has(detail) ? null : Boolean.valueOf(one.word(detail).equals(bike.word(detail))), a);
        }
    }

    private void equalToBike(String what, MountingPlace a, PartDetail detail) {
        Part one = build.get(a);
        if (one != null) {
            need(what, !one.has(detail) || !bike.has(detail) ? null
                    : Boolean.valueOf(Math.abs(one.number(detail) - bike.number(detail)) < 0.0005), a);
        }
    }

    private void need(String what, Boolean holds, MountingPlace... places) {
        boolean stands = true;
        for (MountingPlace place : places) {
            Part part = build.get(place);
            stands &= part != null && part.bike() == bike && part.place() == place;
        }
        if (Boolean.FALSE.equals(holds) || holds == null && !stands) {
            wrong.append(holds == null ? "not known: " : "broken: ").append(what).append("; ");
        }
    }
}
