package courseworthy.course.extract;

import java.util.Map;

/**
 * A way as a file has it, with all its nodes.
 *
 * @param id    of the way
 * @param nodes ids of all its nodes
 * @param tags  those that {@link MapTags} keeps
 */
record WayDraft(long id, long[] nodes, Map<String, String> tags) {
}
