package courseworthy.sheet;

import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Task;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.Sha256;
import courseworthy.text.YamlReader;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decodes a sheet of advice, the shipped one as well as a coach's, into rows. Collects every fault; what is faulty is left out of what it
 * returns, so callers must look at the faults.
 */
public final class SheetReader {

    /** Largest sheet read, in bytes: over ten thousand rows of ordinary length. */
    static final int MOST_BYTES = 4_000_000;

    private static final Pattern ID = Pattern.compile("(?!-)(?!.*--)[a-z0-9-]+(?<!-)");
    private static final Pattern BRACED = Pattern.compile("\\{([^{}]*)}");
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_WORD = 60;
    /** Licences that are suggested for sheets, by their SPDX identifiers (spdx.org/licenses). */
    public static final List<String> LICENCES =
            List.of("CC0-1.0", "CC-BY-4.0", "CC-BY-SA-4.0", "CC-BY-NC-4.0", "CC-BY-NC-SA-4.0", "CC-BY-ND-4.0", "CC-BY-NC-ND-4.0", "MIT", "Apache-2.0");
    private static final List<String> RESERVED = List.of("shipped", "limit", "pairing", "rider");

    private final String file;
    private final Rank rank;
    private final int order;
    private final Faults faults;
    private final Map<String, Integer> ids = new LinkedHashMap<>();
    private final NamedValues named;
    private final boolean namedElsewhere;
    private String prefix;

    /** @param shared values that are read already; null where the sheet has its own */
    private SheetReader(String file, Rank rank, int order, Faults faults, NamedValues shared) {
        this.file = file;
        this.rank = rank;
        this.order = order;
        this.faults = faults;
        this.prefix = rank.word();
        this.named = shared == null ? new NamedValues() : shared;
        this.namedElsewhere = shared != null;
    }

    /**
     * Reads a coach's sheet.
     *
     * @param path  where it lies
     * @param shown its path as the user typed it
     * @param order its position among the sheets given, 0 first
     * @return the sheet, or null where the file could not be read; the faults say why
     */
    public static Sheet read(Path path, String shown, int order, Faults faults) {
        byte[] bytes = YamlReader.bytes(path, shown, MOST_BYTES, faults);
        Node.Mapping root = bytes == null ? null : YamlReader.read(bytes, shown, MOST_BYTES, faults);
        return root == null ? null : decode(root, shown, Rank.COACH, order, faults).from(Sha256.hex(bytes));
    }

    /** Decodes the tree of a sheet of a rank, which may name values of its own. */
    public static Sheet decode(Node.Mapping root, String file, Rank rank, int order, Faults faults) {
        return new SheetReader(file, rank, order, faults, null).sheet(new FieldReader(file, root, faults));
    }

    /** Decodes the tree of a shipped sheet; the values of all of them are read already. Rows that join topics are known as such. */
    public static Sheet decode(Node.Mapping root, String file, Rank rank, NamedValues shared, Faults faults) {
        SheetReader reader = new SheetReader(file, rank, 0, faults, shared);
        if (file.startsWith(RulesFolder.PAIRING)) {
            reader.prefix = "pairing";
        }
        return reader.sheet(new FieldReader(file, root, faults));
    }

    /** Reads a rider's own constraints: a list of rows without a sheet around them. */
    public static List<Row> rider(Node constraints, String file, Faults faults) {
        return constraints == null ? List.of() : new SheetReader(file, Rank.RIDER, 0, faults, null).rows("constraints", constraints);
    }

    private Sheet sheet(FieldReader fields) {
        String title = fields.required("sheet", "the sheet's name") == null ? "" : orEmpty(fields.prose("sheet"));
        String by = fields.required("author", "who wrote it") == null ? "" : orEmpty(fields.prose("author"));
        Sheet.Origin origin = Sheet.Origin.NONE;
        if (rank == Rank.COACH) {
            prefix = title;
            checkTitle(fields, title);
            checkLength(fields, "author", by);
            origin = new Sheet.Origin(orEmpty(fields.line("version", LONGEST_WORD)), licence(fields), "");
        }
        if (fields.has(NamedValues.KEY) && !namedElsewhere) {
            named.read(fields.node(NamedValues.KEY), file, faults);
        }
        Node advice = fields.node("advice");
        List<Row> rows = advice == null ? List.of() : rows("advice", advice);
        List<Sheet.LeaveOut> leaveOuts = leaveOuts(fields);
        if (!namedElsewhere) {
            named.warnOfUnused(faults);
        }
        if (advice == null && leaveOuts.isEmpty() && !fields.has(NamedValues.KEY)) {
            faults.add(file, fields.line(), "advice", "nothing", "a list of rows", "Write \"advice:\" and under it rows with an id.");
        }
        fields.done();
        return new Sheet(title, by, file, fields.lineOf("sheet"), rows, leaveOuts, origin);
    }

