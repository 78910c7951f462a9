package courseworthy.workshop;

import courseworthy.units.Dimension;
import courseworthy.units.UseCategory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What can be written of a part or a frame, each with its form and what is believable. Sizes are held in the base unit (m, kg, Pa,
 * s, degrees). Bounds catch slips of a unit or a digit; they are wide (judgement, no source).
 */
public enum PartDetail {

    MASS("mass", "a mass from 1 g to 30 kg", Dimension.MASS, 0.001, 30, "as weighed"),
    OTHER_MASS("other mass", "a mass from 0 kg to 10 kg", Dimension.MASS, 0, 10, "everything on the bike that is not listed as a part: brakes, cables, headset"),
    PRICE("price", Form.NUMBER, 0, 100_000, "in any one currency; of parts on a wish list"),
    HOURS_USED("hours used", "a time from 0 h to 20000 h", Dimension.TIME, 0, 72e6, "ridden so far; with a log, before it was fitted or the log begins"),
    FITTED("fitted", Form.DAY, 0, 0, "the day it was put on new, or as used as hours used says"),
    INTERVALS("intervals", Form.INTERVALS, 0, 0, "service and renewal as the maker states them: [{job: oil and seals, hours: 50 h, days: 365}]"),
    STAYS("stays", Form.YES_NO, 0, 0, "never taken off to serve elsewhere"),
    OWNED("owned", Form.YES_NO, 0, 0, "no for a part on the wish list"),

    KIND("kind", List.of("road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail"), "the kind of bike"),
    USE_CATEGORY("use category", UseCategory.words(),
            "the intended-use category marked (EN 17406, ASTM F2043)"),
    LEDGE_LIMIT("ledge limit", "a height from 0 m to 5 m", Dimension.LENGTH, 0, 5, "the highest ledge the maker permits"),
    MASS_LIMIT("mass limit", "a mass from 40 kg to 300 kg", Dimension.MASS, 40, 300, "the highest marked mass of rider, kit and bike"),
    RIDER_LIMIT("rider limit", "a mass from 40 kg to 250 kg", Dimension.MASS, 40, 250, "the highest marked mass of the rider"),

    BEAD_SEAT("bead seat", "a diameter from 200 mm to 700 mm", Dimension.LENGTH, 0.2, 0.7, "bead seat diameter: 622 mm, 584 mm ..."),
    TYRE_CLEARANCE("tyre clearance", Form.CLEARANCES, 0.018, 0.130,
            "the widest tyre it takes, for every wheel size or by size: [{bead seat: 622 mm, width: 45 mm}]"),

