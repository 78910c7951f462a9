package courseworthy.course.terrain;

import java.io.IOException;
import java.nio.file.Path;

/** A file of ground heights. */
interface HeightTile {

    Path file();

    GridFrame frame();

    /**
     * Reads a rectangle.
     *
     * @throws IOException          where the file cannot be read
     * @throws DamagedTileException where it is not what its beginning says
     */
    HeightWindow window(int firstRow, int firstColumn, int rows, int columns) throws IOException;
}
