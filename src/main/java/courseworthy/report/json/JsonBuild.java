package courseworthy.report.json;

import courseworthy.build.Build;
import courseworthy.build.Build.Swap;
import courseworthy.build.WearNote;
import courseworthy.build.WorkPlan;
import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.report.PositionReport;
import courseworthy.workshop.Part;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Writes the build as JSON: masses in kg, times in s. */
final class JsonBuild {

    private final Json json;

    JsonBuild(Json json) {
        this.json = json;
    }

    void of(Build build) throws IOException {
        if (build == null) {
            return;
        }
        json.object("build");
        json.string("workshop", build.workshop());
        json.string("bike", name(build.bike()));
        json.number("mass_kg", build.bike() == null ? null : rounded(build.mass()));
        json.number("mass_now_kg", build.bike() == null ? null : rounded(build.massNow()));
        json.strings("unweighed", names(build.unweighed()));
        json.objects("parts", build.parts(), each -> {
            json.string("place", each.place().words());
            json.string("part", each.part().name());
        });
        json.objects("places", build.places(), each -> {
            json.string("place", each.place().words());
            json.string("before", name(each.before()));
            json.string("after", name(each.after()));
            json.string("from", name(each.from()));
            json.string("to", name(each.to()));
        });
        json.strings("pressures", build.pressures());
        work(build);
        json.objects("due_back", build.returns(), this::returned);
        json.objects("not_met", build.notMet(), each -> {
            json.string("topic", each.topic());
            json.string("wanted", each.wanted());
            json.string("got", each.got());
            json.string("part", each.part());
        });
        findings("to_mind", build.toMind());
        findings("in_the_way", build.inTheWay());
        stateOf(build);
        json.object("count", build.count(), new JsonBuildCount(json)::of);
        new JsonWorthwhile(json).of(build);
        json.strings("position", PositionReport.inBrief(build.position()));
        json.close();
    }

    private void work(Build build) throws IOException {
        json.objects("swaps", build.swaps(), this::swap);
        json.string("left_out", build.leftOut() == null ? null : build.leftOut().what());
        json.range("left_out_costs_s", build.leftOut() == null ? null : build.leftOut().costs(), 0);
        JsonSeasonWeeks.hours(json, build.plan().hours(), build.plan().given());
        json.objects("evenings", build.plan().evenings(), this::evening);
        json.string("back_from", build.plan().backFrom() == null ? null : build.plan().backFrom().toString());
        json.number("back_work_s", Math.round(build.minutesBack() * 60));
        json.objects("back", build.back(), this::swap);
    }

    /** What is worn, what is to be packed, and what other bikes lack. */
    private void stateOf(Build build) throws IOException {
        json.strings("wear", build.wear().stream().map(WearNote::text).toList());
        json.strings("to_pack", build.spares());
        json.strings("lacking", build.lacking());
    }

    private void returned(Build.Return each) throws IOException {
        json.string("part", each.part().name());
        json.string("to", each.to().name());
        json.string("bike", each.bike().name());
        json.string("by", each.by() == null ? null : each.by().toString());
    }

    private void evening(WorkPlan.WorkEvening evening) throws IOException {
        json.number("evening", evening.number());
        json.string("date", evening.date() == null ? null : evening.date().toString());
        json.number("free_s", evening.free() * 60);
        json.number("work_s", evening.minutes() * 60);
        json.objects("steps", evening.steps(), each -> {
            json.string("bike", each.bike());
            json.string("what", each.what());
            json.number("work_s", each.minutes() * 60);
            json.number("wait_s", each.pause() * 60);
            json.string("before", each.before());
        });
    }

    private void swap(Swap swap) throws IOException {
        json.string("bike", name(swap.bike()));
        json.string("place", swap.place().words());
        json.string("off", name(swap.off()));
        json.string("on", name(swap.on()));
        json.strings("with", names(swap.with()));
        json.string("over", name(swap.over()));
        json.string("from", name(swap.from()));
        json.number("work_s", Math.round(swap.work().minutes() * 60));
        json.number("mass_change_kg", swap.grams() == null ? null : rounded(swap.grams() / 1000.0));
        json.strings("along", swap.work().along());
        json.strings("after", swap.work().after());
        json.strings("needs", swap.work().needs());
        json.yesNo("mechanic", swap.work().mechanic());
        json.strings("why", swap.why());
    }

    private void findings(String name, List<FitFinding> findings) throws IOException {
        json.objects(name, findings, each -> {
            json.string("rule", each.origin().rule());
            json.string("result", each.fit().result().words());
            json.string("words", each.fit().words());
            json.strings("parts", names(each.parts()));
            json.string("because", each.origin().because());
            json.string("where", each.origin().where().toString());
        });
    }

    private static List<String> names(List<Part> parts) {
        List<String> out = new ArrayList<>();
        for (Part part : parts) {
            out.add(part.name());
        }
        return out;
    }

    private static String name(Part part) {
        return part == null ? null : part.name();
    }

    private static BigDecimal rounded(double value) {
        BigDecimal plain = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
