package courseworthy.render.html;

import courseworthy.text.Sha256;
import java.util.Base64;
import java.util.HexFormat;

/** Digests of text by SHA-256 (FIPS 180-4). */
final class Digest {

    /** So many hexadecimal digits tell the things on one reader's pages apart. */
    private static final int LENGTH = 16;

    private Digest() {
    }

    /** A short name for a text, made of hexadecimal digits. */
    static String of(String text) {
        return HexFormat.of().formatHex(Sha256.of(text)).substring(0, LENGTH);
    }

    /** A source of a content security policy that allows this very text (Content Security Policy Level 3, 2.3.1). */
    static String policySource(String text) {
        return "'sha256-" + Base64.getEncoder().encodeToString(Sha256.of(text)) + "'";
    }
}
