package courseworthy.report;

import courseworthy.ride.Range;
import courseworthy.worth.PitPlan;
import courseworthy.worth.PitPlan.PitChoice;
import courseworthy.worth.PitPlan.PitPassage;
import courseworthy.worth.PitPlan.PitStop;
import courseworthy.worth.PitWorth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** What waits in the pits of a race of laps, when the rider comes by, and what is worth having there. */
final class PitReport {

    static final String ID = "pits";
    private static final double MINUTE = 60;
    private static final double TEN = 10;
    private static final String BOTTLE = "0.5 L";

    private PitReport() {
    }

    /** Empty where there are no pits. */
    static Section.Builder section(PitPlan plan, Function<Range, String> time) {
        Section.Builder out = Section.builder(ID, "In the pit");
        if (plan.pits().isEmpty()) {
            return out;
        }
        addStops(out, plan, time).paragraph(easy(plan)).paragraph(help(plan)).paragraph(walk(plan.onFoot()));
        return plan.choices().isEmpty() ? out : out.table(choices(plan)).bullets(plan.choices().stream().filter(each -> each.worth() != null).map(each -> RichText.of(worth(each))).toList()).remark(
                "Exchanges and work are common practice, no source. Savings a lap are counted over the laps that are left after the first.");
    }

    /** When the rider comes by and what to take, and what waits. */
    static Section.Builder addStops(Section.Builder out, PitPlan plan, Function<Range, String> time) {
        return out.table(passages(plan, time)).bullets(plan.pits().stream().map(stop -> RichText.of(waits(stop, plan))).toList());
    }

    /** {@code Pit, lap 2, at 0.0 km: 14:21 (14:19 to 14:24), a bottle, 0.5 L}, a line for each time; then what waits. */
    static List<String> lines(PitPlan plan, Function<Range, String> time) {
        List<String> out = new ArrayList<>();
        for (PitPassage each : inOrder(plan)) {
            out.add("Pit, lap " + each.lap() + ", at " + kilometres(place(plan, each)) + ": " + time.apply(each.after()) + (each.bottle() ? ", a bottle, " + BOTTLE : ""));
        }
        plan.pits().forEach(stop -> out.add(waits(stop, plan)));
        return out;
    }

    private static List<PitPassage> inOrder(PitPlan plan) {
        List<PitPassage> all = new ArrayList<>();
        plan.pits().forEach(stop -> all.addAll(stop.passages()));
        all.sort(Comparator.comparingDouble(PitPassage::at));
        return all;
    }

    /** The bottles by lap in one line; empty where there are no pits. */
    static String inShort(PitPlan plan) {
        StringBuilder out = new StringBuilder();
        for (PitStop stop : plan.pits()) {
            out.append(out.length() == 0 ? "" : " ").append("In the pit ").append(where(stop)).append(": ").append(bottles(stop)).append('.');
        }
        return out.toString();
    }

    private static Table passages(PitPlan plan, Function<Range, String> time) {
        Table.Builder out = Table.builder().figures("Lap").figures("Pit at").column("Time").column("Take");
        for (PitPassage each : inOrder(plan)) {
            out.row(Integer.toString(each.lap()), kilometres(place(plan, each)), time.apply(each.after()), each.bottle() ? "a bottle, " + BOTTLE : "");
        }
        return out.build();
    }

    private static double place(PitPlan plan, PitPassage of) {
        return plan.pits().stream().filter(stop -> stop.passages().contains(of)).findFirst().orElseThrow().pit().at();
    }

    /** What waits in a pit and who hands it up. */
    private static String waits(PitStop stop, PitPlan plan) {
        String at = kilometres(stop.pit().at());
        StringBuilder out = new StringBuilder(at.equals(kilometres(0)) ? "At the start of each lap, " : at + " into each lap, ")
                .append(stop.pit().helper() ? "your helper hands up: " : "nobody hands up: ").append(bottles(stop));
        if (stop.pit().wheels()) {
            out.append("; front and rear wheel ready to ride (").append(plan.wheels().front()).append(" front, ")
                    .append(plan.wheels().rear()).append(" rear), rotors and cassette as on the bike; pump, plugs, tube, tools");
        }
        return out.append(stop.pit().bike() ? "; a second bike, if you have one set up the same" : "").append('.').toString();
    }

    /** {@code at the start of the lap}, {@code at 3.2 km of the lap}. */
    private static String where(PitStop stop) {
        return (stop.pit().at() == 0 ? "at the start" : "at " + kilometres(stop.pit().at())) + " of the lap";
    }

    private static String bottles(PitStop stop) {
        if (!stop.pit().bottles()) {
            return "no bottles";
        }
        List<String> laps = stop.passages().stream().filter(PitPassage::bottle).map(each -> Integer.toString(each.lap())).toList();
        return laps.isEmpty() ? "no bottle is needed, keep one ready" : laps.size() + (laps.size() == 1 ? " bottle" : " bottles") + " of " + BOTTLE
                + " on lap" + (laps.size() == 1 ? " " : "s ") + Phrases.list(laps) + ", and one in reserve";
    }

    /** Where to drink and to be handed a bottle. */
    private static String easy(PitPlan plan) {
        List<String> pieces = plan.easy().stream().map(each -> Phrases.number(each.from() / 1000, 1) + " to " + kilometres(each.to())).toList();
        return pieces.isEmpty() ? "Nowhere on the lap is it smooth, slow and level enough to drink at ease: drink where you are handed the bottle."
                : "Easiest to drink and to be handed a bottle on a lap: " + String.join(", ", pieces) + ".";
    }

