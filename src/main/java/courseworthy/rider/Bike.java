package courseworthy.rider;

/**
 * The bike at hand, as far as written in a {@code bike:} block; null means not written.
 *
 * @param kind            one of the options of the topic bike
 * @param mass            kg, ready to ride without water and kit
 * @param rimInnerWidth   m
 * @param hookless        whether the rims are hookless
 * @param tyreMarking     highest pressure marked on the tyre, Pa
 * @param rimMarking      highest pressure marked on the rim, Pa
 * @param tyreClearance   widest tyre that frame and fork take, m
 * @param tubeless        whether rims and tyres are made to run tubeless
 * @param dropLimit       highest drop of the marked intended-use category, m
 * @param useCategory     the marked category, as written
 * @param massLimit       highest marked mass of rider, kit and bike, kg
 * @param forkTravel      longest fork travel the frame permits, m
 * @param lights          run time of the lights at hand, s
 * @param rotorLimit      largest rotor that frame and fork permit, m
 * @param powerMeter      whether the bike has a power meter
 */
public record Bike(String kind, Double mass, Double rimInnerWidth, Boolean hookless, Double tyreMarking, Double rimMarking,
        Double tyreClearance, Boolean tubeless, Double dropLimit, String useCategory, Double massLimit, Double forkTravel,
        Double lights, Double rotorLimit, Boolean powerMeter) {

    public static final Bike UNKNOWN = new Bike(null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);
}
