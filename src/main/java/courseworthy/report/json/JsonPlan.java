package courseworthy.report.json;

import courseworthy.build.SpringAir;
import courseworthy.demand.DayDemands;
import courseworthy.demand.HourWeather;
import courseworthy.event.Event;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.PlanHour;
import courseworthy.worth.DayPlan.Split;
import courseworthy.worth.PitPlan;
import courseworthy.worth.PitWorth;
import courseworthy.worth.PlanB;
import courseworthy.worth.PressureSettings;
import courseworthy.worth.SuspensionSettings;
import courseworthy.worth.SuspensionSettings.Dial;
import courseworthy.worth.SuspensionSettings.Sag;
import courseworthy.worth.TyreSetting;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** Writes what to set under {@code settings}, the day under {@code plan}, second calls under {@code plan_b}. */
final class JsonPlan {

    private static final double KPA = 1000;
    private static final double KJ = 1000;
    private static final double MM = 1000;

    private final Json json;

    JsonPlan(Json json) {
        this.json = json;
    }

    /** @param springs air springs of the build */
    void of(DayOutlook outlook, List<SpringAir> springs) throws IOException {
        settings(outlook, springs);
        plan(outlook.plan());
        pits(outlook.pits());
        json.objects("plan_b", outlook.otherwise(), this::otherwise);
        JsonBikeAtHand.add(json, outlook.bikeAtHand());
    }

