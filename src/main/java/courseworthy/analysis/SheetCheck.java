package courseworthy.analysis;

import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Looks over the rows of a sheet by reasoning over intervals and ordered values, never by sampling: what a verifier of decision tables
 * looks for (Smit, Zoet and Berkhout 2017; Calvanese, Dumas, Laurson, Maggi, Montali and Teinemaa 2018 for boxes, from memory).
 * Measures are taken as free of each other, and so are stretches that are asked about in different words: what follows from one for
 * another is not seen, so nothing is called impossible that is possible, but something impossible may go unseen.
 */
public final class SheetCheck {

    /** So many remarks of a kind are written out unless all are asked for, and so many of one row; the others are counted. */
    public static final int MOST_OF_A_KIND = 100;
    public static final int MOST_OF_A_ROW = 3;

    /** Steps to be spent on working out where rows speak, over all rows; and for a row at the least. */
    private static final long ALL_STEPS = 10_000_000;
    private static final long LEAST_STEPS = 3_000;
    /** Steps for finding where no rule on one topic. */
    private static final long GAP_STEPS = 300_000;
    /** So many such situations are tried: what is left to be settled may bring somebody to speak. */
    private static final int MOST_GAPS = 12;
    /** Steps for what is reasoned of one row by itself. */
    private static final long ROW_STEPS = 40_000;

    private final List<Row> rows;
    private final List<Row> inForce;
    private final Set<String> topics;
    private final boolean all;
    private final VariableTable things = new VariableTable();
    private final Feasibility possible;
    private final WitnessFinder shower;
    private final List<RowRegion> placed = new ArrayList<>();
    private final List<WitnessFinder.Draft> drafts = new ArrayList<>();
    private final Map<Kind, Integer> shown = new EnumMap<>(Kind.class);
    private final Map<Kind, Integer> unlisted = new EnumMap<>(Kind.class);
    private final List<Finding> remarks = new ArrayList<>();
    /** Rows of which it is told already that no day was found for them. */
    private final Set<String> unseen = new HashSet<>();

    private SheetCheck(List<Row> rows, List<Row> shipped, List<Row> inForce, Set<String> topics, boolean all, WitnessTrial trial) {
        this.rows = rows;
        this.inForce = inForce;
        this.topics = topics;
        this.all = all;
        this.possible = new Feasibility(shipped, regions(ROW_STEPS), things);
        this.shower = new WitnessFinder(things, regions(Long.MAX_VALUE), possible, trial);
    }

    /**
     * What is to be looked at, row by row in the order of the sheet; for one row the gravest first.
     *
     * @param rows  the rows of one sheet
     * @param shipped the shipped rows
     */
    public static Findings of(List<Row> rows, List<Row> shipped) {
        return new SheetCheck(rows, shipped, List.of(), Set.of(), false, WitnessTrial.NONE).look(shipped);
    }

    /**
     * The same, and where no rule on a topic.
     *
     * @param inForce all rows in force, those of the sheet among them
     * @param topics  the topics on which somebody should speak wherever they apply
     */
    public static Findings of(List<Row> rows, List<Row> shipped, List<Row> inForce, Set<String> topics) {
        return of(rows, shipped, inForce, topics, false, WitnessTrial.NONE);
    }

    /**
     * The same, each remark that is listed tried before it is made.
     *
     * @param all   whether to list all there are, however many
     * @param trial opens the examples
     */
    public static Findings of(List<Row> rows, List<Row> shipped, List<Row> inForce, Set<String> topics, boolean all, WitnessTrial trial) {
        return new SheetCheck(rows, shipped, inForce, topics, all, trial).look(shipped);
    }

    private static final String CLASH = "Change one, or let their conditions exclude each other.";
    /** Shipped rows are full of such exceptions, and say so in their reasons. */
    static final String EXCEPTION = "Leave it if you want it as the exception; if not, change one, or let their conditions exclude each other.";

    private Findings look(List<Row> shippedRows) {
        for (Row row : rows) {
            placed.add(RowRegion.of(placed.size(), row, region(row)));
        }
        PairTally pairs = new RowPairs(placed, possible, all ? Integer.MAX_VALUE : MOST_OF_A_ROW).tally();
        Map<String, List<RowRegion>> shipped = byTopic(shippedRows);
        for (RowRegion one : placed) {
            alone(one);
            for (Kind kind : Kind.values()) {
                pairs(one, kind, pairs);
            }
            againstShippedRules(one, shipped);
            take();
        }
        for (Topic topic : Topics.all()) {
            if (topics.contains(topic.name())) {
                gap(topic);
                take();
            }
        }
        return new Findings(remarks, unlisted);
    }

