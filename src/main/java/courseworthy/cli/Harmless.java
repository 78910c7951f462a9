package courseworthy.cli;

/** Makes text from files and command lines safe to show: it may carry sequences that a terminal would obey. */
final class Harmless {

    private Harmless() {
    }

    /**
     * Control characters other than line feed and tab, and the bidirectional controls of Unicode (which reorder what is
     * shown), become {@code \}{@code uXXXX}.
     */
    static String text(String hostile) {
        StringBuilder out = new StringBuilder(hostile.length());
        for (int i = 0; i < hostile.length(); i++) {
            char c = hostile.charAt(i);
            if (obeyed(c)) {
                String hex = Integer.toHexString(c);
                out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static boolean obeyed(char c) {
        boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
        boolean bidirectional = c == '\u200e' || c == '\u200f' || c == '\u061c'
                || c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069';
        return control || bidirectional;
    }
}
