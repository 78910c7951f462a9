package courseworthy.fit;

import courseworthy.units.RuleValue;
import courseworthy.units.UseCategory;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.List;

/**
 * Whether parts go together, one question each: used by the rules of fit and by the search for a build alike. Every question is
 * total: whatever is missing makes it unknown, with what to measure. Sizes are in m, masses in kg, angles in degrees.
 */
public final class FitQuestions {

    /** Sizes closer than this are the same, m. */
    private static final double SAME = 0.0005;
    private static final double MM = 0.001;
    private static final double INCH = 0.0254;

    /**
     * Permitted tyre widths by rim inner width, mm, of the ETRTO manuals of the 2000s and 2010s (from memory, within a size step):
     * inner width, narrowest and widest tyre. Used to caution alone.
     */
    private static final int[][] OLD_TABLE = {{13, 18, 25}, {15, 23, 32}, {17, 25, 52}, {19, 28, 62}, {21, 35, 64}, {23, 40, 64}, {25, 44, 64},
        {27, 47, 64}, {29, 50, 64}};

    /** Kinds that are marked with what they bear; of others a missing mark says nothing. */
    private static final List<PartKind> MARKED = List.of(PartKind.BIKE, PartKind.WHEEL);

    private FitQuestions() {
    }

    // Wheels and tyres

    public static FitResult beadSeat(Part tyre, Part wheel) {
        return same(tyre, wheel, PartDetail.BEAD_SEAT);
    }

    /** The makers' charts where either is given; always the 5 mm of ETRTO; else the old general table cautions. */
    public static FitResult tyreOnRim(Part tyre, Part wheel) {
        Double width = tyre.number(PartDetail.WIDTH);
        Double rim = wheel.number(PartDetail.RIM_INNER_WIDTH);
        FitResult charts = charts(tyre, wheel, width, rim);
        if (width == null || rim == null) {
            // What is known not to fit goes before what is not known.
            return !charts.fits() ? charts
                    : FitResult.unknown(width == null ? "read the width marked on " + tyre : "measure between the rim's walls inside " + wheel);
        }
        if (width - rim < RuleValue.TYRE_OVER_RIM.inBase() - 1e-9) {
            return FitResult.not(mm(RuleValue.TYRE_OVER_RIM.inBase() - (width - rim)) + " too narrow for a rim of " + mm(rim) + " inside");
        }
        boolean charted = wheel.has(PartDetail.LEAST_TYRE) && wheel.has(PartDetail.MOST_TYRE) || tyre.has(PartDetail.LEAST_RIM) && tyre.has(PartDetail.MOST_RIM);
        return !charts.fits() || charted ? charts : general(width, rim);
    }

    private static FitResult charts(Part tyre, Part wheel, Double width, Double rim) {
        FitResult wheels = width == null ? FitResult.FITS
                : within(width, wheel.number(PartDetail.LEAST_TYRE), wheel.number(PartDetail.MOST_TYRE), "the wheel's chart");
        FitResult tyres = rim == null ? FitResult.FITS : within(rim, tyre.number(PartDetail.LEAST_RIM), tyre.number(PartDetail.MOST_RIM), "the tyre's chart of rims");
        return wheels.and(tyres);
    }

    private static FitResult general(double width, double rim) {
        int[] row = OLD_TABLE[0];
        for (int[] each : OLD_TABLE) {
            if (rim / MM >= each[0] - 0.5) {
                row = each;
            }
        }
        boolean inside = width / MM >= row[1] - 0.5 && width / MM <= row[2] + 0.5;
        return inside ? FitResult.FITS : FitResult.mind("outside the older general table for a rim of " + mm(rim) + " inside (" + row[1] + " to " + row[2]
                + " mm): look at the makers' charts");
    }