    /** Takes what was remarked of one row, the gravest first, as far as there is room. */
    private void take() {
        drafts.sort((a, b) -> a.kind().compareTo(b.kind()));
        for (WitnessFinder.Draft draft : drafts) {
            if (!all && shown.getOrDefault(draft.kind(), 0) >= MOST_OF_A_KIND) {
                unlisted.merge(draft.kind(), 1 + draft.bare().more(), Integer::sum);
                continue;
            }
            Finding remark = shower.shown(draft);
            if (remark == null && draft.kind() != Kind.OVERLAPS && draft.silent() == null && !draft.speaking().isEmpty()) {
                remark = unseen(draft.speaking().get(0));
            }
            if (remark != null) {
                shown.merge(remark.kind(), 1, Integer::sum);
                remarks.add(remark);
            }
        }
        drafts.clear();
    }

    /** Of a row that no day was found for it is told that, once, with a day on which all but one of its conditions hold. */
    private Finding unseen(Row row) {
        List<Condition> parts = row.condition().parts();
        for (int i = parts.size() - 1; i >= 0 && !unseen.contains(row.origin().rule()); i--) {
            Set<Integer> without = Set.of(i);
            List<Condition> others = new ArrayList<>(parts);
            others.remove(i);
            Finding bare = bare(Kind.UNREASONED, row, null, "No day was found on which it applies.", "See whether its conditions can come about.",
                    0, on(row, null));
            Finding remark = shower.shown(new WitnessFinder.Draft(bare, List.of(row), () -> boxes(new Condition.AllOf(others)), row, without));
            if (remark != null) {
                unseen.add(row.origin().rule());
                return remark;
            }
        }
        return null;
    }

    // One row by itself -----------------------------------------------------------------------------------------------

    private Region region(Row row) {
        try {
            return possible.left(regions(Math.max(LEAST_STEPS, ALL_STEPS / Math.max(1, rows.size()))).of(row.condition()));
        } catch (TooMany e) {
            return null;
        }
    }

    private Region.RegionReader regions(long steps) {
        return new Region.RegionReader(things, new ReasoningBudget(steps));
    }

    private void alone(RowRegion one) {
        Row row = one.row();
        if (one.region() == null) {
            tooMany(row, null, "Its conditions have too many alternatives.", "Make several rows of it.");
            return;
        }
        try {
            if (one.region().isEmpty()) {
                never(row);
                return;
            }
            against(row, one.region());
            if (!row.condition().parts().isEmpty() && one.region().isEverything(new ReasoningBudget(ROW_STEPS))) {
                add(Kind.ALWAYS, row, null, "It holds for every value, as long as it is known.",
                        "Leave out \"when\", or correct a condition.", 0, one.region()::boxes);
            }
            setAside(row, one.region());
        } catch (TooMany e) {
            tooMany(row, null, "Its conditions have too many alternatives.", "Make several rows of it.");
        }
    }

    private void never(Row row) throws TooMany {
        NearMiss nearest = new NearMiss(row, regions(ROW_STEPS), possible);
        List<String> words = nearest.conflict().stream().map(ConditionWords::of).toList();
        String text = words.size() == 1 ? words.get(0) + " cannot hold" : String.join(" and ", words) + " cannot hold together";
        String why = nearest.limits().isEmpty() ? "." : "; ruled out by " + String.join(" and ", nearest.limits()) + ".";
        drafts.add(new WitnessFinder.Draft(bare(Kind.NEVER, row, null, text + why, "Correct a condition, or remove the row.", 0, on(row, null)),
                List.of(row), nearest::boxes, row, nearest.unmet()));
    }

    /** A row that says two things of which one rules out the other. */
    private void against(Row row, Region region) {
        SayingComparison.SayingClash clash = SayingComparison.clash(row);
        if (clash != null) {
            add(Kind.CONTRADICTS, row, null, "It says both " + clash.words() + ".", "Keep one of them.", 0, clash.one().topic().name(),
                    region::boxes);
        }
    }

    /** A row that speaks only where its topic does not apply. */
    private void setAside(Row row, Region region) throws TooMany {
        for (Saying saying : row.sayings()) {
            if (region.common(regions(ROW_STEPS).applies(saying.topic())) == null) {
                add(Kind.SET_ASIDE, row, null, "Where it applies, " + saying.topic().name() + " does not apply.",
                        "Correct the condition on the bike, or say it on another topic.", 0, saying.topic().name(), region::boxes);
                return;
            }
        }
    }

    // Rows of one sheet against each other ----------------------------------------------------------------------------

    private void pairs(RowRegion one, Kind kind, PairTally pairs) {
        for (int i = 0; pairs.partner(kind, one.at(), i) >= 0; i++) {
            boolean last = pairs.partner(kind, one.at(), i + 1) < 0;
            int more = last ? pairs.count(kind, one.at()) - i - 1 : 0;
            pair(kind, one, placed.get(pairs.partner(kind, one.at(), i)), more);
        }
    }

