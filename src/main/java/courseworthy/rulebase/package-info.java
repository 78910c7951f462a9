/** Sheets and DRL into rules; fires them; returns claims, things to do and what could not be told. Drools lives here alone. */
package courseworthy.rulebase;
