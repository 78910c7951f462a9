/** What mapped ways say of the ground under a track: tags to ground, stretches of it, and profiles written from them. */
package courseworthy.course.ground;
