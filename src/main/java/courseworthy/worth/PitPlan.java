package courseworthy.worth;

import courseworthy.demand.DayDemands.PitPlace;
import courseworthy.ride.Range;
import java.util.List;

/**
 * The pits of a race of laps: what to take there on which lap, how far it is to the next from anywhere, and what may be worth having there.
 *
 * @param pits    in the order of a lap
 * @param wheels  the wheels that wait there; null where there are no pits
 * @param help    whether outside help is allowed; null where not given
 * @param onFoot  the furthest way on foot to a pit with wheels or a bike; null where there is none
 * @param easy    where on a lap it is easiest to drink and to be handed a bottle, in order
 * @param choices what may wait in them, with its work and minutes
 * @param wetTyres what the call for wet ground has other than the call, in words; empty where that is the same, null where there is none
 */
public record PitPlan(List<PitStop> pits, Wheels wheels, Boolean help, Walk onFoot, List<LapPiece> easy, List<PitChoice> choices, List<String> wetTyres) {

    /** A bottle that is handed up, L (common practice, no source). */
    public static final double BOTTLE = 0.5;

    /** Where there are no pits. */
    public static final PitPlan NONE = new PitPlan(List.of(), null, null, null, List.of(), List.of(), null);

    public PitPlan {
        pits = List.copyOf(pits);
        easy = List.copyOf(easy);
        choices = List.copyOf(choices);
        wetTyres = wetTyres == null ? null : List.copyOf(wetTyres);
    }

    /** A piece of a lap, m from its start. */
    public record LapPiece(double from, double to) {
    }

    /** Front and rear wheel, in words: width, tread and pressure of the tyre. */
    public record Wheels(String front, String rear) {
    }

    /** A pit and each time the rider comes by. */
    public record PitStop(PitPlace pit, List<PitPassage> passages) {
        public PitStop {
            passages = List.copyOf(passages);
        }

        /** Bottles to have ready there. */
        public long bottles() {
            return passages.stream().filter(PitPassage::bottle).count();
        }
    }

    /**
     * Coming by a pit.
     *
     * @param lap    from 1; that which is ended or under way
     * @param at     m from the start over all laps
     * @param after  s from the start
     * @param bottle whether to take a bottle
     */
    public record PitPassage(int lap, double at, Range after, boolean bottle) {
    }

    /**
     * The way on foot to the next pit.
     *
     * @param metres  from the place that is furthest from it
     * @param seconds walking, pushing the bike
     * @param plug    a stop to plug the tyre instead, s
     */
    public record Walk(double metres, Range seconds, Range plug) {
    }

    /** What may wait in a pit. */
    public enum Kind { SPARE_WHEELS, WET_WHEELS, SECOND_BIKE }

    /**
     * Something that may wait in a pit.
     *
     * @param exchange time that taking it costs, s
     * @param work     before the race, s
     * @param laps     left after the first, over which it may pay
     * @param pays     what it must save on each of these laps to pay for the exchange, s
     * @param worth    what it is worth on this course; null where nothing can be computed
     */
    public record PitChoice(Kind kind, Range exchange, double work, int laps, Range pays, PitWorth worth) {

        /** Of which it is not known what it is worth. */
        public PitChoice(Kind kind, Range exchange, double work, int laps, Range pays) {
            this(kind, exchange, work, laps, pays, null);
        }
    }
}
