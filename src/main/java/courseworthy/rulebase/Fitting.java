package courseworthy.rulebase;

import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import courseworthy.units.RuleValue;
import courseworthy.units.UseCategory;
import courseworthy.workshop.Part;
import java.util.List;

/**
 * Whether parts go together, one question each: used by the rules of fit and by the search for a build alike. Every question is
 * total: whatever is missing makes it unknown, with what to measure. Sizes are in m, masses in kg, angles in degrees.
 */
public final class Fitting {

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
    private static final List<Kind> MARKED = List.of(Kind.BIKE, Kind.WHEEL);

    private Fitting() {
    }

    // Wheels and tyres

    public static Fit beadSeat(Part tyre, Part wheel) {
        return same(tyre, wheel, Detail.BEAD_SEAT);
    }

    /** The makers' charts where either is given; always the 5 mm of ETRTO; else the old general table cautions. */
    public static Fit tyreOnRim(Part tyre, Part wheel) {
        Double width = tyre.number(Detail.WIDTH);
        Double rim = wheel.number(Detail.RIM_INNER_WIDTH);
        Fit charts = charts(tyre, wheel, width, rim);
        if (width == null || rim == null) {
            // What is known not to fit goes before what is not known.
            return !charts.fits() ? charts
                    : Fit.unknown(width == null ? "read the width marked on " + tyre : "measure between the rim's walls inside " + wheel);
        }
        if (width - rim < RuleValue.TYRE_OVER_RIM.inBase() - 1e-9) {
            return Fit.not(mm(RuleValue.TYRE_OVER_RIM.inBase() - (width - rim)) + " too narrow for a rim of " + mm(rim) + " inside");
        }
        boolean charted = wheel.has(Detail.LEAST_TYRE) && wheel.has(Detail.MOST_TYRE) || tyre.has(Detail.LEAST_RIM) && tyre.has(Detail.MOST_RIM);
        return !charts.fits() || charted ? charts : general(width, rim);
    }

    private static Fit charts(Part tyre, Part wheel, Double width, Double rim) {
        Fit wheels = width == null ? Fit.FITS
                : within(width, wheel.number(Detail.LEAST_TYRE), wheel.number(Detail.MOST_TYRE), "the wheel's chart");
        Fit tyres = rim == null ? Fit.FITS : within(rim, tyre.number(Detail.LEAST_RIM), tyre.number(Detail.MOST_RIM), "the tyre's chart of rims");
        return wheels.and(tyres);
    }

    private static Fit general(double width, double rim) {
        int[] row = OLD_TABLE[0];
        for (int[] each : OLD_TABLE) {
            if (rim / MM >= each[0] - 0.5) {
                row = each;
            }
        }
        boolean inside = width / MM >= row[1] - 0.5 && width / MM <= row[2] + 0.5;
        return inside ? Fit.FITS : Fit.mind("outside the older general table for a rim of " + mm(rim) + " inside (" + row[1] + " to " + row[2]
                + " mm): look at the makers' charts");
    }

    public static Fit hookless(Part tyre, Part wheel) {
        if (Boolean.FALSE.equals(wheel.yes(Detail.HOOKLESS))) {
            return Fit.FITS;
        }
        Double width = tyre.number(Detail.WIDTH);
        boolean wide = width != null && width >= RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - 1e-9;
        if (Boolean.TRUE.equals(tyre.yes(Detail.HOOKLESS)) && wide) {
            return Fit.FITS;
        }
        if (!wheel.has(Detail.HOOKLESS)) {
            return Fit.unknown("see whether the rim of " + wheel + " has hooks");
        }
        if (Boolean.FALSE.equals(tyre.yes(Detail.HOOKLESS))) {
            return Fit.not("not approved for a rim without hooks");
        }
        if (width != null && !wide) {
            return Fit.not(mm(RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - width) + " too narrow for a rim without hooks");
        }
        return Fit.unknown("read whether " + tyre + " is approved for rims without hooks");
    }

