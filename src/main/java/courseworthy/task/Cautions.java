package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.StageRace;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.RuleValue;
import java.util.ArrayList;
import java.util.List;

/** What to watch with a recommendation, each sentence with the condition on which it is given. */
public final class Cautions {

    private final Call call;
    private final Event event;
    private final List<Caution> said = new ArrayList<>();

    private Cautions(Call call, Event event) {
        this.call = call;
        this.event = event;
    }

    /** Those that apply, on the bike first. */
    public static List<Caution> of(Call call, Event event) {
        Cautions cautions = new Cautions(call, event);
        cautions.onStage();
        cautions.onPressure();
        cautions.onBikeAtHand();
        cautions.onWork();
        cautions.onLimits();
        cautions.onGearLimit();
        cautions.onExtensions();
        cautions.onTheDay();
        cautions.onInjuries();
        return cautions.said;
    }

    private void onStage() {
        StageRace race = event.plan().race();
        warn(race != null, race == null ? "" : "This is stage " + race.number() + " of " + race.stages().size() + ", set up for the day alone. One set-up for all days: courseworthy stages "
                + event.file());
    }

    private void onPressure() {
        wheel(End.FRONT, Measure.FRONT_REFERENCE_PRESSURE, Measure.NARROWEST_FRONT_TYRE);
        wheel(End.REAR, Measure.REAR_REFERENCE_PRESSURE, Measure.NARROWEST_REAR_TYRE);
        say(true,
                "Markings on the part, the manufacturer's instructions and the event's rules take precedence over this page.");
        say(decided(Topics.FRONT_TYRE_PRESSURE) || decided(Topics.REAR_TYRE_PRESSURE),
                "Never pump above the lower of the pressures marked on tyre and rim. On hookless rims never above " + RuleValue.HOOKLESS_PRESSURE.text()
                        + ", and only tyres marked for them.");
    }

    private void onBikeAtHand() {
        String atHand = word(Measure.BIKE_AT_HAND);
        String called = call.on(Topics.BIKE).text();
        warn(call.demands().setsFiguresAside(),
                "Rims, markings, clearance and whatever else your files give for your " + atHand + " bike apply to no other. They are not known for the " + called
                        + " bike recommended here: give them under bike, with its kind.");
        warn(!atHand.isEmpty() && decided(Topics.BIKE) && !atHand.equals(called) && !call.demands().setsFiguresAside(),
                "Your files give a " + atHand + " bike. Nothing is known of the " + called + " bike recommended here: give its rims, markings and"
                        + " clearance under bike, with its kind.");
    }

    private void onWork() {
        say(!known(Measure.LOWER_MARKED_PRESSURE),
                "The pressure markings of this bike are not given: read both tyres and both rims before you pump.");
        say(!known(Measure.HOOKLESS),
                "Whether the rims are hookless is not given: find out before you choose tyre and pressure.");
        say(true,
                "Tighten to the torque marked on the part. Leave brakes, and any work you are not sure of, to a qualified"
                        + " mechanic.");
        say(true,
                "Mix parts of different brands, speeds or standards only where their manufacturers say they fit.");
    }

    private void onLimits() {
        // Brakes are tested for 100 kg in all, more where more is marked (ISO 4210-4, 2017 adoption).
        warn(over(Measure.START_LINE_MASS, RuleValue.HEAVY_LOAD.inBase()) && !known(Measure.BIKE_MASS_LIMIT),
                "You, your kit and the bike weigh about " + word(Measure.START_LINE_MASS) + " at the start, and the mass limit of the bike is"
                        + " not given: read it on frame, wheels, stem and seatpost, and ride nothing marked for less.");
        warn(over(Measure.LEDGE_HEIGHT, 0) && !known(Measure.BIKE_LEDGE_LIMIT),
                "This course has ledges to ride down, and the intended-use category marked on the frame is not given: read it, and walk"
                        + " what is above it.");
        warn(over(Measure.BRAKING_POWER, RuleValue.BRAKE_HEAT_TEST.inBase()),
                "On the hardest quarter of an hour down, both brakes together turn about " + word(Measure.BRAKING_POWER) + " into heat. One"
                        + " brake by itself is tested at " + RuleValue.BRAKE_HEAT_TEST.text() + " or so: share the work between both, start with thick pads and sound fluid, brake late and hard"
                        + " rather than dragging, front and rear in turn, and stop to let them cool when a lever comes nearer the grip.");
    }

