/** Reports on paper, as PDF that can be read aloud; the only package that knows PDFBox, whose jars are on the class path for it alone. */
package courseworthy.render.pdf;