    public static FitResult hookless(Part tyre, Part wheel) {
        if (Boolean.FALSE.equals(wheel.yes(PartDetail.HOOKLESS))) {
            return FitResult.FITS;
        }
        Double width = tyre.number(PartDetail.WIDTH);
        boolean wide = width != null && width >= RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - 1e-9;
        if (Boolean.TRUE.equals(tyre.yes(PartDetail.HOOKLESS)) && wide) {
            return FitResult.FITS;
        }
        if (!wheel.has(PartDetail.HOOKLESS)) {
            return FitResult.unknown("see whether the rim of " + wheel + " has hooks");
        }
        if (Boolean.FALSE.equals(tyre.yes(PartDetail.HOOKLESS))) {
            return FitResult.not("not approved for a rim without hooks");
        }
        if (width != null && !wide) {
            return FitResult.not(mm(RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - width) + " too narrow for a rim without hooks");
        }
        return FitResult.unknown("read whether " + tyre + " is approved for rims without hooks");
    }

    /** The tyre's width as mounted, or as marked, against the clearance of fork or frame for its wheel size. */
    public static FitResult clears(Part tyre, Part wheel, Part holder) {
        Double bead = wheel.number(PartDetail.BEAD_SEAT);
        if (bead == null) {
            return FitResult.unknown("read the bead seat diameter of " + wheel);
        }
        Double clearance = holder.clearance(bead);
        if (clearance == null) {
            return FitResult.unknown("find the widest tyre that " + holder + " takes");
        }
        if (clearance == 0) {
            return FitResult.not(holder + " is not made for a wheel of " + mm(bead));
        }
        Double measured = tyre.number(PartDetail.MEASURED_WIDTH);
        Double width = measured == null ? tyre.number(PartDetail.WIDTH) : measured;
        if (width == null) {
            return FitResult.unknown("measure " + tyre + " as mounted");
        }
        if (width > clearance + 1e-9) {
            return FitResult.not(mm(width - clearance) + " too wide: " + mm(clearance) + " clears");
        }
        return measured == null && width + RuleValue.TYRE_OVER_MARKING.inBase() > clearance + 1e-9 ? FitResult.unknown("measure " + tyre + " as mounted") : FitResult.FITS;
    }

    public static FitResult valve(Part wheel) {
        Double depth = wheel.number(PartDetail.RIM_DEPTH);
        Double valve = wheel.number(PartDetail.VALVE_LENGTH);
        if (depth == null || valve == null) {
            return FitResult.unknown((depth == null ? "measure the rim depth of " : "measure the valve of ") + wheel);
        }
        double out = valve - depth;
        return out >= RuleValue.VALVE_OVER_RIM.inBase() - 1e-9 ? FitResult.FITS : FitResult.not("the valve is " + mm(RuleValue.VALVE_OVER_RIM.inBase() - out) + " too short for a rim " + mm(depth) + " deep");
    }

    public static FitResult axle(Part wheel, Part holder) {
        return same(wheel, holder, PartDetail.AXLE_WIDTH).and(label(wheel, holder, PartDetail.AXLE));
    }

    /** Sealant goes where rim and tyre are both made to run without a tube. */
    public static FitResult tubeless(Part part, String what) {
        Boolean tubeless = part.yes(PartDetail.TUBELESS);
        if (tubeless == null) {
            return FitResult.unknown("read whether " + part + " is made to run without a tube");
        }
        return tubeless ? FitResult.FITS : FitResult.not("no " + what + ": " + part + " is not made to run without a tube");
    }

    public static FitResult insert(Part insert, Part tyre) {
        Double width = tyre.number(PartDetail.WIDTH);
        FitResult size = same(insert, tyre, PartDetail.BEAD_SEAT);
        if (width == null) {
            return size.and(FitResult.unknown("read the width marked on " + tyre));
        }
        String find = "find the tyre widths that " + insert + " is made for";
        return size.and(within(width, insert.number(PartDetail.LEAST_TYRE), insert.number(PartDetail.MOST_TYRE), "what the insert is made for"))
                .and(known(insert, PartDetail.LEAST_TYRE, find)).and(known(insert, PartDetail.MOST_TYRE, find));
    }

    // Brakes

