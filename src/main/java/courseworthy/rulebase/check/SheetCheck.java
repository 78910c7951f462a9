package courseworthy.rulebase.check;

import courseworthy.claim.Author;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Saying;
import courseworthy.rulebase.check.Remark.Fact;
import courseworthy.rulebase.check.Remark.Kind;
import courseworthy.rulebase.check.Steps.TooMany;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Looks over the rows of a sheet by reasoning over intervals and ordered values, never by sampling: what a verifier of decision tables
 * looks for (Smit, Zoet and Berkhout 2017; Calvanese, Dumas, Laurson, Maggi, Montali and Teinemaa 2018 for boxes, from memory).
 * Measures are taken as free of each other, and so are stretches that are asked about in different words: what follows from one for
 * another is not seen, so nothing is called impossible that is possible, but something impossible may go unseen.
 */
public final class SheetCheck {

    /** So many remarks of a kind are written out; of the others it is said how many there are. */
    public static final int MOST_OF_A_KIND = 100;

    /** Steps to be spent on working out where rows speak, over all rows; and for a row at the least. */
    private static final long ALL_STEPS = 10_000_000;
    private static final long LEAST_STEPS = 3_000;
    /** Steps for finding where nobody speaks on one topic. */
    private static final long GAP_STEPS = 300_000;
    /** Steps for what is reasoned of one row by itself. */
    private static final long ROW_STEPS = 40_000;

    private final List<Row> rows;
    private final List<Row> inForce;
    private final Set<String> topics;
    private final Things things = new Things();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Remark> ofRow = new ArrayList<>();
    private final Map<Kind, Integer> shown = new EnumMap<>(Kind.class);
    private final Map<Kind, Integer> unlisted = new EnumMap<>(Kind.class);
    private final List<Remark> remarks = new ArrayList<>();

    private SheetCheck(List<Row> rows, List<Row> inForce, Set<String> topics) {
        this.rows = rows;
        this.inForce = inForce;
        this.topics = topics;
    }

    /**
     * What is to be looked at, row by row in the order of the sheet; for one row the gravest first.
     *
     * @param rows  the rows of one sheet
     * @param house the shipped rows
     */
    public static Remarks of(List<Row> rows, List<Row> house) {
        return new SheetCheck(rows, List.of(), Set.of()).look(house);
    }

    /**
     * The same, and where nobody speaks on a topic.
     *
     * @param inForce all rows in force, those of the sheet among them
     * @param topics  the topics on which somebody should speak wherever they apply
     */
    public static Remarks of(List<Row> rows, List<Row> house, List<Row> inForce, Set<String> topics) {
        return new SheetCheck(rows, inForce, topics).look(house);
    }

    private Remarks look(List<Row> house) {
        for (Row row : rows) {
            placed.add(Placed.of(placed.size(), row, region(row)));
        }
        Tally pairs = new Pairs(placed).tally();
        Map<String, List<Placed>> shipped = shipped(house);
        for (Placed one : placed) {
            alone(one);
            for (Kind kind : Kind.values()) {
                pairs(one, kind, pairs);
            }
            againstTheHouse(one, shipped);
            take();
        }
        for (Topic topic : Topics.all()) {
            if (topics.contains(topic.name())) {
                gap(topic);
                take();
            }
        }
        return new Remarks(remarks, unlisted);
    }

    /** Takes what was remarked of one row, the gravest first, as far as there is room. */
    private void take() {
        ofRow.sort((a, b) -> a.kind().compareTo(b.kind()));
        for (Remark remark : ofRow) {
            if (shown.merge(remark.kind(), 1, Integer::sum) <= MOST_OF_A_KIND) {
                remarks.add(remark);
            } else {
                unlisted.merge(remark.kind(), 1 + remark.more(), Integer::sum);
            }
        }
        ofRow.clear();
    }

    // One row by itself -----------------------------------------------------------------------------------------------

    private Region region(Row row) {
        try {
            return regions(Math.max(LEAST_STEPS, ALL_STEPS / rows.size())).of(row.condition());
        } catch (TooMany e) {
            return null;
        }
    }

    private Region.Reader regions(long steps) {
        return new Region.Reader(things, new Steps(steps));
    }

