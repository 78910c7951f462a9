package courseworthy.report;

import courseworthy.build.BuildCall;
import courseworthy.build.SpringAir;
import courseworthy.demand.DayDemands;
import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.PressureSettings;
import courseworthy.worth.SuspensionSettings;
import courseworthy.worth.SuspensionSettings.Dial;
import courseworthy.worth.SuspensionSettings.Sag;
import courseworthy.worth.TyreSetting;
import java.util.ArrayList;
import java.util.List;

/** What to set before the start: tyre pressures, sag, damping and lockout. */
final class SettingReport {

    static final String ID = "settings";
    static final String CHART = "Starting points of common practice; if the manufacturer's chart for fork or shock differs, follow the chart. Count clicks"
            + " from fully closed, without force.";

    private SettingReport() {
    }

    /** The settings with what to watch; empty where nothing is set. */
    static Section.Builder section(Brief brief) {
        Section.Builder out = inShort(brief);
        return out.remark(brief.outlook().suspension() == null ? "" : CHART);
    }

    /** The same without how to read it. */
    static Section.Builder inShort(Brief brief) {
        Section.Builder out = Section.builder(ID, "What to set").definitions(rows(brief));
        if (brief.build() != null && brief.build().bike() != null) {
            out.note(RichText.of("These are for the parts of the build."));
        }
        alerts(brief).forEach(line -> out.caution(RichText.ofQuoted(line)));
        return out;
    }

    private static List<Definition> rows(Brief brief) {
        DayOutlook outlook = brief.outlook();
        List<Definition> out = new ArrayList<>();
        if (outlook.pressures() != null && (outlook.pressures().front() != null || outlook.pressures().rear() != null)) {
            out.add(Definition.of("Pressure", pressure(outlook.pressures())));
        }
        SpringAir.of(brief.build(), brief.demands()).forEach(each -> out.add(Definition.of("Air, " + each.part().kind().word(), RichText.ofQuoted(air(each)))));
        SuspensionSettings suspension = outlook.suspension();
        if (suspension != null) {
            out.add(Definition.of("Sag", join(sag("fork ", suspension.front()), sag("rear ", suspension.rear())) + ", in full kit"));
            dials(out, "Rebound", suspension.rebound(), suspension.shockRebound());
            dials(out, "Compression", suspension.compression(), suspension.shockCompression());
            if (suspension.lockout() != null) {
                out.add(Definition.of("Lockout", suspension.lockout() + lockout(suspension.lockout())));
            }
        }
        return out;
    }

    /** {@code start from 5.6 bar (81 psi), from its chart for 70 kg; then set the sag}. */
    private static String air(SpringAir spring) {
        if (spring.rider() == null) {
            return "not known: the chart of " + spring.part() + " goes by your mass, which your rider file does not give";
        }
        String mass = Phrases.number(spring.rider(), 0) + " kg";
        String reach = Phrases.number(spring.lightest(), 0) + (spring.lightest() == spring.heaviest() ? "" : " to " + Phrases.number(spring.heaviest(), 0)) + " kg";
        String range = spring.isRange() ? " (" + PressureSteps.bar(spring.least()) + " to " + PressureSteps.bar(spring.most()) + " bar, since your mass is not known closely)" : "";
        return spring.pressure() == null ? "not known: the chart of " + spring.part() + " is for " + reach + ", and you are " + mass
                : "start from " + PressureSteps.text(spring.pressure(), null) + range + ", from the chart of " + spring.part() + " for " + mass + "; then set the sag";
    }

    /** What differs between front and rear, and what goes beyond a limit; empty where nothing is to be said. */
    private static List<String> alerts(Brief brief) {
        List<String> out = new ArrayList<>();
        if (brief.build() != null && brief.build().bike() != null) {
            List<String> pads = BuildCall.padsApart(brief.build());
            if (!pads.isEmpty()) {
                out.add("Brake pads differ: " + pads.get(0) + " at the front, " + pads.get(1) + " at the rear. Whatever is said about pads below is"
                        + " for the front; check the rear ones separately.");
            }
        }
        DayOutlook outlook = brief.outlook();
        if (outlook.pressures() != null) {
            alert(out, "Front tyre: ", outlook.pressures().front());
            alert(out, "Rear tyre: ", outlook.pressures().rear());
        }
        return out;
    }

    private static void alert(List<String> out, String tyre, TyreSetting setting) {
        if (setting != null && setting.capped()) {
            out.add(tyre + "at the place you pump, the target would be over the " + bar(PressureSteps.down(setting.ceiling())) + " bar limit; pump to the limit.");
        }
        if (setting != null && setting.risesOverCeiling()) {
            out.add(tyre + "heat and altitude may raise it to " + bar(setting.most()) + " bar on the way, over the "
                    + bar(PressureSteps.down(setting.ceiling())) + " bar limit: start lower, or let some air out there.");
        }
    }

