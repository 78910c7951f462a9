/** A course on a date: laps, start, forecast, support, the event's own rules, the aim; or a typical training ride. */
package courseworthy.event;
