package courseworthy.task;

import courseworthy.engine.UndeterminedRule;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a user could write so that rules which could not tell can.
 *
 * @param place where it is written
 * @param keys  the keys to write there, in the order in which its files list them
 * @param rules how many rules want something of it
 */
public record MissingInputs(Place place, List<String> keys, int rules) {

    /** Where a missing fact is written, with the keys there are. */
    public enum Place {
        GROUND("ground", "surface", "smoothness", "tracktype", "mtb:scale", "sharp stones", "ruts", "roots", "sand", "mud when wet",
                "water crossings", "ledge height", "turns per km"),
        CLIMBING("climbing", "ascent", "descent", "a track", "start height"),
        RIDER("rider", "name", "tags", "mass", "height", "kit", "power", "skill", "climbing cadence", "highest cadence", "races a year", "plug stop", "tube stop", "lost group", "sweat rate",
                "bar width"),
        EVENT("event", "role", "date", "start", "utc offset", "laps", "aim", "time limit", "group share", "forecast", "support", "rules"),
        BIKE("bike", "kind", "mass", "rim inner width", "hookless", "marked tyre pressure", "marked rim pressure", "tyre clearance", "tubeless",
                "use category", "ledge limit", "mass limit", "most fork travel", "lights", "most rotor", "power meter");

        private final String word;
        private final List<String> keys;

        Place(String word, String... keys) {
            this.word = word;
            this.keys = List.of(keys);
        }

        public String word() {
            return word;
        }
    }

    /** A place and the keys there that tell a measure. */
    private record Source(Place place, List<String> keys) {
    }

    /** Where a measure is told, {@code the rider: mass}; empty where it follows from others. */
    public static String told(String measure) {
        Source source = source(measure);
        return source == null ? "" : source.place().word() + ": " + String.join(", ", source.keys());
    }

    /** What each place is asked for, in the order of {@link Place}. */
    public static List<MissingInputs> of(List<UndeterminedRule> untold) {
        Map<Place, Set<String>> keys = new EnumMap<>(Place.class);
        Map<Place, Set<String>> rules = new EnumMap<>(Place.class);
        for (UndeterminedRule rule : untold) {
            for (String measure : rule.wanting()) {
                Source source = source(measure);
                if (source != null) {
                    keys.computeIfAbsent(source.place(), place -> new HashSet<>()).addAll(source.keys());
                    rules.computeIfAbsent(source.place(), place -> new HashSet<>()).add(rule.author().rule());
                }
            }
        }
        List<MissingInputs> out = new ArrayList<>();
        keys.forEach((place, found) -> out.add(new MissingInputs(place, inOrder(place, found), rules.get(place).size())));
        return out;
    }

    private static List<String> inOrder(Place place, Set<String> found) {
        Set<String> out = new LinkedHashSet<>(place.keys);
        out.retainAll(found);
        return List.copyOf(out);
    }

    /** Where a measure of a course, a stretch, a rider or a day comes from; null for what is found out on the way. */
    private static Source source(String measure) {
        return switch (measure) {
            case "paved share", "gravel share", "trail share", "soft share", "loose share", "surface", "paved", "loose" ->
                ground("surface");
            case "roughness", "worst roughness", "known ground", "smoothness" -> ground("smoothness", "mtb:scale");
            case "mtb:scale", "hardest mtb:scale" -> ground("mtb:scale");
            case "mud", "mud when wet" -> ground("mud when wet");
            case "tracktype", "sharp stones", "ruts", "roots", "sand", "water crossings", "ledge height", "turns per km" -> ground(measure);
            case "highest point" -> new Source(Place.CLIMBING, List.of("start height"));
            case "steepest ramp" -> new Source(Place.CLIMBING, List.of("a track"));
            case "ascent", "descent", "climbing per km", "descent per km", "climbs", "longest climb", "longest climb ascent",
                 "last long climb", "last long climb ascent", "last long climb gradient", "steepest 100 m", "steepest 500 m",
                 "steepest 1 km", "gradient", "ratio needed where it is steepest", "ratio needed on the last climb",
                 "gear range needed", "braking power" ->
                new Source(Place.CLIMBING, List.of("ascent", "descent"));
            default -> ofRiderAndDay(measure);
        };
    }

    private static Source ofRiderAndDay(String measure) {
        return switch (measure) {
            case "rider mass", "start-line mass" -> rider("mass");
            case "hour power", "power per kg" -> rider("power");
            case "skill", "climbing cadence", "highest cadence", "races a year", "plug stop", "tube stop", "lost group" -> rider(measure);
            case "used bar width" -> rider("bar width");
            case "rider" -> rider("name");
            case "rider tag" -> rider("tags");
            case "date" -> event(measure);
            case "dark hours", "dark share", "sunless hours", "daylight to spare" -> event("date", "start", "zone");
            case "support gap", "support gap hours", "bag on the course" -> event("support");
            case "water over the hottest gap", "water at the start" -> event("support", "forecast");
            case "going", "start temperature", "summit temperature", "coldest temperature", "hottest temperature", "night temperature",
                 "wind" ->
                event("forecast");
            case "group share", "aim", "role", "time limit", "laps" -> event(measure);
            case "aero extensions allowed", "tyre width allowed", "lights required", "mudguards required", "outside help" ->
                event("rules");
            case "bike at hand" -> bike("kind");
            case "rim inner width", "hookless", "tyre clearance", "marked tyre pressure", "marked rim pressure", "most rotor" -> bike(measure);
            case "least tyre width on the rim" -> bike("rim inner width");
            case "lower marked pressure" -> bike("marked tyre pressure", "marked rim pressure");
            case "pressure ceiling", "narrowest front tyre", "narrowest rear tyre" -> bike("hookless", "marked tyre pressure", "marked rim pressure");
            case "tubeless ready" -> bike("tubeless");
            case "bike ledge limit", "ledge above the mark" -> bike("ledge limit");
            case "bike mass limit", "mass above the mark" -> bike("mass limit");
            case "most fork travel" -> bike("most fork travel");
            case "lights at hand" -> bike("lights");
            case "power meter at hand" -> bike("power meter");
            default -> null;
        };
    }

    private static Source ground(String... keys) {
        return new Source(Place.GROUND, List.of(keys));
    }

    private static Source rider(String... keys) {
        return new Source(Place.RIDER, List.of(keys));
    }

    private static Source event(String... keys) {
        return new Source(Place.EVENT, List.of(keys));
    }

    private static Source bike(String... keys) {
        return new Source(Place.BIKE, List.of(keys));
    }
}