    public static FitResult rotorMount(Part rotor, Part wheel) {
        return label(rotor, wheel, PartDetail.ROTOR_MOUNT);
    }

    public static FitResult rotorSize(Part rotor, Part holder) {
        Double diameter = rotor.number(PartDetail.DIAMETER);
        if (diameter == null) {
            return FitResult.unknown("measure " + rotor);
        }
        FitResult fit = within(diameter, holder.number(PartDetail.LEAST_ROTOR), holder.number(PartDetail.MOST_ROTOR), "what " + holder + " takes");
        return fit.and(known(holder, PartDetail.MOST_ROTOR, "find the largest rotor that " + holder + " takes"));
    }

    public static FitResult padsPermitted(Part pads, Part rotor) {
        String compound = pads.word(PartDetail.COMPOUND);
        List<String> permitted = rotor.words(PartDetail.PADS_PERMITTED);
        if (compound == null || permitted == null) {
            return FitResult.unknown(compound == null ? "read the compound of " + pads : "read which pads " + rotor + " permits");
        }
        return permitted.contains(compound) ? FitResult.FITS : FitResult.not(compound + " pads, where the rotor permits " + String.join(" and ", permitted));
    }

    public static FitResult padShape(Part pads, Part bike) {
        return label(pads, bike, PartDetail.PAD_SHAPE);
    }

    public static FitResult rotorsInOrder(Part front, Part rear) {
        return notLess(front, rear, PartDetail.DIAMETER, "rotor");
    }

    // Drivetrain

    public static FitResult freehub(Part cassette, Part wheel) {
        return label(cassette, wheel, PartDetail.FREEHUB);
    }

    public static FitResult speeds(Part part, Part cassette) {
        Double one = speeds(part);
        Double other = speeds(cassette);
        if (one == null || other == null) {
            return FitResult.unknown("count the speeds of " + (one == null ? part : cassette));
        }
        return one.equals(other) ? FitResult.FITS : FitResult.not(one.intValue() + " speeds against " + other.intValue());
    }

    private static Double speeds(Part part) {
        int[] sprockets = part.teeth(PartDetail.SPROCKETS);
        return sprockets == null ? part.number(PartDetail.SPEEDS) : Double.valueOf(sprockets.length);
    }

    /** One shifting family, or families that a maker publishes together; everything else is a mix on nobody's word. */
    public static FitResult family(Part one, Part other) {
        String mine = one.word(PartDetail.DRIVETRAIN);
        String theirs = other.word(PartDetail.DRIVETRAIN);
        String how = one.word(PartDetail.ACTUATION);
        String also = other.word(PartDetail.ACTUATION);
        if (how != null && also != null && !how.equals(also)) {
            return FitResult.not(how + " shifting against " + also);
        }
        if (mine == null || theirs == null) {
            return FitResult.unknown("read the shifting family of " + (mine == null ? one : other));
        }
        boolean published = mine.equals(theirs) || publishes(one, theirs) || publishes(other, mine);
        return published ? FitResult.FITS : FitResult.flagged("a mix of " + mine + " and " + theirs + " that neither maker publishes");
    }

    private static boolean publishes(Part part, String family) {
        List<String> with = part.words(PartDetail.PUBLISHED_WITH);
        return with != null && with.contains(family);
    }

    public static FitResult largestSprocket(Part derailleur, Part cassette) {
        int[] sprockets = cassette.teeth(PartDetail.SPROCKETS);
        Double most = derailleur.number(PartDetail.LARGEST_SPROCKET);
        if (sprockets == null || most == null) {
            return FitResult.unknown(sprockets == null ? "count the sprockets of " + cassette : "find the largest sprocket that " + derailleur + " takes");
        }
        int over = sprockets[sprockets.length - 1] - most.intValue();
        return over <= 0 ? FitResult.FITS : FitResult.not("the largest sprocket has " + teeth(over) + " too many");
    }