    /** The tyre's width as mounted, or as marked, against the clearance of fork or frame for its wheel size. */
    public static Fit clears(Part tyre, Part wheel, Part holder) {
        Double bead = wheel.number(Detail.BEAD_SEAT);
        if (bead == null) {
            return Fit.unknown("read the bead seat diameter of " + wheel);
        }
        Double clearance = holder.clearance(bead);
        if (clearance == null) {
            return Fit.unknown("find the widest tyre that " + holder + " takes");
        }
        if (clearance == 0) {
            return Fit.not(holder + " is not made for a wheel of " + mm(bead));
        }
        Double measured = tyre.number(Detail.MEASURED_WIDTH);
        Double width = measured == null ? tyre.number(Detail.WIDTH) : measured;
        if (width == null) {
            return Fit.unknown("measure " + tyre + " as mounted");
        }
        if (width > clearance + 1e-9) {
            return Fit.not(mm(width - clearance) + " too wide: " + mm(clearance) + " clears");
        }
        return measured == null && width + RuleValue.TYRE_OVER_MARKING.inBase() > clearance + 1e-9 ? Fit.unknown("measure " + tyre + " as mounted") : Fit.FITS;
    }

    public static Fit valve(Part wheel) {
        Double depth = wheel.number(Detail.RIM_DEPTH);
        Double valve = wheel.number(Detail.VALVE_LENGTH);
        if (depth == null || valve == null) {
            return Fit.unknown((depth == null ? "measure the rim depth of " : "measure the valve of ") + wheel);
        }
        double out = valve - depth;
        return out >= RuleValue.VALVE_OVER_RIM.inBase() - 1e-9 ? Fit.FITS : Fit.not("the valve is " + mm(RuleValue.VALVE_OVER_RIM.inBase() - out) + " too short for a rim " + mm(depth) + " deep");
    }

    public static Fit axle(Part wheel, Part holder) {
        return same(wheel, holder, Detail.AXLE_WIDTH).and(label(wheel, holder, Detail.AXLE));
    }

    /** Sealant goes where rim and tyre are both made to run without a tube. */
    public static Fit tubeless(Part part, String what) {
        Boolean tubeless = part.yes(Detail.TUBELESS);
        if (tubeless == null) {
            return Fit.unknown("read whether " + part + " is made to run without a tube");
        }
        return tubeless ? Fit.FITS : Fit.not("no " + what + ": " + part + " is not made to run without a tube");
    }

    public static Fit insert(Part insert, Part tyre) {
        Double width = tyre.number(Detail.WIDTH);
        Fit size = same(insert, tyre, Detail.BEAD_SEAT);
        if (width == null) {
            return size.and(Fit.unknown("read the width marked on " + tyre));
        }
        String find = "find the tyre widths that " + insert + " is made for";
        return size.and(within(width, insert.number(Detail.LEAST_TYRE), insert.number(Detail.MOST_TYRE), "what the insert is made for"))
                .and(known(insert, Detail.LEAST_TYRE, find)).and(known(insert, Detail.MOST_TYRE, find));
    }

    // Brakes

    public static Fit rotorMount(Part rotor, Part wheel) {
        return label(rotor, wheel, Detail.ROTOR_MOUNT);
    }

    public static Fit rotorSize(Part rotor, Part holder) {
        Double diameter = rotor.number(Detail.DIAMETER);
        if (diameter == null) {
            return Fit.unknown("measure " + rotor);
        }
        Fit fit = within(diameter, holder.number(Detail.LEAST_ROTOR), holder.number(Detail.MOST_ROTOR), "what " + holder + " takes");
        return fit.and(known(holder, Detail.MOST_ROTOR, "find the largest rotor that " + holder + " takes"));
    }

    public static Fit padsPermitted(Part pads, Part rotor) {
        String compound = pads.word(Detail.COMPOUND);
        List<String> permitted = rotor.words(Detail.PADS_PERMITTED);
        if (compound == null || permitted == null) {
            return Fit.unknown(compound == null ? "read the compound of " + pads : "read which pads " + rotor + " permits");
        }
        return permitted.contains(compound) ? Fit.FITS : Fit.not(compound + " pads, where the rotor permits " + String.join(" and ", permitted));
    }

    public static Fit padShape(Part pads, Part bike) {
        return label(pads, bike, Detail.PAD_SHAPE);
    }