    void pits(PitPlan plan) throws IOException {
        json.object("pits", plan.pits().isEmpty() ? null : plan, of -> {
            json.objects("places", of.pits(), stop -> {
                json.decimal("at_m", stop.pit().at(), 0);
                json.yesNo("helper", stop.pit().helper());
                json.yesNo("bottles", stop.pit().bottles());
                json.yesNo("wheels", stop.pit().wheels());
                json.yesNo("bike", stop.pit().bike());
                json.objects("passages", stop.passages(), each -> {
                    json.number("lap", each.lap());
                    json.decimal("at_m", each.at(), 0);
                    json.range("after_s", each.after(), 0);
                    json.yesNo("take_bottle", each.bottle());
                });
            });
            json.string("front_wheel", of.wheels().front());
            json.string("rear_wheel", of.wheels().rear());
            json.objects("easy_to_drink", of.easy(), each -> {
                json.decimal("from_m", each.from(), 0);
                json.decimal("to_m", each.to(), 0);
            });
            json.decimal("furthest_on_foot_m", of.onFoot() == null ? null : Double.valueOf(of.onFoot().metres()), 0);
            json.range("furthest_on_foot_s", of.onFoot() == null ? null : of.onFoot().seconds(), 0);
            json.objects("choices", of.choices(), each -> {
                json.string("what", each.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
                json.range("exchange_s", each.exchange(), 0);
                json.decimal("work_s", each.work(), 0);
                json.number("laps_left", each.laps());
                json.range("pays_from_s_a_lap", each.pays(), 0);
                json.object("worth", each.worth(), this::worth);
            });
        });
    }

    /** Per lap; what cannot be is null. */
    private void worth(PitWorth worth) throws IOException {
        PitWorth.Wet wet = worth.wet();
        json.range("wet_tyres_save_s_a_lap", wet == null ? null : wet.rolling(), 1);
        json.range("wet_takes_s_a_lap", wet == null ? null : wet.lost(), 1);
        json.decimal("share_to_give_back", wet == null || wet.share() > 1 ? null : Double.valueOf(Math.max(0, wet.share())), 3);
        json.decimal("last_lap_to_change", wet == null || wet.share() > 1 || wet.lastLap() == 0 ? null : Double.valueOf(wet.lastLap()), 0);
        json.range("tube_stop_s", worth.repair() == null ? null : worth.repair().tube(), 0);
        json.decimal("saves_over_a_tube_s", worth.repair() == null ? null : Double.valueOf(worth.repair().saved()), 0);
        json.decimal("quicker_than_a_tube_within_m", worth.repair() == null ? null : Double.valueOf(worth.repair().within()), 0);
        json.range("mud_s_a_lap_a_kg", worth.perMud(), 2);
        json.range("washing_s", worth.washing(), 0);
        json.range("lap_s", worth.lap(), 0);
    }

    private void settings(DayOutlook outlook, List<SpringAir> springs) throws IOException {
        json.object("settings");
        PressureSettings pressures = outlook.pressures();
        json.object("front_tyre", pressures == null ? null : pressures.front(), this::tyre);
        json.object("rear_tyre", pressures == null ? null : pressures.rear(), this::tyre);
        if (pressures == null) {
            json.string("pumped_at", null);
        } else {
            json.object("pumped_at");
            json.yesNo("assumed", !pressures.pumpedKnown());
            place(pressures.pumped());
            json.close();
        }
        SuspensionSettings suspension = outlook.suspension();
        json.object("fork_sag", suspension == null ? null : suspension.front(), this::sag);
        json.object("rear_sag", suspension == null ? null : suspension.rear(), this::sag);
        json.object("fork_rebound", suspension == null ? null : suspension.rebound(), this::dial);
        json.object("fork_compression", suspension == null ? null : suspension.compression(), this::dial);
        json.object("shock_rebound", suspension == null ? null : suspension.shockRebound(), this::dial);
        json.object("shock_compression", suspension == null ? null : suspension.shockCompression(), this::dial);
        json.objects("air", springs, this::air);
        json.close();
    }

    private void air(SpringAir spring) throws IOException {
        json.string("part", spring.part().name());
        json.decimal("rider_kg", spring.rider(), 1);
        json.decimal("start_kpa", kilopascal(spring.pressure()), 1);
        json.decimal("least_kpa", kilopascal(spring.least()), 1);
        json.decimal("most_kpa", kilopascal(spring.most()), 1);
    }

    private static Double kilopascal(Double pascal) {
        return pascal == null ? null : Double.valueOf(pascal / KPA);
    }

    private void tyre(TyreSetting tyre) throws IOException {
        json.decimal("start_kpa", tyre.start() / KPA, 1);
        json.decimal("gauge_kpa", tyre.pump() / KPA, 1);
        json.number("gauge_psi", BigDecimal.valueOf(tyre.psi(tyre.pump())));
        json.yesNo("held_at_the_limit", tyre.capped());
        json.range("worth_trying_kpa", tyre.worth().times(1 / KPA), 1);
        json.decimal("if_wet_kpa", tyre.wet() == null ? null : Double.valueOf(tyre.wet() / KPA), 1);
        json.decimal("floor_kpa", tyre.floor() / KPA, 1);
        json.decimal("ceiling_kpa", tyre.ceiling() == null ? null : Double.valueOf(tyre.ceiling() / KPA), 1);
        json.decimal("most_on_the_way_kpa", tyre.most() / KPA, 1);
        json.range("wheel_load_kg", tyre.load(), 1);
        json.decimal("width_mm", tyre.tyre().width() * MM, 1);
        json.range("marked_so_measures_mm", tyre.tyre().mounted() == null ? null : tyre.tyre().mounted().times(MM), 1);
        json.string("evidence", tyre.tyre().published() ? "published" : "practice");
    }

    private void place(DayDemands.RideEnvironment place) throws IOException {
        json.decimal("temperature_c", place.temperature(), 1);
        json.decimal("height_m", place.height(), 0);
    }

    private void sag(Sag sag) throws IOException {
        json.decimal("share", sag.share(), 3);
        json.decimal("travel_mm", sag.travel() * MM, 0);
        json.decimal("sag_mm", sag.sunk() * MM, 1);
        json.decimal("at_the_shock_mm", sag.atTheShock() == null ? null : Double.valueOf(sag.atTheShock() * MM), 1);
    }

    private void dial(Dial dial) throws IOException {
        json.decimal("share_from_closed", dial.share(), 3);
        json.decimal("clicks_from_closed", dial.clicks() == null ? null : Double.valueOf(dial.clicks()), 0);
        json.decimal("clicks", dial.range() == null ? null : Double.valueOf(dial.range()), 0);
    }

    private void plan(DayPlan plan) throws IOException {
        if (plan == null) {
            json.string("plan", null);
            return;
        }
        json.object("plan");
        json.string("start", plan.start() == null ? null : time(plan.start()));
        json.objects("splits", plan.every().all(), this::split);
        json.objects("hours", plan.hours(), this::hour);
        json.range("work_kj", plan.energy().work().times(1 / KJ), 0);
        json.range("energy_kcal", plan.energy().used().times(1 / DayPlan.KCAL), 0);
        json.decimal("walked_s", plan.energy().walked(), 0);
        json.range("gross_efficiency", DayPlan.GROSS_EFFICIENCY, 2);
        json.range("carbohydrate_g", plan.energy().rate() == null ? null : plan.energy().food(), 0);
        json.range("carbohydrate_g_per_h", plan.energy().rate(), 0);
        json.range("drink_l", plan.fluids().drink(), 2);
        json.range("sweat_loss_kg", plan.fluids().loss(), 2);
        json.range("sweat_loss_share", plan.fluids().lossShare(), 4);
        json.objects("gaps", plan.fluids().gaps(), gap -> {
            json.decimal("from_m", gap.from(), 0);
            json.decimal("to_m", gap.to(), 0);
            json.range("carry_l", gap.carry(), 2);
        });
        json.list("cut_offs_past_the_finish_m");
        for (double at : plan.beyond()) {
            json.number(Math.round(at));
        }
        json.endList();
        json.string("sunrise", plan.light() == null || Double.isNaN(plan.light().rise()) ? null : time(plan.light().rise()));
        json.string("sunset", plan.light() == null || Double.isNaN(plan.light().set()) ? null : time(plan.light().set()));
        json.string("civil_dawn", plan.light() == null || Double.isNaN(plan.light().dawn()) ? null : time(plan.light().dawn()));
        json.objects("light", plan.light() == null ? List.of() : plan.light().spans(), span -> {
            json.decimal("from_s", span.from(), 0);
            json.decimal("to_s", span.to(), 0);
            json.string("light", span.light().name().toLowerCase(Locale.ROOT));
        });
        json.string("civil_dusk", plan.light() == null || Double.isNaN(plan.light().dusk()) ? null : time(plan.light().dusk()));
        json.close();
    }

    private void split(Split split) throws IOException {
        json.string("what", split.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.decimal("at_m", split.at(), 0);
        json.number("lap", BigDecimal.valueOf(split.lap()));
        json.range("after_s", split.after(), 0);
        json.decimal("climb_m", split.climb() == null ? null : Double.valueOf(split.climb().top() - split.climb().foot()), 0);
        json.decimal("rise_m", split.climb() == null ? null : Double.valueOf(split.climb().rise()), 0);
        json.decimal("latest_s", split.latest(), 0);
        json.string("stands", split.stands() == null ? null : split.stands().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private void weather(HourWeather met) throws IOException {
        if (met == null) {
            json.string("weather", null);
            return;
        }
        json.object("weather");
        json.decimal("wind_m_s", met.wind(), 1);
        json.decimal("gust_m_s", met.gust(), 1);
        json.decimal("wind_from_deg", met.from(), 0);
        json.decimal("headwind_m_s", met.headwind(), 1);
        json.decimal("rain_mm", met.rain() == null ? null : Double.valueOf(met.rain() * 1000), 1);
        json.string("driest_going", met.driest() == null ? null : Event.Forecast.GOINGS.get(met.driest()));
        json.string("wettest_going", met.wettest() == null ? null : Event.Forecast.GOINGS.get(met.wettest()));
        json.close();
    }

    private void hour(PlanHour hour) throws IOException {
        json.decimal("from_s", hour.from(), 0);
        json.decimal("to_s", hour.to(), 0);
        json.range("work_kj", hour.work().times(1 / KJ), 0);
        json.range("energy_kcal", hour.energy().times(1 / DayPlan.KCAL), 0);
        json.range("carbohydrate_g", hour.carbohydrate(), 0);
        json.range("drink_l", hour.drink(), 2);
        json.range("sweat_l", hour.sweat(), 2);
        json.decimal("temperature_c", hour.temperature(), 1);
        weather(hour.weather());
    }

    private void otherwise(PlanB other) throws IOException {
        json.string("turns", other.turns());
        json.range("time_s", other.time(), 0);
        json.objects("lines", other.lines(), line -> {
            json.string("topic", line.topic());
            json.string("instead_of", line.first());
            json.string("then", line.second());
            json.string("change", line.change().word());
            json.decimal("takes_s", line.takes(), 0);
            json.yesNo("estimate", !line.written());
            json.decimal("latest_s", line.latest(), 0);
        });
        missing("lacking", other.lacking());
        missing("too_late", other.tooLate());
    }

    private void missing(String name, List<PlanB.MissingItem> items) throws IOException {
        if (items.isEmpty()) {
            return;
        }
        json.objects(name, items, each -> {
            json.string("topic", each.topic());
            json.string("wanted", each.wanted());
            json.string("has", each.has());
        });
    }

    /** A time of day, {@code 08:05}; past midnight hours go on. */
    private static String time(double seconds) {
        long minutes = Math.round(seconds / 60);
        return (minutes / 60 < 10 ? "0" : "") + minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
    }
}
