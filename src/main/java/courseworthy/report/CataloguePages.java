package courseworthy.report;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.task.MissingInputs;
import courseworthy.task.PagesResult;
import courseworthy.task.RuleEntry;
import courseworthy.task.RulePage;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The catalogue as Markdown pages: one for each topic and each measure, one of stretches, and one to begin with. */
public final class CataloguePages {

    /** A case of a rule that is shown; its sheet's cases hold them all. */
    private static final int MOST_CASES = 3;

    private final List<RulePage> rules;
    private final Map<Measure, List<Long>> turns;

    public CataloguePages(PagesResult catalogue) {
        this.rules = catalogue.rules();
        this.turns = catalogue.thresholds();
    }

    /** The pages by path, the first the one to begin with. */
    public Map<String, String> pages() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("README.md", first());
        for (Topic topic : Topics.all()) {
            out.put(path(topic), topic(topic));
        }
        for (Measure measure : Measure.values()) {
            out.put(path(measure), measure(measure));
        }
        out.put("measures/stretches.md", stretches());
        return out;
    }

    private static String path(Topic topic) {
        return "topics/" + file(topic.name());
    }

    private static String path(Measure measure) {
        return "measures/" + file(measure.written());
    }

    /** {@code front-tyre-width.md}. */
    private static String file(String name) {
        return name.replace(' ', '-') + ".md";
    }

    private String first() {
        Marked page = new Marked();
        page.heading(1, "What is decided, and what it is decided by");
        page.paragraph("A topic is one thing to decide about the bike. A measure is what course, rider and day ask. Rules test measures, and "
                + "topics that are settled before, and speak on topics. These pages are made from the tool itself.");
        page.heading(2, "Topics");
        for (Topic topic : Topics.all()) {
            page.link(topic.name(), path(topic), topic.about() + ".");
        }
        page.heading(2, "Measures");
        for (Measure measure : Measure.values()) {
            page.link(measure.written(), path(measure), measure.about() + ".");
        }
        page.heading(2, "Stretches");
        page.link("stretches", "measures/stretches.md", "What any stretch, no stretch and share of course may test.");
        return page.toString();
    }

    private String topic(Topic topic) {
        Marked page = new Marked();
        page.heading(1, WorthWords.capital(topic.name()));
        page.paragraph(topic.about() + ".");
        page.tableHead("", "");
        page.tableRow("values", values(topic));
        page.tableRow("where nothing is said", topic.text(topic.standard()));
        page.tableRow("settles in layer", String.valueOf(topic.layer()));
        page.tableRow("safe side", safe(topic));
        for (Topic.Applies applies : topic.applies()) {
            page.tableRow("applies where", applies.topic() + " is " + String.join(" or ", applies.options()));
        }
        page.heading(2, "In a sheet");
        page.paragraph("A row says, for one:");
        page.code("say:\n  " + topic.name() + ": " + saying(topic));
        page.paragraph("It may test topics of layers before " + topic.layer() + " under decided, and any measure known by then.");
        page.heading(2, "What speaks on it");
        rules(page, speaking(topic));
        List<RulePage> testing = testing(topic);
        if (!testing.isEmpty()) {
            page.heading(2, "What is decided by it");
            for (RulePage entry : testing) {
                page.bullet(entry.rule().author().rule() + ", " + entry.rule().author().where());
            }
        }
        return page.toString();
    }

    private static String values(Topic topic) {
        if (topic.kind() != Topic.Kind.QUANTITY) {
            return String.join(topic.kind() == Topic.Kind.ORDERED ? " < " : ", ", topic.options());
        }
        boolean everyTick = topic.step(topic.most()) == 1;
        String step = everyTick ? "" : ", decided in steps of " + Phrases.steps(topic);
        return topic.text(topic.least()) + " to " + topic.text(topic.most()) + ", told to " + topic.resolution().text(1) + step;
    }

    private static String safe(Topic topic) {
        boolean quantity = topic.kind() == Topic.Kind.QUANTITY;
        return switch (topic.safe()) {
            case UP -> quantity ? "more" : topic.options().get(topic.options().size() - 1);
            case DOWN -> quantity ? "less" : topic.options().get(0);
            case NONE -> "none";
        };
    }

    private static String saying(Topic topic) {
        return switch (topic.kind()) {
            case QUANTITY, ORDERED -> "at least " + topic.text(topic.standard());
            case OPTIONS -> "prefer " + topic.text(topic.standard());
        };
    }

    private String measure(Measure measure) {
        Marked page = new Marked();
        page.heading(1, WorthWords.capital(measure.written()));
        page.paragraph(measure.about() + ".");
        page.tableHead("", "");
        page.tableRow("values", values(measure.scale()));
        page.tableRow("known", measure.layer() == 0 ? "from the start" : measure.ofTheBike()
                ? "once bike is settled, where it is of the kind at hand" : "once topics of layer " + measure.layer() + " are settled");
        String wanted = MissingInputs.told(measure.written());
        if (!wanted.isEmpty()) {
            page.tableRow("told by", wanted);
        }
        page.heading(2, "In a sheet");
        page.paragraph("A condition on it, for one:");
        page.code("when:\n  " + measure.written() + ": " + test(measure));
        page.heading(2, "What rests on it");
        rules(page, resting(measure));
        return page.toString();
    }

    private static String values(MeasureScale scale) {
        return switch (scale.kind()) {
            case YES_NO -> "yes or no";
            case OPTIONS -> String.join(", ", scale.words());
            case WORDS -> String.join(" < ", scale.words());
            case QUANTITY -> "to " + scale.resolution().text(1) + bands(scale);
        };
    }

    private static String bands(MeasureScale scale) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < scale.words().size(); i++) {
            out.append(i == 0 ? "; " : ", ").append(scale.words().get(i)).append(" from ").append(scale.resolution().text(scale.bands().get(i)));
        }
        return out.toString();
    }

    /** A test that some shipped rule turns at, or else one of its own. */
    private String test(Measure measure) {
        MeasureScale scale = measure.scale();
        List<Long> at = turns.getOrDefault(measure, List.of());
        return switch (scale.kind()) {
            case YES_NO -> "yes";
            case OPTIONS -> "one of [" + String.join(", ", scale.words().subList(0, Math.min(2, scale.words().size()))) + "]";
            case WORDS -> "at least " + scale.words().get(scale.words().size() / 2);
            case QUANTITY -> "at least " + (!scale.words().isEmpty() ? scale.words().get(scale.words().size() / 2)
                    : scale.resolution().text(at.isEmpty() ? 10 : at.get(at.size() / 2)));
        };
    }

    private static String stretches() {
        Marked page = new Marked();
        page.heading(1, "Stretches");
        page.paragraph("What any stretch, no stretch and share of course may test. Length, rise and drop are summed over a run of stretches that "
                + "lie side by side and satisfy the rest of the condition.");
        page.tableHead("property", "values", "what it is");
        for (String name : StretchMeasure.names()) {
            StretchMeasure each = StretchMeasure.find(name);
            page.tableRow(name, values(each.scale()), each.about() + ".");
        }
        page.heading(2, "In a sheet");
        page.code("when:\n  any stretch: {sharp stones: yes, length: over 1 km}\n  share of course: {where: {surface: sand}, is: over 10 %}");
        return page.toString();
    }

    private static void rules(Marked page, List<RulePage> entries) {
        if (entries.isEmpty()) {
            page.paragraph("No shipped rule.");
        }
        for (RulePage entry : entries) {
            RuleEntry rule = entry.rule();
            page.heading(3, rule.author().rule());
            for (String says : rule.says()) {
                page.bullet(says);
            }
            if (rule.says().isEmpty() && !rule.topics().isEmpty()) {
                page.bullet("joins topics, on " + String.join(", ", rule.topics()));
            }
            if (!rule.does().isEmpty()) {
                page.bullet("checklist: " + rule.does());
            }
            page.gap();
            page.paragraph(rule.author().because() + " (" + rule.author().force().word() + "; " + Phrases.standing(rule.author()) + ")");
            cases(page, "Speaks", entry.speaks());
            cases(page, "Stays silent", entry.silent());
            page.emphasised(rule.author().where().toString());
        }
    }

    private static void cases(Marked page, String what, List<String> sentences) {
        if (!sentences.isEmpty()) {
            int shown = Math.min(MOST_CASES, sentences.size());
            String more = sentences.size() == shown ? "." : "; and " + (sentences.size() - shown) + " more.";
            page.paragraph(what + ": " + String.join("; ", sentences.subList(0, shown)) + more);
        }
    }

    private List<RulePage> speaking(Topic topic) {
        List<RulePage> out = new ArrayList<>();
        for (RulePage each : rules) {
            if (each.rule().topics().contains(topic.name())) {
                out.add(each);
            }
        }
        return out;
    }

    private List<RulePage> testing(Topic topic) {
        List<RulePage> out = new ArrayList<>();
        for (RulePage each : rules) {
            if (each.decided().contains(topic.name())) {
                out.add(each);
            }
        }
        return out;
    }

    private List<RulePage> resting(Measure measure) {
        List<RulePage> out = new ArrayList<>();
        for (RulePage each : rules) {
            if (each.measures().contains(measure)) {
                out.add(each);
            }
        }
        return out;
    }
}
