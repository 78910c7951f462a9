package courseworthy.ride;

/**
 * What a kind of bike means for the ride before anything is settled on it. Masses, positions and tyres are those of ordinary bikes of
 * each kind (common practice, no source); drag areas lie inside published ranges, see {@link DragArea}.
 */
public enum BikeKind {
    /** Drop bar, hands on the hoods, 28 mm tyres. */
    ROAD("road", 28, 622, Range.within(8.3, 1.2), new Range(0.28, 0.32, 0.37), 0.0045, 1.3, 0.75, 0.45),
    /** Drop bar, hands on the hoods, 45 mm tyres. */
    GRAVEL("gravel", 45, 622, Range.within(9.5, 1.3), new Range(0.30, 0.35, 0.40), 0.0060, 1.0, 0.85, 0.45),
    /** Flat bar, 57 mm tyres, a fork of 100 mm or so. */
    HARDTAIL("cross-country hardtail", 57, 622, Range.within(10.8, 1.3), new Range(0.33, 0.38, 0.44), 0.0080, 0.85, 0.94, 0.47),
    /** Flat bar, 57 mm tyres, 100 to 120 mm of travel at both ends. */
    FULL("cross-country full suspension", 57, 622, Range.within(11.8, 1.3), new Range(0.33, 0.385, 0.45), 0.0080, 0.80, 1.04, 0.47),
    /** Flat bar, 60 mm tyres, 120 to 150 mm of travel. */
    TRAIL("trail", 60, 622, Range.within(14.0, 1.5), new Range(0.35, 0.41, 0.48), 0.0105, 0.80, 1.12, 0.45);

    private final String written;
    private final double tyreWidth;
    private final double beadSeat;
    private final Range mass;
    private final Range dragArea;
    private final double rollingOnSmooth;
    private final double roughnessLoss;
    private final double paceOnRough;
    private final double frontShare;

    BikeKind(String written, double tyreWidth, double beadSeat, Range mass, Range dragArea, double rollingOnSmooth,
            double roughnessLoss, double paceOnRough, double frontShare) {
        this.written = written;
        this.tyreWidth = tyreWidth / 1000;
        this.beadSeat = beadSeat / 1000;
        this.mass = mass;
        this.dragArea = dragArea;
        this.rollingOnSmooth = rollingOnSmooth;
        this.roughnessLoss = roughnessLoss;
        this.paceOnRough = paceOnRough;
        this.frontShare = frontShare;
    }

    /** The kind written so, or null. */
    public static BikeKind of(String written) {
        for (BikeKind kind : values()) {
            if (kind.written.equals(written)) {
                return kind;
            }
        }
        return null;
    }

    /** As the topic bike has it. */
    public String written() {
        return written;
    }

    /** Width of its usual tyre, m. */
    public double tyreWidth() {
        return tyreWidth;
    }

    /**
     * Nominal circumference of the wheel with the usual tyre, m: pi times bead seat diameter (ISO 5775-1) and twice the width. Real
     * tyres differ by 1.5 % or so.
     */
    public double circumference() {
        return circumference(beadSeat, tyreWidth);
    }

    /** Nominal circumference, m, of a bead seat diameter and a tyre width, both m. */
    public static double circumference(double beadSeat, double tyreWidth) {
        return Math.PI * (beadSeat + 2 * tyreWidth);
    }

    /** Mass ready to ride without water and kit, kg. */
    public Range mass() {
        return mass;
    }

    /** Drag area of a rider of 75 kg in its usual position, m². */
    public Range dragArea() {
        return dragArea;
    }

    /** Rolling resistance coefficient of its usual tyre on new asphalt. */
    public double rollingOnSmooth() {
        return rollingOnSmooth;
    }

    /** How much of the loss by roughness it feels, a gravel bike's being 1. */
    public double roughnessLoss() {
        return roughnessLoss;
    }

    /** How fast it may be let go on rough ground against a rider's own usual pace. */
    public double paceOnRough() {
        return paceOnRough;
    }

    /** Share of the start-line mass on the front wheel, rider seated or on the hoods, level ground. */
    public double frontShare() {
        return frontShare;
    }
}
