package courseworthy.cli;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The parts of a Markdown page that are generated, each between {@code <!-- generated: NAME -->} and {@code <!-- end of NAME -->}. */
public final class GeneratedRegions {

    private static final Pattern REGION = Pattern.compile("(?s)<!-- generated: ([a-z ]+) -->\n(.*?)<!-- end of \\1 -->\n");

    private GeneratedRegions() {
    }

    /**
     * The page with each region filled from the map.
     *
     * @throws IllegalArgumentException for a region that the map lacks, or a name of the map for which the page has no region
     */
    public static String fill(String page, Map<String, String> contents) {
        for (String name : contents.keySet()) {
            if (!page.contains("<!-- generated: " + name + " -->\n")) {
                throw new IllegalArgumentException("no region " + name);
            }
        }
        return REGION.matcher(page).replaceAll(region -> Matcher.quoteReplacement(filled(region.group(1), contents)));
    }

    private static String filled(String name, Map<String, String> contents) {
        if (!contents.containsKey(name)) {
            throw new IllegalArgumentException("nothing to fill " + name + " with");
        }
        return "<!-- generated: " + name + " -->\n\n" + contents.get(name).strip() + "\n\n<!-- end of " + name + " -->\n";
    }
}
