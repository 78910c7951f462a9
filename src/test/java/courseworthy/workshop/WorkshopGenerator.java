package courseworthy.workshop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Workshops by chance: most things fit, some do not, some are not known, and much is mounted somewhere. */
public final class WorkshopGenerator {

    /** What bar positions rest on is drawn apart, so that it leaves the rest of a workshop as it is. */
    private static final Set<PartDetail> OF_SERVICE = EnumSet.of(PartDetail.FITTED, PartDetail.INTERVALS, PartDetail.LEAST_LEFT);
    private static final Set<PartDetail> COCKPIT = EnumSet.of(PartDetail.HEADSET_COVER, PartDetail.LEAST_STEM, PartDetail.MOST_STEM, PartDetail.TRAINED_ON, PartDetail.SET_UP_FOR,
            PartDetail.MOST_SPACERS, PartDetail.TURNS_OVER, PartDetail.DROP, PartDetail.PIECES);

    /** What came to be written later is drawn apart too. */
    private static final Set<PartDetail> SYSTEMS = EnumSet.of(PartDetail.BRAKE_MOUNT, PartDetail.CALIPER_MOUNT, PartDetail.MOUNT_ROTOR, PartDetail.FRONT_HOSE, PartDetail.REAR_HOSE,
            PartDetail.HOSE_LENGTH, PartDetail.HEADSET_FIT, PartDetail.LOWER_BEARING, PartDetail.RACE_SEAT, PartDetail.SHELL, PartDetail.REMOTE, PartDetail.REMOTES_WORKED,
            PartDetail.DROPPER_ROUTING, PartDetail.ROUTING, PartDetail.CHARGE, PartDetail.FORK_OFFSET, PartDetail.DIRECTION, PartDetail.MOUNTED_SIDE, PartDetail.SPOKE_LENGTHS,
            PartDetail.HOSES_THROUGH, PartDetail.BRAKE_ACTUATION);
    private static final Set<PartDetail> CHARTS = EnumSet.of(PartDetail.LEAST_TYRE, PartDetail.MOST_TYRE, PartDetail.LEAST_RIM, PartDetail.MOST_RIM);
    private static final Set<PartKind> SYSTEM_KINDS = EnumSet.of(PartKind.HEADSET, PartKind.CROWN_RACE, PartKind.BOTTOM_BRACKET, PartKind.BATTERY, PartKind.DROPPER_REMOTE,
            PartKind.LOCKOUT_REMOTE, PartKind.CALIPER, PartKind.ADAPTER);
    private static final List<MountingPlace> COMMON_PLACES = java.util.Arrays.stream(MountingPlace.values()).filter(place -> !SYSTEM_KINDS.contains(place.kind())).toList();

    private final Random systems;
    private final Random main;
    private final Random cockpit;
    private Random random;
    private final double odd;
    private final double missing;
    private boolean whole;
    private boolean charted = true;
    private boolean metered;
    private final List<Part> bikes = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    /**
     * @param odd     how often a detail is another than the common one
     * @param missing how often a detail is not written
     */
    public WorkshopGenerator(long seed, double odd, double missing) {
        this.main = new Random(seed);
        this.cockpit = new Random(~seed);
        this.systems = new Random(seed * 31 + 17);
        this.random = main;
        this.odd = odd;
        this.missing = missing;
    }

    /** With headsets, calipers, adapters, remotes and the like, and what is written of them on other parts. */
    public WorkshopGenerator withSystems() {
        return withSystems(true);
    }

    /** @param wanted whether they are listed */
    public WorkshopGenerator withSystems(boolean wanted) {
        whole = wanted;
        return this;
    }

    /** Where not wanted, of tyres and wheels without their makers' charts, and of tyres narrow for their rims too. */
    public WorkshopGenerator withCharts(boolean wanted) {
        charted = wanted;
        return this;
    }

    /** With a power meter that lies loose, and few that are built into cranks and pedals, where wanted. */
    public WorkshopGenerator withLooseMeter(boolean wanted) {
        metered = wanted;
        return this;
    }

    /** A workshop of some bikes and about so many parts. */
    public Workshop of(int bikesWanted, int partsWanted) {
        for (int i = 0; i < bikesWanted; i++) {
            bikes.add(part("bike " + i, PartKind.BIKE, null));
        }
        for (Part bike : bikes) {
            for (MountingPlace place : COMMON_PLACES) {
                if (parts.size() < partsWanted && random.nextInt(12) > 0) {
                    Part part = add(place.kind(), place.end());
                    part.mount(host(bike, place));
                }
            }
        }
        while (parts.size() < partsWanted) {
            MountingPlace place = COMMON_PLACES.get(random.nextInt(COMMON_PLACES.size()));
            // A third of the loose pads go to either end.
            add(place.kind(), place.kind() == PartKind.PADS && parts.size() % 3 == 0 ? null : place.end());
        }
        if (whole) {
            systems();
        }
        if (metered) {
            add(PartKind.METER, null);
        }
        return new Workshop("by chance", "w.yaml", bikes, parts, new HashMap<>());
    }

