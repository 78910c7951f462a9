package courseworthy.task;

import courseworthy.text.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A file in a folder of pages that lists them with their digests by SHA-256 (FIPS 180-4), a line each, as {@code sha256sum} writes and checks it.
 * By it the tool knows its own pages again, and what somebody else put there or changed.
 *
 * @param name of the file
 */
record PageManifest(String name) {

    private static final int DIGEST_LENGTH = 64;
    private static final String BETWEEN = "  ";
    /** Far more than a list of pages is long, in bytes: a larger file is none, and is not read (computing). */
    private static final long LARGEST = 16L << 20;

    /** @param path of a page, with slashes */
    static String line(String path, byte[] page) {
        return Sha256.hex(page) + BETWEEN + path + "\n";
    }

    /**
     * What in a folder is none of the pages listed, or no longer as it was listed, in words; empty where there is nothing else.
     *
     * @param inside what lies in the folder itself, as far as it is looked at
     */
    String foreign(Path folder, List<Path> inside) throws IOException {
        Path list = folder.resolve(name);
        if (!Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS) || Files.size(list) > LARGEST) {
            return inside.isEmpty() ? "" : "a folder with something in it";
        }
        Map<String, String> listed = listed(list);
        Set<String> folders = new HashSet<>();
        for (String path : listed.keySet()) {
            for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
                folders.add(path.substring(0, slash));
            }
        }
        for (Path top : inside) {
            try (Stream<Path> all = Files.walk(top)) {
                for (Path each : (Iterable<Path>) all.sorted()::iterator) {
                    String found = foreign(folder, each, listed, folders);
                    if (!found.isEmpty()) {
                        return found;
                    }
                }
            }
        }
        return "";
    }

    private String foreign(Path folder, Path each, Map<String, String> listed, Set<String> folders) throws IOException {
        String path = folder.relativize(each).toString().replace(each.getFileSystem().getSeparator(), "/");
        if (path.equals(name) || Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS) && folders.contains(path)) {
            return "";
        }
        if (!Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS) || !listed.containsKey(path)) {
            return "\"" + path + "\" in it, which is none of its pages";
        }
        return Sha256.hex(Files.readAllBytes(each)).equals(listed.get(path)) ? "" : "\"" + path + "\" in it, changed since it was written";
    }

    private static Map<String, String> listed(Path list) throws IOException {
        Map<String, String> out = new HashMap<>();
        for (String line : new String(Files.readAllBytes(list), StandardCharsets.UTF_8).split("\n")) {
            if (line.startsWith(BETWEEN, DIGEST_LENGTH)) {
                out.put(line.substring(DIGEST_LENGTH + BETWEEN.length()), line.substring(0, DIGEST_LENGTH));
            }
        }
        return out;
    }
}
