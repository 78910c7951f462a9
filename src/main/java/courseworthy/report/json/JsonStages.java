package courseworthy.report.json;

import courseworthy.build.RaceBuild;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.Range;
import courseworthy.stage.BagItem;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSetUp.BikeSetUp;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.stage.WeekBag;
import courseworthy.task.StagesResult;
import courseworthy.topic.Topic;
import courseworthy.topic.Work;
import courseworthy.wear.WearCounter.Outlook;
import courseworthy.wear.WearCounter.WearShare;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Writes one set-up for a race over several days as JSON: its topics, the days, the evenings, the wear and the bag. */
public final class JsonStages {

    private final Json json;
    private final StagesResult result;

    private JsonStages(Json json, StagesResult result) {
        this.json = json;
        this.result = result;
    }

    public static String of(StagesResult result) {
        return Json.written(json -> new JsonStages(json, result).write());
    }

    private void write() throws IOException {
        json.string("event", result.event().name());
        json.string("file", result.event().file());
        json.string("rider", result.rider());
        JsonSheets.write(result.sheets(), json);
        json.yesNo("changes_stated", result.event().plan().race().stated());
        json.strings("may_change", result.event().plan().race().mayChange().stream().sorted().map(Work::word).toList());
        json.string("bike", result.build() == null ? null : result.build().bike().name());
        List<BikeSetUp> bikes = result.setUp().bikes();
        topics(bikes.get(0));
        json.objects("other_bikes", bikes.subList(1, bikes.size()), bike -> {
            json.string("kind", bike.kind());
            json.list("stages");
            for (int each : bike.stages()) {
                json.number(each);
            }
            json.endList();
            topics(bike);
        });
        json.objects("builds", result.builds(), this::build);
        json.strings("impossible", result.setUp().impossible().stream().map(Topic::name).toList());
        json.range("costs_s", result.setUp().loss(), 1);
        json.range("changes_return_s", result.setUp().returned(), 1);
        json.objects("days", result.setUp().days(), this::day);
        json.objects("changes", result.setUp().changes(), this::change);
        json.strings("charge_every_night", result.charge());
        JsonChecklist.write(result.checklist().sections(), json);
        json.objects("wear", result.wear(), this::wear);
        json.objects("bag", result.bag(), this::item);
    }

    private void topics(BikeSetUp bike) throws IOException {
        json.objects("topics", bike.topics(), topic -> topic(topic, bike.stages()));
    }

    private void build(RaceBuild build) throws IOException {
        new JsonBuild(json).of(build.build());
        List<Integer> stages = result.setUp().bikes().get(result.builds().indexOf(build)).stages();
        List<Integer> places = IntStream.range(0, build.saves().size()).boxed().toList();
        json.objects("by_day", places, place -> {
            json.number("stage", stages.get(place));
            json.range("saves_s", build.saves().get(place), 1);
            json.range("costs_s", build.costs().get(place), 1);
        });
        json.range("saves_s", build.saved(), 1);
        json.range("costs_s", build.cost(), 1);
    }

    private void topic(RaceTopic topic, List<Integer> stages) throws IOException {
        json.string("topic", topic.topic().name());
        json.value("value", topic.topic(), topic.value());
        json.string("unit", Json.unit(topic.topic()));
        json.string("text", result.setUp().text(topic.topic(), topic.value()));
        json.string("ground", topic.ground().name().toLowerCase(Locale.ROOT));
        List<Integer> places = IntStream.range(0, stages.size()).boxed().toList();
        json.objects("by_day", places, place -> {
            json.number("stage", stages.get(place));
            Long wanted = topic.wanted().get(place);
            json.value("wanted", topic.topic(), wanted);
            json.string("text", wanted == null ? null : result.setUp().text(topic.topic(), wanted));
            json.range("costs_s", topic.losses().get(place), 1);
        });
        json.range("costs_s", topic.loss(), 1);
    }

    private void day(StageDay day) throws IOException {
        json.number("stage", day.number());
        json.string("date", day.ride().event().date().toString());
        json.string("course", day.ride().course().name());
        json.string("file", day.ride().course().file());
        double laps = day.ride().event().laps() == null ? 1 : day.ride().event().laps();
        json.metres("distance_m", day.ride().course().length() * laps);
        MeasureValue climb = day.settled().demands().get(Measure.ASCENT);
        json.range("ascent_m", climb == null ? null : new Range(metres(climb.low()), metres(climb.mid()), metres(climb.high())), 0);
        json.range("carbohydrate_g", WeekBag.carbohydrate(day), 0);
        Range hours = day.hours();
        json.range("riding_s", hours, 0);
        json.objects("decisions", day.settled().decisions().stream().filter(each -> each.value() != null).toList(), this::decision);
    }

    private static double metres(long ticks) {
        return Measure.ASCENT.scale().resolution().base(ticks);
    }

    private void decision(Decision decision) throws IOException {
        json.string("topic", decision.topic().name());
        json.value("value", decision.topic(), decision.value());
        json.string("unit", Json.unit(decision.topic()));
        json.string("text", decision.text());
    }

    private void change(EveningChange change) throws IOException {
        json.number("before_stage", change.before());
        json.string("work", change.work().word());
        json.objects("topics", new ArrayList<>(change.to().keySet()), topic -> {
            json.string("topic", topic.name());
            json.value("from", topic, change.from().get(topic));
            json.value("to", topic, change.to().get(topic));
        });
        json.range("returns_s", change.returns(), 1);
        json.number("minutes", change.minutes());
        json.yesNo("minutes_stated", change.stated());
    }

    private void wear(Outlook outlook) throws IOException {
        json.string("part", outlook.part().name());
        json.string("job", outlook.interval().job());
        json.yesNo("use_known", outlook.known());
        bounds("used_before", outlook.before());
        bounds("used_after", outlook.used());
        json.list("due_before_stage");
        for (int each : outlook.due()) {
            json.number(each + 1L);
        }
        json.endList();
    }

    private void bounds(String field, WearShare share) throws IOException {
        json.object(field);
        json.decimal("low", share.low(), 3);
        json.decimal("high", share.high(), 3);
        json.close();
    }

    private void item(BagItem item) throws IOException {
        json.string("item", item.item());
        json.number("least", item.least());
        json.number("most", item.most());
        json.string("unit", item.unit());
        json.string("because", item.because());
    }
}
