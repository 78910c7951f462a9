package courseworthy.build;

import courseworthy.build.PositionTransfer.StemChoice;
import courseworthy.build.PositionTransfer.Saddle;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.CockpitFit;
import courseworthy.fit.FitResult;
import courseworthy.fit.LoadFit;
import courseworthy.fit.SeatFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Carries one bike's position over to another: every stem of the workshop, either way up where its maker allows it, on every stack of
 * spacers at hand, with the bar that is on the bike, is tried against the limits of steerer, fork, frame and clamps.
 */
public final class PositionMatcher {

    /** Distances are compared in tenths of a millimetre: nobody mounts a bar closer (practice). */
    private static final double TICK = 0.0001;
    /** What is not known to fit is told of where it comes closer by this, m (judgement). */
    private static final double WORTH_MEASURING = 0.001;
    /** What is not in the workshop is told of where it comes closer by this, m (judgement, no source). */
    private static final double WORTH_BUYING = 0.003;
    /** The hands so much closer are a notch, m, and weigh as advice that should be followed (judgement, no source). */
    private static final double NOTCH = 0.005;
    private static final int WEIGHT = 2;
    /** Stem lengths, mm, and angles, degrees, in which stems are commonly made (common practice, no source). */
    private static final int[] LENGTHS = {35, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130};
    private static final int[] ANGLES = {0, -6, 6, -10, 10, -17, 17};

    private final Workshop workshop;
    private final Position from;
    private final Position to;
    private final BuildLoad load;

    private PositionMatcher(Workshop workshop, Part from, Part to, Map<MountingPlace, Part> parts, BuildLoad load) {
        this.workshop = workshop;
        this.from = Position.of(workshop, from);
        this.to = Position.of(to, parts);
        this.load = load;
    }

    /** @param load what is known of the rider's mass, against what is marked on stems and posts */
    public static PositionTransfer of(Workshop workshop, Part from, Part to, BuildLoad load) {
        return of(workshop, from, to, workshop.mounted(to), load);
    }

    /** @param parts what is to stand on the bike that takes it over */
    static PositionTransfer of(Workshop workshop, Part from, Part to, Map<MountingPlace, Part> parts, BuildLoad load) {
        return new PositionMatcher(workshop, from, to, parts, load).carried();
    }

    private PositionTransfer carried() {
        List<String> toMeasure = new ArrayList<>(from.toMeasure());
        toMeasure.addAll(to.toMeasure());
        if (from.hands() == null || to.cockpit() == null) {
            return new PositionTransfer(from, to, List.of(), null, null, List.of(), null, saddle(), toMeasure, toMind(null));
        }
        List<StemChoice> all = all(toMeasure);
        List<StemChoice> fitting = bestOfEach(all, FitResult.FitVerdict.FITS);
        StemChoice closest = fitting.isEmpty() ? null : fitting.get(0);
        return new PositionTransfer(from, to, fitting, advised(fitting, work(fitting)), unknown(all, closest), refused(all, fitting), wished(closest), saddle(), toMeasure, toMind(closest));
    }

    // Stem and spacers

    private List<StemChoice> all(List<String> toMeasure) {
        List<StemChoice> out = new ArrayList<>();
        List<SpacerStack> stacks = stacks();
        for (Part stem : workshop.parts()) {
            if (stem.kind() != PartKind.STEM || !stem.owned() || stays(stem)) {
                continue;
            }
            PartDetail missing = missing(stem);
            if (missing != null) {
                toMeasure.add("measure the " + missing.written() + " of " + stem);
                continue;
            }
            boolean level = stem.number(PartDetail.STEM_ANGLE) == 0;
            for (SpacerStack stack : stacks) {
                out.add(choice(stem, false, stack));
                if (!level && !Boolean.FALSE.equals(stem.yes(PartDetail.TURNS_OVER))) {
                    out.add(choice(stem, true, stack));
                }
            }
        }
        return out;
    }

    private List<SpacerStack> stacks() {
        return SpacerStack.all(workshop, to.bike(), to.parts().get(MountingPlace.FORK), to.parts().get(MountingPlace.SPACERS));
    }

