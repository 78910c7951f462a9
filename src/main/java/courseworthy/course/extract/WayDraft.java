package courseworthy.course.extract;

import java.util.Map;

/**
 * A way as a file has it, with all its nodes.
 *
 * @param file  number of the file it stands in
 * @param id    of the way
 * @param nodes ids of all its nodes
 * @param tags  those that {@link MapTags} keeps
 */
record WayDraft(int file, long id, long[] nodes, Map<String, String> tags) {
}
