package courseworthy.rider;

/**
 * The bike at hand, as far as written in a {@code bike:} block; null means not written. All but the lights belongs to this bike and holds for
 * no other kind.
 *
 * @param kind            one of the options of the topic bike
 * @param mass            kg, ready to ride without water and kit
 * @param rimInnerWidth   m
 * @param hookless        whether the rims are hookless
 * @param markedTyrePressure     highest pressure marked on the tyre, Pa
 * @param markedRimPressure      highest pressure marked on the rim, Pa
 * @param tyreClearance   widest tyre that frame and fork take, m
 * @param tubeless        whether rims and tyres are made to run tubeless
 * @param ledgeLimit       highest ledge of the marked intended-use category, m
 * @param useCategory     the marked category, as written
 * @param massLimit       highest marked mass of rider, kit and bike, kg
 * @param forkTravel      longest fork travel the frame permits, m
 * @param lights          run time of the lights at hand, s
 * @param mostRotor      largest rotor that frame and fork permit, m
 * @param powerMeter      whether the bike has a power meter
 * @param damping         clicks of its dampers and stroke of its shock
 */
public record Bike(String kind, Double mass, Double rimInnerWidth, Boolean hookless, Double markedTyrePressure, Double markedRimPressure,
        Double tyreClearance, Boolean tubeless, Double ledgeLimit, String useCategory, Double massLimit, Double forkTravel,
        Double lights, Double mostRotor, Boolean powerMeter, Damping damping) {

    public static final Bike UNKNOWN = of(null);

    /** A bike of which no more is known than its kind. */
    public static Bike of(String kind) {
        return new Bike(kind, null, null, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    /** What is known of it where a bike of a kind is ridden: all where it is of that kind or of none, else only what is taken along. */
    public Bike as(String ridden) {
        return kind == null || kind.equals(ridden) ? this : of(ridden).with(lights);
    }

    private Bike with(Double otherLights) {
        return new Bike(kind, mass, rimInnerWidth, hookless, markedTyrePressure, markedRimPressure, tyreClearance, tubeless, ledgeLimit, useCategory, massLimit,
                forkTravel, otherLights, mostRotor, powerMeter, damping);
    }

    /** A bike of whose dampers nothing is written. */
    public Bike(String kind, Double mass, Double rimInnerWidth, Boolean hookless, Double markedTyrePressure, Double markedRimPressure,
            Double tyreClearance, Boolean tubeless, Double ledgeLimit, String useCategory, Double massLimit, Double forkTravel,
            Double lights, Double mostRotor, Boolean powerMeter) {
        this(kind, mass, rimInnerWidth, hookless, markedTyrePressure, markedRimPressure, tyreClearance, tubeless, ledgeLimit, useCategory, massLimit,
                forkTravel, lights, mostRotor, powerMeter, Damping.UNKNOWN);
    }

    /**
     * What a mechanic counts and measures at the dampers.
     *
     * @param rebound          clicks of the fork's rebound from closed to open
     * @param compression      clicks of the fork's low-speed compression from closed to open
     * @param shockRebound     the same of the shock
     * @param shockCompression the same of the shock
     * @param shockStroke      stroke of the shock, m
     */
    public record Damping(Integer rebound, Integer compression, Integer shockRebound, Integer shockCompression, Double shockStroke) {
        public static final Damping UNKNOWN = new Damping(null, null, null, null, null);

        /** What is written here, and elsewhere what is written there. */
        public Damping or(Damping other) {
            return new Damping(rebound != null ? rebound : other.rebound, compression != null ? compression : other.compression,
                    shockRebound != null ? shockRebound : other.shockRebound,
                    shockCompression != null ? shockCompression : other.shockCompression,
                    shockStroke != null ? shockStroke : other.shockStroke);
        }
    }
}
