package courseworthy.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests by SHA-256 (FIPS 180-4). */
public final class Sha256 {

    private Sha256() {
    }

    /** The digest of some bytes, 32 bytes long. */
    public static byte[] of(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java platform has SHA-256", never);
        }
    }

    /** The digest of a text as UTF-8. */
    public static byte[] of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A digest in lower-case hexadecimal digits, 64 of them. */
    public static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(of(bytes));
    }
}
