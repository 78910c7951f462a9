package courseworthy.report;

import courseworthy.analysis.ChangeCause;
import courseworthy.analysis.ChangeGroup;
import courseworthy.analysis.GroupPhrase;
import courseworthy.analysis.Impact;
import courseworthy.analysis.Impact.Kind;
import courseworthy.analysis.Impact.ImpactRide;
import courseworthy.analysis.Impact.DecisionChange;
import courseworthy.analysis.RideCover;
import courseworthy.claim.Claim;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Phrases for what another sheet changes. */
public final class ImpactPhrases {

    /** Names and blocks that are named before the rest is counted. */
    private static final int MOST_NAMES = 6;
    private static final int MOST_BLOCKS = 4;
    private static final String ALL_RIDERS = "all riders";

    private final Impact impact;
    private final boolean whole;

    /** @param whole whether every name is given, however many there are */
    public ImpactPhrases(Impact impact, boolean whole) {
        this.impact = impact;
        this.whole = whole;
    }

    /** How much was compared and changed. */
    String summary() {
        int topics = impact.topics().size();
        return count(impact.calls(), "recommendation") + " compared (" + (impact.riders().size() == 1 ? "" : impact.riders().size() + " riders on ")
                + count(impact.courses().size(), "course") + "): " + impact.changed() + " changed, " + count(topics, "topic") + " touched.";
    }

    /** Under which sheets. */
    String sheets() {
        return "Before: " + SheetNames.advice(SheetInForce.of(impact.before())) + ". After: " + SheetNames.advice(SheetInForce.of(impact.after())) + ".";
    }

    // What

    /** {@code front and rear tyre pressure}. */
    static String topics(ChangeGroup alike) {
        Topic first = alike.topics().get(0);
        return alike.topics().size() == 1 ? first.name() : BothEnds.name(first);
    }

    /** {@code down by 0.10 to 0.25 bar, now 1.45 to 1.60 bar}. */
    public static String what(ChangeGroup alike) {
        DecisionChange first = alike.members().get(0);
        return switch (alike.change()) {
            case UP, DOWN -> alike.change().words() + " by " + by(alike) + ", now " + now(alike);
            case INSTEAD -> befores(alike) + " becomes " + first.is().phrase();
            case NEWLY -> "newly decided: " + nows(alike);
            case NO_LONGER -> "no longer decided: " + first.is().phrase() + " instead of " + befores(alike);
            case FIRMNESS -> wordsBefore(alike) + " becomes " + first.isFirm();
        };
    }

    private static String by(ChangeGroup alike) {
        Topic topic = alike.topics().get(0);
        TreeSet<Long> by = new TreeSet<>();
        alike.members().forEach(each -> by.add(each.by()));
        if (topic.resolution().unit() == Unit.PERCENT) {
            String most = topic.resolution().number(by.last());
            return ends(topic.resolution().number(by.first()), most) + (most.equals("1") ? " percentage point" : " percentage points");
        }
        return range(topic, by);
    }

    private static String now(ChangeGroup alike) {
        TreeSet<Long> now = new TreeSet<>();
        alike.members().forEach(each -> now.add(each.is().value()));
        return now.size() == 1 ? alike.members().get(0).is().phrase() : range(alike.topics().get(0), now);
    }

    private static String range(Topic topic, TreeSet<Long> values) {
        boolean clock = topic.resolution().unit() == Unit.MIN;
        String low = clock ? topic.text(values.first()) : topic.resolution().number(values.first());
        String high = topic.text(values.last());
        return values.size() == 1 ? high : ends(low, high);
    }

    private static String ends(String low, String high) {
        return low.equals(high) ? high : low + " to " + high;
    }

    private static String befores(ChangeGroup alike) {
        Set<String> was = new LinkedHashSet<>();
        alike.members().forEach(each -> was.add(each.was().phrase()));
        return either(was);
    }

    private static String nows(ChangeGroup alike) {
        Set<String> is = new LinkedHashSet<>();
        alike.members().forEach(each -> is.add(each.is().phrase()));
        return either(is);
    }

    private static String wordsBefore(ChangeGroup alike) {
        Set<String> was = new TreeSet<>();
        alike.members().forEach(each -> was.add(each.wasFirm()));
        return either(was);
    }

    private static String either(Collection<String> words) {
        return listed(List.copyOf(words), " or ");
    }

    // For whom

    String howMany(Set<ImpactRide> rides) {
        return rides.size() == impact.calls() && rides.size() > 1 ? "all " + count(rides.size(), "recommendation") : rides.size() + " of " + count(impact.calls(), "recommendation");
    }

    /** {@code All riders on quarry-loop; Mara and Jon on every course mostly of gravel}. */
    String whom(Set<ImpactRide> rides) {
        List<RideCover.CoverBlock> blocks = RideCover.of(rides, impact.riders(), impact.courses()).blocks();
        List<String> out = new ArrayList<>();
        for (RideCover.CoverBlock block : blocks.subList(0, whole ? blocks.size() : Math.min(MOST_BLOCKS, blocks.size()))) {
            out.add(block(block));
        }
        if (blocks.size() > out.size()) {
            out.add("others elsewhere");
        }
        String all = String.join("; ", out);
        return (all.startsWith(ALL_RIDERS) || all.startsWith("on ") ? WorthReport.capital(all) : all) + ".";
    }