    private boolean stays(Part stem) {
        return !stem.mayServe(to.bike());
    }

    private static PartDetail missing(Part stem) {
        for (PartDetail needed : new PartDetail[] {PartDetail.STEM_LENGTH, PartDetail.STEM_ANGLE, PartDetail.CLAMP_HEIGHT}) {
            if (!stem.has(needed)) {
                return needed;
            }
        }
        return null;
    }

    private StemChoice choice(Part stem, boolean turned, SpacerStack stack) {
        double angle = stem.number(PartDetail.STEM_ANGLE) * (turned ? -1 : 1) + 0.0;
        Point hands = to.cockpit().with(to.bike().number(PartDetail.HEADSET_COVER) + stack.height(), stem.number(PartDetail.CLAMP_HEIGHT),
                stem.number(PartDetail.STEM_LENGTH), angle).hands();
        boolean asNow = stem == to.parts().get(MountingPlace.STEM) && !turned && Math.abs(stack.height() - underNow()) < TICK;
        return new StemChoice(stem, turned, angle, stack.height(), stack.byPart(), above(stem, stack),
                hands.forward() - from.hands().forward(), hands.up() - from.hands().up(), fit(stem, turned, stack), asNow);
    }

    private double underNow() {
        Part spacers = to.parts().get(MountingPlace.SPACERS);
        return spacers == null ? 0 : spacers.number(PartDetail.HEIGHT);
    }

    private Double above(Part stem, SpacerStack stack) {
        Part fork = to.parts().get(MountingPlace.FORK);
        Double steerer = fork == null ? null : fork.number(PartDetail.STEERER_LENGTH);
        Double head = to.bike().number(PartDetail.HEAD_TUBE);
        return steerer == null || head == null ? null : Double.valueOf(steerer - head - stem.number(PartDetail.CLAMP_HEIGHT) - stack.height());
    }

    /** What does not fit before what is not known. */
    private FitResult fit(Part stem, boolean turned, SpacerStack stack) {
        Part fork = to.parts().get(MountingPlace.FORK);
        List<FitResult> fits = new ArrayList<>();
        fits.add(CockpitFit.barClamp(to.parts().get(MountingPlace.BAR), stem));
        fits.add(CockpitFit.stemLength(stem, to.bike()));
        fits.add(LoadFit.bears(stem, load));
        if (fork == null) {
            fits.add(new FitResult(FitResult.FitVerdict.UNKNOWN, "list the fork that is on " + to.bike()));
        } else {
            fits.add(CockpitFit.steererClamp(stem, fork));
            fits.add(CockpitFit.steererLength(fork, stem, stack.height(), to.bike()));
            fits.add(spacersPermitted(fork, stack));
        }
        if (turned && !stem.has(PartDetail.TURNS_OVER)) {
            fits.add(new FitResult(FitResult.FitVerdict.UNKNOWN, "find out whether " + stem + " may be mounted either way up"));
        }
        if (!stack.known()) {
            fits.add(new FitResult(FitResult.FitVerdict.UNKNOWN, stack.toMeasure(to.bike(), fork)));
        }
        return worst(fits);
    }

    private static FitResult worst(List<FitResult> fits) {
        FitResult worst = FitResult.FITS;
        for (FitResult each : fits) {
            worst = each.result().compareTo(worst.result()) > 0 ? each : worst;
        }
        return worst;
    }

    /** Where the fork's maker's limit is not known, no more than stands there now. */
    private FitResult spacersPermitted(Part fork, SpacerStack stack) {
        boolean known = fork.has(PartDetail.MOST_SPACERS) || stack.height() <= underNow() + TICK;
        return known ? FitResult.FITS : new FitResult(FitResult.FitVerdict.UNKNOWN, "find the most spacers under the stem that the maker of " + fork + " permits");
    }

