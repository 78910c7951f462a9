package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.Build.Swap;
import courseworthy.build.Build.UnmetDecision;
import courseworthy.build.SeasonPlan;
import courseworthy.build.WearNote;
import courseworthy.build.SeasonPlan.ClashChoice;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.SettledValue;
import courseworthy.build.SeasonPlan.UnmetTopic;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.ride.Range;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A season: what clashes, the set-up and the build for each ride, and what is worth buying. */
public final class SeasonReport {

    /** What the figures of a season rest on. */
    public static final List<String> METHOD = List.of("Minutes of work are estimates, unless your workshop file gives other times.",
            "Time savings count weight, rolling resistance and drag only, as if the part were run in. Gears, travel, droppers and power meters get "
                    + "no time; the decisions they satisfy are listed instead.",
            "Fit is judged only from what your file says. Before you spend money: measure, and ask the manufacturer or a qualified mechanic.");

    /** The decisions that tell most of a set-up at a glance. */
    private static final List<Topic> FIRST = List.of(Topics.BIKE, Topics.FORK_TRAVEL, Topics.REAR_TRAVEL, Topics.SEATPOST, Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH,
            Topics.FRONT_TYRE_CASING, Topics.REAR_TYRE_CASING, Topics.FRONT_TYRE_TREAD, Topics.REAR_TYRE_TREAD, Topics.EASIEST_GEAR, Topics.HARDEST_GEAR, Topics.POWER_METER);

    private SeasonReport() {
    }

    public static Report of(SeasonPlan season) {
        Report.Builder out = head(season).section(clashes("Clashes", season.clashes()));
        for (int i = 0; i < season.rides().size(); i++) {
            PlannedRide ride = season.rides().get(i);
            out.section(ride(season, ride, RichText.ofQuoted(ride(ride)), "ride-" + (i + 1)));
        }
        return out.section(UpkeepReport.weeks(season.upkeep())).section(UpkeepReport.shopping(season.upkeep(), season.currency()))
                .section(wishes(season)).section(method()).build();
    }

    static Report.Builder head(SeasonPlan season) {
        return Report.builder(season.name().isEmpty() ? RichText.of("Season") : RichText.ofQuoted(season.name()))
                .identity("season", season.name())
                .paragraph(counts(season))
                .paragraphs(SheetNames.paragraphs(sheets(season)))
                .paragraphs(GroundPhrases.attribution(season.attribution()));
    }

    static Section.Builder wishes(SeasonPlan season) {
        List<RichText> wishes = new ArrayList<>();
        for (String wish : wishLines(season)) {
            wishes.add(RichText.ofQuoted(wish));
        }
        return Section.builder("wish-list", "Wish list").numbered(wishes);
    }

    static Section.Builder method() {
        return Section.builder("method", "How this is worked out").paragraphs(METHOD.stream().map(RichText::of).toList());
    }

    static Section.Builder clashes(String heading, List<PartClash> clashes) {
        List<ItemList.Item> items = new ArrayList<>();
        for (PartClash clash : clashes) {
            RichText what = RichText.ofQuoted(clash(clash)).in(Style.ATTENTION);
            items.add(ItemList.Item.of(what, quoted(choices(clash))));
        }
        return Section.builder("clashes", heading).items(items);
    }

    /** One ride: what is recommended, the build, and the work. */
    static Section.Builder ride(SeasonPlan season, PlannedRide ride, RichText heading, String id) {
        Build build = ride.build();
        Section.Builder out = Section.builder(id, heading)
                .paragraphs(SheetNames.paragraphs(sheets(season, ride)))
                .definitions(List.of(Definition.of("Recommended", RichText.ofQuoted(recommended(ride))),
                        Definition.of("Build", build.bike() == null ? RichText.EMPTY.styled(build(ride), Style.ATTENTION)
                                : RichText.ofQuoted(build(ride)))));
        return out.bullets(toChange(season) + ":", quoted(swaps(ride)))
                .bullets("To go back (the way back is about " + Math.round(build.minutesBack()) + " min of work in all):", quoted(BuildReport.returns(build)))
                .bullets(BuildReport.lacking(build) + ":", quoted(build.lacking()))
                .bullets("Not met:", quoted(notMet(ride)))
                .bullets("Worn:", quoted(worn(season, ride)));
    }

