package courseworthy.course.extract;

import java.util.List;

/**
 * What map files hold near a track.
 *
 * @param ways  those that one can ride or push along, by id; clipped to the corridor, so that an id may stand there more than once
 * @param nodes those with tags of their own, by id
 * @param files what was read, in the order given
 */
public record MapExtract(List<MapWay> ways, List<MapNode> nodes, List<ExtractFile> files) {

    public MapExtract {
        ways = List.copyOf(ways);
        nodes = List.copyOf(nodes);
        files = List.copyOf(files);
    }

    /** Whether the area of some file holds a place. */
    public boolean covers(double latitude, double longitude) {
        for (ExtractFile file : files) {
            if (file.bounds().contains(latitude, longitude)) {
                return true;
            }
        }
        return false;
    }

    /** Whether what is made from it must name the map's contributors. */
    public boolean attributionNeeded() {
        for (ExtractFile file : files) {
            if (file.attributionNeeded()) {
                return true;
            }
        }
        return false;
    }
}
