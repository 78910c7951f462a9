/** Settles claims into decisions by one named policy, and keeps what lost and why. */
package courseworthy.decision;
