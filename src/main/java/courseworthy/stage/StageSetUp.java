package courseworthy.stage;

import courseworthy.decision.Decision;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One set-up for all days of a stage race, or one for each bike where the event lets it be changed and another pays.
 *
 * @param days       in order
 * @param bikes      the bike that is ridden longest first
 * @param changes    what is worth changing between stages, by evening
 * @param impossible topics for which no one value keeps the limits of every day on a bike
 */
public record StageSetUp(List<StageDay> days, List<BikeSetUp> bikes, List<EveningChange> changes, List<Topic> impossible) {

    public StageSetUp {
        days = List.copyOf(days);
        bikes = List.copyOf(bikes);
        changes = List.copyOf(changes);
        impossible = List.copyOf(impossible);
    }

    /**
     * The set-up of one bike for the days on which it is ridden.
     *
     * @param kind   of bike; null where none is decided
     * @param stages on which it is ridden, from 1
     * @param topics what is settled for it, in the order of the catalogue
     */
    public record BikeSetUp(String kind, List<Integer> stages, List<RaceTopic> topics) {

        public BikeSetUp {
            stages = List.copyOf(stages);
            topics = List.copyOf(topics);
        }

        /** The topics on which its days differ. */
        public List<RaceTopic> compromises() {
            return topics.stream().filter(each -> each.ground() != ValueReason.AGREED).toList();
        }
    }

    /** Why a topic has the value that it has. */
    public enum ValueReason {
        AGREED("every day wants it"), LIMIT("the only one that every day allows"), SAFE("the safest of what the days want"),
        TIME("loses least time over all days"), HOURS("right for most of the riding time");

        private final String words;

        ValueReason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A topic that stays the same over all days, unless it is changed in between.
     *
     * @param topic  the topic
     * @param wanted what each day of the bike alone would want; null on a day on which it does not apply
     * @param value  for the race
     * @param ground why
     * @param losses what the value costs each day, s; null where nothing can be computed
     */
    public record RaceTopic(Topic topic, List<Long> wanted, long value, ValueReason ground, List<Range> losses) {

        public RaceTopic {
            wanted = Collections.unmodifiableList(new ArrayList<>(wanted));
            losses = Collections.unmodifiableList(new ArrayList<>(losses));
        }

        /** Over all days, s; null where nothing can be computed. */
        public Range loss() {
            return sum(losses);
        }
    }

    /**
     * What is changed on the evening before a stage.
     *
     * @param before  number of the stage
     * @param work    the kind of work
     * @param from    values by topic until then
     * @param to      values by topic from then on
     * @param returns what the days until the next such change gain by it against the set-up of the race, s
     * @param minutes of work
     * @param stated  whether the event says how long it takes
     */
    public record EveningChange(int before, Work work, Map<Topic, Long> from, Map<Topic, Long> to, Range returns, int minutes, boolean stated) {

        public EveningChange {
            from = Collections.unmodifiableMap(new LinkedHashMap<>(from));
            to = Collections.unmodifiableMap(new LinkedHashMap<>(to));
        }
    }

    /** The set-up of the bike that is ridden longest. */
    public List<RaceTopic> topics() {
        return bikes.get(0).topics();
    }

    /** The topics on which the days of a bike differ, bike by bike. */
    public List<RaceTopic> compromises() {
        return bikes.stream().flatMap(each -> each.compromises().stream()).toList();
    }

    /** The place of the bike that is ridden on a stage. @param stage from 1 */
    public int bikeOn(int stage) {
        for (int i = 0; i < bikes.size(); i++) {
            if (bikes.get(i).stages().contains(stage)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no stage " + stage);
    }

    /** A value in words, as a day's decision has it. */
    public String text(Topic topic, long value) {
        for (StageDay day : days) {
            for (Decision decision : List.of(day.settled().on(topic), day.alone().on(topic))) {
                if (decision.value() != null && decision.value() == value && !decision.label().isEmpty()) {
                    return decision.phrase();
                }
            }
        }
        return topic.limit() + topic.phrase(value);
    }

    /** The days of a bike, in order. @param bike its place */
    public List<StageDay> daysOn(int bike) {
        return days.stream().filter(day -> bikeOn(day.number()) == bike).toList();
    }

    /** What one set-up a bike without changes to it costs over all days, s; null where nothing can be computed. */
    public Range loss() {
        return sum(bikes.stream().flatMap(each -> each.topics().stream()).map(RaceTopic::loss).toList());
    }

    /** What the changes between stages gain, s; null where there are none. */
    public Range returned() {
        return sum(changes.stream().map(EveningChange::returns).toList());
    }

    static Range sum(List<Range> of) {
        Range out = null;
        for (Range each : of) {
            out = each == null ? out : out == null ? each : out.plus(each);
        }
        return out == null || out.low() >= 0 ? out : new Range(0, Math.max(0, out.mid()), Math.max(0, out.high()));
    }
}
