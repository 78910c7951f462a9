package courseworthy.build;

import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The parts that realise a call on one bike of a workshop.
 *
 * @param workshop   its name; may be empty
 * @param bike       the bike; null where no bike of the workshop can be built within all limits
 * @param parts      what stands in each place that is listed, in the order of places
 * @param places     each place on the bike before and after, in the order of places; empty where no bike can be built
 * @param mass       kg, of everything whose mass is known
 * @param massNow    kg, as the bike stands now
 * @param unweighed  parts of the build, and the frame, whose mass is not known
 * @param swaps      what to change, in the order of work
 * @param plan       the work evening by evening
 * @param back       the work back to what is mounted now, on all bikes, in order
 * @param returns    what has to be back on another bike before that one is ridden
 * @param notMet     decisions that the build does not meet
 * @param toMind     what the rules of fit say of the build: what is not known, what to mind
 * @param inTheWay   where no bike can be built: what does not fit as each bike stands
 * @param pressures  what to start from with the tyres of the build, in sentences
 * @param set        the pressures to set with them, by topic, as text
 * @param wear       what is worn or is growing old, and what service falls due
 * @param lacking    what other bikes lack once parts are taken from them
 * @param position   the position of the bike that is trained on, carried over; null where that is this one, or is not said
 * @param worthwhile what is worth changing and what to leave alone; null where no bike can be built
 * @param count      what the search made as small as could be, term by term; null where no bike can be built
 * @param loss       what is lost against the decisions, in notches times their force; the less, the nearer to the call
 * @param leftOut    what there was no time for, and what is lost by it; null where there was time for all
 * @param spares     what lies loose and goes with the build, to be packed, in sentences without a full stop
 * @param after      where everything is with this build; null where no bike can be built
 */
