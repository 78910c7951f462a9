package courseworthy.rulebase.check;

import courseworthy.claim.Author;
import courseworthy.claim.Verb;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Saying;
import courseworthy.rulebase.check.Region.TooMany;
import courseworthy.rulebase.check.Remark.Fact;
import courseworthy.rulebase.check.Remark.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
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

    private final List<Row> rows;
    private final List<Row> house;
    private final Map<Row, Region> regions = new IdentityHashMap<>();
    private final List<Remark> remarks = new ArrayList<>();
    /** Rows that can never speak, or are not reasoned about: they are held against no others. */
    private final Set<Row> apart = Collections.newSetFromMap(new IdentityHashMap<>());
    /** Rows that say again what an earlier one says: what holds of that one need not be said of them. */
    private final Set<Row> doubles = Collections.newSetFromMap(new IdentityHashMap<>());
    /** Pairs of rows, by their ids, that share several topics and were held against each other under one. */
    private final Set<String> met = new LinkedHashSet<>();

    private SheetCheck(List<Row> rows, List<Row> house) {
        this.rows = rows;
        this.house = house;
    }

    /**
     * What is to be looked at, row by row in the order of the sheet; for one row the gravest first.
     *
     * @param rows  the rows of one sheet
     * @param house the shipped rows
     */
    public static List<Remark> of(List<Row> rows, List<Row> house) {
        SheetCheck check = new SheetCheck(rows, house);
        for (Row row : rows) {
            check.alone(row);
        }
        check.pairs();
        check.againstTheHouse();
        Map<String, Integer> order = new LinkedHashMap<>();
        rows.forEach(row -> order.put(row.author().rule(), order.size()));
        check.remarks.sort(Comparator.comparing((Remark remark) -> order.get(remark.rows().get(0).rule()))
                .thenComparing(Remark::kind).thenComparing(remark -> remark.rows().toString()));
        return List.copyOf(check.remarks);
    }

    // One row by itself -----------------------------------------------------------------------------------------------

    private void alone(Row row) {
        try {
            Region region = Region.of(row.condition());
            regions.put(row, region);
            if (region.isEmpty()) {
                apart.add(row);
                never(row);
                return;
            }
            if (!row.condition().parts().isEmpty() && region.isEverything()) {
                add(Kind.ALWAYS, row, null, "It holds whatever is found, once it is known.",
                        "Leave out \"when\", or mend a condition.", region.boxes().get(0));
            }
            setAside(row, region);
        } catch (TooMany e) {
            apart.add(row);
            add(Kind.UNREASONED, row, null, "Its conditions have " + e.getMessage() + ".", "Make several rows of it.", null);
        }
    }

    private void never(Row row) throws TooMany {
        List<Condition> needed = new ArrayList<>(row.condition().parts());
        for (int i = needed.size() - 1; i >= 0; i--) {
            List<Condition> fewer = new ArrayList<>(needed);
            fewer.remove(i);
            if (Region.of(new Condition.AllOf(fewer)).isEmpty()) {
                needed = fewer;
            }
        }
        List<String> words = needed.stream().map(ConditionWords::of).toList();
        String text = words.size() == 1 ? words.get(0) + " cannot hold." : String.join(" and ", words) + " cannot hold together.";
        add(Kind.NEVER, row, null, text, "Mend a condition, or remove the row.", null);
    }

    /** A row that speaks only where its topic does not apply. */
    private void setAside(Row row, Region region) throws TooMany {
        for (Saying saying : row.sayings()) {
            if (region.common(Region.applies(saying.topic())) == null) {
                add(Kind.SET_ASIDE, row, null, "Where it speaks, " + saying.topic().name() + " does not apply.",
                        "Mend what is asked of the bike, or say it of another topic.", region.boxes().get(0));
                return;
            }
        }
    }

    // Rows of one sheet against each other ----------------------------------------------------------------------------

    private void pairs() {
        for (List<Row> onOneTopic : byTopic().values()) {
            for (int i = 0; i < onOneTopic.size(); i++) {
                for (int j = i + 1; j < onOneTopic.size(); j++) {
                    pair(onOneTopic.get(i), onOneTopic.get(j));
                }
            }
        }
    }

    /** Rows by the topics they speak on; a pair that shares several is met under the first alone. */
    private Map<String, List<Row>> byTopic() {
        Map<String, List<Row>> out = new LinkedHashMap<>();
        for (Row row : rows) {
            if (!apart.contains(row)) {
                row.topics().forEach(topic -> out.computeIfAbsent(topic, t -> new ArrayList<>()).add(row));
            }
        }
        return out;
    }

    private void pair(Row a, Row b) {
        if (doubles.contains(a) || doubles.contains(b)) {
            return;
        }
        if ((a.topics().size() > 1 && b.topics().size() > 1) && !met.add(a.author().rule() + "\n" + b.author().rule())) {
            return;
        }
        Box common = regions.get(a).common(regions.get(b));
        try {
            if (common == null) {
                joinable(a, b);
            } else {
                together(a, b, common);
            }
        } catch (TooMany e) {
            add(Kind.UNREASONED, a, b, "Together their conditions have " + e.getMessage() + ".", "Make several rows of them.", null);
        }
    }

    private void together(Row a, Row b, Box common) throws TooMany {
        boolean aInB = regions.get(a).within(regions.get(b));
        boolean bInA = regions.get(b).within(regions.get(a));
        if (aInB && bInA && Answers.same(a, b)) {
            boolean alike = a.condition().canonical().equals(b.condition().canonical());
            add(alike ? Kind.IDENTICAL : Kind.EQUIVALENT, b, a,
                    alike ? "It asks and says just what " + id(a) + " does." : "It speaks just where " + id(a) + " does, and says the same.",
                    "Keep one of them.", common);
            doubles.add(b);
        } else if (bInA && Answers.noLess(a, b)) {
            needless(b, a, common);
        } else if (aInB && Answers.noLess(b, a)) {
            needless(a, b, common);
        } else {
            clash(a, b, common, aInB, bInA);
            if (!aInB && !bInA) {
                joinable(a, b);
            }
        }
    }

    private void needless(Row row, Row broader, Box common) {
        add(Kind.NEEDLESS, row, broader, "Wherever it speaks, " + id(broader) + " says as much.", "Remove it, or let it say more.", common);
    }

    private void clash(Row a, Row b, Box common, boolean aInB, boolean bInA) {
        Answers.Clash clash = Answers.clash(a, b);
        if (clash == null) {
            return;
        }
        boolean preferenceIsFirst = clash.one().verb() == Verb.PREFER;
        boolean hopeless = clash.uneven() && (preferenceIsFirst ? aInB : bInA);
        boolean equal = a.author().force() == b.author().force();
        String said = Answers.words(clash.one()) + ", and " + Answers.words(clash.other());
        if (hopeless || equal && !clash.uneven() && (aInB || bInA)) {
            boolean both = aInB && bInA;
            Row narrow = aInB ? a : b;
            Row broad = aInB ? b : a;
            add(Kind.CONTRADICTS, narrow, broad, (both ? "They always speak together" : "Whenever it speaks, " + id(broad) + " speaks too")
                    + ": " + said + ".", "Mend one, or let their conditions exclude each other.", common);
        } else if (equal && !clash.uneven()) {
            add(Kind.OVERLAPS, a, b, "Both may speak with equal force: " + said + ".",
                    "Fine where a vote shall settle it; else let their conditions exclude each other.", common);
        }
    }

    /** Two rows that say the same and differ in one range alone, which is one range together. */
    private void joinable(Row a, Row b) {
        Region one = regions.get(a);
        Region other = regions.get(b);
        if (!Answers.same(a, b) || one.boxes().size() != 1 || other.boxes().size() != 1) {
            return;
        }
        Map<Thing, Values> first = one.boxes().get(0).sets();
        Map<Thing, Values> second = other.boxes().get(0).sets();
        Thing differing = differing(first, second);
        if (differing == null) {
            return;
        }
        Values together = first.get(differing).or(second.get(differing));
        if (together.spans().size() == 1) {
            add(Kind.JOINABLE, b, a, "It says what " + id(a) + " does, where " + differing.name() + " lies next to its range.",
                    "One row will do, with " + differing.name() + " " + differing.text(together.spans().get(0)) + ".", other.boxes().get(0));
        }
    }

    /** The one thing that two boxes ask otherwise; null where they ask of other things, or several otherwise. */
    private static Thing differing(Map<Thing, Values> first, Map<Thing, Values> second) {
        if (!first.keySet().equals(second.keySet())) {
            return null;
        }
        Thing out = null;
        for (Thing thing : first.keySet()) {
            if (!first.get(thing).equals(second.get(thing))) {
                if (out != null) {
                    return null;
                }
                out = thing;
            }
        }
        return out;
    }

    // Against the shipped rows ----------------------------------------------------------------------------------------

    private void againstTheHouse() {
        Map<String, List<Row>> byTopic = new LinkedHashMap<>();
        for (Row row : house) {
            if (!row.sayings().isEmpty()) {
                byTopic.computeIfAbsent(row.topics().get(0), t -> new ArrayList<>()).add(row);
            }
        }
        for (Row row : rows) {
            for (String topic : apart.contains(row) ? List.<String>of() : row.topics()) {
                byTopic.getOrDefault(topic, List.of()).forEach(shipped -> repeats(row, shipped));
            }
        }
    }

    private void repeats(Row row, Row shipped) {
        try {
            if (Answers.sameSayings(row, shipped)) {
                Region region = regions.get(row);
                if (region.within(Region.of(shipped.condition()))) {
                    add(Kind.REPEATS, row, shipped, "Wherever it speaks, " + id(shipped) + " says the same already.",
                            "Leave it out, unless it shall go before the house's other advice.", region.boxes().get(0));
                }
            }
        } catch (TooMany e) {
            // Too large to compare with: nothing is claimed of it.
            apart.add(row);
        }
    }

    private static String id(Row row) {
        return row.author().rule();
    }

    private void add(Kind kind, Row row, Row other, String text, String mend, Box example) {
        List<Author> authors = other == null ? List.of(row.author()) : List.of(row.author(), other.author());
        remarks.add(new Remark(kind, authors, text, mend, example == null ? List.of() : facts(example)));
    }

    private static List<Fact> facts(Box box) {
        List<Fact> out = new ArrayList<>();
        box.sets().forEach((thing, values) -> {
            if (!values.spans().isEmpty()) {
                out.add(new Fact(thing.name(), thing.text(values.example())));
            }
        });
        return out;
    }
}