    /** Teeth of chain to take up between the largest and the smallest pair: the differences of sprockets and of rings added. */
    public static FitResult capacity(Part derailleur, Part cassette, Part rings) {
        int[] sprockets = cassette.teeth(PartDetail.SPROCKETS);
        int[] teeth = rings.teeth(PartDetail.TEETH);
        Double capacity = derailleur.number(PartDetail.CAPACITY);
        if (sprockets == null || teeth == null || capacity == null) {
            return FitResult.unknown(capacity == null ? "find the capacity of " + derailleur : "count the teeth of " + (teeth == null ? rings : cassette));
        }
        int needed = sprockets[sprockets.length - 1] - sprockets[0] + teeth[0] - teeth[teeth.length - 1];
        return needed <= capacity ? FitResult.FITS : FitResult.not(teeth(needed - capacity.intValue()) + " of chain more than the derailleur takes up");
    }

    public static FitResult ringsOnFrame(Part rings, Part bike) {
        int[] teeth = rings.teeth(PartDetail.TEETH);
        Double most = bike.number(PartDetail.LARGEST_RING);
        if (teeth == null || most == null) {
            return FitResult.unknown(teeth == null ? "count the teeth of " + rings : "find the largest chainring that " + bike + " clears");
        }
        if (teeth[0] > most) {
            return FitResult.not(teeth(teeth[0] - most.intValue()) + " too large for the frame");
        }
        Double least = bike.number(PartDetail.SMALLEST_RING);
        if (least != null && teeth[teeth.length - 1] < least) {
            return FitResult.not(teeth(least.intValue() - teeth[teeth.length - 1]) + " too small for the frame");
        }
        Boolean two = bike.yes(PartDetail.TWO_RINGS);
        if (teeth.length == 2 && !Boolean.TRUE.equals(two)) {
            return two == null ? FitResult.unknown("find whether two rings can be shifted on " + bike) : FitResult.not("two rings on a frame made for one");
        }
        return FitResult.FITS;
    }

    public static FitResult chainline(Part crank, Part bike) {
        Double line = crank.number(PartDetail.CHAINLINE);
        if (line == null) {
            return FitResult.unknown("find the chainline of " + crank);
        }
        String find = "find the chainline that " + bike + " is made for";
        FitResult fit = within(line, bike.number(PartDetail.LEAST_CHAINLINE), bike.number(PartDetail.MOST_CHAINLINE), "the frame's chainline");
        return fit.and(known(bike, PartDetail.LEAST_CHAINLINE, find)).and(known(bike, PartDetail.MOST_CHAINLINE, find));
    }

    public static FitResult bottomBracket(Part crank, Part bike) {
        return label(crank, bike, PartDetail.BOTTOM_BRACKET);
    }

    public static FitResult ringMount(Part rings, Part crank) {
        return label(rings, crank, PartDetail.RING_MOUNT);
    }

    /**
     * Links for the largest ring and sprocket: in inches 2 C + F / 4 + R / 4 + 1, with C from bottom bracket to axle where it is
     * longest, rounded up to whole pairs of links of half an inch (the common sizing rule, from memory).
     */
    public static FitResult chainLength(Part chain, Part cassette, Part rings, Part bike) {
        int needed = links(cassette, rings, bike);
        Double links = chain.number(PartDetail.LINKS);
        if (needed < 0 || links == null) {
            return FitResult.unknown(links == null ? "count the links of " + chain : "measure the chainstay of " + bike + " and count the teeth");
        }
        int over = links.intValue() - needed;
        if (over < 0) {
            return FitResult.not("the chain is " + -over + " links too short for the largest ring and sprocket");
        }
        return over < 4 ? FitResult.FITS : FitResult.mind("the chain is " + over + " links longer than it needs to be: shorten it, unless a larger ring or sprocket goes on again");
    }