    public static Fit rotorsInOrder(Part front, Part rear) {
        return notLess(front, rear, Detail.DIAMETER, "rotor");
    }

    // Drivetrain

    public static Fit freehub(Part cassette, Part wheel) {
        return label(cassette, wheel, Detail.FREEHUB);
    }

    public static Fit speeds(Part part, Part cassette) {
        Double one = speeds(part);
        Double other = speeds(cassette);
        if (one == null || other == null) {
            return Fit.unknown("count the speeds of " + (one == null ? part : cassette));
        }
        return one.equals(other) ? Fit.FITS : Fit.not(one.intValue() + " speeds against " + other.intValue());
    }

    private static Double speeds(Part part) {
        int[] sprockets = part.teeth(Detail.SPROCKETS);
        return sprockets == null ? part.number(Detail.SPEEDS) : Double.valueOf(sprockets.length);
    }

    /** One shifting family, or families that a maker publishes together; everything else is a mix on nobody's word. */
    public static Fit family(Part one, Part other) {
        String mine = one.word(Detail.DRIVETRAIN);
        String theirs = other.word(Detail.DRIVETRAIN);
        String how = one.word(Detail.ACTUATION);
        String also = other.word(Detail.ACTUATION);
        if (how != null && also != null && !how.equals(also)) {
            return Fit.not(how + " shifting against " + also);
        }
        if (mine == null || theirs == null) {
            return Fit.unknown("read the shifting family of " + (mine == null ? one : other));
        }
        boolean published = mine.equals(theirs) || publishes(one, theirs) || publishes(other, mine);
        return published ? Fit.FITS : Fit.flagged("a mix of " + mine + " and " + theirs + " that neither maker publishes");
    }

    private static boolean publishes(Part part, String family) {
        List<String> with = part.words(Detail.PUBLISHED_WITH);
        return with != null && with.contains(family);
    }

    public static Fit largestSprocket(Part derailleur, Part cassette) {
        int[] sprockets = cassette.teeth(Detail.SPROCKETS);
        Double most = derailleur.number(Detail.LARGEST_SPROCKET);
        if (sprockets == null || most == null) {
            return Fit.unknown(sprockets == null ? "count the sprockets of " + cassette : "find the largest sprocket that " + derailleur + " takes");
        }
        int over = sprockets[sprockets.length - 1] - most.intValue();
        return over <= 0 ? Fit.FITS : Fit.not("the largest sprocket has " + teeth(over) + " too many");
    }

    /** Teeth of chain to take up between the largest and the smallest pair: the differences of sprockets and of rings added. */
    public static Fit capacity(Part derailleur, Part cassette, Part rings) {
        int[] sprockets = cassette.teeth(Detail.SPROCKETS);
        int[] teeth = rings.teeth(Detail.TEETH);
        Double capacity = derailleur.number(Detail.CAPACITY);
        if (sprockets == null || teeth == null || capacity == null) {
            return Fit.unknown(capacity == null ? "find the capacity of " + derailleur : "count the teeth of " + (teeth == null ? rings : cassette));
        }
        int needed = sprockets[sprockets.length - 1] - sprockets[0] + teeth[0] - teeth[teeth.length - 1];
        return needed <= capacity ? Fit.FITS : Fit.not(teeth(needed - capacity.intValue()) + " of chain more than the derailleur takes up");
    }

    public static Fit ringsOnFrame(Part rings, Part bike) {
        int[] teeth = rings.teeth(Detail.TEETH);
        Double most = bike.number(Detail.LARGEST_RING);
        if (teeth == null || most == null) {
            return Fit.unknown(teeth == null ? "count the teeth of " + rings : "find the largest chainring that " + bike + " clears");
        }
        if (teeth[0] > most) {
            return Fit.not(teeth(teeth[0] - most.intValue()) + " too large for the frame");
        }
        Double least = bike.number(Detail.SMALLEST_RING);
        if (least != null && teeth[teeth.length - 1] < least) {
            return Fit.not(teeth(least.intValue() - teeth[teeth.length - 1]) + " too small for the frame");
        }
        Boolean two = bike.yes(Detail.TWO_RINGS);
        if (teeth.length == 2 && !Boolean.TRUE.equals(two)) {
            return two == null ? Fit.unknown("find whether two rings can be shifted on " + bike) : Fit.not("two rings on a frame made for one");
        }
        return Fit.FITS;
    }

