/** Pictures of reports as SVG: a writer, text of bounded width, scales, hatches, and one drawing a kind of picture. */
package courseworthy.render.svg;