    /** What is worn as the workshop's file stands, with the evening on which the season's service sees to it before the start. */
    static List<String> worn(SeasonPlan season, PlannedRide ride) {
        List<String> out = new ArrayList<>();
        for (WearNote note : ride.build().wear()) {
            String planned = season.upkeep().work().stream().filter(work -> work.part().equals(note.part()) && work.evening().found()
                    && work.evening().date().isBefore(ride.date())).map(work -> " (planned for " + work.evening().date() + ")").reduce("", (one, last) -> last);
            out.add(note.text() + planned);
        }
        return out;
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }

    static String counts(SeasonPlan season) {
        long riders = season.rides().stream().map(PlannedRide::rider).distinct().count();
        return count(season.rides().size(), "start") + " by " + count(riders, "rider") + ", " + count(season.clashes().size(), "clash", "clashes") + ", "
                + count(season.wishes().size(), "wish", "wishes") + ".";
    }

    /** The sheets of all riders, where these are the same for all. */
    static List<SheetInForce> sheets(SeasonPlan season) {
        boolean same = season.sheets().values().stream().distinct().count() == 1;
        return same ? SheetInForce.of(season.sheets().values().iterator().next()) : List.of();
    }

    /** The sheets of one rider, where riders have different ones. */
    static List<SheetInForce> sheets(SeasonPlan season, PlannedRide ride) {
        return season.sheets().values().stream().distinct().count() == 1 ? List.of() : SheetInForce.of(season.sheets().getOrDefault(ride.rider(), List.of()));
    }

    private static String count(long count, String one) {
        return count(count, one, one + "s");
    }

    private static String count(long count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }

    static String ride(PlannedRide ride) {
        String course = ride.course().equals(ride.event()) ? "" : " on " + ride.course();
        return ride.date() + " " + ride.rider() + ", " + ride.event() + course + " (" + ride.role() + ")";
    }

    /** The leading decisions, front and rear together where they are the same. */
    private static String recommended(PlannedRide ride) {
        Map<String, String> values = new LinkedHashMap<>();
        for (SettledValue each : ride.call()) {
            values.put(each.topic(), each.value());
        }
        List<String> out = new ArrayList<>();
        for (Topic topic : FIRST) {
            String value = values.get(topic.name());
            boolean same = value != null && topic.otherEnd() != null && value.equals(values.get(topic.otherEnd().name()));
            if (value != null && !(same && topic.end() == End.REAR)) {
                out.add((same ? "both tyres' " + topic.plain().substring("tyre ".length()) : topic.name()) + " " + value);
            }
        }
        return String.join(", ", out) + ".";
    }

    static String build(PlannedRide ride) {
        Build build = ride.build();
        if (build.bike() == null) {
            return "No bike can be built within all limits.";
        }
        return build.bike() + ", " + BuildReport.kilograms(build.mass()) + (build.swaps().isEmpty() ? ", as it is now."
                : " (before the changes " + BuildReport.kilograms(build.massNow()) + ").");
    }

    static String toChange(SeasonPlan season) {
        return season.back() ? "To change (everything is put back after each ride)" : "To change since the last ride";
    }

    /** The swaps since the last ride, each in short; what they need is in the checklist of a brief. */
    static List<String> swaps(PlannedRide ride) {
        List<String> out = new ArrayList<>();
        for (Swap swap : ride.build().swaps()) {
            out.add(swap.what() + " (" + swap.where() + (swap.from() == null ? "" : ", from " + swap.from()) + ")" + ": about "
                    + Math.round(swap.work().minutes()) + " min." + (swap.work().mechanic() ? " If you are not sure how, leave it to a qualified mechanic." : ""));
        }
        if (!out.isEmpty()) {
            out.add(BuildReport.total(ride.build()));
        }
        return out;
    }

    static List<String> notMet(PlannedRide ride) {
        return UnmetPhrases.withoutParts(ride.build().notMet());
    }

    static String clash(PartClash clash) {
        return clash.date() + ", " + String.join(", ", clash.what()) + ": " + Phrases.list(clash.wanting()) + ".";
    }