public record Build(String workshop, Part bike, List<FittedPart> parts, List<PlaceChange> places, double mass, double massNow, List<Part> unweighed, List<Swap> swaps,
        WorkPlan plan, List<Swap> back, List<Return> returns, List<UnmetDecision> notMet, List<FitFinding> toMind, List<FitFinding> inTheWay, List<String> pressures, Map<String, String> set, List<WearNote> wear, List<String> lacking,
        PositionTransfer position, WorthwhileChanges worthwhile, BuildCount count, long loss, SeasonPlan.ClashChoice leftOut,
        List<String> spares, MountingState after) {

    public Build {
        parts = List.copyOf(parts);
        places = List.copyOf(places);
        unweighed = List.copyOf(unweighed);
        swaps = List.copyOf(swaps);
        back = List.copyOf(back);
        returns = List.copyOf(returns);
        notMet = List.copyOf(notMet);
        toMind = List.copyOf(toMind);
        inTheWay = List.copyOf(inTheWay);
        pressures = List.copyOf(pressures);
        set = Map.copyOf(set);
        wear = List.copyOf(wear);
        lacking = List.copyOf(lacking);
        spares = List.copyOf(spares);
    }

    /** The same with the work counted from another state of the bike. */
    Build after(List<Swap> work, WorkPlan evenings, double before) {
        return new Build(workshop, bike, parts, places, mass, before, unweighed, work, evenings, back, returns, notMet, toMind, inTheWay, pressures, set, wear, lacking, position,
                worthwhile, count, loss, leftOut, spares, after);
    }

    /** The same with the work on other evenings. */
    Build planned(WorkPlan evenings) {
        return after(swaps, evenings, massNow);
    }

    /**
     * The same with days by which parts return.
     *
     * @param next the next day on which a bike is ridden; null where there is none
     */
    Build returning(Function<Part, LocalDate> next) {
        List<Return> due = new ArrayList<>();
        returns.forEach(each -> due.add(new Return(each.part(), each.to(), each.bike(), next.apply(each.bike()))));
        return new Build(workshop, bike, parts, places, mass, massNow, unweighed, swaps, plan, back, due, notMet, toMind, inTheWay, pressures, set, wear, lacking,
                position, worthwhile, count, loss, leftOut, spares, after);
    }

    /** The same as what there was time for. @param choice what was left out, and what is lost by it */
    Build leaving(SeasonPlan.ClashChoice choice) {
        return new Build(workshop, bike, parts, places, mass, massNow, unweighed, swaps, plan, back, returns, notMet, toMind, inTheWay, pressures, set, wear, lacking,
                position, worthwhile, count, loss, choice, spares, after);
    }

    /** The same with more that is worn or falls due. */
    public Build wearing(List<WearNote> more) {
        List<WearNote> all = new ArrayList<>(wear);
        all.addAll(more);
        return new Build(workshop, bike, parts, places, mass, massNow, unweighed, swaps, plan, back, returns, notMet, toMind, inTheWay, pressures, set, all, lacking,
                position, worthwhile, count, loss, leftOut, spares, after);
    }

    /** The parts by place. */
    Map<MountingPlace, Part> inPlace() {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        for (FittedPart each : parts) {
            out.put(each.place(), each.part());
        }
        return out;
    }

    /** A part in its place. */
    public record FittedPart(MountingPlace place, Part part) {
    }

    /**
     * One part off and another on, with what each carries.
     *
     * @param bike    the bike that is worked on, or the wheel or crank that lies loose
     * @param place   where
     * @param off     what comes off; null for nothing
     * @param on      what goes on; null for nothing
     * @param with    what stands on that already and stays on it
     * @param over    the part of the same bike from which it moves over; null where it lies loose or comes from another bike
     * @param from    the bike it is taken from; null where it lies loose
     * @param grams   change of the bike's mass by this step; null where a mass is not known
     * @param work    what it takes
     * @param why     what it serves, in phrases: decisions with their value, what else goes on, grams
     */
    public record Swap(Part bike, MountingPlace place, Part off, Part on, List<Part> with, Part over, Part from, Long grams, SwapWork work,
            List<String> why) {
        public Swap {
            with = List.copyOf(with);
            why = List.copyOf(why);
        }

        /** Whether the rider falls or cannot stop where it is done badly (common practice, no source). */
        public boolean critical() {
            return switch (place.kind()) {
                case FORK, HEADSET, CROWN_RACE, WHEEL, TYRE, ROTOR, CALIPER, ADAPTER, PADS, CRANK, STEM, BAR, EXTENSIONS, PEDALS -> true;
                default -> false;
            };
        }

        Swap because(List<String> reasons) {
            return new Swap(bike, place, off, on, with, over, from, grams, work, reasons);
        }

        /** {@code Fit race carbon front, with its race rotor 180, in place of trail alloy front}. */
        public String what() {
            if (on == null) {
                return "Remove " + off;
            }
            String text = over != null ? "Move " + on + " across from " + over : "Fit " + on + itsParts();
            return off == null ? text : text + (over != null || !with.isEmpty() ? "," : "") + " in place of " + off;
        }

        private String itsParts() {
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < with.size(); i++) {
                out.append(i == 0 ? ", with its " : i == with.size() - 1 ? " and " : ", ").append(with.get(i));
            }
            return out.toString();
        }

        /** Where on the bike it is, in words. */
        public String where() {
            return place.words();
        }
    }

    /**
     * What a swap takes.
     *
     * @param minutes  an estimate, or as the workshop says
     * @param along    what comes along with it, and what else it changes, in sentences
     * @param after    what it asks for afterwards, in sentences
     * @param needs    what is used up
     * @param mechanic whether it is work for a qualified mechanic
     */
    public record SwapWork(double minutes, List<String> along, List<String> after, List<String> needs, boolean mechanic) {
        public SwapWork {
            along = List.copyOf(along);
            after = List.copyOf(after);
            needs = List.copyOf(needs);
        }

        /** Work that nothing comes along with. */
        public SwapWork(double minutes, List<String> after, List<String> needs, boolean mechanic) {
            this(minutes, List.of(), after, needs, mechanic);
        }
    }

    /**
     * A part that was lent, and goes back.
     *
     * @param part what goes back
     * @param to   what it was mounted on
     * @param bike the bike it was on
     * @param by   the day on which that bike is ridden next; null where that is not known
     */
    public record Return(Part part, Part to, Part bike, LocalDate by) {
    }

    /**
     * A decision that the build does not meet.
     *
     * @param topic  the topic's name
     * @param wanted the decision as text
     * @param got    what the build has; "not known" where the part does not say
     * @param part   what part would meet it, in words; empty where nothing can be said
     */
    public record UnmetDecision(String topic, String wanted, String got, String part) {
    }

    /** Whether fresh sealant goes in in the place of a part, since the tyre on that wheel is another. */
    public boolean renewed(FittedPart fitted) {
        MountingPlace place = fitted.place();
        return place.kind() == PartKind.SEALANT
                && swaps.stream().anyMatch(each -> each.place().kind() == PartKind.TYRE && each.place().host() == place.host() && each.on() != null);
    }

    /** Minutes of all swaps. */
    public double minutes() {
        return minutes(swaps);
    }

    /** Minutes of the work back. */
    public double minutesBack() {
        return minutes(back);
    }

    private static double minutes(List<Swap> swaps) {
        double sum = 0;
        for (Swap swap : swaps) {
            sum += swap.work().minutes();
        }
        return sum;
    }

    /** What is used up by the swaps, each once. */
    public List<String> needs() {
        Set<String> out = new LinkedHashSet<>();
        for (Swap swap : swaps) {
            out.addAll(swap.work().needs());
        }
        return List.copyOf(out);
    }

    public static Builder builder(String workshop, Part bike) {
        return new Builder(workshop, bike);
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private final String workshop;
        private final Part bike;
        private List<FittedPart> parts = List.of();
        private List<PlaceChange> places = List.of();
        private double mass;
        private double massNow;
        private List<Part> unweighed = List.of();
        private List<Swap> swaps = List.of();
        private WorkPlan plan = WorkPlan.NONE;
        private List<Swap> back = List.of();
        private List<Return> returns = List.of();
        private List<UnmetDecision> notMet = List.of();
        private List<FitFinding> toMind = List.of();
        private List<FitFinding> inTheWay = List.of();
        private List<String> pressures = List.of();
        private Map<String, String> set = Map.of();
        private List<WearNote> wear = List.of();
        private List<String> lacking = List.of();
        private PositionTransfer position;
        private WorthwhileChanges worthwhile;
        private BuildCount count;
        private long loss;
        private SeasonPlan.ClashChoice leftOut;
        private List<String> spares = List.of();
        private MountingState after;

        private Builder(String workshop, Part bike) {
            this.workshop = workshop;
            this.bike = bike;
        }

        public Builder parts(List<FittedPart> value) {
            parts = value;
            return this;
        }

        public Builder places(List<PlaceChange> value) {
            places = value;
            return this;
        }

        public Builder mass(double value) {
            mass = value;
            return this;
        }

        public Builder massNow(double value) {
            massNow = value;
            return this;
        }

        public Builder unweighed(List<Part> value) {
            unweighed = value;
            return this;
        }

        public Builder swaps(List<Swap> value) {
            swaps = value;
            return this;
        }

        public Builder plan(WorkPlan value) {
            plan = value;
            return this;
        }

        public Builder back(List<Swap> value) {
            back = value;
            return this;
        }

        public Builder returns(List<Return> value) {
            returns = value;
            return this;
        }

        public Builder notMet(List<UnmetDecision> value) {
            notMet = value;
            return this;
        }

        public Builder toMind(List<FitFinding> value) {
            toMind = value;
            return this;
        }

        public Builder inTheWay(List<FitFinding> value) {
            inTheWay = value;
            return this;
        }

        public Builder pressures(List<String> value) {
            pressures = value;
            return this;
        }

        public Builder set(Map<String, String> value) {
            set = value;
            return this;
        }

        public Builder wear(List<WearNote> value) {
            wear = value;
            return this;
        }

        public Builder lacking(List<String> value) {
            lacking = value;
            return this;
        }

        public Builder position(PositionTransfer value) {
            position = value;
            return this;
        }

        public Builder worthwhile(WorthwhileChanges value) {
            worthwhile = value;
            return this;
        }

        public Builder count(BuildCount value) {
            count = value;
            return this;
        }

        public Builder loss(long value) {
            loss = value;
            return this;
        }

        public Builder spares(List<String> value) {
            spares = value;
            return this;
        }

        public Builder after(MountingState value) {
            after = value;
            return this;
        }

        public Build build() {
            return new Build(workshop, bike, parts, places, mass, massNow, unweighed, swaps, plan, back, returns, notMet, toMind, inTheWay, pressures, set, wear,
                    lacking, position, worthwhile, count, loss, leftOut, spares, after);
        }
    }
}