    private void pair(Kind kind, RowRegion one, RowRegion other, int more) {
        Row row = one.row();
        Row against = other.row();
        String id = id(against);
        Supplier<List<Box>> common = () -> one.region().commons(other.region());
        switch (kind) {
            case IDENTICAL -> add(kind, row, against, "It tests and says just what " + id + " does.", "Keep one of them.", more, common);
            case EQUIVALENT -> add(kind, row, against, "It applies exactly where " + id + " does, and says the same.", "Keep one of them.",
                    more, common);
            case NEEDLESS -> add(kind, row, against, "Wherever it applies, " + id + " says as much.", "Remove it, or let it say more.",
                    more, common);
            case CONTRADICTS -> add(kind, row, against, (always(one, other) ? "They always apply together"
                    : "Whenever it applies, " + id + " applies too") + ": " + said(one, other).words() + ".", exception(one, other) ? EXCEPTION : CLASH,
                    more, said(one, other).one().topic().name(), common);
            case OVERLAPS -> add(kind, row, against, "Both may apply with equal force: " + said(one, other).words() + ".",
                    "If the vote may settle it, leave it; if not, let their conditions exclude each other.", more,
                    said(one, other).one().topic().name(), common);
            case JOINABLE -> joinable(one, other, more);
            default -> tooMany(row, against, "Together their conditions have too many alternatives.", "Make several rows of them.", more);
        }
    }

    /** What two rows say that does not go together, in the order of the sheet. */
    private static SayingComparison.SayingClash said(RowRegion one, RowRegion other) {
        boolean inOrder = one.at() < other.at();
        return SayingComparison.clash(inOrder ? one.row() : other.row(), inOrder ? other.row() : one.row());
    }

    /** Whether a bound is written for some of the days on which another row prefers what it leaves no room for. */
    private static boolean exception(RowRegion one, RowRegion other) {
        return SayingComparison.excludes(one.row(), other.row()) && !always(one, other);
    }

    private static boolean always(RowRegion one, RowRegion other) {
        try {
            return other.region().within(one.region(), new ReasoningBudget(ROW_STEPS));
        } catch (TooMany e) {
            return false;
        }
    }

    private void joinable(RowRegion one, RowRegion other, int more) {
        Variable thing = RowPairs.join(other, one);
        ValueSet mine = one.region().box(0).of(thing);
        ValueSet theirs = other.region().box(0).of(thing);
        ValueSet together = mine.or(theirs);
        Finding bare = bare(Kind.JOINABLE, one.row(), other.row(), "It says what " + id(other.row()) + " does, where " + thing.name()
                + " lies next to its range.", "One row will do, with " + thing.name() + " "
                + thing.text(together.least(0), together.most(0)) + ".", more, on(one.row(), other.row()));
        long edge = mine.less(theirs).nearest(theirs);
        drafts.add(new WitnessFinder.Draft(bare, List.of(one.row()), () -> List.of(one.region().box(0).and(Box.of(thing, ValueSet.of(edge, edge)))),
                other.row(), Set.of()));
    }

    // Against the shipped rows ----------------------------------------------------------------------------------------

    /** The shipped rows by what they say. */
    private Map<String, List<RowRegion>> byTopic(List<Row> shipped) {
        Map<String, List<RowRegion>> out = new HashMap<>();
        for (Row row : shipped) {
            Region region = row.sayings().isEmpty() ? null : region(row);
            if (region != null) {
                out.computeIfAbsent(RowRegion.says(row), says -> new ArrayList<>()).add(RowRegion.of(0, row, region));
            }
        }
        return out;
    }

    private void againstShippedRules(RowRegion one, Map<String, List<RowRegion>> shipped) {
        if (!one.reasoned() || one.row().sayings().isEmpty()) {
            return;
        }
        for (RowRegion other : shipped.getOrDefault(one.says(), List.of())) {
            try {
                if (one.region().within(other.region(), new ReasoningBudget(ROW_STEPS))) {
                    add(Kind.REPEATS, one.row(), other.row(), "Wherever it applies, " + id(other.row()) + " says the same already.",
                            "Leave it out, unless it is to override the other shipped rules.", 0, one.region()::boxes);
                }
            } catch (TooMany e) {
                tooMany(one.row(), other.row(), "Together their conditions have too many alternatives.", "Make several rows of it.");
            }
        }
    }

    // Where no rule applies ---------------------------------------------------------------------------------------------

