package courseworthy.build;

import courseworthy.rulebase.Load;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
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
    private final Map<Place, Part> build;
    private final StringBuilder wrong = new StringBuilder();

    private IndependentCheck(Part bike, Map<Place, Part> build) {
        this.bike = bike;
        this.build = build;
    }

    /** What is broken, empty where nothing is. */
    static String of(Part bike, Map<Place, Part> build, Load load) {
        IndependentCheck check = new IndependentCheck(bike, build);
        check.wheels();
        check.brakes();
        check.drivetrain();
        check.chain();
        check.rest();
        check.lengths();
        check.order();
        check.loads(load);
        return check.wrong.toString();
    }

    private void wheels() {
        for (String end : List.of("FRONT", "REAR")) {
            Place tyre = Place.valueOf(end + "_TYRE");
            Place wheel = Place.valueOf(end + "_WHEEL");
            equal("bead", tyre, Detail.BEAD_SEAT, wheel, Detail.BEAD_SEAT);
            Part t = build.get(tyre);
            Part w = build.get(wheel);
            if (t != null && w != null) {
                Double width = t.number(Detail.WIDTH);
                Double rim = w.number(Detail.RIM_INNER_WIDTH);
                need("rim", width == null || rim == null ? null : width - rim >= 0.0049999, tyre, wheel);
                need("chart", !(width != null && w.has(Detail.MOST_TYRE) && width > w.number(Detail.MOST_TYRE) + 1e-6), tyre, wheel);
                need("chart", !(width != null && w.has(Detail.LEAST_TYRE) && width < w.number(Detail.LEAST_TYRE) - 1e-6), tyre, wheel);
                if (Boolean.TRUE.equals(w.yes(Detail.HOOKLESS))) {
                    need("hookless", t.yes(Detail.HOOKLESS), tyre, wheel);
                } else if (!w.has(Detail.HOOKLESS) && !Boolean.TRUE.equals(t.yes(Detail.HOOKLESS))) {
                    need("hookless", null, tyre, wheel);
                }
                Part holder = end.equals("FRONT") ? build.get(Place.FORK) : bike;
                if (holder != null && w.has(Detail.BEAD_SEAT)) {
                    Double clear = holder.clearance(w.number(Detail.BEAD_SEAT));
                    Double size = t.has(Detail.MEASURED_WIDTH) ? t.number(Detail.MEASURED_WIDTH) : width;
                    Boolean fits = clear == null || size == null ? null : Boolean.valueOf(size <= clear + 1e-6);
                    if (end.equals("FRONT")) {
                        need("clearance", fits, tyre, wheel, Place.FORK);
                    } else {
                        need("clearance", fits, tyre, wheel);
                    }
                }
            }
        }
        same("front axle", Place.FRONT_WHEEL, Detail.AXLE, Place.FORK, Detail.AXLE);
        equal("front axle", Place.FRONT_WHEEL, Detail.AXLE_WIDTH, Place.FORK, Detail.AXLE_WIDTH);
        sameAsBike("rear axle", Place.REAR_WHEEL, Detail.AXLE);
        equalToBike("rear axle", Place.REAR_WHEEL, Detail.AXLE_WIDTH);
        Part front = build.get(Place.FRONT_TYRE);
        Part rear = build.get(Place.REAR_TYRE);
        if (front != null && rear != null && front.has(Detail.TREAD) && rear.has(Detail.TREAD)) {
            List<String> order = List.of("slick", "file", "fast", "all-round", "aggressive", "mud");
            need("tread", order.indexOf(front.word(Detail.TREAD)) >= order.indexOf(rear.word(Detail.TREAD)), Place.FRONT_TYRE, Place.REAR_TYRE);
        }
        if (new HashSet<>(build.values()).size() != build.size()) {
            wrong.append("a part twice; ");
        }
    }

    private void brakes() {
        for (String end : List.of("FRONT", "REAR")) {
            Place rotor = Place.valueOf(end + "_ROTOR");
            Place pads = Place.valueOf(end + "_PADS");
            same("rotor mount", rotor, Detail.ROTOR_MOUNT, Place.valueOf(end + "_WHEEL"), Detail.ROTOR_MOUNT);
            sameAsBike("pad shape", pads, Detail.PAD_SHAPE);
            Part r = build.get(rotor);
            Part p = build.get(pads);
            if (r != null && p != null) {
                List<String> permitted = r.words(Detail.PADS_PERMITTED);
                need("pads", permitted == null || !p.has(Detail.COMPOUND) ? null : permitted.contains(p.word(Detail.COMPOUND)), rotor, pads);
            }
        }
        Part rear = build.get(Place.REAR_ROTOR);
        if (rear != null) {
            need("rear rotor", !rear.has(Detail.DIAMETER) || !bike.has(Detail.MOST_ROTOR) ? null
                    : rear.number(Detail.DIAMETER) <= bike.number(Detail.MOST_ROTOR) + 1e-6, Place.REAR_ROTOR);
        }
    }

    private void drivetrain() {
        same("freehub", Place.CASSETTE, Detail.FREEHUB, Place.REAR_WHEEL, Detail.FREEHUB);
        sameAsBike("bottom bracket", Place.CRANK, Detail.BOTTOM_BRACKET);
        same("ring mount", Place.CHAINRING, Detail.RING_MOUNT, Place.CRANK, Detail.RING_MOUNT);
        same("pedal thread", Place.PEDALS, Detail.PEDAL_THREAD, Place.CRANK, Detail.PEDAL_THREAD);
        Part derailleur = build.get(Place.DERAILLEUR);
        Part cassette = build.get(Place.CASSETTE);
        Part rings = build.get(Place.CHAINRING);
        if (cassette != null && derailleur != null) {
            int[] cogs = cassette.teeth(Detail.SPROCKETS);
            Double most = derailleur.number(Detail.LARGEST_SPROCKET);
            need("largest sprocket", cogs == null || most == null ? null : cogs[cogs.length - 1] <= most, Place.CASSETTE, Place.DERAILLEUR);
            need("speeds", speeds(cassette) < 0 || !derailleur.has(Detail.SPEEDS) ? null : speeds(cassette) == derailleur.number(Detail.SPEEDS),
                    Place.CASSETTE, Place.DERAILLEUR);
            String one = cassette.word(Detail.DRIVETRAIN);
            String other = derailleur.word(Detail.DRIVETRAIN);
            need("family", one == null || other == null ? null : Boolean.valueOf(one.equals(other) || lists(cassette, other) || lists(derailleur, one)),
                    Place.CASSETTE, Place.DERAILLEUR);
            if (rings != null) {
                int[] teeth = rings.teeth(Detail.TEETH);
                Double capacity = derailleur.number(Detail.CAPACITY);
                need("capacity", cogs == null || teeth == null || capacity == null ? null
                        : cogs[cogs.length - 1] - cogs[0] + teeth[0] - teeth[teeth.length - 1] <= capacity, Place.CASSETTE, Place.DERAILLEUR,
                        Place.CHAINRING);
            }
        }
        if (rings != null) {
            int[] teeth = rings.teeth(Detail.TEETH);
            need("ring size", teeth == null || !bike.has(Detail.LARGEST_RING) ? null : teeth[0] <= bike.number(Detail.LARGEST_RING), Place.CHAINRING);
        }
    }

    /**
     * An inch of chain is two links. Round the largest ring and sprocket go twice the longest stay, a quarter of the teeth of each (half a
     * turn of each at half an inch a tooth), and an inch more for the pair that joins it (the common sizing rule, from memory).
     */
    private void chain() {
        Part chain = build.get(Place.CHAIN);
        Part cassette = build.get(Place.CASSETTE);
        Part rings = build.get(Place.CHAINRING);
        if (chain != null && cassette != null && rings != null) {
            boolean still = bike.has(Detail.REAR_TRAVEL) && bike.number(Detail.REAR_TRAVEL) == 0;
            boolean known = chain.has(Detail.LINKS) && cassette.has(Detail.SPROCKETS) && rings.has(Detail.TEETH) && bike.has(Detail.CHAINSTAY)
                    && (still || bike.has(Detail.CHAIN_GROWTH));
            Boolean enough = null;
            if (known) {
                double millimetres = 1000 * (bike.number(Detail.CHAINSTAY) + (bike.has(Detail.CHAIN_GROWTH) ? bike.number(Detail.CHAIN_GROWTH) : 0));
                int[] cogs = cassette.teeth(Detail.SPROCKETS);
                double halfInches = 4 * millimetres / 25.4 + (rings.teeth(Detail.TEETH)[0] + cogs[cogs.length - 1]) / 2.0 + 2;
                int links = (int) Math.ceil(halfInches / 2 - 1e-7) * 2;
                enough = chain.number(Detail.LINKS) >= links;
            }
            need("chain length", enough, Place.CHAIN, Place.CASSETTE, Place.CHAINRING);
        }
        between("chainline", Place.CRANK, Detail.CHAINLINE, bike.number(Detail.LEAST_CHAINLINE), bike.number(Detail.MOST_CHAINLINE));
        for (Place place : List.of(Place.SHIFTER, Place.CHAIN)) {
            Part part = build.get(place);
            if (part != null && cassette != null) {
                need("speeds", !part.has(Detail.SPEEDS) || speeds(cassette) < 0 ? null : part.number(Detail.SPEEDS) == speeds(cassette), place,
                        Place.CASSETTE);
            }
        }
    }

    /** Valve, seatpost and steerer: what must stand out, stay inside, and reach through. */
    private void lengths() {
        for (Place place : List.of(Place.FRONT_WHEEL, Place.REAR_WHEEL)) {
            Part wheel = build.get(place);
            if (wheel != null) {
                need("valve", !wheel.has(Detail.VALVE_LENGTH) || !wheel.has(Detail.RIM_DEPTH) ? null
                        : mm(wheel, Detail.VALVE_LENGTH) >= mm(wheel, Detail.RIM_DEPTH) + 15, place);
            }
        }
        Part post = build.get(Place.SEATPOST);
        Part saddle = build.get(Place.SADDLE);
        if (post != null && saddle != null) {
            boolean known = post.has(Detail.LENGTH) && post.has(Detail.LEAST_INSERTION) && saddle.has(Detail.HEIGHT)
                    && bike.has(Detail.SADDLE_HEIGHT) && bike.has(Detail.SEAT_TUBE);
            Boolean inside = null;
            if (known) {
                long out = mm(bike, Detail.SADDLE_HEIGHT) - mm(bike, Detail.SEAT_TUBE) - mm(saddle, Detail.HEIGHT);
                long in = mm(post, Detail.LENGTH) - out;
                boolean least = in >= mm(post, Detail.LEAST_INSERTION)
                        && (!bike.has(Detail.LEAST_POST_INSERTION) || in >= mm(bike, Detail.LEAST_POST_INSERTION));
                inside = !least ? Boolean.FALSE : bike.has(Detail.MOST_POST_INSERTION) ? in <= mm(bike, Detail.MOST_POST_INSERTION) : null;
            }
            need("post insertion", inside, Place.SEATPOST, Place.SADDLE);
        }
        Part fork = build.get(Place.FORK);
        Part stem = build.get(Place.STEM);
        Part spacers = build.get(Place.SPACERS);
        if (fork != null && stem != null) {
            boolean known = fork.has(Detail.STEERER_LENGTH) && stem.has(Detail.CLAMP_HEIGHT) && bike.has(Detail.HEAD_TUBE)
                    && (spacers == null || spacers.has(Detail.HEIGHT));
            Boolean reaches = null;
            if (known) {
                long needed = mm(bike, Detail.HEAD_TUBE) + mm(stem, Detail.CLAMP_HEIGHT) + (spacers == null ? 0 : mm(spacers, Detail.HEIGHT));
                reaches = mm(fork, Detail.STEERER_LENGTH) >= needed && mm(fork, Detail.STEERER_LENGTH) <= needed + 40;
            }
            if (spacers != null && spacers.has(Detail.HEIGHT) && fork.has(Detail.MOST_SPACERS)) {
                need("spacers", mm(spacers, Detail.HEIGHT) <= mm(fork, Detail.MOST_SPACERS), Place.FORK, Place.STEM, Place.SPACERS);
            }
            if (stem.has(Detail.STEM_LENGTH)) {
                need("stem length", !(bike.has(Detail.LEAST_STEM) && mm(stem, Detail.STEM_LENGTH) < mm(bike, Detail.LEAST_STEM)
                        || bike.has(Detail.MOST_STEM) && mm(stem, Detail.STEM_LENGTH) > mm(bike, Detail.MOST_STEM)), Place.STEM);
            }
            if (spacers == null) {
                need("steerer", reaches, Place.FORK, Place.STEM);
            } else {
                need("steerer", reaches, Place.FORK, Place.STEM, Place.SPACERS);
            }
        }
    }

    /** Front never narrower nor smaller than rear, travels together, and the lower ends of what a frame takes. */
    private void order() {
        Part front = build.get(Place.FRONT_TYRE);
        Part rear = build.get(Place.REAR_TYRE);
        if (front != null && rear != null && width(front) != null && width(rear) != null) {
            need("tyre order", width(front) >= width(rear), Place.FRONT_TYRE, Place.REAR_TYRE);
        }
        Part large = build.get(Place.FRONT_ROTOR);
        Part small = build.get(Place.REAR_ROTOR);
        if (large != null && small != null && large.has(Detail.DIAMETER) && small.has(Detail.DIAMETER)) {
            need("rotor order", mm(large, Detail.DIAMETER) >= mm(small, Detail.DIAMETER), Place.FRONT_ROTOR, Place.REAR_ROTOR);
        }
        Part fork = build.get(Place.FORK);
        if (fork != null && large != null && large.has(Detail.DIAMETER)) {
            need("front rotor", !fork.has(Detail.MOST_ROTOR) ? null : mm(large, Detail.DIAMETER) <= mm(fork, Detail.MOST_ROTOR)
                    && (!fork.has(Detail.LEAST_ROTOR) || mm(large, Detail.DIAMETER) >= mm(fork, Detail.LEAST_ROTOR)), Place.FORK, Place.FRONT_ROTOR);
        }
        if (fork != null && fork.has(Detail.TRAVEL) && bike.has(Detail.REAR_TRAVEL) && mm(fork, Detail.TRAVEL) > 0 && mm(bike, Detail.REAR_TRAVEL) > 0) {
            need("travel", Math.abs(mm(fork, Detail.TRAVEL) - mm(bike, Detail.REAR_TRAVEL)) <= 20, Place.FORK);
        }
        if (fork != null && fork.has(Detail.TRAVEL) && bike.has(Detail.LEAST_FORK_TRAVEL)) {
            need("fork travel", mm(fork, Detail.TRAVEL) >= mm(bike, Detail.LEAST_FORK_TRAVEL), Place.FORK);
        }
        if (fork != null && fork.has(Detail.LENGTH) && bike.has(Detail.LEAST_FORK_LENGTH)) {
            need("fork length", mm(fork, Detail.LENGTH) >= mm(bike, Detail.LEAST_FORK_LENGTH), Place.FORK);
        }
        Part rings = build.get(Place.CHAINRING);
        if (rings != null && rings.has(Detail.TEETH)) {
            int[] teeth = rings.teeth(Detail.TEETH);
            need("ring size", !bike.has(Detail.SMALLEST_RING) || teeth[teeth.length - 1] >= bike.number(Detail.SMALLEST_RING), Place.CHAINRING);
            need("two rings", teeth.length == 1 ? Boolean.TRUE : bike.yes(Detail.TWO_RINGS), Place.CHAINRING);
        }
    }

    /** As counted, else as written; -1 where neither is known. */
    private static double speeds(Part cassette) {
        return cassette.has(Detail.SPROCKETS) ? cassette.teeth(Detail.SPROCKETS).length : cassette.has(Detail.SPEEDS) ? cassette.number(Detail.SPEEDS) : -1;
    }

    private static Long width(Part tyre) {
        return tyre.has(Detail.MEASURED_WIDTH) ? Long.valueOf(mm(tyre, Detail.MEASURED_WIDTH)) : tyre.has(Detail.WIDTH) ? mm(tyre, Detail.WIDTH) : null;
    }

    private static long mm(Part part, Detail detail) {
        return Math.round(part.number(detail) * 1000);
    }

    private void between(String what, Place place, Detail detail, Double least, Double most) {
        Part part = build.get(place);
        if (part != null) {
            boolean under = part.has(detail) && least != null && part.number(detail) < least - 1e-7;
            boolean over = part.has(detail) && most != null && part.number(detail) > most + 1e-7;
            need(what, under || over ? Boolean.FALSE : part.has(detail) && least != null && most != null ? Boolean.TRUE : null, place);
        }
    }

    private static boolean lists(Part part, String family) {
        return part.words(Detail.PUBLISHED_WITH) != null && part.words(Detail.PUBLISHED_WITH).contains(family);
    }

    private void rest() {
        sameAsBike("steerer", Place.FORK, Detail.STEERER);
        sameAsBike("shock mount", Place.SHOCK, Detail.SHOCK_MOUNT);
        equalToBike("shock", Place.SHOCK, Detail.SHOCK_LENGTH);
        equal("steerer clamp", Place.STEM, Detail.STEERER_CLAMP, Place.FORK, Detail.STEERER_CLAMP);
        equal("bar clamp", Place.BAR, Detail.BAR_CLAMP, Place.STEM, Detail.BAR_CLAMP);
        same("levers", Place.SHIFTER, Detail.BAR_SHAPE, Place.BAR, Detail.BAR_SHAPE);
        same("rails", Place.SADDLE, Detail.RAILS, Place.SEATPOST, Detail.RAILS);
        equalToBike("post", Place.SEATPOST, Detail.POST_DIAMETER);
        if (build.get(Place.EXTENSIONS) != null && build.get(Place.BAR) != null) {
            need("extensions", build.get(Place.BAR).yes(Detail.EXTENSIONS_APPROVED), Place.EXTENSIONS, Place.BAR);
        }
        Part fork = build.get(Place.FORK);
        if (fork != null) {
            need("fork travel", !fork.has(Detail.TRAVEL) || !bike.has(Detail.MOST_FORK_TRAVEL) ? null
                    : fork.number(Detail.TRAVEL) <= bike.number(Detail.MOST_FORK_TRAVEL) + 1e-6, Place.FORK);
            need("fork length", !fork.has(Detail.LENGTH) || !bike.has(Detail.MOST_FORK_LENGTH) ? null
                    : fork.number(Detail.LENGTH) <= bike.number(Detail.MOST_FORK_LENGTH) + 1e-6, Place.FORK);
        }
    }

    private void loads(Load load) {
        for (Part part : build.values()) {
            boolean over = part.has(Detail.MASS_LIMIT) && load.system() > part.number(Detail.MASS_LIMIT)
                    || part.has(Detail.RIDER_LIMIT) && load.rider() > part.number(Detail.RIDER_LIMIT);
            if (over) {
                wrong.append("too heavy for ").append(part).append("; ");
            }
            if (part.kind() != Kind.SHOCK && part.has(Detail.USE_CATEGORY) && part.word(Detail.USE_CATEGORY).equals("EN 2") && load.drop() > 0.15 + 1e-6) {
                wrong.append("drop too high for ").append(part).append("; ");
            }
        }
        if (bike.has(Detail.MASS_LIMIT) && load.system() > bike.number(Detail.MASS_LIMIT)) {
            wrong.append("too heavy for the bike; ");
        }
    }

    private void same(String what, Place a, Detail mine, Place b, Detail theirs) {
        Part one = build.get(a);
        Part other = build.get(b);
        if (one != null && other != null) {
            need(what, !one.has(mine) || !other.has(theirs) ? null : Boolean.valueOf(Objects.equals(one.word(mine), other.word(theirs))), a, b);
        }
    }

    private void equal(String what, Place a, Detail mine, Place b, Detail theirs) {
        Part one = build.get(a);
        Part other = build.get(b);
        if (one != null && other != null) {
            need(what, !one.has(mine) || !other.has(theirs) ? null
                    : Boolean.valueOf(Math.abs(one.number(mine) - other.number(theirs)) < 0.0005), a, b);
        }
    }

    private void sameAsBike(String what, Place a, Detail detail) {
        Part one = build.get(a);
        if (one != null) {
            need(what, !one.has(detail) || !bike.has(detail) ? null : Boolean.valueOf(one.word(detail).equals(bike.word(detail))), a);
        }
    }

    private void equalToBike(String what, Place a, Detail detail) {
        Part one = build.get(a);
        if (one != null) {
            need(what, !one.has(detail) || !bike.has(detail) ? null
                    : Boolean.valueOf(Math.abs(one.number(detail) - bike.number(detail)) < 0.0005), a);
        }
    }

    private void need(String what, Boolean holds, Place... places) {
        boolean stands = true;
        for (Place place : places) {
            Part part = build.get(place);
            stands &= part != null && part.bike() == bike && part.place() == place;
        }
        if (Boolean.FALSE.equals(holds) || holds == null && !stands) {
            wrong.append(holds == null ? "not known: " : "broken: ").append(what).append("; ");
        }
    }
}
