package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.report.SetUpSummary.Entry;
import courseworthy.ride.Range;
import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.Alternative;
import courseworthy.worth.BreakEven;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.Effect;
import courseworthy.worth.Extensions;
import courseworthy.worth.Worth;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.List;

/** What decisions gain or cost in time on this course. */
public final class WorthReport {

    /** Below this a difference is none, s. */
    private static final double NOTHING = 0.5;

    private static final double TWO_FIGURES = 100;

    static final String ID = "worth";

    private WorthReport() {
    }

    /** The leading figures of the whole recommendation; empty where none is known. */
    static Section section(Brief brief) {
        return onPage(brief).aside("details: --topic NAME").build();
    }

    /** The same on a page, where the details stand with the topics. */
    static Section.Builder onPage(Brief brief) {
        List<Definition> rows = new ArrayList<>();
        terse(brief).forEach(each -> rows.add(Definition.of(each.about(), each.values())));
        return Section.builder(ID, "Time gained or lost on this course").definitions(rows);
    }

    /** The leading figures of the whole call, each after the topic it belongs to. */
    public static List<Entry> terse(Brief brief) {
        List<Entry> out = new ArrayList<>();
        if (brief.worths() == null || !brief.worths().known()) {
            return out;
        }
        for (Topic topic : List.of(Topics.EASIEST_GEAR, Topics.HARDEST_GEAR, Topics.REAR_TYRE_CASING, Topics.AERO_EXTENSIONS)) {
            String line = terse(topic, brief);
            if (!line.isEmpty()) {
                out.add(new Entry(topic.name(), line));
            }
        }
        out.add(new Entry("mass", "1 kg less saves " + Figures.time(brief.worths().perKilogram()) + "."));
        return out;
    }

    /** The leading figure on a topic; empty where the plain brief has none. */
    public static String terse(Topic topic, Brief brief) {
        WorthCalculator worths = brief.worths();
        if (worths == null || !worths.known()) {
            return "";
        }
        if (topic == Topics.HARDEST_GEAR) {
            return worths.topSpeed() == null ? "" : "Spun out from " + Figures.speed(worths.topSpeed()) + ".";
        }
        return topic == Topics.EASIEST_GEAR ? steep(brief) : topic == Topics.REAR_TYRE_CASING ? casing(worths)
                : topic == Topics.AERO_EXTENSIONS ? aero(brief) : "";
    }

    private static String steep(Brief brief) {
        List<String> turned = new ArrayList<>();
        turned(turned, brief, Kind.LAST_CLIMB, "on the last long climb");
        turned(turned, brief, Kind.HUNDRED, "on the steepest 100 m");
        return turned.isEmpty() ? "" : String.join(", ", turned) + ".";
    }

    /** Nobody turns more than the highest cadence: where the easiest gear would ask for it, it says that you would be in a harder one. */
    private static void turned(List<String> out, Brief brief, Kind kind, String where) {
        ClimbInGear climbed = brief.worths().climbed(kind);
        if (climbed != null) {
            MeasureValue highest = brief.demands().get(Measure.HIGHEST_CADENCE);
            boolean spun = highest != null && climbed.cadence().mid() > Measure.HIGHEST_CADENCE.scale().resolution().shown(highest.mid());
            out.add(Figures.cadence(climbed.cadence()) + " " + where + (spun ? " (you would be in a harder gear)" : ""));
        }
    }

    private static String casing(WorthCalculator worths) {
        Worth worth = worths.on(Topics.REAR_TYRE_CASING);
        if (worth == null) {
            return "";
        }
        Alternative best = worth.best();
        BreakEven even = best.leading();
        return capital(alternative(best)) + "." + (even == null ? "" : " " + odds(even) + ".");
    }

    private static String aero(Brief brief) {
        Decision decision = brief.on(Topics.AERO_EXTENSIONS);
        if (decision.value() == null || !decision.text().equals("fitted")) {
            return "";
        }
        return capital(extensions(brief.worths().on(decision.topic()).extensions())) + ".";
    }

    /** {@code light front and rear saves 40 s (10 to 90)}. */
    static String alternative(Alternative alternative) {
        return alternative.value() + " " + returns(alternative.saved());
    }