    private static String help(PitPlan plan) {
        return plan.help() == null ? "Whether the rules allow outside help is not given: read them before you rely on a helper."
                : plan.help() ? "" : "The rules forbid outside help: you take and change everything yourself.";
    }

    private static String walk(PitPlan.Walk walk) {
        if (walk == null) {
            return "";
        }
        boolean plug = walk.seconds().mid() > walk.plug().mid();
        return "From the furthest place it is " + Figures.distance(walk.metres()) + " to the next wheels, " + minutes(walk.seconds()) + " on foot; a plug takes "
                + minutes(walk.plug()) + ": " + (plug ? "carry plugs all the same." : "the pit is the quicker repair.");
    }

    private static Table choices(PitPlan plan) {
        Table.Builder out = Table.builder().column("What may wait").column("Exchange").column("Work before").column("Pays");
        for (PitChoice each : plan.choices()) {
            out.row(what(each, plan), seconds(each.exchange()), Phrases.number(each.work() / MINUTE, 0) + " min", pays(each));
        }
        return out.build();
    }

    private static String what(PitChoice choice, PitPlan plan) {
        return switch (choice.kind()) {
            case SPARE_WHEELS -> "spare wheels with the same tyres";
            case WET_WHEELS -> "wheels for the wet: " + String.join(", ", plan.wetTyres());
            case SECOND_BIKE -> "a second bike, set up the same";
        };
    }

    private static String pays(PitChoice choice) {
        String each = seconds(choice.pays()) + " a lap over " + laps(choice.laps());
        return switch (choice.kind()) {
            case SPARE_WHEELS -> "after a flat that no plug holds";
            case WET_WHEELS -> "if it turns and they save " + each;
            case SECOND_BIKE -> "after a fault that wheels do not mend, or if a clean bike saves " + each;
        };
    }

    /** What it is worth on this course, a sentence or two. */
    private static String worth(PitChoice choice) {
        PitWorth worth = choice.worth();
        return switch (choice.kind()) {
            case SPARE_WHEELS -> "Spare wheels: " + repair(choice, worth.repair());
            case WET_WHEELS -> "Wheels for the wet: " + wet(choice, worth.wet());
            case SECOND_BIKE -> "A second bike: " + bike(choice, worth) + (worth.wet() == null ? "" : " With the tyres for the wet on it: " + pays(choice, worth.wet()));
        };
    }

    private static String repair(PitChoice choice, PitWorth.RepairTime repair) {
        return repair == null ? "how long a tube takes you is not given, so what they save is not known."
                : repair.within() == 0 ? "a tube takes you " + minutes(repair.tube()) + ", no longer than the exchange."
                : "a tube takes you " + minutes(repair.tube()) + ", the exchange " + seconds(choice.exchange()) + ": within " + Phrases.number(Math.round(repair.within() / TEN) * TEN, 0) + " m"
                        + " of the pit on foot they are the quicker repair, at the pit itself by " + Phrases.number(repair.saved() / MINUTE, 1) + " min.";
    }

    private static String wet(PitChoice choice, PitWorth.Wet wet) {
        String rolls = wet.rolling().mid() < 0 ? "they roll " + seconds(Ranges.negative(wet.rolling())) + " a lap slower" : "they roll " + seconds(wet.rolling()) + " a lap faster";
        String lost = "; the wet takes " + seconds(wet.lost()) + " a lap from your pace on descents and in bends, the most that grip can give back. ";
        return rolls + lost + Phrases.capital(pays(choice, wet));
    }

    private static String pays(PitChoice choice, PitWorth.Wet wet) {
        return !wet.canPay() ? "by time they cannot pay for the exchange on this course; take them for control, or after a flat."
                : "to pay they must give back " + percent(wet.share()) + " of what the wet takes, over " + laps(choice.laps())
                + (wet.lastLap() < choice.laps() ? "; changed after lap " + wet.lastLap() + " they cannot." : ".");
    }

    private static String bike(PitChoice choice, PitWorth worth) {
        String all = choice.laps() == 1 ? "" : ", " + Phrases.number(worth.payingMass(choice.exchange(), choice.laps()), 1) + " kg if it stays lighter for the " + choice.laps() + " laps left";
        return "each kilogram of mud left behind saves " + Phrases.number(worth.perMud().mid(), 1) + " s (" + Phrases.number(worth.perMud().low(), 1) + " to " + Phrases.number(worth.perMud().high(), 1)
                + ") a lap, so a change pays for itself within a lap if the clean bike is " + Phrases.number(worth.payingMass(choice.exchange(), 1), 1) + " kg lighter" + all
                + ". Your helper needs " + minutes(worth.washing()) + " to wash and lubricate the other one (common practice, no source); a lap takes " + minutes(worth.lap())
                + (worth.isWashedEveryLap() ? ", so it can be ready every lap." : ", so it is ready every other lap at best.");
    }

    private static String percent(double share) {
        return Phrases.number(100 * Math.max(0, share), 0) + " %";
    }

    private static String laps(int laps) {
        return laps + (laps == 1 ? " lap" : " laps");
    }

    private static String seconds(Range range) {
        return Phrases.number(range.mid(), 0) + " s (" + Phrases.number(range.low(), 0) + " to " + Phrases.number(range.high(), 0) + ")";
    }

    private static String minutes(Range range) {
        String low = Phrases.number(range.low() / MINUTE, 0);
        String high = Phrases.number(range.high() / MINUTE, 0);
        return Phrases.number(range.mid() / MINUTE, 0) + " min" + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private static String kilometres(double metres) {
        return Phrases.number(metres / 1000, 1) + " km";
    }
}
