package courseworthy.build;

import courseworthy.build.BuildCount.Departure;
import courseworthy.build.BuildCount.Mass;
import courseworthy.build.BuildCount.PairCount;
import courseworthy.build.BuildCount.WorkCount;
import courseworthy.build.BuildObjective.AimedValue;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Lists what a build costs term by term, with the costs that the search minimises. */
final class BuildCounter {

    private final Part bike;
    private final Map<MountingPlace, Part> parts;
    private final Map<MountingPlace, List<Part>> open;
    private final BuildObjective aims;
    private final PartCosts costs;
    private final Part meter;

    /** @param parts what is in each place; places in which nothing is chosen do not count */
    BuildCounter(Workshop workshop, Part bike, BuildObjective aims, Map<MountingPlace, Part> parts) {
        this.bike = bike;
        this.aims = aims;
        this.open = BuildVariables.candidates(workshop, bike);
        this.parts = new EnumMap<>(MountingPlace.class);
        this.parts.putAll(parts);
        this.parts.keySet().retainAll(open.keySet());
        this.costs = new PartCosts(workshop, bike, aims);
        this.meter = this.parts.get(MountingPlace.METER);
    }

    /** @param recommended the kind of bike that was recommended, where the build is on another; null where it is the recommended one */
    BuildCount count(BuildObjective recommended) {
        List<Departure> departures = new ArrayList<>();
        for (AimedValue each : recommended == null ? List.<AimedValue>of() : recommended.countedOfBike(bike)) {
            departure(each, departures);
        }
        for (AimedValue each : aims.counted(bike, parts, open.keySet(), meter)) {
            departure(each, departures);
        }
        List<MountingPlace> empty = open.keySet().stream().filter(place -> place.needed() && parts.get(place) == null).toList();
        return new BuildCount(aims.perKilogram(), departures, empty, masses(), works(), pairs());
    }

    private void departure(AimedValue got, List<Departure> out) {
        if (got.loss() > 0) {
            Stream<Part> of = switch (got.aim().wanted().of()) {
                case BIKE -> Stream.of(bike);
                case GEARS -> Stream.of(parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
                case POWER -> Stream.of(parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), meter);
                case PART -> Stream.of(parts.get(got.aim().wanted().place()));
            };
            out.add(new Departure(got.aim().topic(), of.filter(Objects::nonNull).toList(), got.aim().decision().value(), got.value(), got.aim().shortfall(got.value())));
        }
    }

    private List<Mass> masses() {
        List<Mass> out = new ArrayList<>();
        open.forEach((place, candidates) -> {
            Part part = parts.get(place);
            long cost = costs.mass(place, part, candidates);
            if (cost != 0) {
                out.add(new Mass(place, part, BuildVariables.counted(bike, place, part, candidates), cost));
            }
        });
        return out;
    }

    private List<WorkCount> works() {
        List<WorkCount> out = new ArrayList<>();
        for (MountingPlace place : open.keySet()) {
            Part part = parts.get(place);
            add(costs.swap(place, part, chosen(place.host())), out);
            add(costs.moved(place, part, chosen(PartCosts.mover(place))), out);
        }
        return out;
    }

    /** What is chosen for a place; null for none. */
    private Part chosen(MountingPlace place) {
        return place == null ? null : parts.get(place);
    }

    private static void add(WorkCount work, List<WorkCount> out) {
        if (work != null) {
            out.add(work);
        }
    }

    private void rim(Part tyre, Part wheel, List<PairCount> out) {
        long rim = costs.rim(tyre, wheel);
        if (rim > 0) {
            out.add(new PairCount("a tyre outside the general table for its rim", List.of(tyre, wheel), rim));
        }
    }

    private List<PairCount> pairs() {
        List<PairCount> out = new ArrayList<>();
        Part front = parts.get(MountingPlace.FRONT_TYRE);
        Part rear = parts.get(MountingPlace.REAR_TYRE);
        long tyres = costs.tyres(front, rear);
        if (tyres > 0) {
            out.add(new PairCount(BuildVariables.isPair(front, rear) ? "the later of a pair in front" : "tyres that differ", List.of(front, rear), tyres));
        }
        Part frontPads = parts.get(MountingPlace.FRONT_PADS);
        Part rearPads = parts.get(MountingPlace.REAR_PADS);
        long pads = costs.pads(frontPads, rearPads);
        if (pads > 0) {
            out.add(new PairCount("brake pads of two compounds", List.of(frontPads, rearPads), pads));
        }
        rim(front, parts.get(MountingPlace.FRONT_WHEEL), out);
        rim(rear, parts.get(MountingPlace.REAR_WHEEL), out);
        return out;
    }
}
