package courseworthy.course;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a course with one surface, one smoothness, one mtb:scale.
 *
 * @param length       m, above 0
 * @param ascent       m climbed, 0 or more; null where unknown
 * @param descent      m descended, 0 or more; null where unknown
 * @param steepest     steepest gradient as written, as a fraction (0.12 for 12 %); null where not written
 * @param passage      how it is passed; null where that is not said, and then it is ridden
 * @param ground       as given, or as is likely
 * @param alternatives what the ground may be instead; empty where it is certain
 * @param origin       where the ground comes from; null where a person wrote it
 * @param assumed      whether some of the ground was taken since it is not known
 * @param line         line in the profile, 0 where none
 */
public record Stretch(double length, Double ascent, Double descent, Double steepest, Passage passage, Ground ground, List<Ground> alternatives,
        GroundOrigin origin, boolean assumed, int line) {

    public Stretch {
        alternatives = List.copyOf(alternatives);
    }

    /** A stretch of whose ground nothing was assumed. */
    public Stretch(double length, Double ascent, Double descent, Double steepest, Ground ground, List<Ground> alternatives, GroundOrigin origin, int line) {
        this(length, ascent, descent, steepest, null, ground, alternatives, origin, false, line);
    }

    /** A stretch whose ground is as written. */
    public Stretch(double length, Double ascent, Double descent, Double steepest, Ground ground, int line) {
        this(length, ascent, descent, steepest, ground, List.of(), null, line);
    }

    /** What the ground may be, the likely one first. */
    public List<Ground> possible() {
        if (alternatives.isEmpty()) {
            return List.of(ground);
        }
        List<Ground> out = new ArrayList<>(alternatives.size() + 1);
        out.add(ground);
        out.addAll(alternatives);
        return out;
    }

    /** The same ground over another length, with the climbing there. */
    public Stretch over(double metres, Double up, Double down) {
        return new Stretch(metres, up, down, steepest, passage == null ? null : passage.share(metres / length), ground, alternatives, origin, assumed, line);
    }

    /** The same piece passed in another way. */
    public Stretch passed(Passage how) {
        return new Stretch(length, ascent, descent, steepest, how, ground, alternatives, origin, assumed, line);
    }

    /** Whether the bike is pushed or carried. */
    public boolean onFoot() {
        return passage != null && passage.onFoot();
    }

    /** Whether it is passed on a ferry of which the time is known. */
    public boolean isFerried() {
        return passage != null && passage.ferry() != null;
    }

    /** The same piece on other ground, which may be one of several. */
    public Stretch on(Ground likely, List<Ground> others) {
        return new Stretch(length, ascent, descent, steepest, passage, likely, others, origin, assumed, line);
    }

    /** The same piece with what was not known of its ground assumed. */
    Stretch filled(Ground likely, List<Ground> others) {
        return new Stretch(length, ascent, descent, steepest, passage, likely, others, origin, true, line);
    }

    /** The same piece on ground that is known for sure. */
    public Stretch known(Ground found) {
        return new Stretch(length, ascent, descent, steepest, passage, found, List.of(), origin, false, line);
    }
}