    LEAST_FORK_TRAVEL("least fork travel", "a travel from 0 mm to 250 mm", Dimension.LENGTH, 0, 0.25, "the shortest the maker permits"),
    MOST_FORK_TRAVEL("most fork travel", "a travel from 0 mm to 250 mm", Dimension.LENGTH, 0, 0.25, "the longest the maker permits"),
    LEAST_FORK_LENGTH("least fork length", "a length from 300 mm to 700 mm", Dimension.LENGTH, 0.3, 0.7, "axle to crown, the shortest permitted"),
    MOST_FORK_LENGTH("most fork length", "a length from 300 mm to 700 mm", Dimension.LENGTH, 0.3, 0.7, "axle to crown, the longest permitted"),
    DESIGN_FORK_LENGTH("design fork length", "a length from 300 mm to 700 mm", Dimension.LENGTH, 0.3, 0.7, "axle to crown, for which the geometry is stated"),
    HEAD_ANGLE("head angle", "an angle from 58 deg to 78 deg", Dimension.ANGLE, 58, 78, "of the head tube to the ground"),
    SEAT_ANGLE("seat angle", "an angle from 65 deg to 85 deg", Dimension.ANGLE, 65, 85, "of the seat tube to the ground"),
    WHEELBASE("wheelbase", "a length from 800 mm to 1500 mm", Dimension.LENGTH, 0.8, 1.5, "axle to axle"),
    CHAINSTAY("chainstay", "a length from 350 mm to 550 mm", Dimension.LENGTH, 0.35, 0.55, "bottom bracket to rear axle"),
    CHAIN_GROWTH("chain growth", "a length from 0 mm to 60 mm", Dimension.LENGTH, 0, 0.06, "how much farther the rear axle is from the bottom bracket at full travel"),
    STACK("stack", "a length from 400 mm to 800 mm", Dimension.LENGTH, 0.4, 0.8, "bottom bracket to top of head tube, upright"),
    REACH("reach", "a length from -100 mm to 600 mm", Dimension.LENGTH, -0.1, 0.6,
            "of a frame: bottom bracket to top of head tube, level; of a bar: clamp to hoods or grips, level, negative behind the clamp"),
    HEAD_TUBE("head tube", "a length from 60 mm to 300 mm", Dimension.LENGTH, 0.06, 0.3, "with the headset, from the fork's crown to the lowest spacer"),
    HEADSET_COVER("headset cover", "a height from 0 mm to 40 mm", Dimension.LENGTH, 0, 0.04,
            "along the steerer, from where stack and reach are stated to the lowest spacer; 0 mm where they are stated to the top of the headset"),
    LEAST_STEM("least stem", "a length from 20 mm to 160 mm", Dimension.LENGTH, 0.02, 0.16, "the shortest stem that the frame's maker permits"),
    MOST_STEM("most stem", "a length from 20 mm to 160 mm", Dimension.LENGTH, 0.02, 0.16, "the longest stem that the frame's maker permits"),
    TRAINED_ON("trained on", Form.YES_NO, 0, 0, "the bike ridden most, whose position is carried over to the others; one for each rider at most"),
    SET_UP_FOR("set up for", Form.LABEL, "", "the rider whose position it has, by the name in the rider's file; if left out, any rider's"),
    SEAT_TUBE("seat tube", "a length from 250 mm to 700 mm", Dimension.LENGTH, 0.25, 0.7, "bottom bracket to top"),
    SADDLE_HEIGHT("saddle height", "a length from 400 mm to 950 mm", Dimension.LENGTH, 0.4, 0.95, "bottom bracket to saddle top along the seat tube"),
    SADDLE_SETBACK("saddle setback", "a length from -150 mm to 200 mm", Dimension.LENGTH, -0.15, 0.2, "saddle tip behind the bottom bracket"),
    REAR_TRAVEL("rear travel", "a travel from 0 mm to 250 mm", Dimension.LENGTH, 0, 0.25, "at the axle; 0 mm without suspension"),
    SHOCK_LENGTH("shock length", "a length from 100 mm to 300 mm", Dimension.LENGTH, 0.1, 0.3, "eye to eye"),
    SHOCK_STROKE("shock stroke", "a stroke from 20 mm to 100 mm", Dimension.LENGTH, 0.02, 0.1, ""),
    LEAST_ROTOR("least rotor", "a diameter from 120 mm to 250 mm", Dimension.LENGTH, 0.12, 0.25, "the smallest rotor it takes"),
    MOST_ROTOR("most rotor", "a diameter from 120 mm to 250 mm", Dimension.LENGTH, 0.12, 0.25, "the largest rotor it takes"),
    LARGEST_RING("largest ring", Form.WHOLE, 20, 70, "teeth of the largest single ring, or outer ring of two, that clears"),
    SMALLEST_RING("smallest ring", Form.WHOLE, 16, 60, "teeth of the smallest ring that it is made for"),
    TWO_RINGS("two rings", Form.YES_NO, 0, 0, "whether two rings can be shifted"),
    LEAST_CHAINLINE("least chainline", "a length from 35 mm to 70 mm", Dimension.LENGTH, 0.035, 0.07, "the least the frame is made for"),
    MOST_CHAINLINE("most chainline", "a length from 35 mm to 70 mm", Dimension.LENGTH, 0.035, 0.07, "the most the frame is made for"),
    LEAST_POST_INSERTION("least post insertion", "a length from 30 mm to 300 mm", Dimension.LENGTH, 0.03, 0.3, "how deep the frame wants a post"),
    MOST_POST_INSERTION("most post insertion", "a length from 50 mm to 500 mm", Dimension.LENGTH, 0.05, 0.5, "how deep a post can go"),
    ACTUATION("shifting", List.of("cable", "electronic"), "how it shifts"),

