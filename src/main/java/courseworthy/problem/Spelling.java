package courseworthy.problem;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds the accepted word nearest to a misspelt one. */
public final class Spelling {

    /** Words that people write for others, however they are spelled. */
    private static final Map<String, String> MEANT = Map.ofEntries(Map.entry("weight", "mass"), Map.entry("bodyweight", "mass"),
            Map.entry("body weight", "mass"), Map.entry("distance", "length"), Map.entry("climb", "ascent"), Map.entry("climbing", "ascent"),
            Map.entry("elevation gain", "ascent"), Map.entry("descending", "descent"), Map.entry("elevation loss", "descent"),
            Map.entry("bicycle", "bike"), Map.entry("cadence", "climbing cadence"),
            Map.entry("weather", "forecast"), Map.entry("license", "licence"));

    private Spelling() {
    }

    /** Options that are said in the trade's word, where others write that a thing is there. */
    private static final List<String> THERE = List.of("fitted", "worn", "tubeless");

    /** The accepted word that another is written for, yes or on for fitted; empty where there is none. */
    public static String synonym(String found, Collection<String> accepted) {
        String now = FormerKeys.now(found, accepted);
        if (!now.isEmpty()) {
            return now;
        }
        String low = found.toLowerCase(Locale.ROOT).trim();
        String meant = switch (low) {
            case "yes", "on", "true" -> THERE.stream().filter(accepted::contains).findFirst().orElse("");
            case "no", "off", "false" -> accepted.contains("tubeless") ? "tube" : accepted.contains("fitted") ? "none" : "";
            default -> MEANT.getOrDefault(low, "");
        };
        return accepted.contains(meant) ? meant : "";
    }

    /** The accepted word that is meant: another word for it, else the nearest within a third of its length (at least one edit); else empty. */
    public static String nearest(String found, Collection<String> accepted) {
        String best = "";
        int least = Integer.MAX_VALUE;
        String low = found.toLowerCase(Locale.ROOT).trim();
        String meant = synonym(found, accepted);
        if (!meant.isEmpty()) {
            return meant;
        }
        for (String word : accepted) {
            int near = Math.max(1, word.length() / 3);
            if (Math.abs(low.length() - word.length()) > near) {
                continue;
            }
            int edits = edits(low, word.toLowerCase(Locale.ROOT));
            if (edits < least && edits <= near) {
                least = edits;
                best = word;
            }
        }
        return best;
    }

    /** A mend that names the nearest accepted word, or the present name of a key that had another; an empty string where none is near. */
    public static String didYouMean(String found, Collection<String> accepted) {
        String now = FormerKeys.now(found, accepted);
        if (!now.isEmpty()) {
            return "Write \"" + now + "\", as it is now called.";
        }
        String near = nearest(found, accepted);
        return near.isEmpty() ? "" : "Did you mean \"" + near + "\"?";
    }

    /** Optimal string alignment distance: insertions, deletions, substitutions and neighbouring swaps. */
    private static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