    /** The links a chain needs; -1 where not known. */
    static int links(Part cassette, Part rings, Part bike) {
        int[] sprockets = cassette.teeth(PartDetail.SPROCKETS);
        int[] teeth = rings.teeth(PartDetail.TEETH);
        Double stay = bike.number(PartDetail.CHAINSTAY);
        Double growth = bike.number(PartDetail.CHAIN_GROWTH);
        boolean rigid = Double.valueOf(0).equals(bike.number(PartDetail.REAR_TRAVEL));
        if (sprockets == null || teeth == null || stay == null || growth == null && !rigid) {
            return -1;
        }
        double longest = (stay + (growth == null ? 0 : growth)) / INCH;
        double inches = 2 * longest + teeth[0] / 4.0 + sprockets[sprockets.length - 1] / 4.0 + 1;
        return 2 * (int) Math.ceil(inches - 1e-9);
    }

    public static FitResult derailleurMount(Part derailleur, Part bike) {
        return label(derailleur, bike, PartDetail.DERAILLEUR_MOUNT);
    }

    public static FitResult pedalThread(Part pedals, Part crank) {
        return label(pedals, crank, PartDetail.PEDAL_THREAD);
    }

    public static FitResult meterMount(Part meter, Part crank) {
        return label(meter, crank, PartDetail.METER_MOUNT);
    }

    // Fork, shock, cockpit, seat

    public static FitResult steerer(Part fork, Part bike) {
        return label(fork, bike, PartDetail.STEERER);
    }

    public static FitResult forkTravel(Part fork, Part bike) {
        Double travel = fork.number(PartDetail.TRAVEL);
        if (travel == null) {
            return FitResult.unknown("find the travel of " + fork);
        }
        FitResult fit = within(travel, bike.number(PartDetail.LEAST_FORK_TRAVEL), bike.number(PartDetail.MOST_FORK_TRAVEL), "the frame's range of travel");
        return fit.and(known(bike, PartDetail.MOST_FORK_TRAVEL, "find the fork travel that " + bike + " permits"));
    }

    /** The frame's range of fork lengths; within it, how the head angle changes. */
    public static FitResult forkLength(Part fork, Part bike) {
        Double length = fork.number(PartDetail.LENGTH);
        if (length == null) {
            return FitResult.unknown("measure " + fork + " from axle to crown");
        }
        FitResult range = within(length, bike.number(PartDetail.LEAST_FORK_LENGTH), bike.number(PartDetail.MOST_FORK_LENGTH), "the frame's range of length")
                .and(known(bike, PartDetail.MOST_FORK_LENGTH, "find the fork length that " + bike + " permits"));
        Double change = headAngleChange(fork, bike);
        if (!range.fits() || change == null || Math.abs(change) < 0.05) {
            return range;
        }
        return FitResult.mind("head angle " + oneDecimal(Math.abs(change)) + " deg " + (change < 0 ? "slacker" : "steeper") + " than the frame states"
                + raised(fork, bike));
    }

    /** What a longer fork does to the height of the bottom bracket, in words; empty where it is under a millimetre or not known. */
    private static String raised(Part fork, Part bike) {
        Double rise = bottomBracketRise(fork, bike);
        return rise == null || Math.abs(rise) < 0.001 ? "" : ", bottom bracket " + mm(Math.abs(rise)) + (rise > 0 ? " higher" : " lower");
    }

    /**
     * How much higher the bottom bracket comes by a longer fork, m: the bike turns about the rear axle, so by the change of head angle times
     * the chainstay, near enough level. Null where a length or an angle is not known.
     */
    static Double bottomBracketRise(Part fork, Part bike) {
        Double change = headAngleChange(fork, bike);
        Double chainstay = bike.number(PartDetail.CHAINSTAY);
        return change == null || chainstay == null ? null : Double.valueOf(-Math.toRadians(change) * chainstay);
    }

    /**
     * How the head angle differs from the frame's stated one, degrees, negative where slacker: a longer fork turns the bike about the
     * rear axle, by asin(dL sin(head angle) / wheelbase). Null where a length or an angle is not known.
     */
    public static Double headAngleChange(Part fork, Part bike) {
        Double length = fork.number(PartDetail.LENGTH);
        Double design = bike.number(PartDetail.DESIGN_FORK_LENGTH);
        Double angle = bike.number(PartDetail.HEAD_ANGLE);
        Double wheelbase = bike.number(PartDetail.WHEELBASE);
        if (length == null || design == null || angle == null || wheelbase == null) {
            return null;
        }
        return -Math.toDegrees(Math.asin((length - design) * Math.sin(Math.toRadians(angle)) / wheelbase));
    }