    private void onGearLimit() {
        Decision hardest = call.on(Topics.HARDEST_GEAR);
        MeasureValue allowed = call.demands().get(Measure.HARDEST_GEAR_ALLOWED);
        if (hardest == null || hardest.value() == null || allowed == null) {
            return;
        }
        String limit = "The event allows this rider at most " + word(Measure.DEVELOPMENT_ALLOWED) + " a turn of the cranks";
        if (hardest.value() > allowed.low()) {
            warn(true, limit + ", and " + hardest.text() + " goes further; no common chainring and cassette combination keeps to it, with sprockets blocked off"
                    + " either. Ask the event what may be ridden.");
            return;
        }
        warn(ShippedRules.realPairs().with(call.on(Topics.BIKE).text(), value(Topics.EASIEST_GEAR), hardest.value(), value(Topics.LARGEST_STEP)).isEmpty(),
                limit + ", and no common cassette ends there: " + hardest.text() + " keeps to it with the smaller sprockets blocked off. Ask the event whether"
                        + " they may be, else fit a cassette made for the limit; and measure it, since a taller tyre goes further.");
    }

    /** The decided value, in the topic's ticks; -1, which no topic has, where nothing is decided. */
    private long value(Topic topic) {
        Decision decision = call.on(topic);
        return decision == null || decision.value() == null ? -1 : decision.value();
    }

    private void onExtensions() {
        warn(decided(Topics.AERO_EXTENSIONS, "fitted"),
                "Hands off the aero extensions in a group, on descents, in bends and near others: they take you away from the"
                        + " brakes.");
        say(decided(Topics.AERO_EXTENSIONS, "fitted") && !known(Measure.AERO_EXTENSIONS_ALLOWED),
                "Whether the event allows aero extensions is not given: ask before you fit them.");
    }

    private void onInjuries() {
        List<String> hurt = Measure.INJURIES.stream().filter(this::yes).map(each -> each.written().substring("injured ".length())).toList();
        warn(!hurt.isEmpty(), "Your file says that something is injured or sore (" + String.join(", ", hurt) + "). This set-up only takes some load off it and judges"
                + " nothing: whether you may ride is for a doctor or physiotherapist to say, and your position for a bike fitter. Stop if it"
                + " gets worse, if something goes numb and stays so, or if you cannot brake or steer surely.");
    }

