package courseworthy.course.extract;

/**
 * A map file that was read.
 *
 * @param file              its path as the user typed it
 * @param digest            of its bytes, in hexadecimal digits
 * @param bounds            the area that it says it covers, else that of its nodes
 * @param attributionNeeded whether what is made from it must name the map's contributors: so for all files but those that name another
 *                          holder of their rights
 */
public record ExtractFile(String file, String digest, Bounds bounds, boolean attributionNeeded) {
}
