package courseworthy.topic;

import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import courseworthy.units.Amount;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every topic there is, in the order in which briefs show them. Bounds, steps and defaults are common sizes of the trade
 * (common practice, no source); layers follow what hangs on what.
 */
public final class Topics {

    private static final List<Applies> ALWAYS = List.of();
    private static final List<Applies> MTB = where("bike", "cross-country hardtail", "cross-country full suspension", "trail");
    private static final List<Applies> FULL = where("bike", "cross-country full suspension", "trail");

    private static final List<Topic> ALL = List.of(
            options("bike", "gravel", 1, Safe.NONE, ALWAYS,
                    "The kind of bike to take",
                    "road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail"),
            quantity("fork travel", Unit.MM, "1", 10, "80", "170", "110", 2, Safe.UP, MTB,
                    "Travel of the suspension fork"),
            quantity("rear travel", Unit.MM, "1", 10, "60", "170", "100", 3, Safe.UP, FULL,
                    "Travel of the rear suspension at the axle"),
            ordered("fork legs", "standard", 3, Safe.UP, MTB,
                    "Stoutness of the fork: stanchion diameter and crown",
                    "slim", "standard", "stout"),
            quantity("front sag", Unit.PERCENT, "1", 1, "10", "40", "20", 5, Safe.NONE, MTB,
                    "Sag of the fork in full kit, as a share of its travel"),
            quantity("rear sag", Unit.PERCENT, "1", 1, "10", "40", "25", 5, Safe.NONE, FULL,
                    "Sag of the rear suspension in full kit, as a share of its travel"),
            quantity("rebound", Unit.PERCENT, "1", 5, "0", "100", "50", 5, Safe.NONE, MTB,
                    "Rebound damping to start from: clicks open from fully closed as a share of the range; the manufacturer's chart takes precedence"),
            quantity("compression", Unit.PERCENT, "1", 5, "0", "100", "70", 5, Safe.NONE, MTB,
                    "Low-speed compression damping to start from: clicks open from fully closed as a share of the range; the manufacturer's chart takes precedence"),
            options("lockout", "by hand", 5, Safe.NONE, MTB,
                    "How the suspension is firmed for smooth climbs",
                    "none", "by hand", "remote"),
            options("seatpost", "rigid", 2, Safe.NONE, ALWAYS,
                    "Rigid or dropper seatpost",
                    "rigid", "dropper"),
            quantity("dropper stroke", Unit.MM, "1", 5, "40", "230", "125", 3, Safe.NONE, where("seatpost", "dropper"),
                    "Stroke of the dropper post"),
            quantity("front tyre width", Unit.MM, "1", 1, "23", "75", "40", 2, Safe.UP, ALWAYS,
                    "Width of the front tyre as mounted"),
            quantity("rear tyre width", Unit.MM, "1", 1, "23", "75", "40", 3, Safe.UP, ALWAYS,
                    "Width of the rear tyre as mounted"),
            ordered("front tyre casing", "reinforced", 3, Safe.UP, ALWAYS,
                    "Casing of the front tyre: how well tread and sidewall are protected",
                    "light", "reinforced", "heavy"),
            ordered("rear tyre casing", "reinforced", 4, Safe.UP, ALWAYS,
                    "Casing of the rear tyre: how well tread and sidewall are protected",
                    "light", "reinforced", "heavy"),
            ordered("front tyre tread", "fast", 3, Safe.UP, ALWAYS,
                    "Tread of the front tyre, from none to deep and open",
                    "slick", "file", "fast", "all-round", "aggressive", "mud"),
            ordered("rear tyre tread", "fast", 4, Safe.UP, ALWAYS,
                    "Tread of the rear tyre, from none to deep and open",
                    "slick", "file", "fast", "all-round", "aggressive", "mud"),
            options("front insert", "none", 4, Safe.NONE, ALWAYS,
                    "Foam insert in the front tyre",
                    "none", "fitted"),
            options("rear insert", "none", 4, Safe.NONE, ALWAYS,
                    "Foam insert in the rear tyre",
                    "none", "fitted"),
            options("front sealant", "tubeless", 4, Safe.NONE, ALWAYS,
                    "Front tyre with a tube, or tubeless with sealant",
                    "tube", "tubeless"),
            options("rear sealant", "tubeless", 4, Safe.NONE, ALWAYS,
                    "Rear tyre with a tube, or tubeless with sealant",
                    "tube", "tubeless"),
            quantity("front tyre pressure", Unit.BAR, "0.05", 1, "0.80", "8.00", "2.00", 6, Safe.NONE, ALWAYS,
                    "Pressure of the front tyre at the start, at the temperature there"),
            quantity("rear tyre pressure", Unit.BAR, "0.05", 1, "0.80", "8.00", "2.00", 6, Safe.NONE, ALWAYS,
                    "Pressure of the rear tyre at the start, at the temperature there"),
            options("front rim material", "alloy", 3, Safe.NONE, ALWAYS,
                    "Rim material of the front wheel",
                    "alloy", "carbon"),
            options("rear rim material", "alloy", 4, Safe.NONE, ALWAYS,
                    "Rim material of the rear wheel",
                    "alloy", "carbon"),
            ordered("front rim depth", "shallow", 3, Safe.DOWN, ALWAYS,
                    "Rim depth of the front wheel: shallow under 35 mm, mid to 50 mm, deep above",
                    "shallow", "mid", "deep"),
            ordered("rear rim depth", "shallow", 4, Safe.DOWN, ALWAYS,
                    "Rim depth of the rear wheel: shallow under 35 mm, mid to 50 mm, deep above",
                    "shallow", "mid", "deep"),
            quantity("front rim inner width", Unit.MM, "1", 1, "15", "40", "25", 4, Safe.NONE, ALWAYS,
                    "Inner width of the front rim"),
            quantity("rear rim inner width", Unit.MM, "1", 1, "15", "40", "25", 4, Safe.NONE, ALWAYS,
                    "Inner width of the rear rim"),
            options("chainrings", "one", 2, Safe.NONE, ALWAYS,
                    "One chainring or two",
                    "one", "two"),
            quantity("easiest gear", Unit.RATIO, "0.001", 1, "0.400", "1.600", "0.680", 3, Safe.DOWN, ALWAYS,
                    "The easiest gear: chainring over largest sprocket"),
            quantity("hardest gear", Unit.RATIO, "0.001", 1, "2.000", "5.500", "3.400", 4, Safe.UP, ALWAYS,
                    "The hardest gear: chainring over smallest sprocket"),
            quantity("largest step", Unit.PERCENT, "1", 1, "6", "40", "18", 5, Safe.DOWN, ALWAYS,
                    "Largest step between neighbouring gears that the cassette may have"),
            quantity("bar width", Unit.MM, "1", 10, "360", "820", "440", 5, Safe.NONE, ALWAYS,
                    "Width of the bar, outside to outside"),
            quantity("bar height", Unit.MM, "1", 5, "-120", "80", "-20", 5, Safe.UP, ALWAYS,
                    "Height of the grips or hoods above the saddle"),
            options("aero extensions", "none", 2, Safe.NONE, where("bike", "road", "gravel"),
                    "Clamp-on aero extensions",
                    "none", "fitted"),
            options("saddle", "the proven one", 5, Safe.NONE, ALWAYS,
                    "The saddle",
                    "the proven one", "another"),
            options("pedals", "solid clipless", 5, Safe.NONE, ALWAYS,
                    "The pedals",
                    "solid clipless", "light clipless", "flat"),
            options("shoes", "walkable", 5, Safe.NONE, ALWAYS,
                    "The shoes",
                    "stiff", "walkable", "winter"),
            options("grips or tape", "standard", 5, Safe.NONE, ALWAYS,
                    "Grips or bar tape",
                    "thin", "standard", "cushioned"),
            ordered("gloves", "short", 5, Safe.UP, ALWAYS,
                    "Gloves",
                    "none", "short", "long", "winter"),
            options("power meter", "none", 5, Safe.NONE, ALWAYS,
                    "A power meter on this bike",
                    "none", "fitted"),
            ordered("navigation", "course on a device", 6, Safe.UP, ALWAYS,
                    "How the rider finds the way",
                    "course markings", "course on a device", "course on a device and a backup"),
            ordered("lights", "none", 6, Safe.UP, ALWAYS,
                    "Lights",
                    "none", "to be seen", "to see by", "to see by with a backup"),
            quantity("light run time", Unit.MIN, "15", 1, "0:00", "16:00", "2:00", 7, Safe.UP, where("lights", "to see by", "to see by with a backup"),
                    "Run time the main light must have at the mode used"),
            quantity("battery reserve", Unit.PERCENT, "1", 5, "0", "150", "30", 6, Safe.UP, ALWAYS,
                    "Battery time to spare over the slow estimate, for what shows the way and for electronic shifting"),
            quantity("front rotor", Unit.MM, "1", 20, "140", "220", "160", 3, Safe.UP, ALWAYS,
                    "Diameter of the front brake rotor"),
            quantity("rear rotor", Unit.MM, "1", 20, "140", "220", "160", 4, Safe.UP, ALWAYS,
                    "Diameter of the rear brake rotor"),
            options("pad compound", "organic", 5, Safe.NONE, ALWAYS,
                    "Compound of the brake pads, of those the rotor permits",
                    "organic", "sintered"),
            options("lubricant", "dry", 6, Safe.NONE, ALWAYS,
                    "Chain lubricant",
                    "dry", "wet", "wax"),
            options("chain", "keep if within its wear limit", 6, Safe.NONE, ALWAYS,
                    "The chain",
                    "keep if within its wear limit", "new a week before"),
            options("cassette", "keep", 6, Safe.NONE, ALWAYS,
                    "The cassette",
                    "keep", "new with the chain"),
            quantity("sealant age", Unit.DAYS, "1", 1, "1", "180", "90", 6, Safe.DOWN, where("rear sealant", "tubeless"),
                    "Most days since sealant was last topped up"),
            quantity("pad thickness", Unit.MM, "0.1", 1, "0.5", "4.0", "1.0", 6, Safe.UP, ALWAYS,
                    "Least friction material left on each pad at the start; the manufacturer's wear mark takes precedence"),
            options("cables or batteries", "check", 6, Safe.NONE, ALWAYS,
                    "Shift cables, or batteries of electronic shifting",
                    "check", "renew or charge"),
            quantity("water", Unit.L, "0.1", 1, "0.3", "60.0", "0.7", 6, Safe.UP, ALWAYS,
                    "Water to leave the start with; what each tap on the way is left with stands in the day's plan"),
            ordered("water carrier", "one bottle", 7, Safe.UP, ALWAYS,
                    "How the water is carried, also over the gap that asks for most: a bottle holds 0.8 L, two 1.6 L, bottles and a pack 4.6 L",
                    "one bottle", "two bottles", "bottles and a pack"),
            quantity("food", Unit.G_PER_H, "1", 5, "0", "90", "40", 6, Safe.NONE, ALWAYS,
                    "Carbohydrate to carry and eat, an hour"),
            quantity("plugs", Unit.ONE, "1", 1, "0", "10", "2", 6, Safe.UP, ALWAYS,
                    "Tubeless plugs to carry"),
            quantity("tube", Unit.ONE, "1", 1, "0", "3", "1", 6, Safe.UP, ALWAYS,
                    "Spare tubes to carry"),
            ordered("inflation", "pump", 6, Safe.UP, ALWAYS,
                    "How a flat is inflated",
                    "cartridges", "pump", "cartridges and a pump"),
            ordered("tools", "multi-tool with chain tool", 6, Safe.UP, ALWAYS,
                    "Tools to carry",
                    "multi-tool", "multi-tool with chain tool", "multi-tool with chain tool and pliers"),
            ordered("spares", "quick link", 6, Safe.UP, ALWAYS,
                    "Spare parts to carry",
                    "none", "quick link", "quick link and hanger", "quick link and hanger and bolts"),
            ordered("clothing", "summer kit", 6, Safe.UP, ALWAYS,
                    "Clothing",
                    "summer kit", "summer kit and a thin layer", "long sleeves and a shell", "winter layers and a shell"),
            ordered("eyewear", "clear", 6, Safe.NONE, ALWAYS,
                    "Lenses",
                    "clear", "tinted"),
            ordered("mudguard", "none", 6, Safe.NONE, ALWAYS,
                    "Mudguards",
                    "none", "front", "front and rear"),
            ordered("emergency kit", "phone and identity", 6, Safe.UP, ALWAYS,
                    "What to carry for an emergency",
                    "phone and identity", "phone with foil blanket", "phone with foil blanket and first aid"),
            options("helmet", "worn", 5, Safe.NONE, ALWAYS,
                    "A helmet, done up, within its age and undamaged",
                    "worn"));

