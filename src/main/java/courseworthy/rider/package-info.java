/** The rider: body, power, cadence, skill, what must not change; and the bike at hand until a workshop is given. */
package courseworthy.rider;
