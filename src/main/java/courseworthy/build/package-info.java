/** From decisions and a workshop to parts: the build that satisfies every limit and loses least, and the swaps that make it. */
package courseworthy.build;