    private String licence(FieldReader fields) {
        String licence = orEmpty(fields.line("licence", LONGEST_WORD));
        String spelled = licence.replace(' ', '-');
        String near = LICENCES.contains(spelled) ? "Did you mean \"" + spelled + "\"?" : Spelling.didYouMean(spelled, LICENCES);
        if (!licence.isEmpty() && !LICENCES.contains(licence) && !near.isEmpty()) {
            faults.add(Fault.warning(file, fields.lineOf("licence"), "licence", "\"" + licence + "\"", "an SPDX identifier, such as CC-BY-4.0", near));
        }
        return licence;
    }

    private static void checkLength(FieldReader fields, String key, String text) {
        if (text.length() > LONGEST_NAME || text.indexOf('\n') >= 0) {
            fields.fault(key, text.indexOf('\n') >= 0 ? "several lines" : text.length() + " characters",
                    "one line of at most " + LONGEST_NAME + " characters", "");
        }
    }

    private void checkTitle(FieldReader fields, String title) {
        if (RESERVED.contains(title.toLowerCase(Locale.ROOT))) {
            fields.fault("sheet", "\"" + title + "\"", "a name of its own", "Other names: all but " + String.join(", ", RESERVED) + ".");
        } else if (title.contains("/")) {
            fields.fault("sheet", "\"" + title + "\"", "a name without \"/\"", "");
        }
        checkLength(fields, "sheet", title);
    }

    private List<Row> rows(String key, Node node) {
        List<Row> out = new ArrayList<>();
        for (Node item : node instanceof Node.Sequence list ? list.items() : List.of(node)) {
            if (item instanceof Node.Mapping block) {
                Row row = row(new FieldReader(file, block, faults));
                if (row != null) {
                    out.add(row);
                }
            } else {
                faults.add(file, item.line(), key, item.describe(), "rows, each with id, say or do, and because", "");
            }
        }
        return out;
    }

    private Row row(FieldReader fields) {
        String id = id(fields);
        ConditionReader conditions = new ConditionReader(file, faults, named);
        Condition.AllOf condition =
                fields.has("when") ? conditions.read("when", fields.node("when")) : new Condition.AllOf(List.of());
        List<Saying> sayings = fields.has("say") ? new SayingReader(file, faults, named).read(fields.node("say")) : List.of();
        RuleOrigin author = origin(fields, id);
        Task task = fields.has("do") ? task(fields.fields("do"), author) : null;
        if (!fields.has("say") && !fields.has("do")) {
            faults.add(file, fields.line(), id, "neither say nor do", "at least one of them", "");
        }
        refuseRank(fields);
        fields.done();
        checkLayers(conditions.needs(), sayings);
        boolean second = ids.getOrDefault(id, 0) != fields.lineOf("id");
        return second || sayings.isEmpty() && task == null ? null : new Row(author, condition, sayings, task);
    }

    private String id(FieldReader fields) {
        if (fields.required("id", "a name for the row, such as tired-hands") == null) {
            return "";
        }
        String id = orEmpty(fields.prose("id"));
        if (!ID.matcher(id).matches()) {
            fields.fault("id", "\"" + id + "\"", "small letters, digits and hyphens, such as tired-hands", "");
        }
        Integer first = ids.putIfAbsent(id, fields.lineOf("id"));
        if (first != null) {
            fields.fault("id", "\"" + id + "\" a second time", "an id of its own", "It first stands in line " + first + ".");
        }
        return id;
    }

    private RuleOrigin origin(FieldReader fields, String id) {
        Force force = Force.SHOULD;
        if (fields.has("force")) {
            String word = fields.word("force", Arrays.stream(Force.values()).map(Force::word).toList());
            force = Arrays.stream(Force.values()).filter(f -> f.word().equals(word)).findFirst().orElse(force);
        }
        Evidence evidence = Evidence.OPINION;
        if (fields.has("evidence")) {
            String word = fields.word("evidence", Arrays.stream(Evidence.values()).map(Evidence::word).toList());
            evidence = Arrays.stream(Evidence.values()).filter(e -> e.word().equals(word)).findFirst().orElse(evidence);
        }
        String source = orEmpty(fields.prose("source"));
        if (evidence == Evidence.PUBLISHED && source.isEmpty()) {
            fields.fault("evidence", "\"published\" without a source", "a line \"source: ...\" too",
                    "Write who published it where, or evidence: practice.");
        }
        String because = fields.required("because", "the reason, in one sentence") == null ? "" : orEmpty(fields.prose("because"));
        return new RuleOrigin(prefix + "/" + id, rank, order, force, evidence, source, because, new SourceLocation(file, fields.lineOf("id")));
    }

