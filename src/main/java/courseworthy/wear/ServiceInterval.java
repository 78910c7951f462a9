package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.List;
import java.util.Map;

/**
 * How often a job is done on a kind of part.
 *
 * @param id      of the row, or empty where the part's manufacturer states it
 * @param part    the kind of part
 * @param job     what is done, in a few words
 * @param when    what must be written of the part, by key: words, or {@code some} for more than nothing
 * @param every   how often
 * @param dirt    share of the effect of dirt that the part feels, 0 to 1
 * @param gauge   how its wear is measured; null where it is not
 * @param work    what the job takes
 * @param stated  whether the manufacturer states it
 * @param because why
 */
public record ServiceInterval(String id, PartKind part, String job, Map<String, List<String>> when, Every every, double dirt, Gauge gauge, ServiceJob work,
        boolean stated, String because) {

    public ServiceInterval {
        when = Map.copyOf(when);
    }

    /**
     * Whichever comes first.
     *
     * @param hours  s; null for none
     * @param length m; null for none
     * @param days   null for none
     */
    public record Every(IntervalBounds hours, IntervalBounds length, IntervalBounds days) {
    }

    /**
     * What shows how far a part is worn.
     *
     * @param measure  what is measured
     * @param fresh    its value on a new part
     * @param limit    where the limit is written that is marked on the part
     * @param fallback the limit where none is written; null for none
     */
    public record Gauge(PartDetail measure, double fresh, PartDetail limit, Double fallback) {

        /** How much of the part is used up at a value, 1 at its limit; null where no limit is known. */
        Double used(double value, Part part) {
            Double end = part.has(limit) ? part.number(limit) : fallback;
            if (end == null) {
                return null;
            }
            boolean spent = end > fresh ? value >= end - 1e-12 : value <= end + 1e-12;
            return spent || end.equals(fresh) ? 1.0 : Math.max(0, (value - fresh) / (end - fresh));
        }
    }

    /**
     * What a job takes.
     *
     * @param minutes of work
     * @param takes   the kind of stock that it uses up; null for none
     * @param amount  how much, in pieces or L
     * @param safety  whether the rider falls or cannot stop where it is left undone
     * @param seen    whether its wear is seen when the bike is looked over
     * @param rests   whether it can be left half done from one evening to another
     * @param resets  other jobs on the part that are done with it
     */
    public record ServiceJob(int minutes, String takes, double amount, boolean safety, boolean seen, boolean rests, List<String> resets) {
        public ServiceJob {
            resets = List.copyOf(resets);
        }

        /** Whether it is planned at the earliest it may be due, and not when it is likely: a fall may hang on what nobody sees. */
        boolean atTheEarliest() {
            return safety && !seen;
        }
    }

    /** Whether it applies to a part; a detail that is missing is unknown and does not match. */
    boolean holds(Part of) {
        return of.kind() == part && when.entrySet().stream().allMatch(each -> holds(of, each.getKey(), each.getValue()));
    }

    private static boolean holds(Part of, String key, List<String> words) {
        PartDetail detail = PartDetail.find(key);
        if (detail == PartDetail.END) {
            String end = of.place() == null ? of.word(PartDetail.END) : of.place().end();
            return end != null && words.contains(end);
        }
        if (!of.has(detail)) {
            return false;
        }
        return switch (detail.form()) {
            case YES_NO -> words.contains(of.yes(detail) ? "yes" : "no");
            case AMOUNT -> words.contains(of.number(detail) > 0 ? "some" : "none");
            default -> words.contains(of.word(detail));
        };
    }

    /** The same as often as the manufacturer has it done. */
    ServiceInterval stated(Part.StatedInterval by) {
        Every every = new Every(exact(by.hours()), exact(by.length()), exact(by.days() == null ? null : Double.valueOf(by.days())));
        return new ServiceInterval("", part, by.job(), Map.of(), every, dirt, gauge, work, true, "The manufacturer states it.");
    }

    private static IntervalBounds exact(Double value) {
        return value == null ? null : IntervalBounds.exact(value);
    }
}