    public static Fit chainline(Part crank, Part bike) {
        Double line = crank.number(Detail.CHAINLINE);
        if (line == null) {
            return Fit.unknown("find the chainline of " + crank);
        }
        String find = "find the chainline that " + bike + " is made for";
        Fit fit = within(line, bike.number(Detail.LEAST_CHAINLINE), bike.number(Detail.MOST_CHAINLINE), "the frame's chainline");
        return fit.and(known(bike, Detail.LEAST_CHAINLINE, find)).and(known(bike, Detail.MOST_CHAINLINE, find));
    }

    public static Fit bottomBracket(Part crank, Part bike) {
        return label(crank, bike, Detail.BOTTOM_BRACKET);
    }

    public static Fit ringMount(Part rings, Part crank) {
        return label(rings, crank, Detail.RING_MOUNT);
    }

    /**
     * Links for the largest ring and sprocket: in inches 2 C + F / 4 + R / 4 + 1, with C from bottom bracket to axle where it is
     * longest, rounded up to whole pairs of links of half an inch (the common sizing rule, from memory).
     */
    public static Fit chainLength(Part chain, Part cassette, Part rings, Part bike) {
        int needed = links(cassette, rings, bike);
        Double links = chain.number(Detail.LINKS);
        if (needed < 0 || links == null) {
            return Fit.unknown(links == null ? "count the links of " + chain : "measure the chainstay of " + bike + " and count the teeth");
        }
        int over = links.intValue() - needed;
        if (over < 0) {
            return Fit.not("the chain is " + -over + " links too short for the largest ring and sprocket");
        }
        return over < 4 ? Fit.FITS : Fit.mind("the chain is " + over + " links longer than it needs to be: shorten it, unless a larger ring or sprocket goes on again");
    }

    /** The links a chain needs; -1 where not known. */
    static int links(Part cassette, Part rings, Part bike) {
        int[] sprockets = cassette.teeth(Detail.SPROCKETS);
        int[] teeth = rings.teeth(Detail.TEETH);
        Double stay = bike.number(Detail.CHAINSTAY);
        Double growth = bike.number(Detail.CHAIN_GROWTH);
        boolean rigid = Double.valueOf(0).equals(bike.number(Detail.REAR_TRAVEL));
        if (sprockets == null || teeth == null || stay == null || growth == null && !rigid) {
            return -1;
        }
        double longest = (stay + (growth == null ? 0 : growth)) / INCH;
        double inches = 2 * longest + teeth[0] / 4.0 + sprockets[sprockets.length - 1] / 4.0 + 1;
        return 2 * (int) Math.ceil(inches - 1e-9);
    }

    public static Fit derailleurMount(Part derailleur, Part bike) {
        return label(derailleur, bike, Detail.DERAILLEUR_MOUNT);
    }

    public static Fit pedalThread(Part pedals, Part crank) {
        return label(pedals, crank, Detail.PEDAL_THREAD);
    }

    public static Fit meterMount(Part meter, Part crank) {
        return label(meter, crank, Detail.METER_MOUNT);
    }

    // Fork, shock, cockpit, seat

    public static Fit steerer(Part fork, Part bike) {
        return label(fork, bike, Detail.STEERER);
    }

    public static Fit forkTravel(Part fork, Part bike) {
        Double travel = fork.number(Detail.TRAVEL);
        if (travel == null) {
            return Fit.unknown("find the travel of " + fork);
        }
        Fit fit = within(travel, bike.number(Detail.LEAST_FORK_TRAVEL), bike.number(Detail.MOST_FORK_TRAVEL), "the frame's range of travel");
        return fit.and(known(bike, Detail.MOST_FORK_TRAVEL, "find the fork travel that " + bike + " permits"));
    }