    private static final Map<String, Topic> BY_NAME = index();

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
        if (!pressure.name().endsWith(" tyre pressure")) {
            return List.of();
        }
        String end = pressure.name().substring(0, pressure.name().indexOf(' '));
        return List.of(of(end + " tyre width"), of(end + " tyre casing"), of(end + " insert"));
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

    private static Map<String, Topic> index() {
        Map<String, Topic> out = new LinkedHashMap<>();
        for (Topic topic : ALL) {
            if (out.put(topic.name(), topic) != null) {
                throw new IllegalStateException("two topics " + topic.name());
            }
        }
        return Collections.unmodifiableMap(out);
    }

    private static List<Applies> where(String topic, String... options) {
        return List.of(new Applies(topic, List.of(options)));
    }

    private static Topic quantity(String name, Unit unit, String resolution, long step, String least, String most, String standard,
            int layer, Safe safe, List<Applies> applies, String about) {
        Resolution r = Resolution.of(unit, resolution);
        return new Topic(name, about, Kind.QUANTITY, r, step, ticks(r, least), ticks(r, most), List.of(), ticks(r, standard), layer,
                safe, applies);
    }

    private static long ticks(Resolution r, String number) {
        try {
            String symbol = r.unit() == Unit.MIN ? Unit.H.symbol() : r.unit().symbol();
            return r.ticks(Amount.parse(symbol.isEmpty() ? number : number + " " + symbol, r.unit().dimension()));
        } catch (Amount.NotAnAmount e) {
            throw new IllegalStateException(number, e);
        }
    }

    private static Topic ordered(String name, String standard, int layer, Safe safe, List<Applies> applies, String about,
            String... options) {
        return chosen(name, Kind.ORDERED, standard, layer, safe, applies, about, options);
    }

    private static Topic options(String name, String standard, int layer, Safe safe, List<Applies> applies, String about,
            String... options) {
        return chosen(name, Kind.OPTIONS, standard, layer, safe, applies, about, options);
    }

    private static Topic chosen(String name, Kind kind, String standard, int layer, Safe safe, List<Applies> applies, String about,
            String... options) {
        List<String> words = Arrays.asList(options);
        int position = words.indexOf(standard);
        if (position < 0) {
            throw new IllegalStateException(name + " has no option " + standard);
        }
        return new Topic(name, about, kind, null, 1, 0, words.size() - 1, List.copyOf(words), position, layer, safe, applies);
    }
}
