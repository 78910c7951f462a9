package courseworthy.rulebase.check;

/** Opens the situation of a remark as whoever asks why would, and looks whether it shows what is remarked. */
@FunctionalInterface
public interface Trial {

    /** Where no call can be made: what is reasoned is taken as shown. */
    Trial NONE = remark -> true;

    boolean shows(Remark remark);
}
