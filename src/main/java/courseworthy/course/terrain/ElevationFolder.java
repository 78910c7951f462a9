package courseworthy.course.terrain;

import java.nio.file.Path;

/**
 * A folder of elevation tiles, as named.
 *
 * @param path  where it lies
 * @param shown its path as the user typed it
 */
public record ElevationFolder(Path path, String shown) {
}
