package courseworthy.render.html;

import courseworthy.render.svg.SvgPictures;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet and the script of every page, and the policy that allows these two and nothing else. */
final class PageResources {

    static final String STYLE_SHEET = read("page.css") + SvgPictures.STYLE_SHEET;
    static final String SCRIPT = read("page.js");
    /** Nothing is fetched from anywhere, nothing is sent. */
    static final String CONTENT_SECURITY_POLICY = "default-src 'none'; style-src " + Digest.policySource(STYLE_SHEET) + "; script-src "
            + Digest.policySource(SCRIPT) + "; base-uri 'none'; form-action 'none'";

    private PageResources() {
    }

    private static String read(String name) {
        try (InputStream in = PageResources.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
