/** The loop of layers: fire, settle, derive, again. */
package courseworthy.call;