    /** Of each stem the closest, the closest stem first; of equals what stands there, then what lies loose, then the least change. */
    private List<StemChoice> bestOfEach(List<StemChoice> all, FitResult.FitVerdict result) {
        List<StemChoice> sorted = new ArrayList<>();
        for (StemChoice choice : all) {
            if (choice.fit().result() == result) {
                sorted.add(choice);
            }
        }
        sorted.sort(Comparator.<StemChoice>comparingLong(choice -> Math.round(choice.apart() / TICK)).thenComparingInt(this::trouble));
        List<StemChoice> out = new ArrayList<>();
        for (StemChoice choice : sorted) {
            if (!has(out, choice.stem())) {
                out.add(choice);
            }
        }
        return out;
    }

    /**
     * The stem to fit, by the count of a build: a notch for each 5 mm that the hands are off, times 2, and the work of the swap. A stem that
     * is not known to fit is no reason to keep it.
     */
    private static StemChoice advised(List<StemChoice> fitting, Map<Part, Long> work) {
        StemChoice best = null;
        long least = 0;
        for (StemChoice choice : fitting) {
            long cost = WEIGHT * Math.round(choice.apart() / NOTCH) * BuildVariables.LOSS + work.get(choice.stem());
            if (best == null || cost < least) {
                best = choice;
                least = cost;
            }
        }
        return best;
    }

    /** What it takes to fit each stem; what comes off another bike counts twice, and with a stem that carries another bar the bar moves over. */
    private Map<Part, Long> work(List<StemChoice> fitting) {
        MountingEffort effort = new MountingEffort(workshop);
        Map<Part, Long> out = new HashMap<>();
        for (StemChoice choice : fitting) {
            Part stem = choice.stem();
            boolean there = stem.bike() == to.bike();
            boolean lent = stem.bike() != null && !there;
            boolean otherBar = workshop.parts().stream().anyMatch(part -> part.kind() == PartKind.BAR && part.on() == stem && part != to.parts().get(MountingPlace.BAR));
            long swap = there ? 0 : (lent ? 2 : 1) * effort.cost(PartKind.STEM);
            out.put(stem, swap + (otherBar ? effort.cost(PartKind.BAR) : 0));
        }
        return out;
    }

    private int trouble(StemChoice choice) {
        int stem = choice.stem().bike() == to.bike() ? 0 : choice.stem().on() == null ? 4 : 8;
        return stem + (choice.turned() ? 2 : 0) + (Math.abs(choice.under() - underNow()) < TICK ? 0 : 1);
    }

    private static boolean has(List<StemChoice> choices, Part stem) {
        for (StemChoice choice : choices) {
            if (choice.stem() == stem) {
                return true;
            }
        }
        return false;
    }

    private StemChoice unknown(List<StemChoice> all, StemChoice closest) {
        List<StemChoice> unknown = bestOfEach(all, FitResult.FitVerdict.UNKNOWN);
        boolean worth = !unknown.isEmpty() && (closest == null || unknown.get(0).apart() < closest.apart() - WORTH_MEASURING);
        return worth ? unknown.get(0) : null;
    }

    /** Stems that fit on no stack. */
    private List<StemChoice> refused(List<StemChoice> all, List<StemChoice> fitting) {
        List<StemChoice> out = new ArrayList<>();
        List<StemChoice> unknown = bestOfEach(all, FitResult.FitVerdict.UNKNOWN);
        for (StemChoice choice : bestOfEach(all, FitResult.FitVerdict.DOES_NOT_FIT)) {
            if (!has(fitting, choice.stem()) && !has(unknown, choice.stem())) {
                out.add(choice);
            }
        }
        return out;
    }

    private StemChoice wished(StemChoice closest) {
        List<StemChoice> all = new ArrayList<>();
        for (int angle : ANGLES) {
            for (int length : LENGTHS) {
                Part stem = common(length, angle);
                for (SpacerStack stack : stacks()) {
                    all.add(choice(stem, false, stack));
                }
            }
        }
        List<StemChoice> fitting = bestOfEach(all, FitResult.FitVerdict.FITS);
        boolean worth = !fitting.isEmpty() && (closest == null || fitting.get(0).apart() < closest.apart() - WORTH_BUYING);
        return worth ? fitting.get(0) : null;
    }

