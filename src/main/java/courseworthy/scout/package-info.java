/** What to go and look at: ground that is not known, by what it could change. */
package courseworthy.scout;
