/** Renderers: each writes any report in one format, and makes text from files harmless for it. */
package courseworthy.render;
