package courseworthy.workshop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a rider owns.
 *
 * @param name    may be empty
 * @param file    the path as typed
 * @param bikes   in the order written
 * @param parts   in the order written
 * @param minutes work for taking one off and putting another on, s, by kind, where the rider wrote it
 */
public record Workshop(String name, String file, List<Part> bikes, List<Part> parts, Map<Kind, Double> minutes) {

    public Workshop {
        bikes = List.copyOf(bikes);
        parts = List.copyOf(parts);
        minutes = Map.copyOf(minutes);
    }

    /** The bike or part of a name, or null. */
    public Part find(String wanted) {
        for (Part bike : bikes) {
            if (bike.name().equals(wanted)) {
                return bike;
            }
        }
        for (Part part : parts) {
            if (part.name().equals(wanted)) {
                return part;
            }
        }
        return null;
    }

    /** What is mounted on a bike now, by place. */
    public Map<Place, Part> mounted(Part bike) {
        Map<Place, Part> out = new EnumMap<>(Place.class);
        for (Part part : parts) {
            Place place = part.bike() == bike ? part.place() : null;
            if (place != null) {
                out.put(place, part);
            }
        }
        return out;
    }

    /** Parts and bikes whose mass is not written. */
    public List<Part> unweighed() {
        List<Part> out = new ArrayList<>();
        for (Part bike : bikes) {
            if (!bike.has(Detail.MASS)) {
                out.add(bike);
            }
        }
        for (Part part : parts) {
            if (!part.has(Detail.MASS)) {
                out.add(part);
            }
        }
        return out;
    }
}