    /** A stem that is nowhere: its clamps as the bike needs them, as high as that of the stem on it. */
    private Part common(int length, int angle) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        details.put(PartDetail.STEM_LENGTH, length / 1000.0);
        details.put(PartDetail.STEM_ANGLE, (double) angle);
        copy(details, to.parts().get(MountingPlace.STEM), PartDetail.CLAMP_HEIGHT);
        copy(details, to.parts().get(MountingPlace.FORK), PartDetail.STEERER_CLAMP);
        copy(details, to.parts().get(MountingPlace.BAR), PartDetail.BAR_CLAMP);
        return new Part("a stem of " + length + " mm at " + angle + " deg", PartKind.STEM, 0, details);
    }

    private static void copy(Map<PartDetail, Object> to, Part part, PartDetail detail) {
        if (part != null && part.has(detail)) {
            to.put(detail, part.number(detail));
        }
    }

    // Saddle

    private Saddle saddle() {
        Double longer = difference(to.crankLength(), from.crankLength());
        Double height = difference(from.saddleHeight(), longer == null ? Double.valueOf(0) : longer);
        Part post = to.parts().get(MountingPlace.SEATPOST);
        Part saddle = to.parts().get(MountingPlace.SADDLE);
        FitResult fit = height == null || post == null || saddle == null ? null : SeatFit.postInsertion(post, saddle, to.bike(), height);
        List<Part> others = fit == null || fit.fits() ? List.of() : otherPosts(saddle, height);
        return new Saddle(height, longer, from.saddleSetback(), onRails(height), post, fit, others);
    }

    private List<Part> otherPosts(Part saddle, double height) {
        List<Part> out = new ArrayList<>();
        for (Part post : workshop.parts()) {
            if (post.kind() == PartKind.SEATPOST && post.on() == null && post.owned() && SeatFit.postDiameter(post, to.bike()).fits()
                    && SeatFit.rails(saddle, post).fits() && LoadFit.bears(post, load).fits()
                    && SeatFit.postInsertion(post, saddle, to.bike(), height).fits()) {
                out.add(post);
            }
        }
        return out;
    }

    /**
     * How far ahead of the post's clamp a saddle's tip is on either bike: the clamp lies on the line of the seat tube, behind the bottom
     * bracket by height times the cosine of its angle and by the post's setback. The difference is what the saddle moves on its rails.
     */
    private Double onRails(Double height) {
        Double here = clampBehind(from, from.saddleHeight());
        Double there = clampBehind(to, height);
        return from.saddleSetback() == null ? null : difference(there, here);
    }

    private static Double clampBehind(Position position, Double height) {
        Part post = position.parts().get(MountingPlace.SEATPOST);
        Double setback = post == null ? null : post.number(PartDetail.SETBACK);
        Double angle = position.seatAngle();
        return height == null || setback == null || angle == null ? null
                : Double.valueOf(-Point.BOTTOM_BRACKET.step(height, 180 - angle).forward() + setback);
    }

    private static Double difference(Double one, Double other) {
        return one == null || other == null ? null : Double.valueOf(one - other);
    }

    // What to mind

    private List<String> toMind(StemChoice closest) {
        List<String> out = new ArrayList<>(from.restsOn());
        out.addAll(to.restsOn());
        if (from.barShape() != null && to.barShape() != null && !from.barShape().equals(to.barShape())) {
            out.add(from.barShape() + " and " + to.barShape() + " bars put the hands in different places, so the place of the hands carries over only roughly");
        }
        if (difference(to.crankLength(), from.crankLength()) == null) {
            out.add("the saddle's height holds for cranks of one length: take off what the cranks of " + to.bike() + " are longer than those of "
                    + from.bike() + ", add what they are shorter");
        }
        if (closest != null && closest.stem().bike() != null && closest.stem().bike() != to.bike()) {
            out.add("without " + closest.stem() + " there is no stem on " + closest.stem().bike());
        }
        if (closest != null && load.rider() == null && closest.stem().has(PartDetail.RIDER_LIMIT)) {
            out.add("marked on " + closest.stem() + ": riders up to " + Math.round(closest.stem().number(PartDetail.RIDER_LIMIT)) + " kg");
        }
        return out;
    }
}
