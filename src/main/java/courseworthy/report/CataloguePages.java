package courseworthy.report;

import courseworthy.call.TopicNote;
import courseworthy.claim.Evidence;
import courseworthy.claim.RuleOrigin;
import courseworthy.demand.InputKeys;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.task.PagesResult;
import courseworthy.task.RulePage;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The catalogue as pages: one for each topic, each measure and each rule, one of stretches, one that lists the rules, and one to begin with. */
public final class CataloguePages {

    /** A case of a rule that is shown; its sheet's cases hold them all. */
    private static final int MOST_CASES = 3;

    /** From a page in a folder to those beside the folder. */
    private static final String UP = "../";

    private final String first;
    private final String suffix;
    private final List<RulePage> rules;
    private final Map<Measure, List<Long>> turns;

    /**
     * @param first  the name of the page to begin with
     * @param suffix what the names of all files end in: {@code .md}
     */
    public CataloguePages(PagesResult catalogue, String first, String suffix) {
        this.first = first;
        this.suffix = suffix;
        this.rules = catalogue.rules();
        this.turns = catalogue.thresholds();
    }

    /** The pages by path, the first the one to begin with. */
    public Map<String, Report> pages() {
        Map<String, Report> out = new LinkedHashMap<>();
        out.put(first, first());
        for (Topic topic : Topics.all()) {
            out.put(path(topic), topic(topic));
        }
        for (Measure measure : Measure.values()) {
            out.put(path(measure), measure(measure));
        }
        out.put(stretchesPath(), stretches());
        out.put(rulesPath(), list());
        for (RulePage rule : rules) {
            out.put(path(rule.rule().origin().rule(), suffix), rule(rule));
        }
        return out;
    }

    private String path(Topic topic) {
        return "topics/" + file(topic.name(), suffix);
    }

    private String path(Measure measure) {
        return "measures/" + file(measure.written(), suffix);
    }

    private String stretchesPath() {
        return "measures/stretches" + suffix;
    }

    private String rulesPath() {
        return "rules/all" + suffix;
    }

    /**
     * Where the page of a shipped rule stands.
     *
     * @param rule its qualified id
     */
    static String path(String rule, String suffix) {
        return "rules/" + file(rule, suffix);
    }

    /** {@code front-tyre-width.md}. */
    private static String file(String name, String suffix) {
        return name.replace(' ', '-').replace(':', '-').replace('/', '-') + suffix;
    }