    /** A sheet cannot give itself a rank. */
    private void refuseRank(FieldReader fields) {
        for (String key : List.of("rank", "limit")) {
            if (fields.block().get(key) != null) {
                fields.node(key);
                faults.add(file, fields.lineOf(key), key, fields.block().get(key).describe(), "no key of that name",
                        "Limits are shipped with the tool and cannot be written in a sheet; \"force: must\" is the strongest.");
            }
        }
    }

    private Task task(FieldReader fields, RuleOrigin author) {
        if (fields == null) {
            return null;
        }
        String what = fields.required("what", "what to do") == null ? "" : braced(fields, "what");
        String find = fields.required("find", "how to tell that it is done") == null ? "" : braced(fields, "find");
        String by = fields.required("by", "one of: " + String.join(", ", Deadline.allWords())) == null ? null : fields.word("by", Deadline.allWords());
        Amount needs = fields.has("needs") ? needs(fields) : null;
        boolean critical = fields.has("critical") && Boolean.TRUE.equals(critical(fields));
        String part = orEmpty(fields.prose("part"));
        List<String> after = fields.texts("after").stream().map(id -> id.contains("/") ? id : prefix + "/" + id).toList();
        fields.done();
        long seconds = needs == null ? 0 : Math.round(needs.inBase());
        return by == null ? null : new Task(author, what, find, Deadline.of(by), seconds, critical, part, after, List.of());
    }

    private Amount needs(FieldReader fields) {
        return fields.node("needs") instanceof Node.Scalar written && NamedValues.isName(written.text())
                ? named.amount("needs", written, Dimension.TIME, file, faults) : fields.amount("needs", Dimension.TIME);
    }

    private Boolean critical(FieldReader fields) {
        if (rank == Rank.COACH || rank == Rank.RIDER) {
            fields.fault("critical", fields.node("critical").describe(), "no such mark in a sheet of your own",
                    "Only the shipped rules mark what safety hangs on.");
            return null;
        }
        return fields.yesNo("critical");
    }

    /** A text that may name topics in braces. */
    private String braced(FieldReader fields, String key) {
        String text = orEmpty(fields.prose(key));
        Matcher names = BRACED.matcher(text);
        while (names.find()) {
            if (Topics.find(names.group(1)) == null) {
                fields.fault(key, "\"{" + names.group(1) + "}\"", "a topic in braces", bracedMend(names.group(1)));
            }
        }
        return text;
    }

    private static String bracedMend(String name) {
        List<Topic> ends = BothEnds.topics(name);
        return ends.isEmpty() ? Spelling.didYouMean(name, Topics.names())
                : "Name each end, as in \"{" + ends.get(0).name() + "}\" and \"{" + ends.get(1).name() + "}\".";
    }

    /** A row may only test what is settled before every topic it speaks on. */
    private void checkLayers(List<ConditionReader.Needs> needs, List<Saying> sayings) {
        for (ConditionReader.Needs need : needs) {
            for (Saying saying : sayings) {
                if (need.layer() >= saying.topic().layer()) {
                    faults.add(file, need.line(), need.key(), "\"" + need.what() + "\", settled in layer " + need.layer(),
                            "what is settled before " + saying.topic().name() + ", which is in layer " + saying.topic().layer(),
                            "Test a measure of the course or an earlier topic instead, so that topics do not wait for each other.");
                }
            }
        }
    }

    private List<Sheet.LeaveOut> leaveOuts(FieldReader fields) {
        List<Sheet.LeaveOut> out = new ArrayList<>();
        if (!fields.has("leave out")) {
            return out;
        }
        if (rank != Rank.COACH) {
            fields.fault("leave out", "a leave-out", "none in the shipped rules", "Remove the rule instead.");
        }
        for (FieldReader item : fields.blocks("leave out")) {
            String rule = item.required("rule", "a rule, such as shipped/some-rule") == null ? null : item.prose("rule");
            String because = item.required("because", "the reason, in one sentence") == null ? null : item.prose("because");
            item.done();
            if (rule != null && because != null) {
                out.add(new Sheet.LeaveOut(rule, because, new SourceLocation(file, item.lineOf("rule"))));
            }
        }
        return out;
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