    public String block(RideCover.CoverBlock block) {
        String courses = some(block.courses(), "every course");
        boolean nobody = impact.riders().size() == 1 && impact.riders().get(0).name().isEmpty();
        return nobody ? "on " + courses : some(block.riders(), ALL_RIDERS) + " on " + courses;
    }

    private String some(GroupPhrase some, String all) {
        if (some.all()) {
            return some.but().isEmpty() ? all : all + " but " + listed(some.but(), " and ");
        }
        List<String> out = new ArrayList<>();
        out.addAll(kinds(some.kinds(), all));
        List<String> names = some.names();
        int most = whole || names.size() <= MOST_NAMES + 1 ? names.size() : MOST_NAMES;
        out.addAll(names.subList(0, most));
        if (most < names.size()) {
            out.add((names.size() - most) + " more");
        }
        return listed(out, " and ");
    }

    /** {@code all riders with a gravel, road or trail bike}. */
    private static List<String> kinds(List<Kind> kinds, String all) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Kind kind : kinds) {
            alike.computeIfAbsent(kind.before() + "\n" + kind.after(), key -> new ArrayList<>()).add(kind.word());
        }
        List<String> out = new ArrayList<>();
        alike.forEach((around, words) -> {
            int end = around.indexOf('\n');
            String after = around.substring(end + 1);
            out.add(all + " " + around.substring(0, end) + " " + listed(words, " or ") + (after.isEmpty() ? "" : " " + after));
        });
        return out;
    }

    private static String listed(List<String> words, String last) {
        int end = words.size() - 1;
        return end < 1 ? String.join("", words) : String.join(", ", words.subList(0, end)) + last + words.get(end);
    }

    // Such as, and why

    /** {@code Ann on stony, from 1.80 bar to 1.65 bar}. */
    public static String example(DecisionChange turned) {
        boolean same = turned.change() == Impact.ChangeLevel.FIRMNESS;
        return named(turned.ride()) + ", " + (same ? turned.is().phrase() + ", " + turned.wasFirm() + " before, now "
                + turned.isFirm() : turned.was().phrase() + " becomes " + turned.is().phrase());
    }

    static String named(ImpactRide ride) {
        return ride.rider().isEmpty() ? ride.course() : ride.rider() + " on " + ride.course();
    }

    /** What brought a change, in sentences; never empty. */
    public static String why(DecisionChange turned) {
        ChangeCause cause = turned.cause();
        if (cause.left() != null) {
            return cause.left().rule() + " is " + (cause.back() ? "no longer left out" : "left out") + " (" + cause.left().where() + "): "
                    + cause.left().because();
        }
        if (cause.through() != null) {
            DecisionChange before = cause.through();
            return "Follows from " + before.topic().name() + ", " + before.was().phrase() + " before, now " + before.is().phrase() + ". " + why(before);
        }
        return said(cause);
    }

    /** The rows beside the example's that brought changes of a group, as a sentence; empty where there is none. */
    static String others(ChangeGroup alike) {
        Set<String> rows = new TreeSet<>();
        alike.members().forEach(each -> rows.add(row(each)));
        rows.remove(row(alike.example()));
        rows.remove("");
        return rows.isEmpty() ? "" : " Elsewhere by " + listed(List.copyOf(rows), " and ") + ".";
    }

    /** The rule whose coming, going or leaving out brought a change; empty where none is known. */
    private static String row(DecisionChange turned) {
        ChangeCause cause = turned.cause().through() == null ? turned.cause() : turned.cause().through().cause();
        Claim claim = cause.now() == null ? cause.gone() : cause.now();
        return cause.left() != null ? cause.left().rule() : claim == null ? "" : claim.origin().rule();
    }

    private static String said(ChangeCause cause) {
        Claim now = cause.now();
        Claim gone = cause.gone();
        if (now != null) {
            boolean other = gone != null && gone.origin().rule().equals(now.origin().rule());
            return now.origin().rule() + " says " + says(now, other ? gone : null) + (other ? " instead of " + says(gone, now) : "") + since(cause) + " ("
                    + now.origin().where() + "): " + now.origin().because();
        }
        return gone == null ? "It follows from other decisions that changed."
                : gone.origin().rule() + " no longer says " + says(gone, null) + asks(cause, ", because it now needs ") + " (" + gone.origin().where() + ").";
    }

    /** The half of a row that brought it, {@code , since mud 14 % (over 10 %)}. */
    private static String since(ChangeCause cause) {
        List<String> out = new ArrayList<>();
        cause.half().forEach(ground -> out.add(ground.measure() + " " + ground.value() + " (" + (ground.met() ? "" : "not ") + ground.test() + ")"));
        return out.isEmpty() ? asks(cause, ", because it no longer needs ") : ", because " + listed(out, " and ");
    }

    private static String asks(ChangeCause cause, String words) {
        return cause.tests().isEmpty() ? "" : words + listed(cause.tests(), " and ");
    }

    /** With the figure and force behind it, where these are what changed. */
    private static String says(Claim claim, Claim other) {
        String plain = Phrases.says(claim);
        boolean same = other != null && plain.equals(Phrases.says(other));
        boolean force = other != null && other.origin().force() != claim.origin().force();
        return plain + (same ? Phrases.computed(claim) : "") + (force ? " (" + claim.origin().force().word() + ")" : "");
    }

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
