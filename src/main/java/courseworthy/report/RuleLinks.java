package courseworthy.report;

import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import java.nio.charset.StandardCharsets;

/**
 * Ways from a rule's name to its page, where pages of the catalogue were written.
 *
 * @param base from the page with the name to the folder of the catalogue, as a relative address that ends with a slash; null where there is none
 */
public record RuleLinks(String base) {

    /** Names without links. */
    public static final RuleLinks NONE = new RuleLinks(null);

    private static final String SUFFIX = ".html";

    /**
     * To a folder by a relative path.
     *
     * @param path with slashes; the characters that have a meaning in an address, or are none of it, are written as RFC 3986, 2.1, has them
     */
    public static RuleLinks to(String path) {
        StringBuilder out = new StringBuilder();
        for (byte each : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (each & 0xff);
            boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || "-._~/".indexOf(c) >= 0;
            out.append(plain ? String.valueOf(c) : "%" + Character.toUpperCase(Character.forDigit(c >> 4, 16)) + Character.toUpperCase(Character.forDigit(c & 15, 16)));
        }
        return new RuleLinks(out.length() == 0 || out.charAt(out.length() - 1) == '/' ? out.toString() : out + "/");
    }

    /** The same from a page in a folder beside the others. */
    RuleLinks fromBelow() {
        return base == null ? this : new RuleLinks("../" + base);
    }

    /** The rule's name; only shipped rules have pages. */
    RichText of(RuleOrigin author) {
        boolean shipped = author.rank() == Rank.SHIPPED || author.rank() == Rank.LIMIT;
        return base != null && shipped ? RichText.EMPTY.link(author.rule(), base + CataloguePages.path(author.rule(), SUFFIX)) : RichText.ofQuoted(author.rule());
    }
}
