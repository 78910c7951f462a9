package courseworthy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Slips that a reader of English sees in a text and a program can find: repeated words and figures, doubled marks, "1 days". */
public final class TextSlips {

    private static final Map<String, Pattern> SLIPS = new LinkedHashMap<>();

    static {
        // Measures are named "most rotor" and "least tyre width on the rim", and rules say "at most most rotor" as sheets write it.
        slip("a word twice", "(?<![\\w-])(?!most most|least least)([A-Za-z]{2,}) \\1(?![\\w-])");
        slip("a figure again in its own brackets", "(?<![\\d.:])(\\d[\\d.:]* [A-Za-z%/]+) \\(\\1[ )]");
        slip("a range from a figure to itself", "(?<![\\d.:x])(\\d[\\d.:]*) to \\1(?![\\d.:x])");
        slip("doubled marks", ",,|;;|(?<!\\.)\\.\\.(?!\\.|/)|[,;:]\\.(?!\\d)|,;|;,|\\(\\)|\\( | \\)(?!\\S)");
        slip("a blank before a mark", "\\w [,;](?= )|[a-z] \\.(?= [A-Z]|$)");
        slip("one of several", "(?<![\\d.,:/x-])1 (minutes|hours|days|weeks|months|laps|stops|items|parts|rules|climbs|courses|riders|stages|pieces|swaps|evenings|gears|rides|stretches|"
                + "bottles|tubes|plugs|times|kinds|figures|decisions|changes|cases|values|words)\\b");
        slip("several of one", "(?<![\\d.,:/x-])([2-9]|[1-9]\\d+) (minute|hour|day|week|month|lap|stop|item|rule|climb|course|rider|evening|ride|decision|change|case)(?![\\w-]| (?:cut|race|ride|limit))");
        slip("a before a vowel", "(?<!\\d )\\b[Aa] (?:[aeio]\\w*)(?<! (?:one|once|ones|european))\\b");
        slip("an before a consonant", "\\b[Aa]n [bcdfgjklmnpqrstvwyz]\\w{2,}\\b");
        slip("nothing of something", "(?<![\\d.])0 (?:m|km|h|kg|g|L|min|s) of\\b");
        slip("what a program prints", "\\bnull\\b|\\bNaN\\b|Infinity|-0(?:\\.0+)?(?![\\d.:-])");
    }

    private TextSlips() {
    }

    private static void slip(String name, String pattern) {
        SLIPS.put(name, Pattern.compile(pattern));
    }

    /** All that are found, each with its surroundings; a text is not wrapped, as Markdown is not. */
    public static List<String> in(String text) {
        List<String> out = new ArrayList<>();
        SLIPS.forEach((name, pattern) -> {
            Matcher found = pattern.matcher(text);
            while (found.find()) {
                out.add(name + ": " + text.substring(Math.max(0, found.start() - 50), Math.min(text.length(), found.end() + 30)).replaceAll("\\s+", " "));
            }
        });
        return out;
    }
}
