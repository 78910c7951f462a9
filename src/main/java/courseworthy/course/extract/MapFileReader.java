package courseworthy.course.extract;

import java.io.IOException;
import java.util.function.LongConsumer;

/** Reads one map file into what has been read of all. */
interface MapFileReader {

    /**
     * Reads what lies near the track.
     *
     * @param progress is given how many bytes of the file have been read
     * @throws RefusedExtract where the file is not one that can be read
     */
    ExtractFile read(LongConsumer progress) throws IOException;

    /** Looks up nodes by their ids, wherever they lie. */
    void find(LongSet ids) throws IOException;
}