    /** A third of the bikes list what others leave unsaid, and a few such parts lie loose. */
    private void systems() {
        List<MountingPlace> places = java.util.Arrays.stream(MountingPlace.values()).filter(place -> SYSTEM_KINDS.contains(place.kind())).toList();
        random = systems;
        for (Part bike : bikes) {
            for (MountingPlace place : systems.nextInt(3) == 0 ? places : List.<MountingPlace>of()) {
                if (systems.nextInt(3) > 0) {
                    random = systems;
                    Part part = add(place.kind(), place.end());
                    part.mount(host(bike, place));
                }
            }
        }
        for (int i = systems.nextInt(2); i > 0; i--) {
            random = systems;
            MountingPlace place = places.get(systems.nextInt(places.size()));
            add(place.kind(), place.end());
        }
    }

    /** The host of the place where it is on the bike, else the bike, which a reader would refuse for a tyre: then it lies loose. */
    private Part host(Part bike, MountingPlace place) {
        if (place.host() == null) {
            return bike;
        }
        for (Part each : parts) {
            if (each.bike() == bike && each.place() == place.host()) {
                return each;
            }
        }
        return null;
    }

    private Part add(PartKind kind, String end) {
        Part part = part(kind.word() + " " + parts.size(), kind, end);
        parts.add(part);
        return part;
    }

