package courseworthy.task;

import java.time.LocalDate;

/**
 * One rider's start at one event of a season.
 *
 * @param order  its number in the season, which no other has
 * @param event  its name, or that of the course where it has none
 */
public record SeasonStart(int order, String rider, String event, String course, LocalDate date) {
}