    public static FitResult travelInBalance(Part fork, Part bike) {
        Double front = fork.number(PartDetail.TRAVEL);
        Double rear = bike.number(PartDetail.REAR_TRAVEL);
        if (front == null || rear == null || rear == 0 || front == 0) {
            return FitResult.FITS;
        }
        double apart = Math.abs(front - rear);
        return apart <= RuleValue.TRAVEL_DIFFERENCE.inBase() + 1e-9 ? FitResult.FITS : FitResult.not("front and rear travel are " + mm(apart) + " apart");
    }

    public static FitResult shock(Part shock, Part bike) {
        return same(shock, bike, PartDetail.SHOCK_LENGTH).and(same(shock, bike, PartDetail.SHOCK_STROKE)).and(label(shock, bike, PartDetail.SHOCK_MOUNT));
    }

    public static FitResult steererClamp(Part stem, Part fork) {
        return same(stem, fork, PartDetail.STEERER_CLAMP);
    }

    /** The cut steerer against head tube, spacers and stem clamp. @param spacers null where there are none */
    public static FitResult steererLength(Part fork, Part stem, Part spacers, Part bike) {
        Double height = spacers == null ? Double.valueOf(0) : spacers.number(PartDetail.HEIGHT);
        return steererLength(fork, stem, spacers, height, bike);
    }

    /**
     * As {@link #steererLength(Part, Part, Part, Part)} for a height of spacers under the stem, m; what the fork's maker permits of
     * them is kept where it is known.
     */
    public static FitResult steererLength(Part fork, Part stem, double under, Part bike) {
        return steererLength(fork, stem, null, under, bike);
    }

    private static FitResult steererLength(Part fork, Part stem, Part spacers, Double height, Part bike) {
        Double length = fork.number(PartDetail.STEERER_LENGTH);
        Double head = bike.number(PartDetail.HEAD_TUBE);
        Double clamp = stem.number(PartDetail.CLAMP_HEIGHT);
        Double most = fork.number(PartDetail.MOST_SPACERS);
        if (most != null && height != null && height > most + 1e-9) {
            return FitResult.not(mm(height - most) + " more spacers under the stem than the maker of " + fork + " permits");
        }
        if (length == null || head == null || clamp == null || height == null) {
            return FitResult.unknown(length == null ? "measure the steerer of " + fork : head == null ? "measure the head tube of " + bike
                    : clamp == null ? "measure the clamp of " + stem : "measure " + spacers);
        }
        double above = length - head - clamp - height;
        if (above < -1e-9) {
            return FitResult.not("the steerer is " + mm(-above) + " too short");
        }
        if (above > RuleValue.STEERER_OVER_STEM.inBase() + 1e-9) {
            return FitResult.not("the steerer stands " + mm(above) + " out of the stem");
        }
        return above < 0.003 ? FitResult.FITS : FitResult.mind(mm(above) + " of spacers on top of the stem, since the steerer is cut for more");
    }

    /** The stem lengths that the frame's maker permits; most state none. */
    public static FitResult stemLength(Part stem, Part bike) {
        if (!bike.has(PartDetail.LEAST_STEM) && !bike.has(PartDetail.MOST_STEM)) {
            return FitResult.FITS;
        }
        Double length = stem.number(PartDetail.STEM_LENGTH);
        return length == null ? FitResult.unknown("measure the length of " + stem)
                : within(length, bike.number(PartDetail.LEAST_STEM), bike.number(PartDetail.MOST_STEM), "the stem lengths that " + bike + " permits");
    }

    public static FitResult barClamp(Part bar, Part stem) {
        return same(bar, stem, PartDetail.BAR_CLAMP);
    }