    private void onTheDay() {
        say(decided(Topics.WATER),
                "Drink to thirst and never more than you sweat: if you gain mass on a ride you drank too much, which is dangerous. If you are ill or on medication, ask a doctor first, in heat above all, and stop"
                        + " if you feel dizzy, cold or confused.");
        say(!known(Measure.WATER_OVER_THE_HOTTEST_GAP) || !known(Measure.HOTTEST_TEMPERATURE),
                "How far it is between taps, or how hot it gets, is not given, so the water here is a minimum: give the"
                        + " event's support and forecast, and carry more if in doubt.");
        warn(over(Measure.WATER_OVER_THE_HOTTEST_GAP, 4.6),
                "The longest gap needs more water than bottles and a pack hold (4.6 L). Filter or buy some on the way, ask the organiser"
                        + " for a point, ride slower, start at a cooler hour or on another day, or do not start.");
        warn(over(Measure.HOTTEST_TEMPERATURE, 31),
                "In such heat start slower and cool skin and head at every tap. Cool anyone who staggers, shivers or is confused with"
                        + " water at once, in the shade, while someone calls for help.");
        warn(known(Measure.COLDEST_TEMPERATURE) && !over(Measure.COLDEST_TEMPERATURE, 3),
                "In such cold a stop chills within minutes. Get anyone who shivers without end, fumbles or slurs into shelter and dry layers, while"
                        + " someone calls for help.");
        say(!known(Measure.DARK_HOURS),
                "When the ride starts is not given, so darkness is not included: give the event's date and start, and"
                        + " take a light if in doubt.");
        boolean sunless = over(Measure.SUNLESS_HOURS, 0);
        warn(sunless,
                "Part of this ride is between sunset and sunrise, when many traffic codes require lights, some from half an hour on"
                        + " either side: check the local law.");
        warn(sunless || known(Measure.DAYLIGHT_TO_SPARE) && !over(Measure.DAYLIGHT_TO_SPARE, 60),
                "Under trees and behind hills it is dark well before civil dusk and for a while after dawn.");
        say(!known(Measure.COLDEST_TEMPERATURE),
                "No forecast is given, so clothing is a guess: look at one for the highest point as well as the start.");
        warn(call.demands().get(Measure.KNOWN_GROUND) != null && !over(Measure.KNOWN_GROUND, 99),
                "Part of the ground is not known and may be rougher than the rest: tyres and suspension may be too light for it.");
        warn(over(Measure.HIGHEST_POINT, 2500),
                "Above 2500 m the air is thin: if you are not used to it, slow down, and turn round if you get a headache or nausea.");
        say(is(Measure.ROLE, "race") && event.rules().edition().isEmpty(),
                "The event's rules, or their edition, are not given: read this year's before you pack.");
        say(is(Measure.ROLE, "race") && !event.rules().edition().isEmpty(),
                "Event rules change from year to year: check that the edition in your file is still current.");
        say(is(Measure.ROLE, "training"),
                "On open roads and shared trails local traffic law and rights of way apply, lights and bell included.");
    }

    /** Where what may be pumped is less than the load asks for: what it takes, with figures. */
    private void wheel(End end, Measure reference, Measure narrowest) {
        Decision width = call.on(Topics.FRONT_TYRE_WIDTH.at(end));
        if (width.value() == null || !known(Measure.PRESSURE_CEILING) || !known(reference)) {
            return;
        }
        double ceiling = base(Measure.PRESSURE_CEILING);
        String most = PressureSteps.text(PressureSteps.down(ceiling), ceiling);
        if (base(reference) > ceiling + 1) {
            warn(true, "The " + end.word() + " tyre needs " + PressureSteps.text(base(reference), null) + " at " + width.text() + ", and no more than " + most
                    + " may go into it. " + (known(narrowest) ? "It takes " + word(narrowest) + " or wider, which is not possible here: " : "")
                    + "take another wheel and tyre, marked for the pressure, or a bike that clears the width.");
        } else if (known(narrowest) && width.value() == call.demands().get(narrowest).mid()) {
            warn(true, "The " + end.word() + " tyre is only just wide enough for its load: narrower than " + word(narrowest) + " it would need more than the " + most
                    + " that may go into it.");
        }
    }

    private double base(Measure measure) {
        return measure.scale().resolution().base(call.demands().get(measure).mid());
    }

    private void say(boolean when, String text) {
        if (when) {
            said.add(new Caution(text, false));
        }
    }

    /** What comes from this course, rider or day. */
    private void warn(boolean when, String text) {
        if (when) {
            said.add(new Caution(text, true));
        }
    }

    private boolean decided(Topic topic) {
        return call.on(topic).value() != null;
    }

    private boolean decided(Topic topic, String word) {
        Decision decision = call.on(topic);
        return decision.value() != null && decision.topic().text(decision.value()).equals(word);
    }

    private boolean known(Measure measure) {
        return call.demands().known(measure);
    }

    /** Whether a quantity's middle is over a number in its shown unit. */
    private boolean over(Measure measure, double shown) {
        MeasureValue value = call.demands().get(measure);
        return value != null && measure.scale().resolution().shown(value.mid()) > shown;
    }

    private boolean yes(Measure measure) {
        MeasureValue value = call.demands().get(measure);
        return value != null && value.mid() == 1;
    }

    private String word(Measure measure) {
        MeasureValue value = call.demands().get(measure);
        return value == null ? "" : measure.scale().text(value.mid());
    }

    private boolean is(Measure measure, String word) {
        MeasureValue value = call.demands().get(measure);
        return value != null && measure.scale().text(value.mid()).equals(word);
    }
}