    /** A situation, all of which is known, in which a topic applies and no row speaks on it. */
    private void gap(Topic topic) {
        List<Box> found = new ArrayList<>();
        List<Region> spoken = new ArrayList<>();
        boolean all = false;
        try {
            Region.RegionReader reader = regions(ALL_STEPS / 10);
            Region open = reader.applies(topic);
            for (Row row : inForce) {
                if (row.topics().contains(topic.name())) {
                    spoken.add(reader.of(row.condition()));
                }
            }
            open.knownBeyond(Region.together(spoken), new ReasoningBudget(GAP_STEPS), box -> found.add(box) && found.size() >= MOST_GAPS);
            all = true;
        } catch (TooMany e) {
            all = false;
        }
        WitnessFinder.Draft gap = gap(topic, spoken.isEmpty(), found);
        Finding remark = found.isEmpty() ? null : shower.shown(gap);
        if (remark != null) {
            drafts.add(gap.as(remark));
        } else if (!all) {
            searched(topic);
        }
    }

    /** Where the rows on a topic have too many alternatives, a situation is looked for in which none of them holds. */
    private void searched(Topic topic) {
        List<RegionSearch.Goal> silent = new ArrayList<>();
        List<Row> speaking = new ArrayList<>();
        for (Row row : inForce) {
            if (row.topics().contains(topic.name())) {
                silent.add(new RegionSearch.Goal(row.condition(), false));
                speaking.add(row);
            }
        }
        Box found = null;
        try {
            Region.RegionReader reader = regions(ALL_STEPS / 10);
            for (Box open : reader.applies(topic).boxes()) {
                found = found != null ? found : new RegionSearch(reader, new ReasoningBudget(GAP_STEPS)).in(open, silent);
            }
        } catch (TooMany e) {
            found = null;
        }
        WitnessFinder.Draft gap = found == null ? null : gap(topic, false, List.of(found));
        Finding remark = gap == null ? null : shower.shown(gap);
        if (remark != null) {
            drafts.add(gap.as(remark));
            return;
        }
        Row one = speaking.get(0);
        Finding bare = new Finding(Kind.UNREASONED, List.of(), topic.name(), "The rules on it have too many alternatives to tell where no rule applies.",
                "Nothing to change, where the shipped courses show no gap.", 0, topic.name(), Finding.Witness.NONE);
        drafts.add(new WitnessFinder.Draft(bare, List.of(), () -> boxes(one.condition()), null, Set.of()));
    }

    private WitnessFinder.Draft gap(Topic topic, boolean nobody, List<Box> boxes) {
        String taken = "; the default is used: " + topic.text(topic.standard()) + ".";
        Finding bare = new Finding(Kind.GAP, List.of(), topic.name(), (nobody ? "No rule covers it at all"
                : "There are situations in which no rule covers it") + taken, "If the default suits them, leave it; if not, write a row for them.", 0,
                topic.name(), Finding.Witness.NONE);
        return new WitnessFinder.Draft(bare, List.of(), () -> boxes, null, Set.of());
    }

    // ------------------------------------------------------------------------------------------------------------------

    private void tooMany(Row row, Row other, String text, String mend) {
        tooMany(row, other, text, mend, 0);
    }

    private void tooMany(Row row, Row other, String text, String mend, int more) {
        List<Condition> conditions = other == null ? List.of(row.condition()) : List.of(row.condition(), other.condition());
        drafts.add(new WitnessFinder.Draft(bare(Kind.UNREASONED, row, other, text, mend, more, on(row, other)), List.of(row),
                () -> boxes(conditions.toArray(new Condition[0])), null,
                Set.of()));
    }

    /** A box in which conditions of many alternatives hold, all of them if one is found, else the first; none where none is found. */
    private List<Box> boxes(Condition... conditions) {
        for (int many = conditions.length; many > 0; many--) {
            try {
                Region.RegionReader reader = regions(ROW_STEPS);
                Box box = new RegionSearch(reader, new ReasoningBudget(ROW_STEPS)).in(Box.ANYTHING,
                        Arrays.stream(conditions, 0, many).map(one -> new RegionSearch.Goal(one, true)).toList());
                if (box != null) {
                    return List.of(box);
                }
            } catch (TooMany e) {
                continue;
            }
        }
        return List.of();
    }

    private static String id(Row row) {
        return row.origin().rule();
    }

    private void add(Kind kind, Row row, Row other, String text, String mend, int more, Supplier<List<Box>> boxes) {
        add(kind, row, other, text, mend, more, on(row, other), boxes);
    }

    private void add(Kind kind, Row row, Row other, String text, String mend, int more, String on, Supplier<List<Box>> boxes) {
        drafts.add(new WitnessFinder.Draft(bare(kind, row, other, text, mend, more, on), other == null ? List.of(row) : List.of(row, other), boxes,
                null, Set.of()));
    }

    private static Finding bare(Kind kind, Row row, Row other, String text, String mend, int more, String on) {
        List<RuleOrigin> authors = other == null ? List.of(row.origin()) : List.of(row.origin(), other.origin());
        return new Finding(kind, authors, "", text, mend, more, on, Finding.Witness.NONE);
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
}
