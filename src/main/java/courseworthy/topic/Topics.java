package courseworthy.topic;

import static courseworthy.topic.Topic.options;
import static courseworthy.topic.Topic.ordered;
import static courseworthy.topic.Topic.quantity;

import courseworthy.topic.Topic.Safe;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every topic there is, in the order in which briefs show them. Bounds, steps and defaults are common sizes of the trade
 * (common practice, no source); layers follow what hangs on what.
 */
public final class Topics {

    private static final Map<String, Topic> BY_NAME = new LinkedHashMap<>();
    private static final String[] MTB = {"cross-country hardtail", "cross-country full suspension", "trail"};
    private static final String[] FULL_SUSPENSION = {"cross-country full suspension", "trail"};

    public static final Topic BIKE = add(options("bike", "road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail").standard("gravel")
            .layer(1).group(TopicGroup.BIKE).work(Work.BIKE)
            .about("The kind of bike to take"));
    public static final Topic FORK_TRAVEL = add(quantity("fork travel", Unit.MM, "1").range("80", "170").standard("110").step(10)
            .layer(2).safe(Safe.UP).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.TRAVEL).notch(10)
            .about("Travel of the suspension fork"));
    public static final Topic REAR_TRAVEL = add(quantity("rear travel", Unit.MM, "1").range("60", "170").standard("100").step(10)
            .layer(3).safe(Safe.UP).where(BIKE, FULL_SUSPENSION).group(TopicGroup.SUSPENSION).work(Work.TRAVEL).notch(10)
            .about("Travel of the rear suspension at the axle"));
    public static final Topic FORK_CHASSIS = add(ordered("fork chassis", "light", "standard", "stiff").standard("standard")
            .layer(3).safe(Safe.UP).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.TRAVEL)
            .about("Stiffness of the fork: stanchion diameter and crown"));
    public static final Topic FRONT_SAG = add(quantity("front sag", Unit.PERCENT, "1").range("10", "40").standard("20")
            .layer(5).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.SUSPENSION_SETTINGS).notch(5)
            .about("Sag of the fork in full kit, as a share of its travel"));
    public static final Topic REAR_SAG = add(quantity("rear sag", Unit.PERCENT, "1").range("10", "40").standard("25")
            .layer(5).where(BIKE, FULL_SUSPENSION).group(TopicGroup.SUSPENSION).work(Work.SUSPENSION_SETTINGS).notch(5)
            .about("Sag of the rear suspension in full kit, as a share of its travel"));
    public static final Topic REBOUND = add(quantity("rebound", Unit.PERCENT, "1").range("0", "100").standard("50").step(5)
            .layer(5).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.SUSPENSION_SETTINGS).notch(10)
            .about("Rebound damping to start from: clicks open from fully closed as a share of the range; the manufacturer's chart takes precedence"));
    public static final Topic COMPRESSION = add(quantity("compression", Unit.PERCENT, "1").range("0", "100").standard("70").step(5)
            .layer(5).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.SUSPENSION_SETTINGS).notch(10)
            .about("Low-speed compression damping to start from: clicks open from fully closed as a share of the range; the manufacturer's chart takes precedence"));
    public static final Topic LOCKOUT = add(options("lockout", "none", "at the fork/shock", "remote").standard("at the fork/shock")
            .layer(5).where(BIKE, MTB).group(TopicGroup.SUSPENSION).work(Work.SUSPENSION_SETTINGS)
            .about("How the suspension is firmed for smooth climbs"));
    public static final Topic SEATPOST = add(options("seatpost", "rigid", "dropper").standard("rigid")
            .layer(2).group(TopicGroup.SUSPENSION).work(Work.SEATPOST)
            .about("Rigid or dropper seatpost"));
    public static final Topic DROPPER_TRAVEL = add(quantity("dropper travel", Unit.MM, "1").range("40", "230").standard("125").step(5)
            .layer(3).where(SEATPOST, "dropper").group(TopicGroup.SUSPENSION).work(Work.SEATPOST).notch(20)
            .about("Travel of the dropper post"));
    public static final Topic FRONT_TYRE_WIDTH = add(quantity("front tyre width", Unit.MM, "1").range("23", "75").standard("40")
            .layer(2).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).notch(3).concerns(Concern.PUNCTURES)
            .about("Width of the front tyre as mounted"));
    public static final Topic REAR_TYRE_WIDTH = add(quantity("rear tyre width", Unit.MM, "1").range("23", "75").standard("40")
            .layer(3).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).notch(3).concerns(Concern.PUNCTURES)
            .about("Width of the rear tyre as mounted"));
    public static final Topic FRONT_TYRE_CASING = add(ordered("front tyre casing", "light", "reinforced", "heavy").standard("reinforced")
            .layer(3).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.PUNCTURES)
            .about("Casing of the front tyre: how well tread and sidewall are protected"));
    public static final Topic REAR_TYRE_CASING = add(ordered("rear tyre casing", "light", "reinforced", "heavy").standard("reinforced")
            .layer(4).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.PUNCTURES)
            .about("Casing of the rear tyre: how well tread and sidewall are protected"));
    public static final Topic FRONT_TYRE_TREAD = add(ordered("front tyre tread", "slick", "file", "fast", "all-round", "aggressive", "mud").standard("fast")
            .layer(3).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.WET, Concern.PUNCTURES)
            .about("Tread of the front tyre, from none to deep and open"));
    public static final Topic REAR_TYRE_TREAD = add(ordered("rear tyre tread", "slick", "file", "fast", "all-round", "aggressive", "mud").standard("fast")
            .layer(4).safe(Safe.UP).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.WET, Concern.PUNCTURES)
            .about("Tread of the rear tyre, from none to deep and open"));
    public static final Topic FRONT_INSERT = add(options("front insert", "none", "fitted").standard("none")
            .layer(4).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.PUNCTURES)
            .about("Foam insert in the front tyre"));
    public static final Topic REAR_INSERT = add(options("rear insert", "none", "fitted").standard("none")
            .layer(4).group(TopicGroup.TYRES).work(Work.TYRES).concerns(Concern.PUNCTURES)
            .about("Foam insert in the rear tyre"));
    public static final Topic FRONT_SEALANT = add(options("front sealant", "tube", "tubeless").standard("tubeless")
            .layer(4).group(TopicGroup.TYRES).work(Work.TYRES)
            .about("Front tyre with a tube, or tubeless with sealant"));
    public static final Topic REAR_SEALANT = add(options("rear sealant", "tube", "tubeless").standard("tubeless")
            .layer(4).group(TopicGroup.TYRES).work(Work.TYRES)
            .about("Rear tyre with a tube, or tubeless with sealant"));
    public static final Topic FRONT_TYRE_PRESSURE = add(quantity("front tyre pressure", Unit.BAR, "0.05").range("0.80", "8.00").standard("2.00")
            .layer(6).group(TopicGroup.TYRES).work(Work.PRESSURE).notch(2)
            .about("Pressure of the front tyre at the start, at the temperature there"));
    public static final Topic REAR_TYRE_PRESSURE = add(quantity("rear tyre pressure", Unit.BAR, "0.05").range("0.80", "8.00").standard("2.00")
            .layer(6).group(TopicGroup.TYRES).work(Work.PRESSURE).notch(2)
            .about("Pressure of the rear tyre at the start, at the temperature there"));
    public static final Topic FRONT_RIM_MATERIAL = add(options("front rim material", "alloy", "carbon").standard("alloy")
            .layer(3).group(TopicGroup.WHEELS).work(Work.WHEELS)
            .about("Rim material of the front wheel"));
    public static final Topic REAR_RIM_MATERIAL = add(options("rear rim material", "alloy", "carbon").standard("alloy")
            .layer(4).group(TopicGroup.WHEELS).work(Work.WHEELS)
            .about("Rim material of the rear wheel"));
    public static final Topic FRONT_RIM_DEPTH = add(ordered("front rim depth", "shallow", "mid", "deep").standard("shallow")
            .layer(3).safe(Safe.DOWN).group(TopicGroup.WHEELS).work(Work.WHEELS)
            .about("Rim depth of the front wheel: shallow under 35 mm, mid to 50 mm, deep above"));
    public static final Topic REAR_RIM_DEPTH = add(ordered("rear rim depth", "shallow", "mid", "deep").standard("shallow")
            .layer(4).safe(Safe.DOWN).group(TopicGroup.WHEELS).work(Work.WHEELS)
            .about("Rim depth of the rear wheel: shallow under 35 mm, mid to 50 mm, deep above"));
    public static final Topic FRONT_RIM_INNER_WIDTH = add(quantity("front rim inner width", Unit.MM, "1").range("15", "40").standard("25")
            .layer(4).group(TopicGroup.WHEELS).work(Work.WHEELS).notch(2)
            .about("Inner width of the front rim"));
    public static final Topic REAR_RIM_INNER_WIDTH = add(quantity("rear rim inner width", Unit.MM, "1").range("15", "40").standard("25")
            .layer(4).group(TopicGroup.WHEELS).work(Work.WHEELS).notch(2)
            .about("Inner width of the rear rim"));
    public static final Topic CHAINRINGS = add(options("chainrings", "one", "two").standard("one")
            .layer(2).group(TopicGroup.GEARING).work(Work.GEARS)
            .about("One chainring or two"));
    public static final Topic EASIEST_GEAR = add(quantity("easiest gear", Unit.RATIO, "0.001").range("0.400", "1.600").standard("0.680")
            .layer(3).safe(Safe.DOWN).group(TopicGroup.GEARING).work(Work.GEARS).notch(25)
            .about("The easiest gear: chainring over largest sprocket"));
    public static final Topic HARDEST_GEAR = add(quantity("hardest gear", Unit.RATIO, "0.001").range("2.000", "5.500").standard("3.400")
            .layer(4).safe(Safe.UP).group(TopicGroup.GEARING).work(Work.GEARS).notch(120)
            .about("The hardest gear: chainring over smallest sprocket"));
    public static final Topic LARGEST_STEP = add(quantity("largest step", Unit.PERCENT, "1").range("6", "40").standard("18")
            .layer(5).safe(Safe.DOWN).limit().group(TopicGroup.GEARING).work(Work.GEARS).notch(3)
            .about("Largest step between neighbouring gears that the cassette may have"));
    public static final Topic BAR_WIDTH = add(quantity("bar width", Unit.MM, "1").range("360", "820").standard("440").step(10)
            .layer(5).group(TopicGroup.COCKPIT).work(Work.COCKPIT).notch(15)
            .about("Width of the bar, outside to outside"));
    public static final Topic BAR_HEIGHT = add(quantity("bar height", Unit.MM, "1").range("-120", "80").standard("-20").step(5)
            .layer(5).safe(Safe.UP).group(TopicGroup.COCKPIT).work(Work.COCKPIT)
            .about("Height of the grips or hoods above the saddle; -25 mm is a saddle-to-bar drop of 25 mm"));
    public static final Topic AERO_EXTENSIONS = add(options("aero extensions", "none", "fitted").standard("none")
            .layer(2).where(BIKE, "road", "gravel").group(TopicGroup.COCKPIT).work(Work.COCKPIT)
            .about("Clamp-on aero extensions"));
    public static final Topic SADDLE = add(options("saddle", "your usual saddle", "another").standard("your usual saddle")
            .layer(5).group(TopicGroup.CONTACT_POINTS).work(Work.CONTACT_POINTS)
            .about("The saddle"));
    public static final Topic PEDALS = add(options("pedals", "solid clipless", "light clipless", "flat").standard("solid clipless")
            .layer(5).group(TopicGroup.CONTACT_POINTS).work(Work.CONTACT_POINTS)
            .about("The pedals"));
    public static final Topic SHOES = add(options("shoes", "stiff", "walkable", "winter").standard("walkable")
            .layer(5).group(TopicGroup.CONTACT_POINTS).work(Work.CLOTHING).concerns(Concern.WEATHER)
            .about("The shoes"));
    public static final Topic GRIPS_OR_TAPE = add(options("grips or tape", "thin", "standard", "cushioned").standard("standard")
            .layer(5).group(TopicGroup.CONTACT_POINTS).work(Work.CONTACT_POINTS)
            .about("Grips or bar tape"));
    public static final Topic GLOVES = add(ordered("gloves", "none", "short", "long", "winter").standard("short")
            .layer(5).safe(Safe.UP).group(TopicGroup.CONTACT_POINTS).work(Work.CLOTHING).concerns(Concern.WEATHER)
            .about("Gloves"));
    public static final Topic POWER_METER = add(options("power meter", "none", "fitted").standard("none")
            .layer(5).group(TopicGroup.ELECTRONICS).work(Work.ELECTRONICS)
            .about("A power meter on this bike"));
    public static final Topic NAVIGATION = add(ordered("navigation", "course markings", "course on a device", "course on a device and a backup").standard("course on a device")
            .layer(6).safe(Safe.UP).group(TopicGroup.ELECTRONICS).work(Work.ELECTRONICS)
            .about("How the rider finds the way"));
    public static final Topic LIGHTS = add(ordered("lights", "none", "to be seen", "to see by", "to see by with a backup").standard("none")
            .layer(6).safe(Safe.UP).group(TopicGroup.ELECTRONICS).work(Work.LIGHTS)
            .about("Lights"));
    public static final Topic LIGHT_RUN_TIME = add(quantity("light run time", Unit.MIN, "15").range("0:00", "16:00").standard("2:00")
            .layer(7).safe(Safe.UP).where(LIGHTS, "to see by", "to see by with a backup").group(TopicGroup.ELECTRONICS).work(Work.LIGHTS).notch(2)
            .about("Run time the main light must have at the mode used"));
    public static final Topic BATTERY_RESERVE = add(quantity("battery reserve", Unit.PERCENT, "1").range("0", "150").standard("30").step(5)
            .layer(6).safe(Safe.UP).limit().group(TopicGroup.ELECTRONICS).work(Work.ELECTRONICS).notch(10)
            .about("Battery time to spare over the slow estimate, for the navigation device and for electronic shifting"));
    public static final Topic FRONT_ROTOR = add(quantity("front rotor", Unit.MM, "1").range("140", "220").standard("160").step(20)
            .layer(3).safe(Safe.UP).group(TopicGroup.BRAKES).work(Work.BRAKES).notch(20).concerns(Concern.SAFETY)
            .about("Diameter of the front brake rotor"));
    public static final Topic REAR_ROTOR = add(quantity("rear rotor", Unit.MM, "1").range("140", "220").standard("160").step(20)
            .layer(4).safe(Safe.UP).group(TopicGroup.BRAKES).work(Work.BRAKES).notch(20).concerns(Concern.SAFETY)
            .about("Diameter of the rear brake rotor"));
    public static final Topic PAD_COMPOUND = add(options("pad compound", "organic", "sintered").standard("organic")
            .layer(5).group(TopicGroup.BRAKES).work(Work.BRAKES).concerns(Concern.WET)
            .about("Compound of the brake pads, of those the rotor permits"));
    public static final Topic LUBRICANT = add(options("lubricant", "dry", "wet", "wax").standard("dry")
            .layer(6).group(TopicGroup.UPKEEP).work(Work.UPKEEP).concerns(Concern.WET)
            .about("Chain lubricant"));
    public static final Topic CHAIN = add(options("chain", "keep if within its wear limit", "new a week before").standard("keep if within its wear limit")
            .layer(6).group(TopicGroup.UPKEEP).work(Work.UPKEEP)
            .about("The chain"));
    public static final Topic CASSETTE = add(options("cassette", "keep", "new with the chain").standard("keep")
            .layer(6).group(TopicGroup.UPKEEP).work(Work.UPKEEP)
            .about("The cassette"));
    public static final Topic SEALANT_AGE = add(quantity("sealant age", Unit.DAYS, "1").range("1", "180").standard("90")
            .layer(6).safe(Safe.DOWN).limit().where(REAR_SEALANT, "tubeless").group(TopicGroup.UPKEEP).work(Work.UPKEEP).notch(7)
            .about("Most days since sealant was last topped up"));
    public static final Topic PAD_THICKNESS = add(quantity("pad thickness", Unit.MM, "0.1").range("0.5", "4.0").standard("1.0")
            .layer(6).safe(Safe.UP).limit().group(TopicGroup.UPKEEP).work(Work.BRAKES).notch(2)
            .about("Least friction material left on each pad at the start; the manufacturer's wear mark takes precedence"));
    public static final Topic CABLES_OR_BATTERIES = add(options("cables or batteries", "check", "renew or charge").standard("check")
            .layer(6).group(TopicGroup.UPKEEP).work(Work.UPKEEP)
            .about("Shift cables, or batteries of electronic shifting"));
    public static final Topic WATER = add(quantity("water", Unit.L, "0.1").range("0.3", "60.0").standard("0.7")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY).notch(5).concerns(Concern.SAFETY)
            .about("Water to leave the start with; what each tap on the way is left with stands in the day's plan"));
    public static final Topic WATER_CARRIER = add(ordered("water carrier", "one bottle", "two bottles", "bottles and a pack").standard("one bottle")
            .layer(7).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("How the water is carried, also over the gap that needs most: a bottle holds 0.8 L, two 1.6 L, bottles and a pack 4.6 L"));
    public static final Topic FOOD = add(quantity("food", Unit.G_PER_H, "1").range("0", "90").standard("40").step(5)
            .layer(6).group(TopicGroup.CARRIED).work(Work.CARRY).notch(10)
            .about("Carbohydrate to carry and eat, an hour"));
    public static final Topic PLUGS = add(quantity("plugs", Unit.ONE, "1").range("0", "10").standard("2")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("Tubeless plugs to carry"));
    public static final Topic TUBES = add(quantity("tubes", Unit.ONE, "1").range("0", "3").standard("1")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("Spare tubes to carry"));
    public static final Topic INFLATION = add(ordered("inflation", "cartridges", "pump", "cartridges and a pump").standard("pump")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("How a tyre is inflated on the way"));
    public static final Topic TOOLS = add(ordered("tools", "multi-tool", "multi-tool with chain tool", "multi-tool with chain tool and pliers").standard("multi-tool with chain tool")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("Tools to carry"));
    public static final Topic SPARES = add(ordered("spares", "none", "quick link", "quick link and hanger", "quick link and hanger and bolts").standard("quick link")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("Spare parts to carry"));
    public static final Topic CLOTHING = add(ordered("clothing", "summer kit", "summer kit and a thin layer", "long sleeves and a shell", "winter layers and a shell").standard("summer kit")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CLOTHING).concerns(Concern.WEATHER)
            .about("Clothing"));
    public static final Topic EYEWEAR = add(ordered("eyewear", "clear", "tinted").standard("clear")
            .layer(6).group(TopicGroup.CARRIED).work(Work.CLOTHING).concerns(Concern.WET)
            .about("Lenses"));
    public static final Topic MUDGUARD = add(ordered("mudguard", "none", "front", "front and rear").standard("none")
            .layer(6).group(TopicGroup.CARRIED).work(Work.CARRY).concerns(Concern.WET)
            .about("Mudguards"));
    public static final Topic EMERGENCY_KIT = add(ordered("emergency kit", "phone and identity", "phone with foil blanket", "phone with foil blanket and first aid").standard("phone and identity")
            .layer(6).safe(Safe.UP).group(TopicGroup.CARRIED).work(Work.CARRY)
            .about("What to carry for an emergency"));
    public static final Topic HELMET = add(options("helmet", "worn").standard("worn")
            .layer(5).group(TopicGroup.CARRIED).work(Work.CLOTHING)
            .about("A helmet, done up, within its age and undamaged"));

    private static final List<Topic> ALL = List.copyOf(BY_NAME.values());

    /** The last layer. */
    public static final int LAST_LAYER = lastLayer();

    private Topics() {
    }

    private static int lastLayer() {
        int last = 0;
        for (Topic topic : ALL) {
            last = Math.max(last, topic.layer());
        }
        return last;
    }

    /** All topics in the order of the catalogue. */
    public static List<Topic> all() {
        return ALL;
    }

    /** The topic of a name, or null. */
    public static Topic find(String name) {
        return BY_NAME.get(name);
    }

    /** The topic of a name that must exist. @throws IllegalArgumentException where it does not */
    public static Topic of(String name) {
        Topic topic = BY_NAME.get(name);
        if (topic == null) {
            throw new IllegalArgumentException("no topic " + name);
        }
        return topic;
    }

    /** For a pressure, the topics that make the tyre it is for: width, casing and insert at its end; none for other topics. */
    public static List<Topic> ofTyre(Topic pressure) {
        return pressure.work() != Work.PRESSURE ? List.of()
                : List.of(FRONT_TYRE_WIDTH.at(pressure.end()), FRONT_TYRE_CASING.at(pressure.end()), FRONT_INSERT.at(pressure.end()));
    }

    /** The names, in the order of the catalogue. */
    public static List<String> names() {
        return List.copyOf(BY_NAME.keySet());
    }

    /** The topics of a layer, in the order of the catalogue. */
    public static List<Topic> ofLayer(int layer) {
        List<Topic> out = new ArrayList<>();
        for (Topic topic : ALL) {
            if (topic.layer() == layer) {
                out.add(topic);
            }
        }
        return out;
    }

    private static Topic add(Topic.Builder builder) {
        Topic topic = builder.build();
        if (BY_NAME.put(topic.name(), topic) != null) {
            throw new IllegalStateException("two topics " + topic.name());
        }
        return topic;
    }
}
