package courseworthy.report;

import java.util.List;

/** Things to do, each with a box to tick. */
public record CheckboxList(List<Entry> entries) implements Block {

    /** What stands before {@link Entry#doneWhen()}. */
    public static final String DONE_WHEN = "Done when";
    /** What stands before {@link Entry#why()}. */
    public static final String WHY = "Why";

    public CheckboxList {
        entries = List.copyOf(entries);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.checkboxes(this);
    }

    /**
     * A thing to do.
     *
     * @param critical safety depends on it
     * @param doneWhen what is found when it is done; may be empty
     * @param why      may be empty
     */
    public record Entry(boolean critical, RichText what, RichText doneWhen, RichText why) {
    }
}
