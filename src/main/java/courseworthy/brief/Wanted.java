package courseworthy.brief;

import courseworthy.demand.Measure;
import courseworthy.demand.StretchMeasure;
import courseworthy.rulebase.Untold;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a user could write so that rules which could not tell can.
 *
 * @param place where it is written
 * @param keys  the keys or measures, in the order of the catalogue
 * @param rules how many rules want something of it
 */
public record Wanted(Place place, List<String> keys, int rules) {

    /** Where a missing fact is written. */
    public enum Place {
        GROUND("the ground"), ELEVATION("the elevation"), RIDER("the rider"), EVENT("the event"), BIKE("the bike at hand");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What each place is asked for, in the order of {@link Place}. */
    static List<Wanted> of(List<Untold> untold) {
        Map<Place, Set<String>> found = new EnumMap<>(Place.class);
        Map<Place, Integer> rules = new EnumMap<>(Place.class);
        for (Untold rule : untold) {
            Set<Place> places = new LinkedHashSet<>();
            for (String measure : rule.wanting()) {
                Place place = place(measure);
                found.computeIfAbsent(place, key -> new LinkedHashSet<>()).addAll(keys(measure, place));
                places.add(place);
            }
            for (Place place : places) {
                rules.merge(place, 1, Integer::sum);
            }
        }
        List<Wanted> out = new ArrayList<>();
        found.forEach((place, keys) -> out.add(new Wanted(place, ordered(keys), rules.get(place))));
        return out;
    }

    private static Place place(String name) {
        Measure measure = Measure.find(name);
        if (measure == null || name.equals(StretchMeasure.TECHNICAL_GRADE.written())) {
            return elevation(name) ? Place.ELEVATION : Place.GROUND;
        }
        if (between(measure, Measure.PAVED_SHARE, Measure.TURNS_PER_KM)) {
            return Place.GROUND;
        }
        if (between(measure, Measure.DISTANCE, Measure.STEEPEST_1_KM)) {
            return Place.ELEVATION;
        }
        if (between(measure, Measure.BIKE_AT_HAND, Measure.POWER_METER_AT_HAND) || measure.layer() > 0) {
            return Place.BIKE;
        }
        boolean rider = between(measure, Measure.START_LINE_MASS, Measure.SKILL)
                || between(measure, Measure.RACES_A_YEAR, Measure.USED_BAR_WIDTH)
                || between(measure, Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, Measure.GEAR_RANGE_NEEDED);
        return rider ? Place.RIDER : Place.EVENT;
    }

    private static boolean elevation(String stretchMeasure) {
        return stretchMeasure.equals(StretchMeasure.RISE.written()) || stretchMeasure.equals(StretchMeasure.DROP.written())
                || stretchMeasure.equals(StretchMeasure.GRADIENT.written());
    }

    private static boolean between(Measure measure, Measure first, Measure last) {
        return measure.compareTo(first) >= 0 && measure.compareTo(last) <= 0;
    }

    /** The keys that tell a measure: of the ground, those of a stretch; of the elevation, rise and drop. */
    private static List<String> keys(String measure, Place place) {
        if (place == Place.ELEVATION) {
            return List.of("rise", "drop");
        }
        if (place != Place.GROUND) {
            return List.of(measure);
        }
        return switch (measure) {
            case "paved share", "gravel share", "trail share", "soft share", "loose share", "paved", "loose" -> List.of("surface");
            case "roughness", "worst roughness", "known ground" -> List.of("smoothness", "mtb:scale");
            case "technical grade", "hardest technical grade" -> List.of("mtb:scale");
            case "mud" -> List.of("mud when wet");
            default -> List.of(measure);
        };
    }

    /** Ground keys as profiles list them; anything else in the order found. */
    private static List<String> ordered(Set<String> keys) {
        List<String> out = new ArrayList<>();
        for (String key : GROUND_KEYS) {
            if (keys.contains(key)) {
                out.add(key);
            }
        }
        for (String key : keys) {
            if (!out.contains(key)) {
                out.add(key);
            }
        }
        return List.copyOf(out);
    }

    private static final List<String> GROUND_KEYS = List.of("surface", "smoothness", "tracktype", "mtb:scale", "sharp stones", "ruts",
            "roots", "sand", "mud when wet", "water crossings", "drop height", "turns per km");
}
