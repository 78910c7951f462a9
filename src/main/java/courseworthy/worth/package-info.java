/** What a decision returns on this course against its alternatives, and at what odds it pays. */
package courseworthy.worth;
