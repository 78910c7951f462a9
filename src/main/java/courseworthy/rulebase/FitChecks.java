package courseworthy.rulebase;

import static courseworthy.workshop.Place.*;

import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The rules of fit as a plain table: which places each question joins. The search for a build asks these many thousand times; the
 * rules under {@code rules/fit} ask the same questions of a whole bike, with reasons, and a test holds both to the same answers.
 */
public final class FitChecks {

    /** A question of some parts in their places. */
    @FunctionalInterface
    public interface Question {
        Fit ask(Part bike, Load load, Part[] parts);
    }

    /**
     * One rule on some places.
     *
     * @param rule     its id under {@code rules/fit}
     * @param places   the places it joins; none for the frame by itself
     * @param optional a place that may be empty, null where none may
     * @param question what it asks
     */
    public record Check(String rule, List<Place> places, Place optional, Question question) {

        /** Fits where a part it asks of is not there. */
        public Fit on(Part bike, Load load, Map<Place, Part> mounted) {
            Part[] parts = new Part[places.size()];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = mounted.get(places.get(i));
                if (parts[i] == null && places.get(i) != optional) {
                    return Fit.FITS;
                }
            }
            return question.ask(bike, load, parts);
        }
    }

    private static final List<Check> ALL = new ArrayList<>();

    static {
        add("one-bead-seat", (bike, load, p) -> Fitting.beadSeat(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("tyre-on-rim", (bike, load, p) -> Fitting.tyreOnRim(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("hookless-rim", (bike, load, p) -> Fitting.hookless(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("front-tyre-clears-the-fork", (bike, load, p) -> Fitting.clears(p[0], p[1], p[2]), on(FRONT_TYRE, FRONT_WHEEL, FORK));
        add("rear-tyre-clears-the-frame", (bike, load, p) -> Fitting.clears(p[0], p[1], bike), on(REAR_TYRE, REAR_WHEEL));
        add("valve-through-the-rim", (bike, load, p) -> Fitting.valve(p[0]), on(FRONT_WHEEL), on(REAR_WHEEL));
        add("front-axle", (bike, load, p) -> Fitting.axle(p[0], p[1]), on(FRONT_WHEEL, FORK));
        add("rear-axle", (bike, load, p) -> Fitting.axle(p[0], bike), on(REAR_WHEEL));
        add("sealant-in-a-tubeless-rim", (bike, load, p) -> Fitting.tubeless(p[1], "sealant"), on(FRONT_SEALANT, FRONT_WHEEL),
                on(REAR_SEALANT, REAR_WHEEL));
        add("sealant-in-a-tubeless-tyre", (bike, load, p) -> Fitting.tubeless(p[1], "sealant"), on(FRONT_SEALANT, FRONT_TYRE),
                on(REAR_SEALANT, REAR_TYRE));
        add("insert-in-its-tyre", (bike, load, p) -> Fitting.insert(p[0], p[1]), on(FRONT_INSERT, FRONT_TYRE),
                on(REAR_INSERT, REAR_TYRE));
        add("front-tyre-no-narrower", (bike, load, p) -> Fitting.widthsInOrder(p[0], p[1]), on(FRONT_TYRE, REAR_TYRE));
        add("front-tread-no-faster", (bike, load, p) -> Fitting.treadsInOrder(p[0], p[1]), on(FRONT_TYRE, REAR_TYRE));
        add("rotor-mount", (bike, load, p) -> Fitting.rotorMount(p[0], p[1]), on(FRONT_ROTOR, FRONT_WHEEL),
                on(REAR_ROTOR, REAR_WHEEL));
        add("front-rotor-size", (bike, load, p) -> Fitting.rotorSize(p[0], p[1]), on(FRONT_ROTOR, FORK));
        add("rear-rotor-size", (bike, load, p) -> Fitting.rotorSize(p[0], bike), on(REAR_ROTOR));
        add("pads-the-rotor-permits", (bike, load, p) -> Fitting.padsPermitted(p[0], p[1]), on(FRONT_PADS, FRONT_ROTOR),
                on(REAR_PADS, REAR_ROTOR));
        add("pad-shape", (bike, load, p) -> Fitting.padShape(p[0], bike), on(FRONT_PADS), on(REAR_PADS));
        add("front-rotor-no-smaller", (bike, load, p) -> Fitting.rotorsInOrder(p[0], p[1]), on(FRONT_ROTOR, REAR_ROTOR));
        add("freehub", (bike, load, p) -> Fitting.freehub(p[0], p[1]), on(CASSETTE, REAR_WHEEL));
        add("speeds-of-shifter", (bike, load, p) -> Fitting.speeds(p[0], p[1]), on(SHIFTER, CASSETTE));
        add("speeds-of-chain", (bike, load, p) -> Fitting.speeds(p[0], p[1]), on(CHAIN, CASSETTE));
        add("speeds-of-derailleur", (bike, load, p) -> Fitting.speeds(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("one-family-of-shifter-and-derailleur", (bike, load, p) -> Fitting.family(p[0], p[1]), on(SHIFTER, DERAILLEUR));
        add("one-family-of-derailleur-and-cassette", (bike, load, p) -> Fitting.family(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("one-family-of-chain-and-cassette", (bike, load, p) -> Fitting.family(p[0], p[1]), on(CHAIN, CASSETTE));
        add("largest-sprocket", (bike, load, p) -> Fitting.largestSprocket(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("derailleur-capacity", (bike, load, p) -> Fitting.capacity(p[0], p[1], p[2]), on(DERAILLEUR, CASSETTE, CHAINRING));
        add("chainring-clears-the-frame", (bike, load, p) -> Fitting.ringsOnFrame(p[0], bike), on(CHAINRING));
        add("chainline", (bike, load, p) -> Fitting.chainline(p[0], bike), on(CRANK));
        add("bottom-bracket", (bike, load, p) -> Fitting.bottomBracket(p[0], bike), on(CRANK));
        add("ring-mount", (bike, load, p) -> Fitting.ringMount(p[0], p[1]), on(CHAINRING, CRANK));
        add("chain-length", (bike, load, p) -> Fitting.chainLength(p[0], p[1], p[2], bike), on(CHAIN, CASSETTE, CHAINRING));
        add("derailleur-mount", (bike, load, p) -> Fitting.derailleurMount(p[0], bike), on(DERAILLEUR));
        add("pedal-thread", (bike, load, p) -> Fitting.pedalThread(p[0], p[1]), on(PEDALS, CRANK));
        add("meter-mount", (bike, load, p) -> Fitting.meterMount(p[0], p[1]), on(METER, CRANK));
        add("steerer-in-the-head-tube", (bike, load, p) -> Fitting.steerer(p[0], bike), on(FORK));
        add("fork-travel", (bike, load, p) -> Fitting.forkTravel(p[0], bike), on(FORK));
        add("fork-length", (bike, load, p) -> Fitting.forkLength(p[0], bike), on(FORK));
        add("front-and-rear-travel", (bike, load, p) -> Fitting.travelInBalance(p[0], bike), on(FORK));
        add("shock-in-the-frame", (bike, load, p) -> Fitting.shock(p[0], bike), on(SHOCK));
        add("stem-on-the-steerer", (bike, load, p) -> Fitting.steererClamp(p[0], p[1]), on(STEM, FORK));
        add("stem-the-frame-permits", (bike, load, p) -> Fitting.stemLength(p[0], bike), on(STEM));
        add("bar-in-the-stem", (bike, load, p) -> Fitting.barClamp(p[0], p[1]), on(BAR, STEM));
        add("levers-on-the-bar", (bike, load, p) -> Fitting.barShape(p[0], p[1]), on(SHIFTER, BAR));
        add("extensions-on-the-bar", (bike, load, p) -> Fitting.extensions(p[0], p[1]), on(EXTENSIONS, BAR));
        add("post-in-the-seat-tube", (bike, load, p) -> Fitting.postDiameter(p[0], bike), on(SEATPOST));
        add("post-deep-enough", (bike, load, p) -> Fitting.postInsertion(p[0], p[1], bike), on(SEATPOST, SADDLE));
        add("saddle-on-the-post", (bike, load, p) -> Fitting.rails(p[0], p[1]), on(SADDLE, SEATPOST));
        ALL.add(new Check("steerer-length", on(FORK, STEM, SPACERS), SPACERS,
                (bike, load, p) -> Fitting.steererLength(p[0], p[1], p[2], bike)));
        add("marked-mass", (bike, load, p) -> Fitting.bears(bike, load), List.of());
        add("marked-category", (bike, load, p) -> Fitting.drops(bike, load), List.of());
        for (Place place : Place.values()) {
            add("marked-mass", (bike, load, p) -> Fitting.bears(p[0], load), on(place));
            add("marked-category", (bike, load, p) -> Fitting.drops(p[0], load), on(place));
        }
    }

    private FitChecks() {
    }

    /** Every rule on every set of places it joins. */
    public static List<Check> all() {
        return java.util.Collections.unmodifiableList(ALL);
    }

    private static List<Place> on(Place... places) {
        return List.of(places);
    }

    @SafeVarargs
    private static void add(String rule, Question question, List<Place>... scopes) {
        for (List<Place> scope : scopes) {
            ALL.add(new Check(rule, scope, null, question));
        }
    }
}