    private void alone(Placed one) {
        Row row = one.row();
        if (one.region() == null) {
            add(Kind.UNREASONED, row, null, "Its conditions have too many alternatives.", "Make several rows of it.", null);
            return;
        }
        try {
            if (one.region().isEmpty()) {
                never(row);
                return;
            }
            against(row);
            if (!row.condition().parts().isEmpty() && one.region().isEverything(new Steps(ROW_STEPS))) {
                add(Kind.ALWAYS, row, null, "It holds whatever is found, once it is known.",
                        "Leave out \"when\", or mend a condition.", one.region().box(0));
            }
            setAside(row, one.region());
        } catch (TooMany e) {
            add(Kind.UNREASONED, row, null, "Its conditions have too many alternatives.", "Make several rows of it.", null);
        }
    }

    private void never(Row row) throws TooMany {
        List<Condition> needed = new ArrayList<>(row.condition().parts());
        for (int i = needed.size() - 1; i >= 0; i--) {
            List<Condition> fewer = new ArrayList<>(needed);
            fewer.remove(i);
            if (regions(ROW_STEPS).of(new Condition.AllOf(fewer)).isEmpty()) {
                needed = fewer;
            }
        }
        List<String> words = needed.stream().map(ConditionWords::of).toList();
        String text = words.size() == 1 ? words.get(0) + " cannot hold." : String.join(" and ", words) + " cannot hold together.";
        add(Kind.NEVER, row, null, text, "Mend a condition, or remove the row.", null);
    }

    /** A row that says two things of which one rules out the other. */
    private void against(Row row) {
        Answers.Clash clash = Answers.clash(row);
        if (clash != null) {
            add(Kind.CONTRADICTS, row, null, "It says both " + clash.words() + ".", "Keep one of them.", null);
        }
    }

    /** A row that speaks only where its topic does not apply. */
    private void setAside(Row row, Region region) throws TooMany {
        for (Saying saying : row.sayings()) {
            if (region.common(regions(ROW_STEPS).applies(saying.topic())) == null) {
                add(Kind.SET_ASIDE, row, null, "Where it speaks, " + saying.topic().name() + " does not apply.",
                        "Mend what is asked of the bike, or say it of another topic.", region.box(0));
                return;
            }
        }
    }

    // Rows of one sheet against each other ----------------------------------------------------------------------------

    private void pairs(Placed one, Kind kind, Tally pairs) {
        for (int i = 0; pairs.partner(kind, one.at(), i) >= 0; i++) {
            boolean last = pairs.partner(kind, one.at(), i + 1) < 0;
            int more = last ? pairs.count(kind, one.at()) - i - 1 : 0;
            pair(kind, one, placed.get(pairs.partner(kind, one.at(), i)), more);
        }
    }

    private void pair(Kind kind, Placed one, Placed other, int more) {
        Row row = one.row();
        String id = id(other.row());
        Box common = kind == Kind.UNREASONED ? null : one.region().common(other.region());
        switch (kind) {
            case IDENTICAL -> add(kind, row, other.row(), "It asks and says just what " + id + " does.", "Keep one of them.", more, common);
            case EQUIVALENT -> add(kind, row, other.row(), "It speaks just where " + id + " does, and says the same.", "Keep one of them.",
                    more, common);
            case NEEDLESS -> add(kind, row, other.row(), "Wherever it speaks, " + id + " says as much.", "Remove it, or let it say more.",
                    more, common);
            case CONTRADICTS -> add(kind, row, other.row(), (always(one, other) ? "They always speak together"
                    : "Whenever it speaks, " + id + " speaks too") + ": " + said(one, other) + ".",
                    "Mend one, or let their conditions exclude each other.", more, common);
            case OVERLAPS -> add(kind, row, other.row(), "Both may speak with equal force: " + said(one, other) + ".",
                    "Fine where a vote shall settle it; else let their conditions exclude each other.", more, common);
            case JOINABLE -> joinable(one, other, more);
            default -> add(kind, row, other.row(), "Together their conditions have too many alternatives.", "Make several rows of them.",
                    more, null);
        }
    }

    /** What two rows say that does not go together, in the order of the sheet. */
    private static String said(Placed one, Placed other) {
        boolean inOrder = one.at() < other.at();
        return Answers.clash(inOrder ? one.row() : other.row(), inOrder ? other.row() : one.row()).words();
    }

    private static boolean always(Placed one, Placed other) {
        try {
            return other.region().within(one.region(), new Steps(ROW_STEPS));
        } catch (TooMany e) {
            return false;
        }
    }