    public static FitResult barShape(Part shifter, Part bar) {
        return label(shifter, bar, PartDetail.BAR_SHAPE);
    }

    public static FitResult extensions(Part extensions, Part bar) {
        Boolean approved = bar.yes(PartDetail.EXTENSIONS_APPROVED);
        if (approved == null) {
            return FitResult.unknown("read whether " + bar + " is approved for clamp-on extensions");
        }
        return approved ? same(extensions, bar, PartDetail.BAR_CLAMP) : FitResult.not("the bar is not approved for clamp-on extensions");
    }

    public static FitResult postDiameter(Part post, Part bike) {
        Double one = post.number(PartDetail.POST_DIAMETER);
        Double other = bike.number(PartDetail.POST_DIAMETER);
        if (one == null || other == null) {
            return same(post, bike, PartDetail.POST_DIAMETER);
        }
        double apart = Math.abs(one - other);
        return apart < 0.00005 ? FitResult.FITS : FitResult.not(mm(apart) + (one > other ? " too thick" : " too thin"));
    }

    /** How deep the post stands in the frame at the saddle height written of the bike. */
    public static FitResult postInsertion(Part post, Part saddle, Part bike) {
        return postInsertion(post, saddle, bike, bike.number(PartDetail.SADDLE_HEIGHT));
    }

    /** As {@link #postInsertion(Part, Part, Part)} at a saddle height, m; null where it is not known. */
    public static FitResult postInsertion(Part post, Part saddle, Part bike, Double wanted) {
        Double length = post.number(PartDetail.LENGTH);
        Double tube = bike.number(PartDetail.SEAT_TUBE);
        Double top = saddle.number(PartDetail.HEIGHT);
        Double frames = bike.number(PartDetail.LEAST_POST_INSERTION);
        Double posts = post.number(PartDetail.LEAST_INSERTION);
        if (length == null || wanted == null || tube == null || top == null || posts == null) {
            return FitResult.unknown(length == null ? "measure the length of " + post : posts == null ? "read the insertion marked on " + post
                    : top == null ? "measure " + saddle + " from rails to top" : "measure the saddle height and the seat tube of " + bike);
        }
        double inside = length - (wanted - tube - top);
        double least = frames == null ? posts : Math.max(posts, frames);
        if (inside < least - 1e-9) {
            return FitResult.not("the post stands " + mm(least - inside) + " too far out at this saddle height");
        }
        Double most = bike.number(PartDetail.MOST_POST_INSERTION);
        if (most == null) {
            return FitResult.unknown("measure how deep a post can go into " + bike);
        }
        return inside > most + 1e-9 ? FitResult.not("the post is " + mm(inside - most) + " too long for the seat tube") : FitResult.FITS;
    }

    public static FitResult rails(Part saddle, Part post) {
        return label(saddle, post, PartDetail.RAILS);
    }

    // Front and rear together

    public static FitResult widthsInOrder(Part front, Part rear) {
        Double one = mounted(front);
        Double other = mounted(rear);
        if (one == null || other == null) {
            return FitResult.unknown("measure " + (one == null ? front : rear) + " as mounted");
        }
        return Math.round(one / MM) >= Math.round(other / MM) ? FitResult.FITS : FitResult.not("the front tyre is " + mm(other - one) + " narrower than the rear");
    }

    private static Double mounted(Part tyre) {
        Double measured = tyre.number(PartDetail.MEASURED_WIDTH);
        return measured == null ? tyre.number(PartDetail.WIDTH) : measured;
    }

    public static FitResult treadsInOrder(Part front, Part rear) {
        String one = front.word(PartDetail.TREAD);
        String other = rear.word(PartDetail.TREAD);
        if (one == null || other == null) {
            return FitResult.unknown("look at the tread of " + (one == null ? front : rear));
        }
        return PartDetail.TREAD.words().indexOf(one) >= PartDetail.TREAD.words().indexOf(other) ? FitResult.FITS : FitResult.not("the front tread is faster than the rear");
    }

