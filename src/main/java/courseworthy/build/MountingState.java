package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is mounted on what at one moment of the work. It begins as the workshop's file says; that file's parts stay as they are. */
public final class MountingState {

    private static final MountingPlace[] PLACES = MountingPlace.values();

    private final Map<Part, Part> on;
    /** The end of parts that could be mounted at either: loose pads, calipers and adapters seldom say. */
    private final Map<Part, String> ends;

    private MountingState(Map<Part, Part> on, Map<Part, String> ends) {
        this.on = on;
        this.ends = ends;
    }

    /** As written. */
    static MountingState of(Workshop workshop) {
        MountingState out = new MountingState(new LinkedHashMap<>(), new HashMap<>());
        for (Part part : workshop.parts()) {
            out.put(part, part.on(), part.place());
        }
        return out;
    }

    /** With a build on a bike: what it does not need lies loose, and what stays on a loose wheel or crank stays on it. */
    MountingState with(Part bike, Map<MountingPlace, Part> build) {
        MountingState out = copy();
        for (Map.Entry<Part, Part> each : on.entrySet()) {
            Part part = each.getKey();
            if (bike(part) == bike && !build.containsValue(part) && (!isCarried(part) || isCalledOff(part, build))) {
                out.put(part, null);
            }
        }
        for (MountingPlace place : WorkOrder.ORDER) {
            if (build.containsKey(place)) {
                out.settle(bike, place, build);
            }
        }
        out.oneInEach(bike, build);
        return out;
    }

    /** Whether it leaves with what carries it, as all does but what is clamped to a steerer: that comes off before a fork comes out. */
    private boolean isCarried(Part part) {
        Part host = on.get(part);
        return host != null && host.kind() != PartKind.BIKE && !(host.kind() == PartKind.FORK && WorkOrder.movesUnasked(place(part)));
    }

    /** Whether what carries it stays and its place is left empty: an insert that is not run, a power meter that is not wanted. */
    private boolean isCalledOff(Part part, Map<MountingPlace, Part> build) {
        MountingPlace place = place(part);
        return place != null && !place.needed() && BuildVariables.searched(place) && !build.containsKey(place) && build.containsValue(on.get(part));
    }

    private void settle(Part bike, MountingPlace place, Map<MountingPlace, Part> build) {
        Part part = build.get(place);
        MountingPlace carrier = WorkOrder.carrier(place);
        Part host = carrier == null ? null : build.get(carrier);
        boolean there = host == null ? bike(part) == bike && place.equals(place(part)) && on.get(part) == bike : isOn(part, host);
        boolean onTheFrame = host != null && on.get(part) == bike && place.host() == null && (bike(host) == bike || WorkOrder.movesUnasked(place));
        if (!there && !onTheFrame) {
            put(part, host == null ? bike : host, place);
        }
    }

    /** What else stands in a place of the build gives way. */
    private void oneInEach(Part bike, Map<MountingPlace, Part> build) {
        List<Part> giveWay = new ArrayList<>();
        for (Part other : on.keySet()) {
            MountingPlace place = bike(other) == bike ? place(other) : null;
            Part part = place == null || place == MountingPlace.LIGHTS || !WorkOrder.ORDER.contains(place) ? null : build.get(place);
            if (part != null && part != other) {
                giveWay.add(other);
            }
        }
        for (Part other : giveWay) {
            put(other, null);
        }
    }

    MountingState copy() {
        return new MountingState(new LinkedHashMap<>(on), new HashMap<>(ends));
    }

    void put(Part part, Part host) {
        put(part, host, null);
    }

    /** @param place that it takes; null where it lies loose, or the place follows from what it is and is on */
    void put(Part part, Part host, MountingPlace place) {
        on.put(part, host);
        if (host == null || place == null || place.end() == null) {
            ends.remove(part);
        } else {
            ends.put(part, place.end());
        }
    }

    /** Mounts a part as it is in another state. */
    void putAs(Part part, MountingState other) {
        put(part, other.on(part), other.place(part));
    }

    /** What a part is mounted on; null where it lies loose. */
    public Part on(Part part) {
        return on.get(part);
    }

    /** The bike that a part is on, through whatever carries it; null where it is on none. */
    public Part bike(Part part) {
        Part at = part;
        while (at != null && at.kind() != PartKind.BIKE) {
            at = on.get(at);
        }
        return at;
    }

    boolean isOn(Part part, Part host) {
        for (Part at = on.get(part); at != null; at = on.get(at)) {
            if (at == host) {
                return true;
            }
        }
        return false;
    }

    /** The place of a mounted part; null where it lies loose. */
    MountingPlace place(Part part) {
        if (on.get(part) == null) {
            return null;
        }
        String end = null;
        for (Part at = part; at != null && end == null; at = on.get(at)) {
            end = at.word(PartDetail.END);
        }
        end = end == null ? ends.get(part) : end;
        for (MountingPlace place : PLACES) {
            if (place.kind() == part.kind() && (place.end() == null || place.end().equals(end))) {
                return place;
            }
        }
        return null;
    }

    /** What stands in each place of a bike, or of a wheel or crank that lies loose. */
    Map<MountingPlace, Part> places(Part root) {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        for (Map.Entry<Part, Part> each : on.entrySet()) {
            if (each.getValue() != null && isOn(each.getKey(), root)) {
                MountingPlace place = place(each.getKey());
                if (place != null) {
                    out.putIfAbsent(place, each.getKey());
                }
            }
        }
        return out;
    }

    /** All that a part carries, in the order written. */
    List<Part> carried(Part host) {
        List<Part> out = new ArrayList<>();
        for (Part part : on.keySet()) {
            if (isOn(part, host)) {
                out.add(part);
            }
        }
        return out;
    }

    /** Everything of known mass on a bike or a part, kg, itself left out; an unknown mass counts 0. */
    double mass(Part root) {
        double sum = 0;
        for (Part part : carried(root)) {
            sum += part.has(PartDetail.MASS) ? part.number(PartDetail.MASS) : 0;
        }
        return sum;
    }

    /** The end of each part that could be mounted at either, by name. */
    Map<String, String> ends() {
        Map<String, String> out = new LinkedHashMap<>();
        ends.forEach((part, end) -> out.put(part.name(), end));
        return out;
    }

    /** Where every part is: its name on what it is mounted on; empty where it lies loose. */
    public Map<String, String> written() {
        Map<String, String> out = new LinkedHashMap<>();
        on.forEach((part, host) -> out.put(part.name(), host == null ? "" : host.name()));
        return out;
    }
}