    AXLE("axle", Form.LABEL, "axles", "diameter and thread of the axle"),
    AXLE_WIDTH("axle width", "a width from 90 mm to 220 mm", Dimension.LENGTH, 0.09, 0.22, "hub width between the dropouts"),
    STEERER("steerer", Form.LABEL, "steerers", "shape of steerer and head tube; of the headset where one is listed"),
    SHOCK_MOUNT("shock mount", Form.LABEL, "shock mounts", ""),
    BOTTOM_BRACKET("bottom bracket", Form.LABEL, "bottom brackets", "bottom bracket and crank axle together; of the bottom bracket where one is listed"),
    DERAILLEUR_MOUNT("derailleur mount", Form.LABEL, "derailleur mounts", ""),
    POST_DIAMETER("post diameter", "a diameter from 22 mm to 40 mm", Dimension.LENGTH, 0.022, 0.04, "of seatpost and seat tube"),
    PAD_SHAPE("pad shape", Form.LABEL, "pad shapes", "of the brake and its pads; of the caliper where one is listed"),
    BRAKE_MOUNT("brake mount", Form.LABEL, "brake mounts", "post, flat ...: of the frame at the rear, the fork, a caliper, and of an adapter toward frame or fork"),
    CALIPER_MOUNT("caliper mount", Form.LABEL, "brake mounts", "of an adapter toward the caliper"),
    MOUNT_ROTOR("mount rotor", "a diameter from 120 mm to 250 mm", Dimension.LENGTH, 0.12, 0.25,
            "the rotor for which a caliper sits on the mount of frame or fork without an adapter; of an adapter: the mount it is made for"),
    FRONT_HOSE("front hose", "a length from 300 mm to 2500 mm", Dimension.LENGTH, 0.3, 2.5,
            "the shortest hose that reaches the front caliper with the bar turned either way, with a fork of the design length"),
    REAR_HOSE("rear hose", "a length from 300 mm to 2500 mm", Dimension.LENGTH, 0.3, 2.5, "the shortest hose that reaches the rear caliper with the bar turned either way"),
    HOSES_THROUGH("hoses through", List.of("fork", "headset", "stem", "bar"), true, "parts that a brake hose runs inside, so that it is opened where one of them is swapped"),
    BRAKE_ACTUATION("braking", List.of("hydraulic", "cable"), "how a brake is worked: of a caliper, of levers that brake too, and of a bike for what is not listed"),
    HOSE_LENGTH("hose length", "a length from 300 mm to 2500 mm", Dimension.LENGTH, 0.3, 2.5, "of a caliper's hose, from the lever"),
    HEADSET_FIT("headset fit", Form.LABEL, "headset fits", "of head tube and headset"),
    LOWER_BEARING("lower bearing", Form.LABEL, "lower bearings", "of the headset, and of the crown race that it runs on"),
    FORK_OFFSET("fork offset", "a length from 0 mm to 80 mm", Dimension.LENGTH, 0, 0.08, "the axle ahead of the steerer's line"),
    RACE_SEAT("race seat", "a diameter from 25 mm to 60 mm", Dimension.LENGTH, 0.025, 0.06, "of the fork's crown, and of the crown race on it"),
    SHELL("shell", Form.LABEL, "shells", "of the frame, and of the bottom bracket in it"),
    REMOTE("remote", Form.LABEL, "remotes", "which remote a dropper post, fork or shock is worked by"),
    REMOTES_WORKED("works", Form.LABELS, "remotes", "of a remote: what it works, by the remote label written there"),
    DROPPER_ROUTING("dropper routing", List.of("internal", "external", "wireless"), true, "how the frame takes the cable or hose of a dropper post"),
    ROUTING("routing", List.of("internal", "external", "wireless"), "of a dropper post's cable or hose"),

    TRAVEL("travel", "a travel from 0 mm to 250 mm", Dimension.LENGTH, 0, 0.25, "0 mm for a rigid fork"),
    LENGTH("length", "a length from 100 mm to 700 mm", Dimension.LENGTH, 0.1, 0.7, "axle to crown of a fork; end to end of a seatpost"),
    STEERER_LENGTH("steerer length", "a length from 80 mm to 400 mm", Dimension.LENGTH, 0.08, 0.4, "from the crown to where it is cut"),
    MOST_SPACERS("most spacers", "a height from 0 mm to 100 mm", Dimension.LENGTH, 0, 0.1, "the most that the fork's maker permits under the stem"),
    AIR_CHART("air chart", Form.CHART, 50_000, 3_000_000,
            "air pressures to start from, from the manufacturer's chart, by the rider's mass as it states it: [{rider: 70 kg, pressure: 5 bar}]"),
    CHASSIS("chassis", List.of("light", "standard", "stiff"), "of a fork"),
    LOCKOUT("lockout", List.of("none", "at the fork/shock", "remote"), ""),

