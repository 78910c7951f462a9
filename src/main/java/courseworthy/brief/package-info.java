/** The whole answer for one rider and one day: one model, and text, JSON and Markdown written from it. Computes nothing. */
package courseworthy.brief;
