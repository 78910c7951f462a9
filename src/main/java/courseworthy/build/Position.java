package courseworthy.build;

import courseworthy.fit.SuspensionFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Where a rider sits and holds on one bike, measured from the bottom bracket, the bike standing upright on level ground, unladen, with
 * the suspension not sagged. What is not known is null. Lengths in m, angles in degrees.
 */
public final class Position {

    private final Part bike;
    private final Map<MountingPlace, Part> parts;
    private final List<String> toMeasure = new ArrayList<>();
    private final List<String> restsOn = new ArrayList<>();
    private final double turned;
    private final CockpitGeometry cockpit;

    private Position(Part bike, Map<MountingPlace, Part> parts) {
        this.bike = bike;
        this.parts = parts;
        this.turned = turned();
        this.cockpit = fromHeadTubeToHands();
        saddleToMeasure();
    }

    /** The position on a bike as it stands. */
    public static Position of(Workshop workshop, Part bike) {
        return new Position(bike, workshop.mounted(bike));
    }

    /** The position on a bike with other parts than those it stands with. */
    static Position of(Part bike, Map<MountingPlace, Part> parts) {
        return new Position(bike, parts);
    }

    /**
     * How far the fork turns the bike from the position its geometry is stated for, degrees, front up positive. A longer fork turns it
     * about the rear axle; what is measured from the bottom bracket turns by the same angle about the bottom bracket.
     */
    private double turned() {
        Part fork = parts.get(MountingPlace.FORK);
        Double change = fork == null ? null : SuspensionFit.headAngleChange(fork, bike);
        if (change == null) {
            restsOn.add("the geometry of " + bike + " is taken as stated: whether its fork is as long as that is stated for is not known");
            return 0;
        }
        if (Math.abs(change) >= 0.05) {
            restsOn.add("the length of " + fork + " turns " + bike + " by " + degrees(Math.abs(change)) + ": its head angle is " + degrees(bike.number(PartDetail.HEAD_ANGLE)
                    + change) + " instead of " + degrees(bike.number(PartDetail.HEAD_ANGLE)));
        }
        return -change;
    }

    private CockpitGeometry fromHeadTubeToHands() {
        Part stem = listed(MountingPlace.STEM);
        Part bar = listed(MountingPlace.BAR);
        Part spacers = parts.get(MountingPlace.SPACERS);
        Double reach = known(bike, PartDetail.REACH);
        Double stack = known(bike, PartDetail.STACK);
        Double angle = known(bike, PartDetail.HEAD_ANGLE);
        Double cover = known(bike, PartDetail.HEADSET_COVER);
        Double height = spacers == null ? Double.valueOf(0) : known(spacers, PartDetail.HEIGHT);
        Double clamp = known(stem, PartDetail.CLAMP_HEIGHT);
        Double length = known(stem, PartDetail.STEM_LENGTH);
        Double stemAngle = known(stem, PartDetail.STEM_ANGLE);
        Double barReach = known(bar, PartDetail.REACH);
        Double rise = known(bar, PartDetail.RISE);
        if (!toMeasure.isEmpty()) {
            return null;
        }
        Point top = new Point(reach, stack).turned(turned);
        return new CockpitGeometry(top.forward(), top.up(), angle - turned, cover + height, clamp, length, stemAngle, barReach, rise);
    }

    private void saddleToMeasure() {
        known(bike, PartDetail.SADDLE_HEIGHT);
        known(bike, PartDetail.SADDLE_SETBACK);
        known(bike, PartDetail.SEAT_ANGLE);
        known(listed(MountingPlace.CRANK), PartDetail.CRANK_LENGTH);
    }

    private Part listed(MountingPlace place) {
        Part part = parts.get(place);
        if (part == null) {
            toMeasure.add("list the " + place.words() + " that is on " + bike);
        }
        return part;
    }

    private Double known(Part part, PartDetail detail) {
        if (part != null && !part.has(detail)) {
            toMeasure.add("measure the " + detail.written() + " of " + part);
        }
        return part == null ? null : part.number(detail);
    }

    private static Double orNull(Part part, PartDetail detail) {
        return part == null ? null : part.number(detail);
    }

    static String degrees(double angle) {
        long tenths = Math.round(angle * 10);
        return tenths / 10 + "." + Math.abs(tenths % 10) + " deg";
    }

    public Part bike() {
        return bike;
    }

    /** What is mounted, by place. */
    Map<MountingPlace, Part> parts() {
        return parts;
    }

    /** The stem that is mounted; null where none is listed. */
    public Part stem() {
        return parts.get(MountingPlace.STEM);
    }

    CockpitGeometry cockpit() {
        return cockpit;
    }

    /** Of the steerer to the ground, with the fork that is on it. */
    public Double headAngle() {
        return bike.has(PartDetail.HEAD_ANGLE) ? Double.valueOf(bike.number(PartDetail.HEAD_ANGLE) - turned) : null;
    }

    /** How far the front wheel touches the ground behind where the steerer's line meets it; null where a length or an angle is not known. */
    public Double trail() {
        return SuspensionFit.trail(parts.get(MountingPlace.FORK), headAngle(), parts.get(MountingPlace.FRONT_WHEEL), parts.get(MountingPlace.FRONT_TYRE));
    }

    /** Of the seat tube to the ground, with the fork that is on it. */
    Double seatAngle() {
        return bike.has(PartDetail.SEAT_ANGLE) ? Double.valueOf(bike.number(PartDetail.SEAT_ANGLE) - turned) : null;
    }

    /** Where the hands lie: on the hoods of a drop bar, on the grips of another. */
    public Point hands() {
        return cockpit == null ? null : cockpit.hands();
    }

    /** How far the drops of a drop bar lie above the bottom bracket. */
    public Double drops() {
        Double drop = orNull(parts.get(MountingPlace.BAR), PartDetail.DROP);
        return drop == null || cockpit == null ? null : Double.valueOf(hands().up() - drop);
    }

    public Double barWidth() {
        return orNull(parts.get(MountingPlace.BAR), PartDetail.WIDTH);
    }

    /** The bar's shape as written; null where it is not. */
    public String barShape() {
        Part bar = parts.get(MountingPlace.BAR);
        return bar == null ? null : bar.word(PartDetail.BAR_SHAPE);
    }

    /** Bottom bracket to saddle top along the seat tube. */
    public Double saddleHeight() {
        return bike.number(PartDetail.SADDLE_HEIGHT);
    }

    /** The saddle's tip behind the bottom bracket, level. */
    public Double saddleSetback() {
        return bike.number(PartDetail.SADDLE_SETBACK);
    }

    public Double crankLength() {
        return orNull(parts.get(MountingPlace.CRANK), PartDetail.CRANK_LENGTH);
    }

    /** How far the saddle's top is above the hands; negative where it is below them. */
    public Double saddleAboveHands() {
        Double height = saddleHeight();
        Double angle = seatAngle();
        return height == null || angle == null || cockpit == null ? null
                : Double.valueOf(Point.BOTTOM_BRACKET.step(height, 180 - angle).up() - hands().up());
    }

    /** From the saddle's tip forward to the hands, level. */
    public Double tipToHands() {
        Double setback = saddleSetback();
        return setback == null || cockpit == null ? null : Double.valueOf(hands().forward() + setback);
    }

    /** What to measure or to list so that all of it is known, in sentences without a full stop. */
    public List<String> toMeasure() {
        return List.copyOf(toMeasure);
    }

    /** What the figures rest on, in sentences without a full stop. */
    public List<String> restsOn() {
        return List.copyOf(restsOn);
    }
}