    /** The frame's range of fork lengths; within it, how the head angle changes. */
    public static Fit forkLength(Part fork, Part bike) {
        Double length = fork.number(Detail.LENGTH);
        if (length == null) {
            return Fit.unknown("measure " + fork + " from axle to crown");
        }
        Fit range = within(length, bike.number(Detail.LEAST_FORK_LENGTH), bike.number(Detail.MOST_FORK_LENGTH), "the frame's range of length")
                .and(known(bike, Detail.MOST_FORK_LENGTH, "find the fork length that " + bike + " permits"));
        Double change = headAngleChange(fork, bike);
        if (!range.fits() || change == null || Math.abs(change) < 0.05) {
            return range;
        }
        return Fit.mind("head angle " + oneDecimal(Math.abs(change)) + " deg " + (change < 0 ? "slacker" : "steeper") + " than the frame states"
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
        Double chainstay = bike.number(Detail.CHAINSTAY);
        return change == null || chainstay == null ? null : Double.valueOf(-Math.toRadians(change) * chainstay);
    }

    /**
     * How the head angle differs from the frame's stated one, degrees, negative where slacker: a longer fork turns the bike about the
     * rear axle, by asin(dL sin(head angle) / wheelbase). Null where a length or an angle is not known.
     */
    public static Double headAngleChange(Part fork, Part bike) {
        Double length = fork.number(Detail.LENGTH);
        Double design = bike.number(Detail.DESIGN_FORK_LENGTH);
        Double angle = bike.number(Detail.HEAD_ANGLE);
        Double wheelbase = bike.number(Detail.WHEELBASE);
        if (length == null || design == null || angle == null || wheelbase == null) {
            return null;
        }
        return -Math.toDegrees(Math.asin((length - design) * Math.sin(Math.toRadians(angle)) / wheelbase));
    }

    public static Fit travelInBalance(Part fork, Part bike) {
        Double front = fork.number(Detail.TRAVEL);
        Double rear = bike.number(Detail.REAR_TRAVEL);
        if (front == null || rear == null || rear == 0 || front == 0) {
            return Fit.FITS;
        }
        double apart = Math.abs(front - rear);
        return apart <= RuleValue.TRAVEL_DIFFERENCE.inBase() + 1e-9 ? Fit.FITS : Fit.not("front and rear travel are " + mm(apart) + " apart");
    }

    public static Fit shock(Part shock, Part bike) {
        return same(shock, bike, Detail.SHOCK_LENGTH).and(same(shock, bike, Detail.SHOCK_STROKE)).and(label(shock, bike, Detail.SHOCK_MOUNT));
    }

    public static Fit steererClamp(Part stem, Part fork) {
        return same(stem, fork, Detail.STEERER_CLAMP);
    }

    /** The cut steerer against head tube, spacers and stem clamp. @param spacers null where there are none */
    public static Fit steererLength(Part fork, Part stem, Part spacers, Part bike) {
        Double height = spacers == null ? Double.valueOf(0) : spacers.number(Detail.HEIGHT);
        return steererLength(fork, stem, spacers, height, bike);
    }

    /**
     * As {@link #steererLength(Part, Part, Part, Part)} for a height of spacers under the stem, m; what the fork's maker permits of
     * them is kept where it is known.
     */
    public static Fit steererLength(Part fork, Part stem, double under, Part bike) {
        return steererLength(fork, stem, null, under, bike);
    }

    private static Fit steererLength(Part fork, Part stem, Part spacers, Double height, Part bike) {
        Double length = fork.number(Detail.STEERER_LENGTH);
        Double head = bike.number(Detail.HEAD_TUBE);
        Double clamp = stem.number(Detail.CLAMP_HEIGHT);
        Double most = fork.number(Detail.MOST_SPACERS);
        if (most != null && height != null && height > most + 1e-9) {
            return Fit.not(mm(height - most) + " more spacers under the stem than the maker of " + fork + " permits");
        }
        if (length == null || head == null || clamp == null || height == null) {
            return Fit.unknown(length == null ? "measure the steerer of " + fork : head == null ? "measure the head tube of " + bike
                    : clamp == null ? "measure the clamp of " + stem : "measure " + spacers);
        }
        double above = length - head - clamp - height;
        if (above < -1e-9) {
            return Fit.not("the steerer is " + mm(-above) + " too short");
        }
        if (above > RuleValue.STEERER_OVER_STEM.inBase() + 1e-9) {
            return Fit.not("the steerer stands " + mm(above) + " out of the stem");
        }
        return above < 0.003 ? Fit.FITS : Fit.mind(mm(above) + " of spacers on top of the stem, since the steerer is cut for more");
    }

    /** The stem lengths that the frame's maker permits; most state none. */
    public static Fit stemLength(Part stem, Part bike) {
        if (!bike.has(Detail.LEAST_STEM) && !bike.has(Detail.MOST_STEM)) {
            return Fit.FITS;
        }
        Double length = stem.number(Detail.STEM_LENGTH);
        return length == null ? Fit.unknown("measure the length of " + stem)
                : within(length, bike.number(Detail.LEAST_STEM), bike.number(Detail.MOST_STEM), "the stem lengths that " + bike + " permits");
    }

    public static Fit barClamp(Part bar, Part stem) {
        return same(bar, stem, Detail.BAR_CLAMP);
    }

    public static Fit barShape(Part shifter, Part bar) {
        return label(shifter, bar, Detail.BAR_SHAPE);
    }

    public static Fit extensions(Part extensions, Part bar) {
        Boolean approved = bar.yes(Detail.EXTENSIONS_APPROVED);
        if (approved == null) {
            return Fit.unknown("read whether " + bar + " is approved for clamp-on extensions");
        }
        return approved ? same(extensions, bar, Detail.BAR_CLAMP) : Fit.not("the bar is not approved for clamp-on extensions");
    }

    public static Fit postDiameter(Part post, Part bike) {
        Double one = post.number(Detail.POST_DIAMETER);
        Double other = bike.number(Detail.POST_DIAMETER);
        if (one == null || other == null) {
            return same(post, bike, Detail.POST_DIAMETER);
        }
        double apart = Math.abs(one - other);
        return apart < 0.00005 ? Fit.FITS : Fit.not(mm(apart) + (one > other ? " too thick" : " too thin"));
    }

    /** How deep the post stands in the frame at the saddle height written of the bike. */
    public static Fit postInsertion(Part post, Part saddle, Part bike) {
        return postInsertion(post, saddle, bike, bike.number(Detail.SADDLE_HEIGHT));
    }

    /** As {@link #postInsertion(Part, Part, Part)} at a saddle height, m; null where it is not known. */
    public static Fit postInsertion(Part post, Part saddle, Part bike, Double wanted) {
        Double length = post.number(Detail.LENGTH);
        Double tube = bike.number(Detail.SEAT_TUBE);
        Double top = saddle.number(Detail.HEIGHT);
        Double frames = bike.number(Detail.LEAST_POST_INSERTION);
        Double posts = post.number(Detail.LEAST_INSERTION);
        if (length == null || wanted == null || tube == null || top == null || posts == null) {
            return Fit.unknown(length == null ? "measure the length of " + post : posts == null ? "read the insertion marked on " + post
                    : top == null ? "measure " + saddle + " from rails to top" : "measure the saddle height and the seat tube of " + bike);
        }
        double inside = length - (wanted - tube - top);
        double least = frames == null ? posts : Math.max(posts, frames);
        if (inside < least - 1e-9) {
            return Fit.not("the post stands " + mm(least - inside) + " too far out at this saddle height");
        }
        Double most = bike.number(Detail.MOST_POST_INSERTION);
        if (most == null) {
            return Fit.unknown("measure how deep a post can go into " + bike);
        }
        return inside > most + 1e-9 ? Fit.not("the post is " + mm(inside - most) + " too long for the seat tube") : Fit.FITS;
    }

    public static Fit rails(Part saddle, Part post) {
        return label(saddle, post, Detail.RAILS);
    }

    // Front and rear together

    public static Fit widthsInOrder(Part front, Part rear) {
        Double one = mounted(front);
        Double other = mounted(rear);
        if (one == null || other == null) {
            return Fit.unknown("measure " + (one == null ? front : rear) + " as mounted");
        }
        return Math.round(one / MM) >= Math.round(other / MM) ? Fit.FITS : Fit.not("the front tyre is " + mm(other - one) + " narrower than the rear");
    }

    private static Double mounted(Part tyre) {
        Double measured = tyre.number(Detail.MEASURED_WIDTH);
        return measured == null ? tyre.number(Detail.WIDTH) : measured;
    }

    public static Fit treadsInOrder(Part front, Part rear) {
        String one = front.word(Detail.TREAD);
        String other = rear.word(Detail.TREAD);
        if (one == null || other == null) {
            return Fit.unknown("look at the tread of " + (one == null ? front : rear));
        }
        return Detail.TREAD.words().indexOf(one) >= Detail.TREAD.words().indexOf(other) ? Fit.FITS : Fit.not("the front tread is faster than the rear");
    }

    // Loads

    public static Fit bears(Part part, Load load) {
        Double system = part.number(Detail.MASS_LIMIT);
        Double rider = part.number(Detail.RIDER_LIMIT);
        if (system == null && rider == null && MARKED.contains(part.kind())) {
            return Fit.unknown("read the highest mass marked on " + part);
        }
        Fit whole = system == null || load.system() == null || load.system() <= system ? Fit.FITS
                : Fit.not(kg(load.system() - system) + " over its marked limit for rider, kit and bike");
        Fit alone = rider == null || load.rider() == null || load.rider() <= rider ? Fit.FITS
                : Fit.not(kg(load.rider() - rider) + " over its marked limit for the rider");
        return whole.and(alone);
    }

    /** A drop above the marked category is a limit; the category says no more than that. */
    public static Fit drops(Part part, Load load) {
        Double least = dropLimit(part);
        if (load.drop() == null || least == null || load.drop() <= least + 1e-9) {
            return Fit.FITS;
        }
        return Fit.not("a drop of " + Math.round(load.drop() * 100) + " cm is above what it is marked for (" + Math.round(least * 100) + " cm)");
    }

    /** The highest drop a part is marked for, m, 5 without a bound; null where nothing is written. */
    public static Double dropLimit(Part part) {
        String category = part.word(Detail.USE_CATEGORY);
        Double written = part.number(Detail.DROP_LIMIT);
        if (category == null || written == null) {
            return category == null ? written : Double.valueOf(UseCategory.highestDrop(category));
        }
        return Math.min(UseCategory.highestDrop(category), written);
    }

    // What they share

    private static Fit label(Part one, Part other, Detail detail) {
        String mine = one.word(detail);
        String theirs = other.word(detail);
        if (mine == null || theirs == null) {
            return Fit.unknown("find the " + detail.written() + " of " + (mine == null ? one : other));
        }
        return mine.equals(theirs) ? Fit.FITS : Fit.not(detail.written() + ": " + mine + " against " + theirs);
    }

    private static Fit same(Part one, Part other, Detail detail) {
        Double mine = one.number(detail);
        Double theirs = other.number(detail);
        if (mine == null || theirs == null) {
            return Fit.unknown("measure the " + detail.written() + " of " + (mine == null ? one : other));
        }
        double apart = Math.abs(mine - theirs);
        return apart < SAME ? Fit.FITS : Fit.not(detail.written() + ": " + mm(mine) + " against " + mm(theirs));
    }

    /** A limit that has to be known beside what is held against it: what is broken already stays broken. */
    private static Fit known(Part part, Detail limit, String find) {
        return part.has(limit) ? Fit.FITS : Fit.unknown(find);
    }

    private static Fit within(double value, Double least, Double most, String what) {
        if (least != null && value < least - 1e-9) {
            return Fit.not(mm(least - value) + " under " + what);
        }
        return most != null && value > most + 1e-9 ? Fit.not(mm(value - most) + " over " + what) : Fit.FITS;
    }

    private static Fit notLess(Part front, Part rear, Detail detail, String what) {
        Double one = front.number(detail);
        Double other = rear.number(detail);
        if (one == null || other == null) {
            return Fit.unknown("measure " + (one == null ? front : rear));
        }
        return one >= other - SAME ? Fit.FITS : Fit.not("the front " + what + " is " + mm(other - one) + " smaller than the rear");
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