    static String returns(Range saved) {
        if (Math.abs(saved.mid()) < NOTHING) {
            return saved.mid() == 0 ? "saves nothing" : saved.mid() > 0 ? "saves less than a second" : "costs less than a second";
        }
        return (saved.mid() > 0 ? "saves " + Figures.time(saved) : "costs " + Figures.time(turned(saved))) + close(saved);
    }

    /** That a time may be lost as well as saved; nothing where it is one of them. */
    static String close(Range saved) {
        return saved.low() < 0 && saved.high() > 0 ? ", too close to call" : "";
    }

    private static Range turned(Range range) {
        return new Range(-range.high(), -range.mid(), -range.low());
    }

    /** What changes, in words: {@code 160 g less (80 to 300), rolling -4 % (-8 to -1)}. */
    static String effect(Effect effect) {
        List<String> out = new ArrayList<>();
        if (!effect.mass().equals(Effect.NONE.mass())) {
            out.add(mass(effect.mass()));
        }
        if (!effect.rolling().equals(Effect.NONE.rolling())) {
            out.add("rolling " + Figures.percent(effect.rolling(), 1));
        }
        if (!effect.drag().equals(Effect.NONE.drag())) {
            out.add("drag " + Figures.percent(effect.drag(), 1));
        }
        return String.join(", ", out);
    }

    /** {@code 160 g (80 to 300) less}. */
    static String mass(Range added) {
        boolean less = added.mid() < 0;
        return Figures.mass(less ? turned(added) : added) + (less ? " less" : " more");
    }

    /** {@code Light is faster only if it adds fewer than one tube stop (8 min) per 12 such rides (5 to 30)}. */
    static String odds(BreakEven even) {
        return odds(even, even.faster());
    }

    /** @param faster the faster option in words */
    static String odds(BreakEven even, String faster) {
        String cost = " (" + Figures.time(even.cost().mid()) + ")";
        String pays = capital(faster) + " is faster only if it adds fewer than ";
        Range rides = even.rides();
        if (rides.mid() < 1) {
            String least = Double.isInfinite(rides.high()) ? "none" : count(1 / rides.high());
            return pays + count(1 / rides.mid()) + " " + plural(even.stop()) + cost + " per ride (" + least + " to " + count(1 / rides.low()) + ")";
        }
        String ends = Double.isInfinite(rides.high()) ? count(rides.low()) + " or more" : count(rides.low()) + " to " + count(rides.high());
        return pays + "one " + even.stop() + cost + " per " + count(rides.mid()) + " such rides (" + ends + ")";
    }

    /** {@code tube stops that lose the group}. */
    private static String plural(String stop) {
        return stop.equals("walk") ? "walks" : stop.replace("stop", "stops").replace("loses", "lose");
    }

    /** Two figures of it: odds are known no better. */
    static String count(double rides) {
        if (rides < TWO_FIGURES) {
            return Phrases.number(rides, rides < 10 ? 1 : 0);
        }
        double step = Math.pow(10, Math.floor(Math.log10(rides)) - 1);
        return Phrases.number(Math.round(rides / step) * step, 0);
    }

    /** What it saves over a year; empty where the number of races is not given. */
    static String season(BreakEven even) {
        return even.season() == null ? "" : "Over " + even.races() + " such races a year it saves " + Figures.time(even.season()) + "; one "
                + even.stop() + " costs " + Figures.time(even.cost());
    }

    static String extensions(Extensions extensions) {
        if (extensions.share().high() <= 0) {
            return "you cannot use them anywhere on this course; carrying them " + returns(extensions.saved());
        }
        return "used on " + Figures.percent(extensions.share(), 0) + " of the course, where drag is " + Figures.percent(extensions.drag(), 0)
                + " of the usual; that " + returns(extensions.saved()) + " for someone riding alone there";
    }

    /** The lines on one alternative. */
    static List<String> lines(Alternative alternative) {
        List<String> out = new ArrayList<>();
        out.add(effect(alternative.effect()) + ".");
        for (BreakEven even : alternative.breakEvens()) {
            out.add(odds(even) + ".");
        }
        if (alternative.leading() != null) {
            String season = season(alternative.leading());
            if (!season.isEmpty()) {
                out.add(season + ".");
            }
        }
        return out;
    }

    /** What one decision is worth; null where nothing can be said or nothing was worked out. */
    public static Worth worth(Brief brief, Topic topic) {
        return brief.worths() == null ? null : brief.worths().on(topic);
    }

    static String capital(String text) {
        return Phrases.capital(text);
    }
}
