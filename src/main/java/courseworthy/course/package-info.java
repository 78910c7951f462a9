/** The ground: profiles of stretches and GPX tracks, read, checked, cleaned and laid over each other. */
package courseworthy.course;
