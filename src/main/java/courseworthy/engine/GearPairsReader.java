package courseworthy.engine;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the table of real gears: cassettes by their sprockets, and which rings are ridden with them on which bikes. */
final class GearPairsReader {

    private static final Pattern RINGS = Pattern.compile("([2-6][0-9])(?:/([2-6][0-9]))?");
    private static final Pattern TEETH = Pattern.compile("9|[1-5][0-9]");
    private static final Pattern CASSETTE = Pattern.compile("([0-9]+)-([0-9]+) [a-z]+");
    private static final Topic EASIEST = Topics.EASIEST_GEAR;
    private static final Topic HARDEST = Topics.HARDEST_GEAR;
    private static final Topic STEP = Topics.LARGEST_STEP;
    private static final long EASIEST_TICKS = ticksInOne(EASIEST);
    private static final long HARDEST_TICKS = ticksInOne(HARDEST);

    private final String file;
    private final Faults faults;
    private final Map<String, List<Integer>> cassettes = new LinkedHashMap<>();
    private final List<GearPairs.GearPair> out = new ArrayList<>();

    private GearPairsReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    static GearPairs decode(Node.Mapping root, String file, Faults faults) {
        GearPairsReader reader = new GearPairsReader(file, faults);
        reader.table(new FieldReader(file, root, faults));
        return new GearPairs(reader.out);
    }

    private void table(FieldReader fields) {
        fields.prose("real pairs");
        if (fields.required("cassettes", "cassettes by their sprockets") instanceof Node.Mapping block) {
            block.entries().forEach(this::cassette);
        }
        for (FieldReader group : fields.blocks("pairs")) {
            group(group);
        }
        fields.done();
    }

    private void cassette(Node.Entry entry) {
        List<Integer> sprockets = new ArrayList<>();
        for (Node item : entry.value() instanceof Node.Sequence list ? list.items() : List.<Node>of()) {
            if (item instanceof Node.Scalar scalar && TEETH.matcher(scalar.text()).matches()
                    && (sprockets.isEmpty() || Integer.parseInt(scalar.text()) > sprockets.get(sprockets.size() - 1))) {
                sprockets.add(Integer.parseInt(scalar.text()));
            } else {
                faults.add(file, item.line(), entry.key().text(), item.describe(), "sprockets of 9 to 59 teeth, smallest first", "");
            }
        }
        Matcher named = CASSETTE.matcher(entry.key().text());
        if (sprockets.size() < 2 || !named.matches() || Integer.parseInt(named.group(1)) != sprockets.get(0)
                || Integer.parseInt(named.group(2)) != sprockets.get(sprockets.size() - 1)) {
            faults.add(file, entry.key().line(), "cassettes", entry.key().describe(), "a name such as 10-50 twelve, of its first and last sprocket",
                    "");
            return;
        }
        cassettes.put(entry.key().text(), sprockets);
    }

    private void group(FieldReader fields) {
        List<String> bikes = words(fields, "bikes", Topics.BIKE.options());
        List<String> with = words(fields, "cassettes", new ArrayList<>(cassettes.keySet()));
        for (Node item : fields.items("rings")) {
            Matcher rings = RINGS.matcher(item instanceof Node.Scalar scalar ? scalar.text() : "");
            if (!rings.matches()) {
                faults.add(file, item.line(), "rings", item.describe(), "one ring such as 34, or two such as 50/34", "");
                continue;
            }
            for (String bike : bikes) {
                with.forEach(cassette -> pair(bike, rings, cassette, item.line()));
            }
        }
        fields.done();
    }

    private static List<String> words(FieldReader fields, String key, List<String> accepted) {
        List<String> out = new ArrayList<>();
        for (Node item : fields.items(key)) {
            String word = item instanceof Node.Scalar scalar ? fields.word(key, scalar, accepted) : null;
            if (word != null) {
                out.add(word);
            }
        }
        return out;
    }

    private void pair(String bike, Matcher rings, String cassette, int line) {
        List<Integer> sprockets = cassettes.get(cassette);
        int large = Integer.parseInt(rings.group(1));
        int small = rings.group(2) == null ? large : Integer.parseInt(rings.group(2));
        int first = sprockets.get(0);
        int last = sprockets.get(sprockets.size() - 1);
        GearPairs.GearPair pair = new GearPairs.GearPair(bike, rings.group(2) == null ? "one" : "two", ratio(EASIEST_TICKS, small, last),
                small + "x" + last, hardest(large, first), large + "x" + first, largestStep(sprockets), sprockets.size() + "-speed " + first + "-" + last,
                new GearPairs.Teeth(rings.group(2) == null ? List.of(large) : List.of(large, small), sprockets));
        if (sensible(EASIEST, pair.easiest()) && sensible(HARDEST, pair.hardest()) && sensible(STEP, pair.step()) && small <= large) {
            out.add(pair);
        } else {
            faults.add(file, line, "rings", rings.group() + " with " + cassette, "gears within the bounds of the topics, larger ring first", "");
        }
    }

    /** A hardest gear in ticks of its topic. */
    static long hardest(int ring, int sprocket) {
        return ratio(HARDEST_TICKS, ring, sprocket);
    }

    private static long ticksInOne(Topic topic) {
        return BigDecimal.ONE.divide(topic.resolution().step()).longValueExact();
    }

    /** Teeth over teeth, to the nearest tick, halves up. */
    private static long ratio(long ticks, int of, int over) {
        return (2 * ticks * of + over) / (2L * over);
    }

    /** In whole per cent, halves up. */
    static long largestStep(List<Integer> sprockets) {
        long largest = 0;
        for (int i = 1; i < sprockets.size(); i++) {
            int from = sprockets.get(i - 1);
            largest = Math.max(largest, (200L * (sprockets.get(i) - from) + from) / (2L * from));
        }
        return largest;
    }

    private static boolean sensible(Topic topic, long value) {
        return value >= topic.least() && value <= topic.most();
    }
}
