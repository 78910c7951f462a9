/** The topics as data: what there is to decide, in which unit or options, in which layer, and which side is safe. */
package courseworthy.topic;