    END("end", List.of("front", "rear"), "which wheel"),
    RIM_INNER_WIDTH("rim inner width", "a width from 12 mm to 60 mm", Dimension.LENGTH, 0.012, 0.06, ""),
    RIM_DEPTH("rim depth", "a depth from 10 mm to 110 mm", Dimension.LENGTH, 0.01, 0.11, ""),
    RIM_MATERIAL("rim material", List.of("alloy", "carbon"), ""),
    HOOKLESS("hookless", Form.YES_NO, 0, 0, "of a rim: without hooks; of a tyre: approved for such rims"),
    TUBELESS("tubeless", Form.YES_NO, 0, 0, "made to run without a tube"),
    MARKED_PRESSURE("marked pressure", "a pressure from 0.5 bar to 15 bar", Dimension.PRESSURE, 50_000, 1_500_000, "the highest pressure marked"),
    LEAST_TYRE("least tyre", "a width from 18 mm to 130 mm", Dimension.LENGTH, 0.018, 0.13, "the narrowest tyre on the maker's chart"),
    MOST_TYRE("most tyre", "a width from 18 mm to 130 mm", Dimension.LENGTH, 0.018, 0.13, "the widest tyre on the maker's chart"),
    VALVE_LENGTH("valve length", "a length from 20 mm to 150 mm", Dimension.LENGTH, 0.02, 0.15, "of the valve in it"),
    SPOKE_LENGTHS("spoke lengths", Form.SIZES, Dimension.LENGTH, 0.15, 0.35, "lengths from 150 mm to 350 mm", List.of(), "", "of the spokes in a wheel: [288 mm, 290 mm]"),
    SPOKE_LENGTH("spoke length", "a length from 150 mm to 350 mm", Dimension.LENGTH, 0.15, 0.35, "of spare spokes"),
    QUANTITY("quantity", Form.WHOLE, 0, 1000, "of spare spokes"),
    FREEHUB("freehub", Form.LABEL, "freehubs", "body that takes the cassette"),
    ROTOR_MOUNT("rotor mount", Form.LABEL, "rotor mounts", ""),

    WIDTH("width", "a width from 18 mm to 900 mm", Dimension.LENGTH, 0.018, 0.9, "as marked"),
    MEASURED_WIDTH("measured width", "a width from 18 mm to 130 mm", Dimension.LENGTH, 0.018, 0.13, "as mounted and inflated"),
    CASING("casing", List.of("light", "reinforced", "heavy"), ""),
    TREAD("tread", List.of("slick", "file", "fast", "all-round", "aggressive", "mud"), ""),
    LEAST_RIM("least rim", "a width from 12 mm to 60 mm", Dimension.LENGTH, 0.012, 0.06, "the narrowest rim, inside, on the maker's chart"),
    MOST_RIM("most rim", "a width from 12 mm to 60 mm", Dimension.LENGTH, 0.012, 0.06, "the widest rim, inside, on the maker's chart"),
    DIRECTION("direction", List.of("either way", "one way", "by end"), "of a tyre's tread, as its arrows say; by end: one for the front, the opposite one for the rear"),
    MOUNTED_SIDE("mounted side", List.of("drive side", "other side"), "which side of the bike the label of a tyre is on, as it is mounted or was last"),
    CUTS("cuts", Form.WHOLE, 0, 100, "that show the casing"),
    ADDED("added", Form.DAY, 0, 0, "the day the sealant went in"),

