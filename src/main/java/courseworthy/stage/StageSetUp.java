package courseworthy.stage;

import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One set-up for all days of a stage race.
 *
 * @param days       in order
 * @param topics     what is settled for the whole race, in the order of the catalogue
 * @param changes    what is worth changing between stages, by evening
 * @param impossible topics for which no one value keeps the limits of every day
 */
public record StageSetUp(List<StageDay> days, List<RaceTopic> topics, List<EveningChange> changes, List<Topic> impossible) {

    public StageSetUp {
        days = List.copyOf(days);
        topics = List.copyOf(topics);
        changes = List.copyOf(changes);
        impossible = List.copyOf(impossible);
    }

    /** Why a topic has the value that it has. */
    public enum Ground {
        AGREED("every day wants it"), LIMIT("no other is enough for every day"), SAFE("the safe side of what the days want"),
        TIME("it loses least over all days"), HOURS("most of the hours want it, with the rest as it is");

        private final String words;

        Ground(String words) {
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
     * @param wanted what each day alone would want; null on a day on which it does not apply
     * @param value  for the race
     * @param ground why
     * @param losses what the value costs each day, s; null where nothing can be computed
     */
    public record RaceTopic(Topic topic, List<Long> wanted, long value, Ground ground, List<Range> losses) {

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

    /** The topics on which the days differ. */
    public List<RaceTopic> compromises() {
        return topics.stream().filter(each -> each.ground() != Ground.AGREED).toList();
    }

    /** What one set-up without changes costs over all days, s; null where nothing can be computed. */
    public Range loss() {
        return sum(topics.stream().map(RaceTopic::loss).toList());
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
