package courseworthy.brief;

import courseworthy.brief.CourseLine.SurfaceShare;
import courseworthy.claim.Author;
import courseworthy.claim.Claim;
import courseworthy.claim.Ground;
import courseworthy.claim.Verb;
import courseworthy.course.Repair;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.Value;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Sentences and phrases made from the model's records, the same for every output that is read by people. */
final class Words {

    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June", "July", "August",
            "September", "October", "November", "December");

    private Words() {
    }

    /** {@code 14 June 2025}; {@code no date given} where it is not known. */
    static String date(LocalDate date) {
        return date == null ? "no date given"
                : date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1) + " " + date.getYear();
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
        out.add(surfaces(brief.course().surfaces(), 4));
        out.add(mid(demands, Measure.ROUGHNESS));
        out.add(prefixed("worst tenth ", mid(demands, Measure.WORST_ROUGHNESS)));
        out.add(demands.known(Measure.ROUGHNESS) ? "" : "roughness unknown");
        return out.toString();
    }

    private static String day(Brief brief) {
        Demands demands = brief.demands();
        Phrase out = new Phrase();
        out.add(prefixed("about ", range(demands, Measure.HOURS)));
        out.add(prefixed("steepest 100 m ", mid(demands, Measure.STEEPEST_100_M)));
        String cold = mid(demands, Measure.COLDEST_TEMPERATURE);
        String hot = mid(demands, Measure.HOTTEST_TEMPERATURE);
        out.add(cold.isEmpty() || hot.isEmpty() ? "" : cold.equals(hot) ? cold : cold + " to " + hot);
        out.add(prefixed("ground ", mid(demands, Measure.GROUND)));
        return out.toString();
    }

    /** The largest surfaces with their shares; the others together. */
    static String surfaces(List<SurfaceShare> surfaces, int most) {
        Phrase out = new Phrase();
        BigDecimal rest = BigDecimal.ZERO;
        for (int i = 0; i < surfaces.size(); i++) {
            SurfaceShare surface = surfaces.get(i);
            if (i < most || surfaces.size() == most + 1) {
                out.add(surface.surface() + " " + percent(surface.share()));
            } else {
                rest = rest.add(surface.share());
            }
        }
        out.add(rest.signum() == 0 ? "" : "other " + percent(rest));
        return out.toString();
    }

    static String percent(BigDecimal share) {
        return share.movePointRight(2).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    /** A number with some decimals, never an exponent or a negative zero. */
    static String number(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    static String mid(Demands demands, Measure measure) {
        Value value = demands.get(measure);
        return value == null ? "" : measure.scale().text(value.mid());
    }

    /** The middle, and the ends in brackets where they differ. */
    static String range(Demands demands, Measure measure) {
        Value value = demands.get(measure);
        return value == null ? "" : range(measure.scale(), value);
    }

    static String range(Scale scale, Value value) {
        String mid = scale.text(value.mid());
        return value.low() == value.high() ? mid : mid + " (" + end(scale, value.low()) + " to " + end(scale, value.high()) + ")";
    }

    private static String end(Scale scale, long value) {
        return scale.kind() == Scale.Kind.QUANTITY ? scale.resolution().text(value) : scale.text(value);
    }

    private static String prefixed(String prefix, String text) {
        return text.isEmpty() ? "" : prefix + text;
    }

    /** The topics of some decisions with their values: {@code fork travel 120 mm, rear travel 110 mm}. */
    static String values(List<Decision> decisions) {
        Phrase out = new Phrase();
        for (Decision decision : decisions) {
            out.add(decision.topic().name() + " " + decision.text());
        }
        return out.toString();
    }

    /** What a claim says, {@code at least 42 mm}. */
    static String says(Claim claim) {
        return claim.verb().word() + " " + claim.written();
    }

    /** The value a measure gave to a claim, {@code  = 0.646}; empty where the claim names a plain value. */
    static String computed(Claim claim) {
        String value = claim.verb() == Verb.ONE_OF ? claim.written() : claim.topic().text(claim.value());
        return value.equals(claim.written()) ? "" : " = " + value;
    }

    /** How a reason is known and whose it is; never surer than the evidence. */
    static String standing(Author author) {
        String known = switch (author.evidence()) {
            case PUBLISHED -> author.source().isEmpty() ? "published" : "published: " + author.source();
            case PRACTICE -> "common practice";
            case OPINION -> "an opinion";
        };
        return switch (author.rank()) {
            case LIMIT -> "a limit; " + known;
            case RIDER -> "the rider's own; " + known;
            case COACH -> sheet(author.rule()) + "; " + known;
            case HOUSE -> known;
        };
    }

    /** The sheet's name in a qualified id. */
    private static String sheet(String rule) {
        int slash = rule.lastIndexOf('/');
        return slash < 0 ? rule : rule.substring(0, slash);
    }

    /** How a claim lost, {@code outvoted by house/x}. */
    static String lost(Lost lost) {
        return lost.how().words() + (lost.by().isEmpty() ? "" : " by " + String.join(", ", lost.by()));
    }

    /** One fact a rule rested on: {@code roughness: rough (2.4), asked at least rough}. */
    static String ground(Ground ground) {
        return ground.measure() + ": " + ground.value() + (ground.test().isEmpty() ? "" : ", asked: " + ground.test())
                + (ground.met() ? "" : " (not met)") + (ground.near() ? " (rests on the range)" : "");
    }

    /** What to write so that rules that could not tell can: one sentence for each place. */
    static String wanted(Wanted wanted) {
        String rules = wanted.rules() == 1 ? "1 rule" : wanted.rules() + " rules";
        String keys = String.join(", ", wanted.keys());
        if (wanted.place() == Wanted.Place.GROUND) {
            return rules + " could not tell for want of ground: give " + keys + " (in the profile, or with --ground).";
        }
        return rules + " could not tell for want of facts on " + wanted.place().words() + ": give " + keys + ".";
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

    /** What was mended in the course's files, and what else is to be known of them. */
    static List<String> mended(CourseLine course) {
        List<String> out = new ArrayList<>();
        for (Repair repair : course.repairs()) {
            out.add("Mended in the course: " + repair.what() + ", " + repair.count());
        }
        out.addAll(course.notes());
        return out;
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
}