    SPROCKETS("sprockets", Form.TEETH, 8, 60, "a list, smallest first"),
    SPEEDS("speeds", Form.WHOLE, 5, 14, "sprockets it is made for"),
    DRIVETRAIN("drivetrain", Form.LABEL, "drivetrains", "the shifting family it belongs to"),
    PUBLISHED_WITH("published with", Form.LABELS, "drivetrains", "other families its maker publishes it to work with"),
    LARGEST_SPROCKET("largest sprocket", Form.WHOLE, 15, 60, "the largest the derailleur takes"),
    CAPACITY("capacity", Form.WHOLE, 10, 60, "teeth of chain the derailleur takes up"),
    LINKS("links", Form.WHOLE, 80, 150, "of the chain, inner and outer counted apart"),
    WEAR("wear", "a share from 0 % to 5 %", Dimension.SHARE, 0, 0.05, "of the chain, as a gauge shows it"),
    WEAR_LIMIT("wear limit", "a share from 0.1 % to 5 %", Dimension.SHARE, 0.001, 0.05, "as the chain's maker states it"),

    RING_MOUNT("ring mount", Form.LABEL, "ring mounts", "where the chainring bolts on"),
    CHAINLINE("chainline", "a length from 35 mm to 70 mm", Dimension.LENGTH, 0.035, 0.07, "with the ring on"),
    TEETH("teeth", Form.TEETH, 16, 70, "one number, or a list for two rings, large first"),
    CRANK_LENGTH("crank length", "a length from 100 mm to 220 mm", Dimension.LENGTH, 0.1, 0.22, ""),
    POWER_METER("power meter", Form.YES_NO, 0, 0, "whether it has one built in"),
    METER_MOUNT("meter mount", Form.LABEL, "meter mounts", "where a power meter goes on"),
    PEDAL_THREAD("pedal thread", Form.LABEL, "pedal threads", ""),
    PEDAL_KIND("pedal kind", List.of("solid clipless", "light clipless", "flat"), ""),
    CLEAT("cleat", Form.LABEL, "cleats", "of pedals; what the shoes carry"),

    BAR_SHAPE("bar shape", Form.LABEL, "bar shapes", "drop, flat ..."),
    BAR_CLAMP("bar clamp", "a diameter from 20 mm to 40 mm", Dimension.LENGTH, 0.02, 0.04, "of bar and stem"),
    EXTENSIONS_APPROVED("extensions approved", Form.YES_NO, 0, 0, "whether the maker approves clamp-on extensions"),
    RISE("rise", "a height from -80 mm to 120 mm", Dimension.LENGTH, -0.08, 0.12, "of a bar: clamp to grips, upright"),
    DROP("drop", "a height from 60 mm to 200 mm", Dimension.LENGTH, 0.06, 0.2, "of a drop bar: from hoods to drops, upright"),
    STEM_LENGTH("stem length", "a length from 20 mm to 160 mm", Dimension.LENGTH, 0.02, 0.16, "middle of the steerer to middle of the bar"),
    STEM_ANGLE("stem angle", "an angle from -45 deg to 45 deg", Dimension.ANGLE, -45, 45, "to the square of the steerer, rising is positive"),
    STEERER_CLAMP("steerer clamp", "a diameter from 22 mm to 45 mm", Dimension.LENGTH, 0.022, 0.045, "diameter of steerer, stem and spacers where they meet"),
    TURNS_OVER("turns over", Form.YES_NO, 0, 0, "whether it may be mounted either way up"),
    CLAMP_HEIGHT("clamp height", "a height from 20 mm to 70 mm", Dimension.LENGTH, 0.02, 0.07, "of the stem on the steerer"),
    HEIGHT("height", "a height from 0 mm to 150 mm", Dimension.LENGTH, 0, 0.15, "of spacers together; of a saddle from rails to top"),
    PIECES("pieces", Form.SIZES, Dimension.LENGTH, 0.0005, 0.1, "heights from 0.5 mm to 100 mm", List.of(), "", "heights of the single spacers, where they can be parted: [10 mm, 5 mm]"),

    DROPPER("dropper", Form.YES_NO, 0, 0, ""),
    DROPPER_TRAVEL("dropper travel", "a stroke from 20 mm to 300 mm", Dimension.LENGTH, 0.02, 0.3, "of a dropper post"),
    LEAST_INSERTION("least insertion", "a length from 30 mm to 300 mm", Dimension.LENGTH, 0.03, 0.3, "as marked on the post"),
    SETBACK("setback", "a length from -30 mm to 60 mm", Dimension.LENGTH, -0.03, 0.06, "of the clamp behind the post"),
    RAILS("rails", Form.LABEL, "rails", "of saddle and post"),

