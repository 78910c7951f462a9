package courseworthy.checklist;

import courseworthy.claim.Deadline;
import courseworthy.claim.SourceLocation;
import java.time.LocalDate;
import java.util.List;

/**
 * What is to be done, by when, and how to tell that it is done.
 *
 * @param role     {@code training} or {@code race}
 * @param date     the day of the ride; null where it is not known
 * @param sections earliest first; at most {@link #MOST_ITEMS} items each, none without items
 */
public record Checklist(String role, LocalDate date, List<ChecklistSection> sections) {

    /** Most items in a section: WHO (2009), Implementation manual, Surgical Safety Checklist, gives five to nine as ideal. */
    public static final int MOST_ITEMS = 9;

    public Checklist {
        sections = List.copyOf(sections);
    }

    /**
     * Things done in one go.
     *
     * @param due   by when
     * @param when  the title, {@code night before} or {@code night before, 1 of 2}
     * @param items in the order in which they are done
     * @param done  what to say when all is done: a list ends with a completion call
     */
    public record ChecklistSection(Deadline due, String when, List<ChecklistItem> items, String done) {
        public ChecklistSection {
            items = List.copyOf(items);
        }
    }

    /**
     * One thing to do.
     *
     * @param what     what to do
     * @param find     the value or state to find when it is done
     * @param because  why it is on this list
     * @param critical whether safety hangs on it
     * @param part     the part of the bike or kit; may be empty
     * @param rule     the rule that says it, or empty where the event does
     * @param where    where that is written, or null
     * @param minutes  how long it takes one person, an estimate
     * @param needs    how long it has to be left alone after that, s; 0 where it is done at once
     */
    public record ChecklistItem(String what, String find, String because, boolean critical, String part, String rule, SourceLocation where, double minutes,
            long needs) {

        /** How long a check takes someone with tools at hand, min (common practice, no source). */
        private static final double CHECK_MINUTES = 4;

        /** A check like most, which takes a few minutes. */
        public ChecklistItem(String what, String find, String because, boolean critical, String part, String rule, SourceLocation where) {
            this(what, find, because, critical, part, rule, where, CHECK_MINUTES, 0);
        }

        /** A piece of work that is effective at once. */
        public ChecklistItem(String what, String find, String because, boolean critical, String part, String rule, SourceLocation where, double minutes) {
            this(what, find, because, critical, part, rule, where, minutes, 0);
        }

        /** The same where it has to be left alone after it, s. */
        ChecklistItem needing(long seconds) {
            return new ChecklistItem(what, find, because, critical, part, rule, where, minutes, seconds);
        }
    }
}