    private void joinable(Placed one, Placed other, int more) {
        Thing thing = Pairs.join(other, one);
        Values together = one.region().box(0).of(thing).or(other.region().box(0).of(thing));
        add(Kind.JOINABLE, one.row(), other.row(), "It says what " + id(other.row()) + " does, where " + thing.name()
                + " lies next to its range.", "One row will do, with " + thing.name() + " "
                + thing.text(together.least(0), together.most(0)) + ".", more, one.region().box(0));
    }

    // Against the shipped rows ----------------------------------------------------------------------------------------

    /** The shipped rows by what they say. */
    private Map<String, List<Placed>> shipped(List<Row> house) {
        Map<String, List<Placed>> out = new HashMap<>();
        for (Row row : house) {
            Region region = row.sayings().isEmpty() ? null : region(row);
            if (region != null) {
                out.computeIfAbsent(Placed.says(row), says -> new ArrayList<>()).add(Placed.of(0, row, region));
            }
        }
        return out;
    }

    private void againstTheHouse(Placed one, Map<String, List<Placed>> shipped) {
        if (!one.reasoned() || one.row().sayings().isEmpty()) {
            return;
        }
        for (Placed other : shipped.getOrDefault(one.says(), List.of())) {
            try {
                if (one.region().within(other.region(), new Steps(ROW_STEPS))) {
                    add(Kind.REPEATS, one.row(), other.row(), "Wherever it speaks, " + id(other.row()) + " says the same already.",
                            "Leave it out, unless it shall go before the house's other advice.", one.region().box(0));
                }
            } catch (TooMany e) {
                add(Kind.UNREASONED, one.row(), other.row(), "Together their conditions have too many alternatives.",
                        "Make several rows of it.", null);
            }
        }
    }

    // Where nobody speaks ---------------------------------------------------------------------------------------------

    /** A situation, all of which is known, in which a topic applies and no row speaks on it. */
    private void gap(Topic topic) {
        try {
            Region.Reader reader = regions(ALL_STEPS / 10);
            Region open = reader.applies(topic);
            List<Region> spoken = new ArrayList<>();
            for (Row row : inForce) {
                if (row.topics().contains(topic.name())) {
                    spoken.add(reader.of(row.condition()));
                }
            }
            Box found = open.knownBeyond(Region.together(spoken), new Steps(GAP_STEPS));
            if (found != null) {
                addOnTopic(Kind.GAP, topic, spoken.isEmpty() ? "No rule speaks on it at all; the common value is taken, "
                        + topic.text(topic.standard()) + "." : "There are situations in which no rule speaks on it; the common value is taken, "
                        + topic.text(topic.standard()) + ".", "Fine where the common value is; else write a row for them.", found);
            }
        } catch (TooMany e) {
            addOnTopic(Kind.UNREASONED, topic, "The rules on it have too many alternatives to tell where nobody speaks.",
                    "Nothing to mend, where the library's courses show no gap.", null);
        }
    }

    private void addOnTopic(Kind kind, Topic topic, String text, String mend, Box example) {
        ofRow.add(new Remark(kind, List.of(), topic.name(), text, mend, 0, example == null ? List.of() : facts(example, false),
                example == null ? null : Example.of(example), topic.name()));
    }

    private static String id(Row row) {
        return row.author().rule();
    }

    private void add(Kind kind, Row row, Row other, String text, String mend, Box example) {
        add(kind, row, other, text, mend, 0, example);
    }

    private void add(Kind kind, Row row, Row other, String text, String mend, int more, Box example) {
        List<Author> authors = other == null ? List.of(row.author()) : List.of(row.author(), other.author());
        ofRow.add(new Remark(kind, authors, "", text, mend, more, example == null ? List.of() : facts(example, true),
                example == null ? null : Example.of(example), on(row, other)));
    }

    /** The first topic on which both speak; empty for rows that only say what is to be done. */
    private static String on(Row row, Row other) {
        for (String topic : row.topics()) {
            if (other == null || other.topics().contains(topic)) {
                return topic;
            }
        }
        return "";
    }

    /** @param all whether to say of a thing, too, that it has some value, whichever */
    private static List<Fact> facts(Box box, boolean all) {
        List<Fact> out = new ArrayList<>();
        for (int i = 0; i < box.size(); i++) {
            boolean anything = box.values(i).equals(box.thing(i).known());
            if (box.values(i).spans() > 0 && (all || !anything)) {
                out.add(new Fact(box.thing(i).name(), box.thing(i).text(box.values(i).example())));
            }
        }
        return out;
    }
}