    /** Both tyres in one line. */
    private static String pressure(PressureSettings pressures) {
        String start = both(pressures, true);
        String out = pressures.pumpedKnown() ? "pump to " + both(pressures, false) + " at " + place(pressures.pumped()) + ", for " + start
                + " at the start" : start + ", pumped at the start (assumed)";
        String wet = join(wet("front ", pressures.front()), wet("rear ", pressures.rear()));
        return out + (wet.isEmpty() ? "" : "; if it turns wet " + wet);
    }

    /** Front and rear at the start, a text each. */
    static List<String> atTheStart(PressureSettings pressures) {
        List<String> out = new ArrayList<>(List.of(one("front ", pressures.front(), true), one("rear ", pressures.rear(), true)));
        out.removeIf(String::isEmpty);
        return out;
    }

    /** {@code pump to front 1.25 bar (18 psi), rear 1.30 bar (19 psi)}; empty where they are pumped at the start. */
    static String toPump(PressureSettings pressures) {
        return pressures.pumpedKnown() ? "pump to " + both(pressures, false) : "";
    }

    private static String both(PressureSettings pressures, boolean start) {
        return join(one("front ", pressures.front(), start), one("rear ", pressures.rear(), start));
    }

    private static String one(String side, TyreSetting tyre, boolean start) {
        return tyre == null ? "" : side + shown(tyre, start ? tyre.start() : tyre.pump());
    }

    private static String wet(String side, TyreSetting tyre) {
        return tyre == null || tyre.wet() == null ? "" : side + shown(tyre, tyre.wet());
    }

    private static String shown(TyreSetting tyre, double pascal) {
        return PressureSteps.text(pascal, tyre.ceiling());
    }

    static String bar(double pascal) {
        return PressureSteps.bar(pascal);
    }

    private static String place(DayDemands.RideEnvironment place) {
        String heat = place.temperature() == null ? "" : Phrases.number(place.temperature(), 0) + " C";
        String height = place.height() == null ? "" : Phrases.number(place.height(), 0) + " m";
        return heat.isEmpty() ? height : height.isEmpty() ? heat : heat + " and " + height;
    }

    private static String lockout(String how) {
        return how.equals("none") ? "" : how.equals("remote") ? ", for smooth climbs and sprints; open before each descent"
                : ", for long smooth climbs; open before descents";
    }

    private static String sag(String end, Sag sag) {
        return sag == null ? "" : end + millimetres(sag.sunk()) + " (" + Phrases.number(100 * sag.share(), 0) + " % of "
                + millimetres(sag.travel()) + (sag.atTheShock() == null ? "" : ", about " + millimetres(sag.atTheShock()) + " at the shock") + ")";
    }

    private static String millimetres(double metres) {
        return Phrases.number(metres * 1000, 0) + " mm";
    }

    private static void dials(List<Definition> out, String about, Dial fork, Dial shock) {
        if (fork == null) {
            return;
        }
        if (shock == null || fork.range() == null && shock.range() == null) {
            out.add(Definition.of(about, dial(fork)));
        } else {
            out.add(Definition.of(about, "fork " + dial(fork) + "; shock " + dial(shock)));
        }
    }

    private static String dial(Dial dial) {
        return dial.range() == null ? Phrases.number(100 * dial.share(), 0) + " % open (of clicks from closed), " + towards(dial.share())
                : dial.clicks() + " of " + dial.range() + " clicks from closed";
    }

    private static String towards(double share) {
        return share < 0.2 ? "nearly closed" : share < 0.4 ? "towards closed" : share <= 0.6 ? "about half-way" : share < 0.8 ? "towards open"
                : "nearly open";
    }

    private static String join(String first, String second) {
        return first.isEmpty() ? second : second.isEmpty() ? first : first + ", " + second;
    }