    private Report first() {
        List<RichText> topics = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            topics.add(link(topic.name(), path(topic), topic.about()));
        }
        List<RichText> measures = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            measures.add(link(measure.written(), path(measure), measure.about()));
        }
        return Report.builder(RichText.of("Topics, measures and rules"))
                .paragraph("A topic is one thing to decide about the bike. A measure is what course, rider and day ask for. Rules test measures, and topics "
                        + "that are decided earlier, and say what follows for a topic. These pages are made from the tool itself.")
                .section(Section.builder("topics", "Topics").bullets(topics))
                .section(Section.builder("measures", "Measures").bullets(measures))
                .section(Section.builder("stretches", "Stretches").bullets(List.of(
                        link("stretches", stretchesPath(), "What any stretch, no stretch and share of course may test"))))
                .section(Section.builder("rules", "Rules").bullets(List.of(link("all rules", rulesPath(), "Each with its reason, its evidence and its cases"))))
                .build();
    }

    private static RichText link(String name, String path, String about) {
        return RichText.EMPTY.link(name, path).text(": " + about + ".");
    }

    private Report topic(Topic topic) {
        List<Definition> facts = new ArrayList<>();
        facts.add(Definition.of("values", values(topic)));
        facts.add(Definition.of("default", topic.text(topic.standard())));
        facts.add(Definition.of("layer", String.valueOf(topic.layer())));
        facts.add(Definition.of("safe side", safe(topic)));
        for (Topic.Applies applies : topic.applies()) {
            facts.add(Definition.of("applies where", applies.topic() + " is " + String.join(" or ", applies.options())));
        }
        List<RichText> testing = new ArrayList<>();
        for (RulePage page : testing(topic)) {
            testing.add(link(page, UP).text(", " + page.rule().origin().where()));
        }
        return Report.builder(RichText.of(Phrases.capital(topic.name()))).paragraph(topic.about() + ".").definitions(facts)
                .section(Section.builder("in-a-sheet", "In a sheet").paragraph("For example, a row may say:")
                        .listing("yaml", List.of("say:", "  " + topic.name() + ": " + saying(topic)))
                        .paragraph("It may test topics of layers before " + topic.layer() + " under decided, and any measure known by then."))
                .section(published(topic)).section(rules("Rules on it", speaking(topic)))
                .section(Section.builder("tested-by", "Rules that test it").bullets(testing))
                .build();
    }

    /** What is published on a topic and what is not, and why it hardly varies where it does not. */
    private static Section.Builder published(Topic topic) {
        return Section.builder("published", "What is published on it").bullets(FirmnessReport.published(TopicNote.on(topic)));
    }

    private static String values(Topic topic) {
        if (topic.kind() != Topic.Kind.QUANTITY) {
            return String.join(topic.kind() == Topic.Kind.ORDERED ? " < " : ", ", topic.options());
        }
        boolean everyTick = topic.step(topic.most()) == 1;
        String step = everyTick ? "" : ", decided in steps of " + Phrases.steps(topic);
        return topic.text(topic.least()) + " to " + topic.text(topic.most()) + ", to the nearest " + topic.resolution().text(1) + step;
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

    private Report measure(Measure measure) {
        List<Definition> facts = new ArrayList<>();
        facts.add(Definition.of("values", values(measure.scale())));
        facts.add(Definition.of("known", measure.layer() == 0 ? "from the start" : measure.ofTheBike()
                ? "once the bike is decided, if it is of the kind at hand" : "once topics of layer " + measure.layer() + " are decided"));
        InputKeys input = measure.input();
        if (!input.keys().isEmpty()) {
            facts.add(Definition.of("given by", input.place().word() + ": " + String.join(", ", input.keys())));
        }
        return Report.builder(RichText.of(Phrases.capital(measure.written()))).paragraph(measure.about() + ".").definitions(facts)
                .section(Section.builder("in-a-sheet", "In a sheet").paragraph("For example, a row may have the condition:")
                        .listing("yaml", List.of("when:", "  " + measure.written() + ": " + test(measure))))
                .section(rules("Rules that test it", resting(measure)))
                .build();
    }

    private static String values(MeasureScale scale) {
        return switch (scale.kind()) {
            case YES_NO -> "yes or no";
            case OPTIONS -> String.join(", ", scale.words());
            case WORDS -> String.join(" < ", scale.words());
            case QUANTITY -> "to the nearest " + scale.resolution().text(1) + bands(scale);
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

    private static Report stretches() {
        Table.Builder table = Table.builder().column("property").column("values").column("what it is");
        for (String name : StretchMeasure.names()) {
            StretchMeasure each = StretchMeasure.find(name);
            table.row(name, values(each.scale()), each.about() + ".");
        }
        return Report.builder(RichText.of("Stretches"))
                .paragraph("What any stretch, no stretch and share of course may test. Length, ascent and descent are summed over a run of stretches that lie next to "
                        + "each other and satisfy the rest of the condition.")
                .table(table.build())
                .section(Section.builder("in-a-sheet", "In a sheet").listing("yaml", List.of("when:",
                        "  any stretch: {sharp stones: yes, length: over 1 km}", "  share of course: {where: {surface: sand}, is: over 10 %}")))
                .build();
    }

    private RichText link(RulePage page, String to) {
        String rule = page.rule().origin().rule();
        return RichText.EMPTY.link(rule, to + path(rule, suffix));
    }

    private Report list() {
        List<RichText> lines = new ArrayList<>();
        for (RulePage page : rules) {
            lines.add(link(page, UP).text(": " + page.rule().origin().because()));
        }
        return Report.builder(RichText.of("All rules")).subtitle(Phrases.count(rules.size(), "rule")).paragraph(home()).bullets(lines).build();
    }

    private RichText home() {
        return RichText.EMPTY.link("Topics, measures and rules", UP + first);
    }

    private Report rule(RulePage page) {
        RuleOrigin author = page.rule().origin();
        List<RichText> reads = new ArrayList<>();
        page.measures().forEach(each -> reads.add(RichText.EMPTY.link(each.written(), UP + path(each)).text(": " + each.about() + ".")));
        page.decided().forEach(each -> reads.add(link(each).text(", as decided")));
        List<RichText> about = new ArrayList<>();
        page.rule().topics().forEach(each -> about.add(link(each)));
        return Report.builder(RichText.of(author.rule())).subtitle(author.force().word()).paragraph(home())
                .section(Section.builder("says", "What it says").bullets(CatalogueReport.says(page.rule())).bullets("On:", about))
                .section(Section.builder("why", "Why").paragraph(author.because()).paragraph(RichText.of("How it is known: ").append(Phrases.origin(author)).text("."))
                        .bullets(author.evidence() == Evidence.PUBLISHED ? List.of() : publishedOn(page)))
                .section(Section.builder("reads", "What it depends on").bullets(reads))
                .section(Section.builder("applies", "Where it applies").bullets(page.applies().stream().map(RichText::of).toList()))
                .section(Section.builder("silent", "Where it does not").bullets(page.silent().stream().map(RichText::of).toList()))
                .section(Section.builder("written", "Where it is written").listing("yaml", page.written()).remark(author.where().toString()))
                .build();
    }

    /** What is published on the topics of a rule that is not, a line each. */
    private static List<RichText> publishedOn(RulePage page) {
        Set<TopicNote> notes = new LinkedHashSet<>();
        page.rule().topics().stream().map(Topics::find).filter(Objects::nonNull).map(TopicNote::on).filter(Objects::nonNull).forEach(notes::add);
        return notes.stream().flatMap(note -> FirmnessReport.published(note).stream()).toList();
    }

    private RichText link(String topic) {
        Topic found = Topics.find(topic);
        return found == null ? RichText.of(topic) : RichText.EMPTY.link(topic, UP + path(found));
    }

    private Section.Builder rules(String heading, List<RulePage> pages) {
        Section.Builder out = Section.builder("rules", heading).paragraph(pages.isEmpty() ? "No shipped rule." : "");
        for (int i = 0; i < pages.size(); i++) {
            RulePage page = pages.get(i);
            RuleOrigin author = page.rule().origin();
            out.section(Section.builder("rule-" + (i + 1), author.rule()).bullets(CatalogueReport.says(page.rule()))
                    .paragraph(author.because() + " (" + author.force().word() + "; " + Phrases.standing(author) + ")")
                    .paragraph(cases("Applies", page.applies())).paragraph(cases("Does not apply", page.silent()))
                    .remark(RichText.EMPTY.link("The rule's page", UP + path(author.rule(), suffix)).text(", " + author.where())));
        }
        return out;
    }

    private static String cases(String what, List<String> sentences) {
        if (sentences.isEmpty()) {
            return "";
        }
        int shown = Math.min(MOST_CASES, sentences.size());
        return what + ": " + String.join("; ", sentences.subList(0, shown))
                + (sentences.size() == shown ? "." : "; and " + (sentences.size() - shown) + " more.");
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