    // Loads

    public static FitResult bears(Part part, BuildLoad load) {
        Double system = part.number(PartDetail.MASS_LIMIT);
        Double rider = part.number(PartDetail.RIDER_LIMIT);
        if (system == null && rider == null && MARKED.contains(part.kind())) {
            return FitResult.unknown("read the highest mass marked on " + part);
        }
        FitResult whole = system == null || load.system() == null || load.system() <= system ? FitResult.FITS
                : FitResult.not(kg(load.system() - system) + " over its marked limit for rider, kit and bike");
        FitResult alone = rider == null || load.rider() == null || load.rider() <= rider ? FitResult.FITS
                : FitResult.not(kg(load.rider() - rider) + " over its marked limit for the rider");
        return whole.and(alone);
    }

    /** A drop above the marked category is a limit; the category says no more than that. */
    public static FitResult drops(Part part, BuildLoad load) {
        Double least = dropLimit(part);
        if (load.drop() == null || least == null || load.drop() <= least + 1e-9) {
            return FitResult.FITS;
        }
        return FitResult.not("a drop of " + Math.round(load.drop() * 100) + " cm is above what it is marked for (" + Math.round(least * 100) + " cm)");
    }

    /** The highest drop a part is marked for, m, 5 without a bound; null where nothing is written. */
    public static Double dropLimit(Part part) {
        String category = part.word(PartDetail.USE_CATEGORY);
        Double written = part.number(PartDetail.DROP_LIMIT);
        if (category == null || written == null) {
            return category == null ? written : Double.valueOf(UseCategory.highestDrop(category));
        }
        return Math.min(UseCategory.highestDrop(category), written);
    }

    // What they share

    private static FitResult label(Part one, Part other, PartDetail detail) {
        String mine = one.word(detail);
        String theirs = other.word(detail);
        if (mine == null || theirs == null) {
            return FitResult.unknown("find the " + detail.written() + " of " + (mine == null ? one : other));
        }
        return mine.equals(theirs) ? FitResult.FITS : FitResult.not(detail.written() + ": " + mine + " against " + theirs);
    }

    private static FitResult same(Part one, Part other, PartDetail detail) {
        Double mine = one.number(detail);
        Double theirs = other.number(detail);
        if (mine == null || theirs == null) {
            return FitResult.unknown("measure the " + detail.written() + " of " + (mine == null ? one : other));
        }
        double apart = Math.abs(mine - theirs);
        return apart < SAME ? FitResult.FITS : FitResult.not(detail.written() + ": " + mm(mine) + " against " + mm(theirs));
    }

    /** A limit that has to be known beside what is held against it: what is broken already stays broken. */
    private static FitResult known(Part part, PartDetail limit, String find) {
        return part.has(limit) ? FitResult.FITS : FitResult.unknown(find);
    }

    private static FitResult within(double value, Double least, Double most, String what) {
        if (least != null && value < least - 1e-9) {
            return FitResult.not(mm(least - value) + " under " + what);
        }
        return most != null && value > most + 1e-9 ? FitResult.not(mm(value - most) + " over " + what) : FitResult.FITS;
    }

    private static FitResult notLess(Part front, Part rear, PartDetail detail, String what) {
        Double one = front.number(detail);
        Double other = rear.number(detail);
        if (one == null || other == null) {
            return FitResult.unknown("measure " + (one == null ? front : rear));
        }
        return one >= other - SAME ? FitResult.FITS : FitResult.not("the front " + what + " is " + mm(other - one) + " smaller than the rear");
    }

    static String mm(double metres) {
        return oneDecimal(metres / MM) + " mm";
    }

    private static String kg(double kilograms) {
        return oneDecimal(kilograms) + " kg";
    }

    private static String teeth(int number) {
        return number == 1 ? "1 tooth" : number + " teeth";
    }

    /** Halves up, without a zero behind the point. */
    private static String oneDecimal(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths) % 10;
    }
}
