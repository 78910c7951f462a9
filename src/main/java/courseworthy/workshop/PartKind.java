package courseworthy.workshop;

import static courseworthy.workshop.PartDetail.*;

import java.util.ArrayList;
import java.util.List;

/** The kinds of parts, with what can be written of each and where each is mounted. */
public enum PartKind {

    BIKE("bike", List.of(), PartDetail.KIND, OTHER_MASS, USE_CATEGORY, LEDGE_LIMIT, MASS_LIMIT, RIDER_LIMIT, TYRE_CLEARANCE, LEAST_FORK_TRAVEL,
            MOST_FORK_TRAVEL, LEAST_FORK_LENGTH, MOST_FORK_LENGTH, DESIGN_FORK_LENGTH, HEAD_ANGLE, SEAT_ANGLE, WHEELBASE, CHAINSTAY, CHAIN_GROWTH,
            STACK, REACH, HEAD_TUBE, HEADSET_COVER, LEAST_STEM, MOST_STEM, TRAINED_ON, SET_UP_FOR, SEAT_TUBE, SADDLE_HEIGHT, SADDLE_SETBACK, REAR_TRAVEL, SHOCK_LENGTH, SHOCK_STROKE, SHOCK_MOUNT,
            LEAST_ROTOR, MOST_ROTOR, LARGEST_RING, SMALLEST_RING, TWO_RINGS, LEAST_CHAINLINE, MOST_CHAINLINE, AXLE, AXLE_WIDTH, STEERER,
            PartDetail.BOTTOM_BRACKET, SHELL, HEADSET_FIT, DERAILLEUR_MOUNT, POST_DIAMETER, LEAST_POST_INSERTION, MOST_POST_INSERTION, DROPPER_ROUTING, PAD_SHAPE,
            BRAKE_MOUNT, MOUNT_ROTOR, BRAKE_ACTUATION, FRONT_HOSE, REAR_HOSE, HOSES_THROUGH, HOURS_USED, FITTED, INTERVALS),
    FORK("fork", List.of(), TRAVEL, LENGTH, FORK_OFFSET, STEERER, STEERER_LENGTH, STEERER_CLAMP, MOST_SPACERS, CHASSIS, LOCKOUT, AIR_CHART, AXLE, AXLE_WIDTH, TYRE_CLEARANCE,
            LEAST_ROTOR, MOST_ROTOR, BRAKE_MOUNT, MOUNT_ROTOR, RACE_SEAT, REMOTE, USE_CATEGORY, MASS_LIMIT, RIDER_LIMIT),
    HEADSET("headset", List.of(), HEADSET_FIT, STEERER, LOWER_BEARING),
    CROWN_RACE("crown race", List.of(FORK), LOWER_BEARING, RACE_SEAT),
    SHOCK("shock", List.of(), SHOCK_LENGTH, SHOCK_STROKE, SHOCK_MOUNT, LOCKOUT, AIR_CHART, REMOTE, RIDER_LIMIT),
    WHEEL("wheel", List.of(), END, BEAD_SEAT, RIM_INNER_WIDTH, RIM_DEPTH, RIM_MATERIAL, HOOKLESS, TUBELESS, MARKED_PRESSURE, LEAST_TYRE,
            MOST_TYRE, VALVE_LENGTH, AXLE, AXLE_WIDTH, FREEHUB, ROTOR_MOUNT, SPOKE_LENGTHS, USE_CATEGORY, MASS_LIMIT, RIDER_LIMIT),
    TYRE("tyre", List.of(WHEEL), BEAD_SEAT, WIDTH, MEASURED_WIDTH, CASING, TREAD, TUBELESS, HOOKLESS, MARKED_PRESSURE, LEAST_RIM, MOST_RIM,
            DIRECTION, MOUNTED_SIDE, CUTS),
    INSERT("insert", List.of(WHEEL, TYRE), BEAD_SEAT, LEAST_TYRE, MOST_TYRE),
    SEALANT("sealant", List.of(WHEEL, TYRE), ADDED),
    ROTOR("rotor", List.of(WHEEL), DIAMETER, ROTOR_MOUNT, PADS_PERMITTED, THICKNESS, LEAST_THICKNESS),
    CASSETTE("cassette", List.of(WHEEL), SPROCKETS, SPEEDS, FREEHUB, DRIVETRAIN, PUBLISHED_WITH),
    BOTTOM_BRACKET("bottom bracket", List.of(), SHELL, PartDetail.BOTTOM_BRACKET),
    CRANK("crank", List.of(), PartDetail.BOTTOM_BRACKET, RING_MOUNT, CHAINLINE, CRANK_LENGTH, POWER_METER, METER_MOUNT, PEDAL_THREAD, RIDER_LIMIT),
    CHAINRING("chainring", List.of(CRANK), TEETH, RING_MOUNT, SPEEDS),
    CHAIN("chain", List.of(), LINKS, SPEEDS, DRIVETRAIN, PUBLISHED_WITH, WEAR, WEAR_LIMIT),
    DERAILLEUR("derailleur", List.of(), LARGEST_SPROCKET, CAPACITY, SPEEDS, DRIVETRAIN, PUBLISHED_WITH, DERAILLEUR_MOUNT, ACTUATION),
    BATTERY("battery", List.of(DERAILLEUR), DRIVETRAIN, PUBLISHED_WITH, CHARGE, RUN_TIME),
    SHIFTER("shifter", List.of(), SPEEDS, DRIVETRAIN, PUBLISHED_WITH, BAR_SHAPE, ACTUATION, BRAKE_ACTUATION),
    STEM("stem", List.of(FORK), STEM_LENGTH, STEM_ANGLE, TURNS_OVER, STEERER_CLAMP, BAR_CLAMP, CLAMP_HEIGHT, RIDER_LIMIT),
    BAR("bar", List.of(STEM), WIDTH, BAR_CLAMP, BAR_SHAPE, EXTENSIONS_APPROVED, REACH, RISE, DROP, RIDER_LIMIT),
    EXTENSIONS("aero extensions", List.of(BAR), BAR_CLAMP, RIDER_LIMIT),
    SPACERS("spacers", List.of(FORK), HEIGHT, PIECES, STEERER_CLAMP),
    SEATPOST("seatpost", List.of(), DROPPER, DROPPER_TRAVEL, POST_DIAMETER, LENGTH, LEAST_INSERTION, SETBACK, RAILS, ROUTING, REMOTE,
            RIDER_LIMIT),
    DROPPER_REMOTE("dropper remote", List.of(BAR), REMOTES_WORKED),
    LOCKOUT_REMOTE("lockout remote", List.of(BAR), REMOTES_WORKED),
    SADDLE("saddle", List.of(SEATPOST), RAILS, HEIGHT, RIDER_LIMIT),
    PEDALS("pedals", List.of(CRANK), PEDAL_KIND, PEDAL_THREAD, CLEAT, POWER_METER, RIDER_LIMIT),
    METER("power meter", List.of(CRANK), METER_MOUNT),
    CALIPER("brake caliper", List.of(), END, BRAKE_MOUNT, BRAKE_ACTUATION, HOSE_LENGTH, PAD_SHAPE),
    ADAPTER("brake adapter", List.of(), END, BRAKE_MOUNT, CALIPER_MOUNT, MOUNT_ROTOR, DIAMETER),
    PADS("brake pads", List.of(), END, COMPOUND, PAD_SHAPE, LEFT, LEAST_LEFT),
    SPOKES("spokes", List.of(), SPOKE_LENGTH, QUANTITY),
    LIGHTS("lights", List.of(), END, LIGHT_KIND, RUN_TIME),
    BAG("bag", List.of(), VOLUME);