    DIAMETER("diameter", "a diameter from 120 mm to 250 mm", Dimension.LENGTH, 0.12, 0.25, "of a rotor; of an adapter: the rotor it is marked for"),
    PADS_PERMITTED("pads permitted", List.of("organic", "sintered"), true, "compounds that the rotor's maker permits"),
    THICKNESS("thickness", "a thickness from 0.5 mm to 4 mm", Dimension.LENGTH, 0.0005, 0.004, "of a rotor, as measured"),
    LEAST_THICKNESS("least thickness", "a thickness from 0.5 mm to 4 mm", Dimension.LENGTH, 0.0005, 0.004, "as marked on the rotor"),
    COMPOUND("compound", List.of("organic", "sintered"), "of the pads"),
    LEAST_LEFT("least left", "a thickness from 0 mm to 5 mm", Dimension.LENGTH, 0, 0.005, "friction material at which the pads' maker has them renewed"),
    LEFT("left", "a thickness from 0 mm to 5 mm", Dimension.LENGTH, 0, 0.005, "friction material left on each pad"),

    RUN_TIME("run time", "a run time from 1 min to 100 h", Dimension.TIME, 60, 360_000, "at the mode used; of a battery, from full"),
    CHARGE("charge", "a share from 0 % to 100 %", Dimension.SHARE, 0, 1, "left in a battery when it was last looked at"),
    LIGHT_KIND("light kind", List.of("to be seen", "to see by"), ""),
    VOLUME("volume", "a volume from 0.1 L to 60 L", Dimension.VOLUME, 0.1, 60, "");

    /** How a detail is written. */
    public enum Form { AMOUNT, NUMBER, WHOLE, YES_NO, WORD, WORDS, LABEL, LABELS, TEETH, DAY, CLEARANCES, SIZES, INTERVALS, CHART }

    private static final Map<String, PartDetail> BY_NAME = new LinkedHashMap<>();

    static {
        for (PartDetail detail : values()) {
            BY_NAME.put(detail.written, detail);
        }
    }

    private final String written;
    private final Form form;
    private final Dimension dimension;
    private final double least;
    private final double most;
    private final String range;
    private final List<String> words;
    private final String family;
    private final String about;

    PartDetail(String written, String range, Dimension dimension, double least, double most, String about) {
        this(written, Form.AMOUNT, dimension, least, most, range, List.of(), "", about);
    }

    PartDetail(String written, Form form, double least, double most, String about) {
        this(written, form, Dimension.LENGTH, least, most, "", List.of(), "", about);
    }

    PartDetail(String written, Form form, String family, String about) {
        this(written, form, null, 0, 0, "", List.of(), family, about);
    }

    PartDetail(String written, List<String> words, String about) {
        this(written, Form.WORD, null, 0, 0, "", words, "", about);
    }

    PartDetail(String written, List<String> words, boolean several, String about) {
        this(written, several ? Form.WORDS : Form.WORD, null, 0, 0, "", words, "", about);
    }

    PartDetail(String written, Form form, Dimension dimension, double least, double most, String range, List<String> words, String family,
            String about) {
        this.written = written;
        this.form = form;
        this.dimension = dimension;
        this.least = least;
        this.most = most;
        this.range = range;
        this.words = words;
        this.family = family;
        this.about = about;
    }

    /** The key in a file. */
    public String written() {
        return written;
    }

    public Form form() {
        return form;
    }

    /** What an {@link Form#AMOUNT} measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The least that is believed, in the base unit. */
    public double least() {
        return least;
    }

    /** The most that is believed, in the base unit. */
    public double most() {
        return most;
    }

    /** What is believed, in words. */
    public String range() {
        return range;
    }

    /** The words of {@link Form#WORD} and {@link Form#WORDS}, in order from least where they have an order. */
    public List<String> words() {
        return words;
    }

    /** The interface that labels of this detail name: labels of one family are compared with each other; empty where none is. */
    public String family() {
        return family;
    }

    /** What it is, in words; may be empty where the key says it all. */
    public String about() {
        return about;
    }

    /** The detail written so, or null. */
    public static PartDetail find(String written) {
        return BY_NAME.get(written);
    }
}
