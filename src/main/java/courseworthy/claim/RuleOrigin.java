package courseworthy.claim;

import java.util.Objects;

/**
 * The rule that speaks.
 *
 * @param rule     qualified id, {@code sheet/id}
 * @param rank     whose it is
 * @param sheet    position of its sheet in the order given, 0 first; a later sheet goes before an earlier among equals
 * @param force    how strongly it is advised
 * @param evidence how it is known
 * @param source   the publication, empty unless published
 * @param because  the reason, one sentence
 * @param where    where it is written
 */
public record RuleOrigin(String rule, Rank rank, int sheet, Force force, Evidence evidence, String source, String because, SourceLocation where) {

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof RuleOrigin that && rule.equals(that.rule) && rank == that.rank && sheet == that.sheet
                && force == that.force && evidence == that.evidence && source.equals(that.source) && because.equals(that.because)
                && Objects.equals(where, that.where);
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }
}
