package courseworthy.report;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names of files for pages about things that people name as they like. They consist of lower-case letters without accents, digits and
 * hyphens, so that every file system takes them and none takes two of them for one.
 */
final class PageNames {

    /** So many characters of a name are kept, that whole paths stay short (computing). */
    private static final int LONGEST = 40;
    /** Names of devices, which no file may have where such devices are: Windows, "Naming Files, Paths, and Namespaces". */
    private static final String DEVICE = "con|prn|aux|nul|com[0-9]|lpt[0-9]";

    private final Set<String> taken = new HashSet<>();
    private final String ending;

    PageNames() {
        this(".html");
    }

    /** @param ending of every file, with its dot */
    PageNames(String ending) {
        this.ending = ending;
    }

    /**
     * The path of a page.
     *
     * @param folder with its slash; empty for none
     * @param kind   stands where nothing of the name can be kept, as of one in another script
     * @param names  what it is about
     */
    String path(String folder, String kind, String... names) {
        String base = slug(String.join(" ", names));
        if (base.isEmpty()) {
            base = kind;
        }
        String path = folder + base;
        for (int number = 2; base.matches(DEVICE) && path.endsWith(base) || !taken.add(path); number++) {
            path = folder + base + "-" + number;
        }
        return path + ending;
    }

    private static String slug(String name) {
        String plain = Normalizer.normalize(name.substring(0, Math.min(name.length(), 4 * LONGEST)), Normalizer.Form.NFKD).toLowerCase(Locale.ROOT)
                .replace("\u00df", "ss").replace("\u00f8", "o").replace("\u00e6", "ae").replace("\u0142", "l");
        String joined = plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
        String cut = joined.substring(0, Math.min(joined.length(), LONGEST));
        return cut.replaceAll("^-|-$", "");
    }
}
