package courseworthy.problem;

import java.io.IOException;

/** Says that a result was ready and its place did not take it: a full disk, a device that fails. */
public final class OutputFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * @param place where it should have gone, as the user typed it
     * @param cause what the system said
     */
    public OutputFailure(String place, IOException cause) {
        super(place + ": the result could not be written" + reason(cause), cause);
    }

    /** In the words of the system, which name what is full or gone; on one line. */
    private static String reason(IOException cause) {
        String said = cause instanceof java.nio.file.FileSystemException at && at.getReason() != null ? at.getReason() : cause.getMessage();
        return said == null || said.isBlank() ? "" : " (" + said.strip().replaceAll("\\s+", " ") + ")";
    }
}