    static List<String> choices(PartClash clash) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < clash.choices().size(); i++) {
            out.add((i == 0 ? "Planned: " : "Or: ") + choice(clash.choices().get(i)) + ".");
        }
        return out;
    }

    /** What is done, what is lost by it and what it costs, without a point at the end. */
    static String choice(ClashChoice choice) {
        String lost = choice.loses().isEmpty() ? "" : ". Not met" + lost(choice.loses());
        return choice.what() + lost + costs(choice);
    }

    /** {@code  for Joss: rear rotor 160 mm (recommended 180 mm), ...; for Ida: ...}. */
    private static String lost(List<UnmetTopic> losses) {
        Map<String, List<UnmetDecision>> byRider = new LinkedHashMap<>();
        for (UnmetTopic each : losses) {
            byRider.computeIfAbsent(each.rider(), rider -> new ArrayList<>()).add(new UnmetDecision(each.topic(), each.wanted(), each.got(), ""));
        }
        List<String> out = new ArrayList<>();
        byRider.forEach((rider, lost) -> out.add((rider.isEmpty() ? ": " : " for " + rider + ": ") + UnmetPhrases.inARow(lost)));
        return String.join(";", out);
    }

    private static String costs(ClashChoice choice) {
        if (choice.costs() == null || Math.abs(choice.costs().mid()) < 1) {
            return "";
        }
        return ". Against what was wanted it " + (choice.costs().mid() > 0 ? "costs " + Figures.time(choice.costs()) : "saves " + Figures.time(turned(choice.costs()))) + " on the course" + WorthReport.close(choice.costs());
    }

    private static Range turned(Range range) {
        return new Range(-range.high(), -range.mid(), -range.low());
    }

    /** Each wish in a line; wishes that differ in nothing but their names share one. */
    static List<String> wishLines(SeasonPlan season) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (Wish wish : season.wishes()) {
            names.computeIfAbsent(wish(season, wish), rest -> new ArrayList<>()).add(wish.name());
        }
        List<String> out = new ArrayList<>();
        names.forEach((rest, same) -> out.add(String.join(" or ", same) + rest));
        return out;
    }

    /** What stands of a wish after its name. */
    private static String wish(SeasonPlan season, Wish wish) {
        String price = wish.price() == null ? "no price given" : money(season, wish.price());
        String from = wish.workshop().isEmpty() ? "" : ", for " + wish.workshop();
        boolean set = wish.parts().size() > 1;
        return " (" + (set ? "together, " : wish.parts().get(0).kind().word() + ", ") + price + from + "): " + required(wish) + worth(season, wish);
    }

    private static String required(Wish wish) {
        return wish.required().isEmpty() ? "" : "required, since your parts leave unmet " + String.join(", ", wish.required()) + "; ";
    }

    private static String worth(SeasonPlan season, Wish wish) {
        if (wish.rides().isEmpty()) {
            return (wish.parts().size() > 1 ? "all of it" : "by itself it") + " would be used at none of these events.";
        }
        String where = " over " + count(wish.rides().size(), "start") + " (" + String.join("; ", wish.rides()) + ")";
        String serves = wish.serves().isEmpty() ? "" : (wish.parts().size() > 1 ? " Only together would they satisfy " : " It alone would satisfy ") + String.join(", ", wish.serves()) + ".";
        if (wish.returned() == null) {
            return "the time it saves" + where + " is not known." + serves;
        }
        if (wish.returned().mid() < 0) {
            return "loses " + Figures.time(turned(wish.returned())) + where + WorthReport.close(wish.returned()) + "." + (serves.isEmpty() ? wish.required().isEmpty() ? " No time gain." : "" : serves);
        }
        String perMoney = wish.perMoney() == null ? "" : ", " + seconds(wish.perMoney()) + " for each 100 "
                + (season.currency().isEmpty() ? "of money" : season.currency());
        return "saves " + Figures.time(wish.returned()) + where + perMoney + WorthReport.close(wish.returned()) + "." + repaid(season, wish) + serves;
    }

    private static String seconds(Range perMoney) {
        return Figures.time(perMoney.times(100));
    }

    private static String repaid(SeasonPlan season, Wish wish) {
        if (season.minuteWorth() == null || wish.price() == null) {
            return "";
        }
        String rate = money(season, season.minuteWorth());
        if (wish.repaid() == null) {
            return " At " + rate + " a minute it may never pay for itself: it may save nothing.";
        }
        long low = (long) Math.ceil(wish.repaid().low());
        long high = (long) Math.ceil(wish.repaid().high());
        return " Break-even, at " + rate + " a minute: after " + (low == high ? count(low, "such event") : low + " to " + high + " such events") + ".";
    }

    private static String money(SeasonPlan season, double price) {
        BigDecimal plain = BigDecimal.valueOf(price).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString() + (season.currency().isEmpty() ? "" : " " + season.currency());
    }
}