    /** Kinds that go on a wheel and never on a bike itself, which would not say on which wheel. */
    private static final List<PartKind> NEVER_ON_A_BIKE = List.of(TYRE, INSERT, SEALANT, ROTOR, CASSETTE);
    private static final List<PartDetail> ANY_PART = List.of(MASS, PRICE, HOURS_USED, FITTED, INTERVALS, STAYS, OWNED);

    private final String word;
    private final List<PartKind> hosts;
    private final List<PartDetail> details = new ArrayList<>();

    PartKind(String word, List<PartKind> hosts, PartDetail... details) {
        this.word = word;
        this.hosts = hosts;
        if (!isSpare()) {
            this.details.add(MASS);
        }
        this.details.addAll(List.of(details));
    }

    public String word() {
        return word;
    }

    /** More than the heaviest of its kind, with all that may be written with it, kg (common practice, no source). */
    double heaviest() {
        return switch (this) {
            case BIKE -> 30;
            case FORK, WHEEL -> 5;
            case TYRE, CRANK, SEATPOST, LIGHTS -> 3;
            case SHOCK, CASSETTE, DERAILLEUR, SHIFTER, BAR, EXTENSIONS, SADDLE, PEDALS, BAG -> 2;
            case INSERT, SEALANT, ROTOR, CHAINRING, CHAIN, STEM, SPACERS, METER, PADS, HEADSET, CROWN_RACE, BOTTOM_BRACKET, DROPPER_REMOTE, LOCKOUT_REMOTE, CALIPER,
                    ADAPTER, BATTERY, SPOKES -> 1;
        };
    }

    /** Kinds of parts that it may be mounted on. */
    public List<PartKind> hosts() {
        return hosts;
    }

    /** Whether {@code on} may name a bike. */
    public boolean onABike() {
        return this != BIKE && !isSpare() && !NEVER_ON_A_BIKE.contains(this);
    }

    /** Whether it lies in a box until it is needed, and is mounted in no place of its own. */
    public boolean isSpare() {
        return word.equals("spokes");
    }

    /** What can be written of it. */
    public List<PartDetail> details() {
        List<PartDetail> out = new ArrayList<>(details);
        if (this != BIKE && !isSpare()) {
            for (PartDetail each : ANY_PART) {
                if (!out.contains(each)) {
                    out.add(each);
                }
            }
        }
        return out;
    }

    /** The kinds of parts, bikes left out, in words. */
    public static List<String> partWords() {
        List<String> out = new ArrayList<>();
        for (PartKind kind : values()) {
            if (kind != BIKE) {
                out.add(kind.word);
            }
        }
        return out;
    }

    /** Those of them that are mounted, in words. */
    public static List<String> mountedWords() {
        List<String> out = partWords();
        out.removeIf(word -> of(word).isSpare());
        return out;
    }

    /** The kind of this word, or null. */
    public static PartKind of(String word) {
        for (PartKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        return null;
    }
}
