/** Sheets and DRL into rules; fires them; returns claims, things to do and what could not be determined. Drools lives here and in {@code fit} alone. */
package courseworthy.engine;
