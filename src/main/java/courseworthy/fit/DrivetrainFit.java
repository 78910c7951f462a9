package courseworthy.fit;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/**
 * Whether rings, cassette, chain, derailleur, shifter, crank and pedals go together. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class DrivetrainFit {

    private DrivetrainFit() {
    }

    public static FitResult freehub(Part cassette, Part wheel) {
        return FitComparison.label(cassette, wheel, PartDetail.FREEHUB);
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
        return over <= 0 ? FitResult.FITS : FitResult.not("the largest sprocket has " + FitComparison.teeth(over) + " too many");
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
        return needed <= capacity ? FitResult.FITS : FitResult.not(FitComparison.teeth(needed - capacity.intValue()) + " of chain more than the derailleur takes up");
    }

    public static FitResult ringsOnFrame(Part rings, Part bike) {
        int[] teeth = rings.teeth(PartDetail.TEETH);
        Double most = bike.number(PartDetail.LARGEST_RING);
        if (teeth == null || most == null) {
            return FitResult.unknown(teeth == null ? "count the teeth of " + rings : "find the largest chainring that " + bike + " clears");
        }
        if (teeth[0] > most) {
            return FitResult.not(FitComparison.teeth(teeth[0] - most.intValue()) + " too large for the frame");
        }
        Double least = bike.number(PartDetail.SMALLEST_RING);
        if (least != null && teeth[teeth.length - 1] < least) {
            return FitResult.not(FitComparison.teeth(least.intValue() - teeth[teeth.length - 1]) + " too small for the frame");
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
        FitResult fit = FitComparison.within(line, bike.number(PartDetail.LEAST_CHAINLINE), bike.number(PartDetail.MOST_CHAINLINE), "the frame's chainline");
        return fit.and(FitComparison.known(bike, PartDetail.LEAST_CHAINLINE, find)).and(FitComparison.known(bike, PartDetail.MOST_CHAINLINE, find));
    }

    /** In the bottom bracket that is listed, else as the bike says. @param bottomBracket null where none is listed */
    public static FitResult bottomBracket(Part crank, Part bottomBracket, Part bike) {
        return FitComparison.label(crank, bottomBracket == null ? bike : bottomBracket, PartDetail.BOTTOM_BRACKET);
    }

    public static FitResult shell(Part bottomBracket, Part bike) {
        return FitComparison.label(bottomBracket, bike, PartDetail.SHELL);
    }

    /** A battery feeds the shifting family that it belongs to; a derailleur that is pulled by a cable asks for none. */
    public static FitResult battery(Part battery, Part derailleur) {
        return "cable".equals(derailleur.word(PartDetail.ACTUATION)) ? FitResult.FITS : family(battery, derailleur);
    }

    public static FitResult ringMount(Part rings, Part crank) {
        return FitComparison.label(rings, crank, PartDetail.RING_MOUNT);
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
        double longest = (stay + (growth == null ? 0 : growth)) / FitComparison.INCH;
        double inches = 2 * longest + teeth[0] / 4.0 + sprockets[sprockets.length - 1] / 4.0 + 1;
        return 2 * (int) Math.ceil(inches - 1e-9);
    }

    public static FitResult derailleurMount(Part derailleur, Part bike) {
        return FitComparison.label(derailleur, bike, PartDetail.DERAILLEUR_MOUNT);
    }

    public static FitResult pedalThread(Part pedals, Part crank) {
        return FitComparison.label(pedals, crank, PartDetail.PEDAL_THREAD);
    }

    public static FitResult meterMount(Part meter, Part crank) {
        return FitComparison.label(meter, crank, PartDetail.METER_MOUNT);
    }
}
