package courseworthy.course.extract;

import java.nio.charset.StandardCharsets;

/**
 * What the first block of a PBF file says of the file.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format" (published specification), osmformat.proto: HeaderBlock, HeaderBBox.
 *
 * @param bounds the area that the file covers; null where it does not say, or not in degrees of the earth
 * @param sorted whether nodes come first, then ways, then relations
 */
record PbfHeader(Bounds bounds, boolean sorted) {

    private static final double NANO = 1e-9;

    /** @throws RefusedExtract where the file needs more of its reader than is known here */
    static PbfHeader of(Blob blob) {
        ProtobufReader reader = new ProtobufReader().reset(blob.content(), 0, blob.size());
        Bounds bounds = null;
        boolean sorted = false;
        while (reader.hasMore()) {
            int key = reader.key();
            switch (key >>> 3) {
                case 1 -> bounds = bounds(new ProtobufReader().reset(blob.content(), reader.bytes(key), reader.position()));
                case 4 -> require(text(reader, key));
                case 5 -> sorted |= text(reader, key).equals("Sort.Type_then_ID");
                default -> reader.skip(key);
            }
        }
        return new PbfHeader(bounds, sorted);
    }

    private static String text(ProtobufReader reader, int key) {
        int from = reader.bytes(key);
        return new String(reader.data(), from, reader.position() - from, StandardCharsets.UTF_8);
    }

    private static void require(String feature) {
        switch (feature) {
            case "OsmSchema-V0.6", "DenseNodes" -> { }
            case "HistoricalInformation" -> throw RefusedExtract.kind("a history file, with former versions of nodes and ways",
                    "Take an extract of the map as it is now.");
            default -> throw RefusedExtract.kind("a file in PBF that asks its readers for \"" + feature + "\"", "Take an ordinary extract.");
        }
    }

    private static Bounds bounds(ProtobufReader box) {
        double[] edges = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        while (box.hasMore()) {
            int key = box.key();
            int field = key >>> 3;
            if (field >= 1 && field <= 4) {
                long value = box.integer(key);
                edges[field - 1] = (value >>> 1 ^ -(value & 1)) * NANO;
            } else {
                box.skip(key);
            }
        }
        double west = edges[0];
        double east = edges[1];
        double north = edges[2];
        double south = edges[3];
        boolean onEarth = Math.abs(west) <= 180 && Math.abs(east) <= 180 && Math.abs(north) <= 90 && Math.abs(south) <= 90 && south <= north;
        return onEarth ? new Bounds(south, west, north, east) : null;
    }
}