    private Part part(String name, PartKind kind, String end) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        for (PartDetail detail : kind.details()) {
            // What only says when a part is serviced makes no difference to what fits and is left out.
            if (OF_SERVICE.contains(detail) || kind == PartKind.BIKE && detail == PartDetail.HOURS_USED
                    || SYSTEMS.contains(detail) && !whole) {
                continue;
            }
            boolean apart = COCKPIT.contains(detail) || kind == PartKind.SPACERS && detail == PartDetail.STEERER_CLAMP;
            random = SYSTEMS.contains(detail) || SYSTEM_KINDS.contains(kind) ? systems : apart ? cockpit : main;
            if (random.nextDouble() >= missing) {
                details.put(detail, value(detail, kind));
            }
        }
        random = SYSTEM_KINDS.contains(kind) ? systems : main;
        if (details.get(PartDetail.REMOTE) != null && systems.nextInt(30) > 0) {
            details.remove(PartDetail.REMOTE);
        }
        for (PartDetail detail : List.of(PartDetail.MOUNT_ROTOR, PartDetail.FRONT_HOSE, PartDetail.REAR_HOSE, PartDetail.HOSE_LENGTH, PartDetail.ROUTING, PartDetail.DROPPER_ROUTING, PartDetail.BRAKE_ACTUATION)) {
            if (details.containsKey(detail) && kind != PartKind.ADAPTER && systems.nextInt(6) > 0) {
                details.remove(detail);
            }
        }
        if (!charted) {
            details.keySet().removeAll(CHARTS);
            details.computeIfPresent(PartDetail.WIDTH, (detail, width) -> kind == PartKind.TYRE && systems.nextBoolean() ? mm(45) : width);
        }
        if (metered) {
            details.computeIfPresent(PartDetail.POWER_METER, (detail, fitted) -> systems.nextInt(4) == 0);
        }
        details.remove(PartDetail.OWNED);
        details.remove(PartDetail.STAYS);
        if (random.nextInt(30) == 0 && kind != PartKind.BIKE) {
            details.put(PartDetail.STAYS, true);
        }
        if (kind == PartKind.WHEEL || kind == PartKind.PADS || kind == PartKind.CALIPER || kind == PartKind.ADAPTER) {
            details.put(PartDetail.END, end);
        }
        return new Part(name, kind, 1 + parts.size(), details);
    }

    /** What few owners list is mostly right. */
    private double odd() {
        return random == systems ? odd / 2 : odd;
    }

    @SafeVarargs
    private final <T> T pick(T common, T... others) {
        return others.length == 0 || random.nextDouble() >= odd() ? common : others[random.nextInt(others.length)];
    }

    private double mm(int common, int... others) {
        return (random.nextDouble() >= odd() || others.length == 0 ? common : others[random.nextInt(others.length)]) / 1000.0;
    }

    private Object value(PartDetail detail, PartKind kind) {
        return switch (detail.form()) {
            case YES_NO -> detail == PartDetail.HOOKLESS && kind == PartKind.WHEEL || detail == PartDetail.POWER_METER || detail == PartDetail.DROPPER
                    ? random.nextBoolean() : pick(true, false);
            case WORD -> switch (detail) {
                case USE_CATEGORY -> pick("EN 3", "EN 2", "ASTM 4", "EN 5");
                case ACTUATION -> pick("cable", "electronic");
                case COMPOUND -> pick("organic", "sintered");
                case ROUTING -> pick("internal", "external");
                default -> detail.words().get(random.nextInt(detail.words().size()));
            };
            case WORDS -> detail == PartDetail.DROPPER_ROUTING ? List.of("internal") : detail == PartDetail.HOSES_THROUGH ? List.of(pick("fork", "bar", "stem")) : random.nextDouble() < odd ? List.of("organic") : List.of("organic", "sintered");
            case LABEL -> pick("a", "b");
            case LABELS -> detail == PartDetail.REMOTES_WORKED ? List.of(pick("a", "b")) : random.nextBoolean() ? List.of("b") : List.of();
            case TEETH -> teeth(detail);
            case DAY -> LocalDate.of(2026, 1 + random.nextInt(12), 1);
            case CLEARANCES -> List.of(new Part.Clearance(random.nextBoolean() ? 0.622 : null, mm(65, 40, 50)));
            case CHART -> List.of(new Part.ChartRow(60, 500_000), new Part.ChartRow(90, 700_000));
            case SIZES -> List.of(mm(10), mm(5));
            case INTERVALS -> List.of(new Part.StatedInterval("renew", 360_000.0, null, null));
            case WHOLE, NUMBER -> whole(detail);
            case AMOUNT -> amount(detail);
        };
    }

    private int[] teeth(PartDetail detail) {
        if (detail == PartDetail.TEETH) {
            return random.nextInt(4) == 0 ? new int[] {46, 30} : new int[] {30 + 2 * random.nextInt(5)};
        }
        return pick(new int[] {10, 12, 14, 16, 18, 21, 24, 28, 32, 36, 42, 50}, new int[] {11, 13, 15, 17, 19, 21, 24, 28, 32, 37, 42},
                new int[] {10, 12, 14, 16, 18, 21, 24, 28, 33, 39, 45, 51});
    }

    private Object whole(PartDetail detail) {
        return switch (detail) {
            case LARGEST_RING -> pick(50, 34);
            case SMALLEST_RING -> pick(28, 34);
            case SPEEDS -> pick(12, 11);
            case LARGEST_SPROCKET -> pick(52, 42);
            case CAPACITY -> pick(60, 40);
            case LINKS -> pick(118, 112, 124);
            default -> random.nextInt(10);
        };
    }

    private Object amount(PartDetail detail) {
        return switch (detail) {
            case MASS -> (100 + random.nextInt(900)) / 1000.0;
            case MASS_LIMIT, RIDER_LIMIT -> pick(130.0, 85.0);
            case LEDGE_LIMIT -> pick(0.6, 0.1);
            case HEAD_ANGLE -> pick(68.0, 66.0);
            case SEAT_ANGLE -> 75.0;
            case STEM_ANGLE -> pick(-6.0, -17.0);
            case MARKED_PRESSURE -> 300_000.0;
            case BEAD_SEAT -> mm(622, 584);
            case WIDTH, MEASURED_WIDTH -> mm(55, 45, 50, 58, 66);
            case RIM_INNER_WIDTH -> mm(30, 25, 21);
            case LEAST_RIM, LEAST_TYRE -> mm(22, 40);
            case MOST_RIM -> mm(36, 25);
            case MOST_TYRE -> mm(70, 50);
            case RIM_DEPTH -> mm(20, 50);
            case VALVE_LENGTH -> mm(44, 70);
            case AXLE_WIDTH -> mm(110, 148);
            case TRAVEL, REAR_TRAVEL -> mm(120, 110, 140);
            case LEAST_FORK_TRAVEL -> mm(100, 125);
            case MOST_FORK_TRAVEL -> mm(140, 115);
            case LENGTH -> mm(400, 350, 520);
            case LEAST_FORK_LENGTH -> mm(380, 410);
            case MOST_FORK_LENGTH -> mm(530, 390);
            case DESIGN_FORK_LENGTH -> mm(400);
            case STEERER_LENGTH -> mm(180, 170, 230);
            case STEERER_CLAMP -> mm(28, 31);
            case HEAD_TUBE -> mm(110, 140);
            case LEAST_STEM -> mm(20, 90);
            case MOST_STEM -> mm(160, 60);
            case MOST_SPACERS -> mm(50, 10);
            case CLAMP_HEIGHT -> mm(40);
            case HEIGHT -> mm(15, 45);
            case DIAMETER -> mm(180, 160, 200);
            case MOUNT_ROTOR -> mm(180, 160);
            case FRONT_HOSE, REAR_HOSE -> mm(800, 830);
            case HOSE_LENGTH -> mm(900, 820);
            case RACE_SEAT -> mm(40, 30);
            case LEAST_ROTOR -> mm(160);
            case MOST_ROTOR -> mm(200, 160);
            case CHAINLINE -> mm(54, 50);
            case LEAST_CHAINLINE -> mm(52);
            case MOST_CHAINLINE -> mm(56);
            case CHAINSTAY -> mm(435, 430);
            case CHAIN_GROWTH -> mm(12, 0);
            case POST_DIAMETER -> mm(31, 27);
            case LEAST_INSERTION, LEAST_POST_INSERTION -> mm(90, 130);
            case MOST_POST_INSERTION -> mm(250, 150);
            case SADDLE_HEIGHT -> mm(740);
            case SEAT_TUBE -> mm(440);
            case SHOCK_LENGTH -> mm(190, 210);
            case SHOCK_STROKE -> mm(45, 50);
            case BAR_CLAMP -> mm(35, 31);
            default -> detail.least() + (detail.most() - detail.least()) * random.nextInt(10) / 9;
        };
    }
}
