package courseworthy.fit;

import static courseworthy.workshop.MountingPlace.*;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
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
        FitResult ask(Part bike, BuildLoad load, Part[] parts);
    }

    /**
     * One rule on some places.
     *
     * @param rule     its id under {@code rules/fit}
     * @param places   the places it joins; none for the frame by itself
     * @param optional a place that may be empty, null where none may
     * @param question what it asks
     */
    public record Check(String rule, List<MountingPlace> places, MountingPlace optional, Question question) {

        /** The same of other places, without the one that may be empty, which stays so. */
        public Check withoutOptional() {
            List<MountingPlace> rest = new ArrayList<>(places);
            rest.remove(optional);
            return new Check(rule, rest, null, (bike, load, parts) -> question.ask(bike, load, java.util.Arrays.copyOf(parts, places.size())));
        }

        /** Fits where a part it asks of is not there. */
        public FitResult on(Part bike, BuildLoad load, Map<MountingPlace, Part> mounted) {
            Part[] parts = new Part[places.size()];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = mounted.get(places.get(i));
                if (parts[i] == null && places.get(i) != optional) {
                    return FitResult.FITS;
                }
            }
            return question.ask(bike, load, parts);
        }
    }

    private static final List<Check> ALL = new ArrayList<>();

    static {
        add("one-bead-seat", (bike, load, p) -> WheelFit.beadSeat(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("tyre-on-rim", (bike, load, p) -> WheelFit.tyreOnRim(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("hookless-rim", (bike, load, p) -> WheelFit.hookless(p[0], p[1]), on(FRONT_TYRE, FRONT_WHEEL),
                on(REAR_TYRE, REAR_WHEEL));
        add("front-tyre-clears-the-fork", (bike, load, p) -> WheelFit.clears(p[0], p[1], p[2]), on(FRONT_TYRE, FRONT_WHEEL, FORK));
        add("rear-tyre-clears-the-frame", (bike, load, p) -> WheelFit.clears(p[0], p[1], bike), on(REAR_TYRE, REAR_WHEEL));
        add("valve-through-the-rim", (bike, load, p) -> WheelFit.valve(p[0]), on(FRONT_WHEEL), on(REAR_WHEEL));
        add("front-axle", (bike, load, p) -> WheelFit.axle(p[0], p[1]), on(FRONT_WHEEL, FORK));
        add("rear-axle", (bike, load, p) -> WheelFit.axle(p[0], bike), on(REAR_WHEEL));
        add("sealant-in-a-tubeless-rim", (bike, load, p) -> WheelFit.tubeless(p[1], "sealant"), on(FRONT_SEALANT, FRONT_WHEEL),
                on(REAR_SEALANT, REAR_WHEEL));
        add("sealant-in-a-tubeless-tyre", (bike, load, p) -> WheelFit.tubeless(p[1], "sealant"), on(FRONT_SEALANT, FRONT_TYRE),
                on(REAR_SEALANT, REAR_TYRE));
        add("insert-in-its-tyre", (bike, load, p) -> WheelFit.insert(p[0], p[1]), on(FRONT_INSERT, FRONT_TYRE),
                on(REAR_INSERT, REAR_TYRE));
        add("front-tyre-no-narrower", (bike, load, p) -> WheelFit.widthsInOrder(p[0], p[1]), on(FRONT_TYRE, REAR_TYRE));
        add("front-tread-no-faster", (bike, load, p) -> WheelFit.treadsInOrder(p[0], p[1]), on(FRONT_TYRE, REAR_TYRE));
        add("rotor-mount", (bike, load, p) -> BrakeFit.rotorMount(p[0], p[1]), on(FRONT_ROTOR, FRONT_WHEEL),
                on(REAR_ROTOR, REAR_WHEEL));
        add("front-rotor-size", (bike, load, p) -> BrakeFit.rotorSize(p[0], p[1]), on(FRONT_ROTOR, FORK));
        add("rear-rotor-size", (bike, load, p) -> BrakeFit.rotorSize(p[0], bike), on(REAR_ROTOR));
        add("pads-the-rotor-permits", (bike, load, p) -> BrakeFit.padsPermitted(p[0], p[1]), on(FRONT_PADS, FRONT_ROTOR),
                on(REAR_PADS, REAR_ROTOR));
        optional("pad-shape", (bike, load, p) -> BrakeFit.padShape(p[0], p[1], bike), on(FRONT_PADS, FRONT_CALIPER), on(REAR_PADS, REAR_CALIPER));
        optional("front-rotor-adapter", (bike, load, p) -> BrakeFit.adapterForRotor(p[0], p[2], p[1]), on(FRONT_ROTOR, FORK, FRONT_ADAPTER));
        optional("rear-rotor-adapter", (bike, load, p) -> BrakeFit.adapterForRotor(p[0], p[1], bike), on(REAR_ROTOR, REAR_ADAPTER));
        add("front-adapter-on-the-fork", (bike, load, p) -> BrakeFit.adapterMount(p[0], p[1]), on(FRONT_ADAPTER, FORK));
        add("rear-adapter-on-the-frame", (bike, load, p) -> BrakeFit.adapterMount(p[0], bike), on(REAR_ADAPTER));
        optional("front-caliper-on-its-mount", (bike, load, p) -> BrakeFit.caliperMount(p[0], p[2], p[1]), on(FRONT_CALIPER, FORK, FRONT_ADAPTER));
        optional("rear-caliper-on-its-mount", (bike, load, p) -> BrakeFit.caliperMount(p[0], p[1], bike), on(REAR_CALIPER, REAR_ADAPTER));
        add("front-hose-reaches", (bike, load, p) -> BrakeFit.frontHose(p[0], p[1], bike), on(FRONT_CALIPER, FORK));
        add("caliper-and-levers", (bike, load, p) -> BrakeFit.actuation(p[0], p[1]), on(FRONT_CALIPER, SHIFTER), on(REAR_CALIPER, SHIFTER));
        add("rear-hose-reaches", (bike, load, p) -> BrakeFit.rearHose(p[0], bike), on(REAR_CALIPER));
        add("front-rotor-no-smaller", (bike, load, p) -> BrakeFit.rotorsInOrder(p[0], p[1]), on(FRONT_ROTOR, REAR_ROTOR));
        add("freehub", (bike, load, p) -> DrivetrainFit.freehub(p[0], p[1]), on(CASSETTE, REAR_WHEEL));
        add("speeds-of-shifter", (bike, load, p) -> DrivetrainFit.speeds(p[0], p[1]), on(SHIFTER, CASSETTE));
        add("speeds-of-chain", (bike, load, p) -> DrivetrainFit.speeds(p[0], p[1]), on(CHAIN, CASSETTE));
        add("speeds-of-derailleur", (bike, load, p) -> DrivetrainFit.speeds(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("one-family-of-shifter-and-derailleur", (bike, load, p) -> DrivetrainFit.family(p[0], p[1]), on(SHIFTER, DERAILLEUR));
        add("one-family-of-derailleur-and-cassette", (bike, load, p) -> DrivetrainFit.family(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("one-family-of-chain-and-cassette", (bike, load, p) -> DrivetrainFit.family(p[0], p[1]), on(CHAIN, CASSETTE));
        add("largest-sprocket", (bike, load, p) -> DrivetrainFit.largestSprocket(p[0], p[1]), on(DERAILLEUR, CASSETTE));
        add("derailleur-capacity", (bike, load, p) -> DrivetrainFit.capacity(p[0], p[1], p[2]), on(DERAILLEUR, CASSETTE, CHAINRING));
        add("chainring-clears-the-frame", (bike, load, p) -> DrivetrainFit.ringsOnFrame(p[0], bike), on(CHAINRING));
        add("chainline", (bike, load, p) -> DrivetrainFit.chainline(p[0], bike), on(CRANK));
        optional("bottom-bracket", (bike, load, p) -> DrivetrainFit.bottomBracket(p[0], p[1], bike), on(CRANK, BOTTOM_BRACKET));
        add("bottom-bracket-in-the-shell", (bike, load, p) -> DrivetrainFit.shell(p[0], bike), on(BOTTOM_BRACKET));
        add("battery-of-the-derailleur", (bike, load, p) -> DrivetrainFit.battery(p[0], p[1]), on(BATTERY, DERAILLEUR));
        add("ring-mount", (bike, load, p) -> DrivetrainFit.ringMount(p[0], p[1]), on(CHAINRING, CRANK));
        add("chain-length", (bike, load, p) -> DrivetrainFit.chainLength(p[0], p[1], p[2], bike), on(CHAIN, CASSETTE, CHAINRING));
        add("derailleur-mount", (bike, load, p) -> DrivetrainFit.derailleurMount(p[0], bike), on(DERAILLEUR));
        add("pedal-thread", (bike, load, p) -> DrivetrainFit.pedalThread(p[0], p[1]), on(PEDALS, CRANK));
        add("meter-mount", (bike, load, p) -> DrivetrainFit.meterMount(p[0], p[1]), on(METER, CRANK));
        optional("steerer-in-the-head-tube", (bike, load, p) -> SuspensionFit.steerer(p[0], p[1], bike), on(FORK, HEADSET));
        add("headset-in-the-head-tube", (bike, load, p) -> SuspensionFit.headset(p[0], bike), on(HEADSET));
        add("crown-race-on-the-fork", (bike, load, p) -> SuspensionFit.raceOnTheFork(p[0], p[1]), on(CROWN_RACE, FORK));
        add("crown-race-of-the-headset", (bike, load, p) -> SuspensionFit.raceOfTheHeadset(p[0], p[1]), on(CROWN_RACE, HEADSET));
        optional("lockout-remote", (bike, load, p) -> SuspensionFit.lockoutRemote(p[0], p[1]), on(FORK, LOCKOUT_REMOTE), on(SHOCK, LOCKOUT_REMOTE));
        add("fork-travel", (bike, load, p) -> SuspensionFit.forkTravel(p[0], bike), on(FORK));
        add("fork-length", (bike, load, p) -> SuspensionFit.forkLength(p[0], bike), on(FORK));
        add("front-and-rear-travel", (bike, load, p) -> SuspensionFit.travelInBalance(p[0], bike), on(FORK));
        add("shock-in-the-frame", (bike, load, p) -> SuspensionFit.shock(p[0], bike), on(SHOCK));
        add("stem-on-the-steerer", (bike, load, p) -> CockpitFit.steererClamp(p[0], p[1]), on(STEM, FORK));
        add("stem-the-frame-permits", (bike, load, p) -> CockpitFit.stemLength(p[0], bike), on(STEM));
        add("bar-in-the-stem", (bike, load, p) -> CockpitFit.barClamp(p[0], p[1]), on(BAR, STEM));
        add("levers-on-the-bar", (bike, load, p) -> CockpitFit.barShape(p[0], p[1]), on(SHIFTER, BAR));
        add("extensions-on-the-bar", (bike, load, p) -> CockpitFit.extensions(p[0], p[1]), on(EXTENSIONS, BAR));
        add("post-in-the-seat-tube", (bike, load, p) -> SeatFit.postDiameter(p[0], bike), on(SEATPOST));
        add("post-deep-enough", (bike, load, p) -> SeatFit.postInsertion(p[0], p[1], bike), on(SEATPOST, SADDLE));
        add("dropper-routing", (bike, load, p) -> SeatFit.dropperRouting(p[0], bike), on(SEATPOST));
        optional("dropper-remote", (bike, load, p) -> SeatFit.dropperRemote(p[0], p[1]), on(SEATPOST, DROPPER_REMOTE));
        add("saddle-on-the-post", (bike, load, p) -> SeatFit.rails(p[0], p[1]), on(SADDLE, SEATPOST));
        optional("steerer-length", (bike, load, p) -> CockpitFit.steererLength(p[0], p[1], p[2], bike), on(FORK, STEM, SPACERS));
        add("marked-mass", (bike, load, p) -> LoadFit.bears(bike, load), List.of());
        add("marked-category", (bike, load, p) -> LoadFit.ledges(bike, load), List.of());
        for (MountingPlace place : MountingPlace.values()) {
            add("marked-mass", (bike, load, p) -> LoadFit.bears(p[0], load), on(place));
            add("marked-category", (bike, load, p) -> LoadFit.ledges(p[0], load), on(place));
        }
    }

    private FitChecks() {
    }

    /** Every rule on every set of places it joins. */
    public static List<Check> all() {
        return java.util.Collections.unmodifiableList(ALL);
    }

    private static List<MountingPlace> on(MountingPlace... places) {
        return List.of(places);
    }

    /** The last place of each scope may be empty. */
    @SafeVarargs
    private static void optional(String rule, Question question, List<MountingPlace>... scopes) {
        for (List<MountingPlace> scope : scopes) {
            ALL.add(new Check(rule, scope, scope.get(scope.size() - 1), question));
        }
    }

    @SafeVarargs
    private static void add(String rule, Question question, List<MountingPlace>... scopes) {
        for (List<MountingPlace> scope : scopes) {
            ALL.add(new Check(rule, scope, null, question));
        }
    }
}
