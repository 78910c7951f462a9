package courseworthy.topic;

/** Topics that a rider thinks of together, in the order in which briefs show them. */
public enum TopicGroup {
    BIKE("Bike"), SUSPENSION("Suspension and seatpost"), TYRES("Tyres"), WHEELS("Wheels"), GEARING("Gearing"), COCKPIT("Cockpit"),
    CONTACT_POINTS("Contact points"), ELECTRONICS("Electronics"), BRAKES("Brakes"), UPKEEP("Upkeep before the day"), CARRIED("Worn and carried");

    private final String title;

    TopicGroup(String title) {
        this.title = title;
    }

    /** The heading above its topics. */
    public String title() {
        return title;
    }
}
