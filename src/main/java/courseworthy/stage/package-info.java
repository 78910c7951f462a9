/** One set-up for a race over several days: what is settled for all of them, what may change in between, what wears out and what goes into the bag. */
package courseworthy.stage;
