/** What rules say: claims on topics and things to do, each with its reason, force and evidence. Records only. */
package courseworthy.claim;
