package courseworthy.workshop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What a rider owns.
 *
 * @param name    may be empty
 * @param file    the path as typed
 * @param bikes   in the order written
 * @param parts   in the order written
 * @param minutes work for taking one off and putting another on, s, by kind, where the rider wrote it
 * @param log     what was ridden and serviced; null where it names no log
 * @param stock   what is used up and bought again, in the order written
 * @param listed  the places of each bike, by its name, that had a part as the file was written
 */
public record Workshop(String name, String file, List<Part> bikes, List<Part> parts, Map<PartKind, Double> minutes,
        RideLog log, List<StockItem> stock, Map<String, Set<MountingPlace>> listed) {

    public Workshop {
        bikes = List.copyOf(bikes);
        parts = List.copyOf(parts);
        minutes = Map.copyOf(minutes);
        stock = List.copyOf(stock);
        listed = Map.copyOf(listed);
    }

    /** As the file is written. */
    public Workshop(String name, String file, List<Part> bikes, List<Part> parts, Map<PartKind, Double> minutes) {
        this(name, file, bikes, parts, minutes, null, List.of(), places(bikes, parts));
    }

    /** The same with what its log says. */
    public Workshop with(RideLog other) {
        return new Workshop(name, file, bikes, parts, minutes, other, stock, listed);
    }

    /** The same with a stock. */
    Workshop stocked(List<StockItem> items) {
        return new Workshop(name, file, bikes, parts, minutes, log, items, listed);
    }

    private static Map<String, Set<MountingPlace>> places(List<Part> bikes, List<Part> parts) {
        Map<String, Set<MountingPlace>> out = new HashMap<>();
        for (Part bike : bikes) {
            Set<MountingPlace> places = EnumSet.noneOf(MountingPlace.class);
            for (Part part : parts) {
                if (part.bike() == bike && part.place() != null) {
                    places.add(part.place());
                }
            }
            out.put(bike.name(), places);
        }
        return out;
    }

    /**
     * Whether a bike cannot be ridden without a part of this workshop in a place: it had one as the file was written, or has one at its
     * other end. What was never listed may be there without being written.
     */
    public boolean needs(Part bike, MountingPlace place) {
        Set<MountingPlace> places = listed.getOrDefault(bike.name(), Set.of());
        boolean other = place.otherEnd() != null && !place.seldomListed() && places.contains(place.otherEnd());
        return place.needed() && (places.contains(place) || other);
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
    public Map<MountingPlace, Part> mounted(Part bike) {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        for (Part part : parts) {
            MountingPlace place = part.bike() == bike ? part.place() : null;
            if (place != null) {
                out.put(place, part);
            }
        }
        return out;
    }

    /**
     * The same workshop at another time.
     *
     * @param on what each part is mounted on, by name; empty where it lies loose; as now for parts that are not in it
     */
    public Workshop mounted(Map<String, String> on) {
        return mounted(on, Map.of());
    }

    /** @param ends the end at which parts are mounted that could be at either, by name; as now for parts that are not in it */
    public Workshop mounted(Map<String, String> on, Map<String, String> ends) {
        Workshop out = anew(on, part -> part.copy(false));
        for (Part part : out.parts) {
            if (part.on() != null && ends.containsKey(part.name())) {
                part.mount(part.on(), ends.get(part.name()));
            }
        }
        return out;
    }

    /** The same without some bikes and parts; what was mounted on them lies loose. */
    public Workshop without(Set<String> names) {
        return anew(Map.of(), part -> names.contains(part.name()) ? null : part.copy(false));
    }

    /** The same as a rider finds it: no position to carry over from a bike that is set up for somebody else. @param rider null where not named */
    public Workshop as(String rider) {
        return anew(Map.of(), part -> part.copyFor(rider));
    }

    /** The same with some parts of the wish list bought and ridden in. */
    public Workshop owning(Set<String> names) {
        return anew(Map.of(), part -> part.copy(names.contains(part.name())));
    }

    /** The same with new sealant in some wheels. @param wheels the day on which it went in, by the name of the wheel */
    public Workshop sealed(Map<String, LocalDate> wheels) {
        return wheels.isEmpty() ? this : anew(Map.of(), part -> {
            LocalDate day = null;
            for (Part at = part.kind() == PartKind.SEALANT ? part.on() : null; at != null; at = at.on()) {
                day = wheels.getOrDefault(at.name(), day);
            }
            return day == null ? part.copy(false) : part.copyAdded(day);
        });
    }

    private Workshop anew(Map<String, String> on, UnaryOperator<Part> copier) {
        Map<String, Part> copies = new LinkedHashMap<>();
        List<Part> newBikes = copies(bikes, copies, copier);
        List<Part> newParts = copies(parts, copies, copier);
        for (Part part : parts) {
            Part copy = copies.get(part.name());
            String now = part.on() == null ? "" : part.on().name();
            Part host = copies.get(on.getOrDefault(part.name(), now));
            if (copy != null && host != null) {
                copy.mount(host);
            }
        }
        return new Workshop(name, file, newBikes, newParts, minutes, log, stock, listed);
    }

    private static List<Part> copies(List<Part> from, Map<String, Part> to, UnaryOperator<Part> copier) {
        List<Part> out = new ArrayList<>();
        for (Part part : from) {
            Part copy = copier.apply(part);
            if (copy != null) {
                to.put(part.name(), copy);
                out.add(copy);
            }
        }
        return out;
    }

    /** Parts and bikes whose mass is not written. */
    public List<Part> unweighed() {
        List<Part> out = new ArrayList<>();
        for (Part bike : bikes) {
            if (!bike.has(PartDetail.MASS)) {
                out.add(bike);
            }
        }
        for (Part part : parts) {
            if (!part.has(PartDetail.MASS) && !part.kind().isSpare()) {
                out.add(part);
            }
        }
        return out;
    }
}
