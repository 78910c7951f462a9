package courseworthy.rulebase.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A set of values of one thing: whole ticks or positions in intervals that neither touch nor overlap, ascending, and whether it may be
 * unknown.
 *
 * @param spans   the intervals, both ends included
 * @param unknown whether not knowing belongs to the set
 */
record Values(List<Span> spans, boolean unknown) {

    /** From {@code least} to {@code most}, both included. */
    record Span(long least, long most) {
    }

    Values {
        spans = List.copyOf(spans);
    }

    static Values of(long least, long most) {
        return new Values(least > most ? List.of() : List.of(new Span(least, most)), false);
    }

    boolean isEmpty() {
        return spans.isEmpty() && !unknown;
    }

    Values and(Values other) {
        List<Span> out = new ArrayList<>();
        for (Span a : spans) {
            for (Span b : other.spans) {
                long least = Math.max(a.least, b.least);
                long most = Math.min(a.most, b.most);
                if (least <= most) {
                    out.add(new Span(least, most));
                }
            }
        }
        return new Values(out, unknown && other.unknown);
    }

    Values or(Values other) {
        List<Span> all = new ArrayList<>(spans);
        all.addAll(other.spans);
        all.sort((a, b) -> Long.compare(a.least, b.least));
        List<Span> out = new ArrayList<>();
        for (Span span : all) {
            Span last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && (last.most == Long.MAX_VALUE || span.least <= last.most + 1)) {
                out.set(out.size() - 1, new Span(last.least, Math.max(last.most, span.most)));
            } else {
                out.add(span);
            }
        }
        return new Values(out, unknown || other.unknown);
    }

    /** What is in this set and not in the other. */
    Values less(Values other) {
        List<Span> left = spans;
        for (Span out : other.spans) {
            left = less(left, out);
        }
        return new Values(left, unknown && !other.unknown);
    }

    private static List<Span> less(List<Span> spans, Span out) {
        List<Span> left = new ArrayList<>();
        for (Span span : spans) {
            if (out.most < span.least || out.least > span.most) {
                left.add(span);
                continue;
            }
            if (span.least < out.least) {
                left.add(new Span(span.least, out.least - 1));
            }
            if (span.most > out.most) {
                left.add(new Span(out.most + 1, span.most));
            }
        }
        return left;
    }

    boolean contains(Values other) {
        return other.less(this).isEmpty();
    }

    /** A value to show as an example: an end that is one, the lowest first. */
    long example() {
        Span first = Collections.min(spans, (a, b) -> Long.compare(a.least, b.least));
        if (first.least != Long.MIN_VALUE) {
            return first.least;
        }
        return first.most == Long.MAX_VALUE ? 0 : first.most;
    }
}
