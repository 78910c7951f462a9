package courseworthy.claim;

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
public record Author(String rule, Rank rank, int sheet, Force force, Evidence evidence, String source, String because, Where where) {
}
