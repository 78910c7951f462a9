package courseworthy.report;

import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.course.TrackRepair;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.demand.Demands;
import courseworthy.demand.InputKeys;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.task.Brief;
import courseworthy.task.Caution;
import courseworthy.task.CourseSummary;
import courseworthy.task.CourseSummary.SurfaceShare;
import courseworthy.task.MissingInputs;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.Locale;
import java.util.Map;

/** Sentences and phrases made from the model's records, the same for every output that is read by people. */
public final class Phrases {

    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June", "July", "August",
            "September", "October", "November", "December");
    private static final Pattern HEIGHT = Pattern.compile("(-?\\d+) mm$");
    private static final String NOTHING = percent(BigDecimal.ZERO);

    private Phrases() {
    }

    /** {@code 14 June 2025}; {@code no date given} where it is not known. */
    static String date(LocalDate date) {
        return date == null ? "no date given"
                : date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1) + " " + date.getYear();
    }

    /** {@code Thursday 11 June}. */
    static String weekday(LocalDate date) {
        String day = date.getDayOfWeek().name();
        return day.charAt(0) + day.substring(1).toLowerCase(java.util.Locale.ROOT) + " " + date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1);
    }

    /** {@code Thursday 11 June 2026}. */
    static String weekdayAndYear(LocalDate date) {
        return weekday(date) + " " + date.getYear();
    }

    /** {@code 15 to 21 June}, {@code 29 June to 5 July}. */
    static String days(LocalDate from, LocalDate to) {
        String month = from.getMonth() == to.getMonth() ? "" : " " + MONTHS.get(from.getMonthValue() - 1);
        return from.getDayOfMonth() + month + " to " + to.getDayOfMonth() + " " + MONTHS.get(to.getMonthValue() - 1);
    }

    /** The event where it has a name of its own, and the rider: {@code Moor Cup, for Kim}; empty where neither is named. */
    static String whose(Brief brief) {
        Phrase out = new Phrase();
        out.add(brief.event().equals(brief.course().name()) ? "" : brief.event());
        out.add(prefixed("for ", brief.rider()));
        return out.toString();
    }

    /** The course in three lines: how long and high, what ground, what day. */
    static List<String> course(Brief brief) {
        return List.of(size(brief), ground(brief), day(brief));
    }

    private static String size(Brief brief) {
        Demands demands = brief.demands();
        Phrase out = new Phrase();
        String laps = mid(demands, Measure.LAPS);
        out.add(range(demands, Measure.DISTANCE) + (laps.equals("1") || laps.isEmpty() ? "" : " in " + laps + " laps"));
        out.add(prefixed("up ", mid(demands, Measure.ASCENT)));
        out.add(prefixed("down ", mid(demands, Measure.DESCENT)));
        out.add(prefixed("highest point ", mid(demands, Measure.HIGHEST_POINT)));
        out.add(demands.known(Measure.ASCENT) ? "" : "climbing unknown");
        return out.toString();
    }

    private static String ground(Brief brief) {
        Demands demands = brief.demands();
        Phrase out = new Phrase();
        boolean nothing = !demands.known(Measure.ROUGHNESS) && brief.course().surfaces().get(0).surface().equals(CourseSummary.UNKNOWN)
                && brief.course().surfaces().size() == 1;
        if (nothing) {
            return "ground unknown";
        }
        out.add(surfaces(brief.course().ground(), 2));
        out.add(band(demands, Measure.ROUGHNESS));
        out.add(prefixed("worst tenth ", band(demands, Measure.WORST_ROUGHNESS)));
        out.add(demands.known(Measure.ROUGHNESS) ? "" : "roughness unknown");
        MeasureValue hardest = demands.get(Measure.HARDEST_MTB_SCALE);
        out.add(hardest == null || hardest.mid() == 0 ? "" : "mtb:scale " + mid(demands, Measure.HARDEST_MTB_SCALE));
        return out.toString();
    }

    private static String day(Brief brief) {
        Demands demands = brief.demands();
        Phrase out = new Phrase();
        out.add(prefixed("about ", range(demands, Measure.HOURS)));
        out.add(prefixed("steepest 100 m ", mid(demands, Measure.STEEPEST_100_M)));
        String cold = mid(demands, Measure.COLDEST_TEMPERATURE);
        String hot = mid(demands, Measure.HOTTEST_TEMPERATURE);
        out.add(cold.isEmpty() || hot.isEmpty() ? "" : cold.equals(hot) ? cold : ends(cold, hot));
        out.add(going(demands));
        return out.toString();
    }

    /** {@code dry}; {@code dry to damp} where it changes on the way. */
    private static String going(Demands demands) {
        MeasureValue going = demands.get(Measure.GOING);
        return going == null ? "" : going.low() == going.high() ? mid(demands, Measure.GOING)
                : ends(Measure.GOING.scale().text(going.low()), Measure.GOING.scale().text(going.high()));
    }

    /** The largest surfaces with their shares, as ranges where several are possible; the others together. */
    static String surfaces(CourseSummary.GroundSummary ground, int most) {
        Phrase out = new Phrase();
        List<SurfaceShare> named = ground.surfaces().stream().filter(each -> !each.surface().equals(CourseSummary.UNKNOWN))
                .filter(each -> !percent(each.atMost()).equals(NOTHING)).toList();
        int shown = named.size() == most + 1 ? named.size() : Math.min(most, named.size());
        for (SurfaceShare each : named.subList(0, shown)) {
            out.add(each.surface().replace('_', ' ') + " " + percents(each.share(), each.atMost()));
        }
        List<SurfaceShare> others = named.subList(shown, named.size());
        BigDecimal least = others.stream().map(SurfaceShare::share).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal largest = others.stream().map(SurfaceShare::atMost).reduce(BigDecimal.ZERO, BigDecimal::add);
        out.add(others.isEmpty() ? "" : "other " + percents(least, largest.min(least.add(ground.narrowed()))));
        BigDecimal unknown = ground.unknown();
        out.add(percent(unknown).equals(NOTHING) && !out.toString().isEmpty() ? "" : CourseSummary.UNKNOWN + " " + percent(unknown));
        return out.toString();
    }

    private static String percents(BigDecimal least, BigDecimal most) {
        String from = percent(least);
        String to = percent(most);
        return from.equals(to) ? from : from.replace(" %", "") + " to " + to;
    }

    static String percent(BigDecimal share) {
        return share.movePointRight(2).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    /** What to do where most of the ground is unknown; empty where it is known. */
    static String missingGround(Brief brief) {
        MeasureValue known = brief.demands().get(Measure.KNOWN_GROUND);
        boolean mostly = known != null && Measure.KNOWN_GROUND.scale().resolution().base(known.mid()) >= 0.5;
        boolean mappable = brief.course().basis() == null && brief.course().file().toLowerCase(Locale.ROOT).matches(".*[.]gpx([.]gz)?");
        return mostly ? "" : "Most of the ground is not known. " + (mappable ? "Take it from a map that holds the track, with --map EXTRACT, or say" : "Say")
                + " what it is, for example --ground 'surface=gravel, smoothness=bad, mtb:scale=1'.";
    }

    /** A number with some decimals, never an exponent or a negative zero. */
    static String number(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    static String mid(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? "" : measure.scale().text(value.mid());
    }

    /** The middle, and the ends in brackets where they differ. */
    public static String range(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? "" : range(measure.scale(), value);
    }

    public static String range(MeasureScale scale, MeasureValue value) {
        String mid = scale.text(value.mid());
        if (value.low() == value.high()) {
            return mid;
        }
        String ends = ends(end(scale, value.low()), end(scale, value.high())) + ")";
        return mid.endsWith(")") ? mid.substring(0, mid.length() - 1) + "; " + ends : mid + " (" + ends;
    }

    /** The word of a banded measure; empty where unknown. */
    private static String band(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? "" : measure.scale().words().get(measure.scale().band(value.mid()));
    }

    /** {@code 270 to 290 m}: a unit that both have stands once. */
    private static String ends(String low, String high) {
        int unit = low.lastIndexOf(' ');
        boolean shared = unit > 0 && high.endsWith(low.substring(unit));
        return (shared ? low.substring(0, unit) : low) + " to " + high;
    }

    private static String end(MeasureScale scale, long value) {
        return scale.kind() == MeasureScale.Kind.QUANTITY ? scale.resolution().text(value) : scale.text(value);
    }

    private static String prefixed(String prefix, String text) {
        return text.isEmpty() ? "" : prefix + text;
    }

    /** The topics of some decisions with their values: {@code fork travel 120 mm, front and rear tyre width 45 mm}. */
    public static String values(List<Decision> decisions) {
        Phrase out = new Phrase();
        for (int i = 0; i < decisions.size(); i++) {
            Decision decision = decisions.get(i);
            String name = decision.topic().name();
            if (i + 1 < decisions.size() && pair(decision, decisions.get(i + 1))) {
                name = BothEnds.name(decision.topic());
                i++;
            }
            out.add(name + " " + decision.phrase());
        }
        return out.toString();
    }

    /** Whether front and rear of one thing have one value. */
    private static boolean pair(Decision front, Decision rear) {
        return front.topic().isFrontOf(rear.topic()) && front.text().equals(rear.text());
    }

    /** What a claim says, {@code at least 42 mm}. */
    public static String says(Claim claim) {
        return claim.topic().equals(Topics.BAR_HEIGHT) ? barHeight(claim) : claim.verb().word() + " " + written(claim);
    }

    /** The same of what a rule would say, as it writes it. @param topic null where it says nothing on a topic */
    static String says(Topic topic, String said) {
        if (!Topics.BAR_HEIGHT.equals(topic)) {
            return said.replaceFirst(" 1 x ", " ");
        }
        Matcher height = HEIGHT.matcher(said);
        return said.replaceFirst("^at least ", "no lower than ").replaceFirst("^at most ", "no higher than ")
                .replaceFirst(HEIGHT.pattern(), height.find() ? topic.phrase(Long.parseLong(height.group(1))) : "");
    }

    /** {@code no lower than 50 mm below the saddle}: "at least" would be read as more than 50 mm below. */
    private static String barHeight(Claim claim) {
        String plain = claim.topic().text(claim.value());
        String height = written(claim).equals(plain) ? claim.topic().phrase(claim.value()) : written(claim);
        return switch (claim.verb()) {
            case AT_LEAST -> "no lower than " + height;
            case AT_MOST -> "no higher than " + height;
            default -> claim.verb().word() + " " + height;
        };
    }

    /** The value as the rule writes it; a factor of one goes without saying. */
    private static String written(Claim claim) {
        return claim.written().startsWith("1 x ") ? claim.written().substring("1 x ".length()) : claim.written();
    }

    /** The value a measure gave to a claim, {@code  = 0.646}; empty where the claim names a plain value. */
    static String computed(Claim claim) {
        String value = claim.verb() == Verb.ONE_OF ? claim.written() : value(claim);
        return value.equals(claim.written()) ? "" : " = " + value;
    }

    /** A pressure that a measure gave is told no finer than a decision is, a bound never wider than it is. */
    private static String value(Claim claim) {
        Topic topic = claim.topic();
        if (topic.kind() != Topic.Kind.QUANTITY || topic.resolution().unit() != Unit.BAR || topic.text(claim.value()).equals(claim.written())) {
            return topic.text(claim.value());
        }
        double pascal = topic.resolution().base(claim.value());
        double rounded = claim.verb() == Verb.AT_MOST ? PressureSteps.down(pascal) : claim.verb() == Verb.AT_LEAST ? PressureSteps.up(pascal)
                : PressureSteps.nearest(pascal);
        return topic.text(topic.resolution().ticks(rounded));
    }

    /** How a reason is known and whose it is; never surer than the evidence. */
    static String standing(RuleOrigin author) {
        return standing(author, author.source().isEmpty() ? "published" : "published: " + author.source());
    }

    /** The same with the source as a footnote. */
    static RichText origin(RuleOrigin author) {
        RichText out = RichText.ofQuoted(standing(author, "published"));
        return author.evidence() == Evidence.PUBLISHED ? out.footnote(author.source()) : out;
    }

    private static String standing(RuleOrigin author, String published) {
        String known = switch (author.evidence()) {
            case PUBLISHED -> published;
            case PRACTICE -> "common practice";
            case OPINION -> "an opinion";
        };
        return switch (author.rank()) {
            case LIMIT -> "a limit; " + known;
            case RIDER -> "the rider's own; " + known;
            case COACH -> sheet(author.rule()) + "; " + known;
            case SHIPPED -> known;
        };
    }

    /** The sheet's name in a qualified id. */
    private static String sheet(String rule) {
        int slash = rule.lastIndexOf('/');
        return slash < 0 ? rule : rule.substring(0, slash);
    }

    /** What spoke against a decision; nothing where the topic does not apply, since then nothing spoke for it either. */
    static List<LosingClaim> against(Decision decision) {
        return decision.status() == Decision.Status.NOT_APPLICABLE ? List.of() : decision.lost();
    }

    /** How a claim lost, {@code outvoted by shipped/x}. */
    static String lost(LosingClaim lost) {
        return lost.how().words() + (lost.by().isEmpty() ? "" : " by " + String.join(", ", lost.by()));
    }

    /** One fact that a rule rested on: {@code roughness: rough (2.4), needs at least rough}. */
    static String fact(TestedFact fact) {
        return fact.measure() + ": " + fact.value() + (fact.test().isEmpty() ? "" : ", needs " + fact.test())
                + (fact.met() ? "" : " (not met)") + (fact.near() ? " (could differ within the present uncertainty)" : "");
    }

    /** The steps in which a topic is decided: {@code 10 mm}; {@code 0.05 bar, and of 0.1 bar from 2.5 bar on}. */
    static String steps(Topic topic) {
        String step = topic.resolution().text(topic.step());
        return topic.step(topic.most()) == topic.step() ? step : step + ", and of " + PressureSteps.WIDE;
    }

    /** Stands beside the word of a decision that is close: it could be one value or the other. */
    static final String CLOSE_MARK = "\u00b1";

    /** How firm a decision is, in a word, with a mark where it is close: {@code fair} and the mark; empty where it has no value. */
    static String firmness(Brief brief, Decision decision) {
        Firmness firmness = brief.firmness(decision);
        return firmness == null ? "" : firmness.word() + (brief.close(decision) == null ? "" : " " + CLOSE_MARK);
    }

    /** The same with its mark. */
    static RichText standing(Brief brief, Decision decision) {
        Firmness firmness = brief.firmness(decision);
        return firmness == null ? RichText.EMPTY : standing(firmness.level()).text(brief.close(decision) == null ? "" : " " + CLOSE_MARK);
    }

    /** {@code fair}, with its mark. */
    static RichText standing(Firmness.FirmnessLevel level) {
        return RichText.EMPTY.standing(level.word(), switch (level) {
            case FIRM -> Span.Standing.Fill.FULL;
            case FAIR -> Span.Standing.Fill.HALF;
            case THIN -> Span.Standing.Fill.OPEN;
        });
    }

    static final String CLOSE_MEANS = "Each figure may really be on the other side of a rule's threshold; the value after the colon would then be recommended.";

    /** {@code coldest temperature 7 C instead of 8 C: clothing long sleeves and a shell}, a line for each threshold. */
    static List<String> close(List<CloseThreshold> margins) {
        Map<String, String> out = new LinkedHashMap<>();
        for (CloseThreshold margin : margins) {
            MeasureScale scale = margin.measure().scale();
            String threshold = margin.measure().written() + " " + scale.text(margin.threshold()) + " instead of " + scale.text(margin.from());
            out.merge(threshold, margin.decision().topic().name() + " " + margin.otherwise().phrase(), (one, other) -> one + "; " + other);
        }
        return out.entrySet().stream().map(each -> each.getKey() + ": " + each.getValue()).toList();
    }

    /** {@code mud (lubricant, chain)}: the measures of some thresholds with the topics that rest on them. */
    static String closeMeasures(List<CloseThreshold> margins) {
        Map<String, String> out = new LinkedHashMap<>();
        for (CloseThreshold margin : margins) {
            out.merge(margin.measure().written(), margin.decision().topic().name(), (one, other) -> one + ", " + other);
        }
        return String.join("; ", out.entrySet().stream().map(each -> each.getKey() + " (" + each.getValue() + ")").toList());
    }

    /** The keys to give, and how many rules need them. */
    static String wanted(MissingInputs wanted) {
        String where = wanted.place() == InputKeys.InputPlace.GROUND ? "in the profile or with --ground; " : "";
        return String.join(", ", wanted.keys()) + " (" + where + count(wanted.rules(), "rule") + ")";
    }

    /** {@code give "hour power" in the rider's file}: how something is made known. */
    static RichText keys(InputKeys input) {
        String where = input.place() == InputKeys.InputPlace.GROUND || input.place() == InputKeys.InputPlace.CLIMBING ? " in the course's file"
                : input.place() == InputKeys.InputPlace.EVENT ? " in the event's file" : " in the rider's file";
        return RichText.of("give ").append(RichText.join(" or ", input.keys().stream().map(RichText.EMPTY::code).toList())).text(where);
    }

    /** What a reason is, where its standing is not named. */
    static final String ELSE_PRACTICE = "Common practice, unless a source or a sheet is named.";

    /** A reason with how it is known, where that is not the common practice of shipped rules. */
    static String because(RuleOrigin author) {
        boolean plain = author.rank() == Rank.SHIPPED && author.evidence() == Evidence.PRACTICE;
        return author.because() + (plain ? "" : " (" + standing(author) + ")");
    }

    /** Decisions that do not apply, as one list. */
    static List<String> without(List<Decision> decisions) {
        List<String> out = new ArrayList<>();
        for (Decision decision : decisions) {
            if (decision.status() == Decision.Status.NOT_APPLICABLE) {
                out.add(decision.topic().name());
            }
        }
        return out;
    }

    /** What was repaired in the course's files, and notes on them. */
    static List<String> mended(CourseSummary course) {
        List<String> out = new ArrayList<>();
        for (TrackRepair repair : course.repairs()) {
            out.add("Track repaired: " + repair.what() + " (" + repair.count() + ")");
        }
        out.addAll(course.notes());
        return out;
    }

    /** {@code 1 row}, {@code 2 rows}. */
    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1 ? String.join("", items) : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    /** The text with a capital first letter. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    /** Words as a sentence; nothing where there are none. */
    static String sentence(String words) {
        return words.isEmpty() || words.endsWith(".") ? capital(words) : capital(words) + ".";
    }

    /** Parts joined by commas, empty ones left out. */
    private static final class Phrase {
        private final StringBuilder out = new StringBuilder();

        void add(String part) {
            if (!part.isEmpty()) {
                out.append(out.length() == 0 ? "" : ", ").append(part);
            }
        }

        @Override
        public String toString() {
            return out.toString();
        }
    }

    /** What to watch; what the gears lack comes first, since it decides whether the course is ridden. */
    public static List<String> cautions(Brief brief) {
        return cautions(brief, false);
    }

    /** The same of what this course, rider or day brings. */
    static List<String> cautionsOfTheDay(Brief brief) {
        return cautions(brief, true);
    }

    private static List<String> cautions(Brief brief, boolean ofTheDay) {
        List<String> out = new ArrayList<>();
        if (brief.outlook().shortfall() != null) {
            out.add(GearShortfallPhrases.full(brief.outlook().shortfall()));
        }
        for (Caution caution : brief.cautions()) {
            if (caution.ofTheDay() || !ofTheDay) {
                out.add(caution.text());
            }
        }
        return out;
    }
}