    /** What is to be set on one topic, in full; empty where the topic is none of these. */
    static List<String> details(DayOutlook outlook, Topic topic) {
        PressureSettings pressures = outlook.pressures();
        if (pressures != null && topic == Topics.FRONT_TYRE_PRESSURE && pressures.front() != null) {
            return pressure(pressures, pressures.front());
        }
        if (pressures != null && topic == Topics.REAR_TYRE_PRESSURE && pressures.rear() != null) {
            return pressure(pressures, pressures.rear());
        }
        SuspensionSettings suspension = outlook.suspension();
        List<String> out = new ArrayList<>();
        if (suspension == null) {
            return out;
        }
        if (topic == Topics.FRONT_SAG) {
            sagged(out, "Fork: ", suspension.front());
        } else if (topic == Topics.REAR_SAG) {
            sagged(out, "Rear: ", suspension.rear());
        } else if (topic == Topics.REBOUND) {
            turned(out, suspension.rebound(), suspension.shockRebound(), "rebound clicks");
        } else if (topic == Topics.COMPRESSION) {
            turned(out, suspension.compression(), suspension.shockCompression(), "compression clicks");
        } else if (topic == Topics.LOCKOUT && suspension.lockout() != null) {
            out.add("Lockout: " + suspension.lockout() + lockout(suspension.lockout()) + ".");
        }
        if (!out.isEmpty()) {
            out.add(CHART);
        }
        return out;
    }

    private static void sagged(List<String> out, String end, Sag sag) {
        if (sag != null) {
            out.add(end + sag("", sag) + ".");
            out.add("Sit still on the bike in full kit, bottles and pockets filled, leaning on something; push the ring down, get off gently, measure.");
        }
    }

    private static void turned(List<String> out, Dial fork, Dial shock, String key) {
        if (fork != null) {
            out.add("Fork: " + dial(fork) + "." + (fork.range() == null ? " Give " + key + " under bike to have the clicks counted." : ""));
        }
        if (shock != null) {
            out.add("Shock: " + dial(shock) + ".");
        }
    }

    private static List<String> pressure(PressureSettings pressures, TyreSetting tyre) {
        List<String> out = new ArrayList<>();
        out.add("At the start " + shown(tyre, tyre.start()) + "; worth trying " + bar(tyre.worth().low()) + " to " + bar(tyre.worth().high())
                + " bar (" + tyre.psi(tyre.worth().low()) + " to " + tyre.psi(tyre.worth().high()) + " psi). "
                + (tyre.tyre().published() ? "From the 15 % tyre drop relation, measured on smooth roads (Heine and Berto), good to 8 %."
                        : "Nothing is published for soft ground or tyres over 37 mm: this is the range used in practice."));
        out.add("Wheel load at the start line " + Figures.range(tyre.load(), 0, "kg") + ": rider, kit, bike and water, by position.");
        out.add(pumped(pressures, tyre));
        out.add("Not under " + bar(PressureSteps.up(tyre.floor())) + " bar on this course, or the rim strikes the ground (practice). " + (tyre.ceiling() == null
                ? "No upper limit is given: read tyre and rim before you pump."
                : "Never over " + bar(PressureSteps.down(tyre.ceiling())) + " bar, the lowest limit known."));
        if (tyre.tyre().mounted() != null) {
            out.add("A tyre marked " + millimetres(tyre.tyre().width()) + " measures " + Figures.range(tyre.tyre().mounted().times(1000), 1, "mm")
                    + " on a rim of " + millimetres(tyre.tyre().rim()) + " internal width, by its geometry: measure it, since the pressure is for "
                    + millimetres(tyre.tyre().width()) + " as mounted.");
        }
        out.add(tyre.wet() != null ? "If it turns wet: " + shown(tyre, tyre.wet()) + ", at the start's temperature."
                : "If it turns wet: leave it; the reasons for this pressure outweigh the wet.");
        if (tyre.risesOnTheWay()) {
            out.add("On the way the gauge may show up to " + bar(tyre.most()) + " bar, from heat and altitude."
                    + (tyre.risesOverCeiling() ? " That is over the limit: start lower, or let some air out there." : ""));
        }
        return out;
    }

    private static String unknown(PressureSettings pressures) {
        boolean heat = pressures.start().temperature() == null && pressures.pumped().temperature() != null;
        boolean height = pressures.start().height() == null && pressures.pumped().height() != null;
        return heat && height ? " Neither temperature nor height of the start is known, so they are not included."
                : heat ? " The temperature at the start is not known, so it is not included: give the forecast."
                : height ? " The height of the start is not known, so it is not included." : "";
    }

    private static String pumped(PressureSettings pressures, TyreSetting tyre) {
        if (!pressures.pumpedKnown()) {
            return "Pumped at the start (assumed; give another place as \"pumped at\" in the event): the gauge shows the same.";
        }
        return "Pumped at " + place(pressures.pumped()) + " the gauge shows " + shown(tyre, tyre.pump()) + "; the start is at "
                + (place(pressures.start()).isEmpty() ? "a place not known" : place(pressures.start())) + "." + unknown(pressures)
                + (tyre.capped() ? " More would be over the limit there: accept less at the start." : "");
    }
}
