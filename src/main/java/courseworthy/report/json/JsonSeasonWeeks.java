package courseworthy.report.json;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonWeeks;
import courseworthy.build.SeasonWeeks.Entry;
import courseworthy.build.SeasonWeeks.Week;
import courseworthy.build.SeasonWork.SeasonJob;
import courseworthy.event.WorkHours;
import courseworthy.report.SeasonCalendar;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Writes the weeks of a season as JSON: times in s. */
public final class JsonSeasonWeeks {

    private JsonSeasonWeeks() {
    }

    public static String of(SeasonPlan season) {
        SeasonWeeks weeks = SeasonWeeks.of(season);
        return Json.written(json -> {
            json.string("season", season.name());
            JsonGround.attribution(season.attribution(), json);
            hours(json, season.work().hours(), season.work().given());
            json.strings("riders", weeks.riders());
            JsonCalendar.add(json, SeasonCalendar.of(season, null));
            json.objects("weeks", weeks.weeks(), week -> week(json, week));
            json.objects("short_of_time", season.clashes().stream().filter(each -> each.what().equals(List.of("time"))).toList(), each -> shortage(json, each));
        });
    }

    /** The time for work that evenings rest on. */
    static void hours(Json json, WorkHours hours, boolean given) throws IOException {
        json.object("time_for_work");
        json.yesNo("given", given);
        json.string("from", hours.from() == null ? null : hours.from().toString());
        json.number("each_evening_s", hours.usual() * 60);
        json.objects("weekdays", List.copyOf(hours.weekdays().entrySet()), each -> {
            json.string("day", each.getKey().name().toLowerCase(Locale.ROOT));
            json.number("free_s", each.getValue() * 60);
        });
        json.objects("days", List.copyOf(hours.days().entrySet()), each -> {
            json.string("date", each.getKey().toString());
            json.number("free_s", each.getValue() * 60);
        });
        json.close();
    }

    private static void week(Json json, Week week) throws IOException {
        json.string("from", week.monday().toString());
        json.string("to", week.sunday().toString());
        json.objects("entries", week.entries(), each -> entry(json, each));
    }

    private static void entry(Json json, Entry entry) throws IOException {
        PlannedRide ride = entry.ride();
        json.string("date", entry.date() == null ? null : entry.date().toString());
        json.string("rider", entry.rider());
        json.string("kind", entry.kind().word());
        json.string("purpose", entry.purpose() == null ? null : entry.purpose().word());
        json.string("event", ride == null ? null : ride.event());
        json.string("role", ride == null ? null : ride.role());
        json.string("start", entry.kind() == SeasonWeeks.Kind.START ? String.valueOf(ride.day().start()) : null);
        json.string("bike", ride == null ? entry.service().bike() : ride.build().bike() == null ? null : ride.build().bike().name());
        json.number("free_s", entry.free() * 60);
        json.number("work_s", entry.minutes() * 60);
        json.string("due", entry.due() == null ? null : entry.due().toString());
        json.string("service", entry.service() == null ? null : entry.service().what());
        boolean moves = entry.kind() == SeasonWeeks.Kind.OUT || entry.kind() == SeasonWeeks.Kind.HOME;
        json.objects("lent", moves ? ride.build().returns() : List.of(), each -> {
            json.string("part", each.part().name());
            json.string("bike", each.bike().name());
            json.string("by", each.by() == null ? null : each.by().toString());
        });
        json.yesNo("late", entry.service() != null && entry.service().evening().late());
        if (entry.service() != null && entry.date() != null) {
            json.objects("steps", List.of(entry), each -> service(json, each));
        } else {
            json.objects("steps", entry.jobs(), each -> step(json, each));
        }
    }

    private static void service(Json json, Entry entry) throws IOException {
        json.string("bike", entry.service().bike());
        json.string("what", entry.service().what());
        json.string("begin", String.format(Locale.ROOT, "%02d:%02d", entry.begin().getHour(), entry.begin().getMinute()));
        json.number("work_s", entry.minutes() * 60);
        json.number("wait_s", 0);
        json.string("before", "");
        json.string("due", entry.due().toString());
    }

    private static void step(Json json, SeasonJob job) throws IOException {
        json.string("bike", job.step().bike());
        json.string("what", job.step().what());
        json.string("begin", String.format(Locale.ROOT, "%02d:%02d", job.step().begin() / 60 % 24, job.step().begin() % 60));
        json.number("work_s", job.step().minutes() * 60);
        json.number("wait_s", job.step().pause() * 60);
        json.string("before", job.step().before());
        json.string("due", job.due() == null ? null : job.due().toString());
    }

    private static void shortage(Json json, PartClash clash) throws IOException {
        json.string("date", clash.date().toString());
        json.objects("choices", clash.choices(), each -> JsonSeason.choice(json, each));
    }
}
