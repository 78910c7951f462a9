package courseworthy.build;

import courseworthy.build.BuildCount.WorkCount;
import courseworthy.build.BuildCount.WorkStep;
import courseworthy.fit.WheelFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.List;

/**
 * What parts cost in the places of one bike besides what they lose against the decisions, in the ticks of a notch: their mass, the work of
 * swaps, and what two of them cost together. The search minimises these costs, and {@link BuildCounter} lists them.
 */
final class PartCosts {

    private final Workshop workshop;
    private final Part bike;
    private final BuildObjective aims;
    private final MountingEffort effort;

    PartCosts(Workshop workshop, Part bike, BuildObjective aims) {
        this.workshop = workshop;
        this.bike = bike;
        this.aims = aims;
        this.effort = new MountingEffort(workshop);
    }

    /**
     * What the mass of a part costs. One that is not weighed, or is new, counts as heavy as any that could stand there, unless it stands there
     * now: so neither is put on for its lightness.
     *
     * @param parts what could stand there
     */
    long mass(MountingPlace place, Part part, List<Part> parts) {
        return BuildVariables.counted(bike, place, part, parts) * aims.perKilogram() * BuildVariables.GRAM_SECOND;
    }

    /** What the work of a swap costs. @param host what is chosen for the place that carries it; null where the frame does */
    long work(MountingPlace place, Part part, Part host) {
        WorkCount work = swap(place, part, host);
        return work == null ? 0 : work.cost();
    }

    /** The work of a swap, null where there is none; a part that is taken off something else has to go back. */
    WorkCount swap(MountingPlace place, Part part, Part host) {
        if (part == null) {
            Part off = MountingEffort.stands(workshop, place, host, bike);
            return off == null ? null : work(place, off, WorkStep.REMOVE, 1, false);
        }
        if (!MountingEffort.isWork(part, place, host, bike)) {
            return null;
        }
        boolean taken = part.on() != null && part.bike() != bike;
        boolean otherEnd = part.place() != null && part.place() != place;
        return work(place, part, WorkStep.FIT, taken ? 2 : 1, otherEnd);
    }

    private WorkCount work(MountingPlace place, Part part, WorkStep step, int times, boolean otherEnd) {
        long cost = times * effort.cost(part.kind()) + (otherEnd ? BuildVariables.OTHER_END : 0);
        return new WorkCount(place, part, step, effort.minutes(part.kind()), times, otherEnd, cost);
    }

    /** The place whose part, where it gives way, leaves the one in another place to be moved over; null for none. */
    static MountingPlace mover(MountingPlace place) {
        return place.host() != null || WorkOrder.movesUnasked(place) ? null : WorkOrder.carrier(place);
    }

    /** What moving a part over costs. @param carrier what is chosen for the place that carries it */
    long move(MountingPlace place, Part part, Part carrier) {
        WorkCount work = moved(place, part, carrier);
        return work == null ? 0 : work.cost();
    }

    /** A saddle moves over where the post under it is another, pedals with the crank, extensions with the bar; null where nothing moves. */
    WorkCount moved(MountingPlace place, Part part, Part carrier) {
        return MountingEffort.movesOver(part, place, carrier, bike) ? work(place, part, WorkStep.MOVE, 1, false) : null;
    }

    /** What rings and cassette lose together. */
    long gears(Part rings, Part cassette) {
        return rings == null || cassette == null ? 0 : BuildVariables.LOSS * aims.ofGears(rings, cassette);
    }

    /** What is lost for want of a power meter in the crank or the pedals, or on the crank, or for having one. */
    long power(Part crank, Part pedals, Part meter) {
        return BuildVariables.LOSS * aims.ofPower(crank, pedals, meter);
    }

    /** Of a pair the one that is written first goes in front, where nothing else tells them apart. */
    long tyres(Part front, Part rear) {
        if (front == null || rear == null) {
            return 0;
        }
        if (BuildVariables.isPair(front, rear)) {
            return front.line() <= rear.line() ? 0 : 1;
        }
        return aims.pairOfTyres() ? BuildVariables.NO_PAIR : 0;
    }

    /** A tyre on a rim for which the general table does not list its width. */
    long rim(Part tyre, Part wheel) {
        return tyre != null && wheel != null && WheelFit.isOutsideGeneralTable(tyre, wheel) ? BuildVariables.OUTSIDE_TABLE : 0;
    }

    /** Pads of front and rear are chosen together. */
    long pads(Part front, Part rear) {
        return BuildVariables.ofTwoCompounds(front, rear) ? BuildVariables.TWO_COMPOUNDS : 0;
    }
}
