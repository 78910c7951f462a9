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
        Double lights, Double mostRotor, Boolean powerMeter, DampingSettings damping) {

    public static final Bike UNKNOWN = of(null);

    /** A bike of which no more is known than its kind. */
    public static Bike of(String kind) {
        return builder(kind).build();
    }

    /** What is known of it where a bike of a kind is ridden: all where it is of that kind or of none, else only what is taken along. */
    public Bike as(String ridden) {
        return kind == null || kind.equals(ridden) ? this : builder(ridden).lights(lights).build();
    }

    /** This bike with whatever is not written taken from another. */
    public Bike orElse(Bike other) {
        return new Bike(or(kind, other.kind), or(mass, other.mass), or(rimInnerWidth, other.rimInnerWidth), or(hookless, other.hookless),
                or(markedTyrePressure, other.markedTyrePressure), or(markedRimPressure, other.markedRimPressure), or(tyreClearance, other.tyreClearance),
                or(tubeless, other.tubeless), or(ledgeLimit, other.ledgeLimit), or(useCategory, other.useCategory),
                or(massLimit, other.massLimit), or(forkTravel, other.forkTravel), or(lights, other.lights),
                or(mostRotor, other.mostRotor), or(powerMeter, other.powerMeter), damping.orElse(other.damping));
    }

    private static <T> T or(T first, T second) {
        return first != null ? first : second;
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
    public record DampingSettings(Integer rebound, Integer compression, Integer shockRebound, Integer shockCompression, Double shockStroke) {
        public static final DampingSettings UNKNOWN = new DampingSettings(null, null, null, null, null);

        /** What is written here, and elsewhere what is written there. */
        public DampingSettings orElse(DampingSettings other) {
            return new DampingSettings(or(rebound, other.rebound), or(compression, other.compression), or(shockRebound, other.shockRebound),
                    or(shockCompression, other.shockCompression), or(shockStroke, other.shockStroke));
        }
    }

    public static Builder builder(String kind) {
        return new Builder(kind);
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private final String kind;
        private Double mass;
        private Double rimInnerWidth;
        private Boolean hookless;
        private Double markedTyrePressure;
        private Double markedRimPressure;
        private Double tyreClearance;
        private Boolean tubeless;
        private Double ledgeLimit;
        private String useCategory;
        private Double massLimit;
        private Double forkTravel;
        private Double lights;
        private Double mostRotor;
        private Boolean powerMeter;
        private DampingSettings damping = DampingSettings.UNKNOWN;

        private Builder(String kind) {
            this.kind = kind;
        }

        public Builder mass(Double value) {
            mass = value;
            return this;
        }

        public Builder rimInnerWidth(Double value) {
            rimInnerWidth = value;
            return this;
        }

        public Builder hookless(Boolean value) {
            hookless = value;
            return this;
        }

        public Builder markedTyrePressure(Double value) {
            markedTyrePressure = value;
            return this;
        }

        public Builder markedRimPressure(Double value) {
            markedRimPressure = value;
            return this;
        }

        public Builder tyreClearance(Double value) {
            tyreClearance = value;
            return this;
        }

        public Builder tubeless(Boolean value) {
            tubeless = value;
            return this;
        }

        public Builder ledgeLimit(Double value) {
            ledgeLimit = value;
            return this;
        }

        public Builder useCategory(String value) {
            useCategory = value;
            return this;
        }

        public Builder massLimit(Double value) {
            massLimit = value;
            return this;
        }

        public Builder forkTravel(Double value) {
            forkTravel = value;
            return this;
        }

        public Builder lights(Double value) {
            lights = value;
            return this;
        }

        public Builder mostRotor(Double value) {
            mostRotor = value;
            return this;
        }

        public Builder powerMeter(Boolean value) {
            powerMeter = value;
            return this;
        }

        public Builder damping(DampingSettings value) {
            damping = value;
            return this;
        }

        public Bike build() {
            return new Bike(kind, mass, rimInnerWidth, hookless, markedTyrePressure, markedRimPressure, tyreClearance, tubeless, ledgeLimit, useCategory,
                    massLimit, forkTravel, lights, mostRotor, powerMeter, damping);
        }
    }
}
