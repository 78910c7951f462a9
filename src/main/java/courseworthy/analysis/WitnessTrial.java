package courseworthy.analysis;

/** Opens the situation of a remark as whoever asks why would, and looks whether it shows what is remarked. */
@FunctionalInterface
public interface WitnessTrial {

    /** Where no call can be made: what is reasoned is taken as shown. */
    WitnessTrial NONE = remark -> true;

    boolean shows(Finding remark);
}
