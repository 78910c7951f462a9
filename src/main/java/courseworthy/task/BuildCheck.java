package courseworthy.task;

import courseworthy.engine.ShippedRules;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;

/**
 * Reads everything the tool is made of, for the launcher: the jar, those beside it that it names, and the packed rules in it. Ends with a
 * code that is not 0 where a part is missing or damaged.
 */
public final class BuildCheck {

    /** Those that the launcher gives where PDF is asked for. */
    private static final Attributes.Name FOR_PDF = new Attributes.Name("Class-Path-For-Pdf");

    private BuildCheck() {
    }

    public static void main(String[] args) throws IOException {
        File jar = new File(System.getProperty("java.class.path"));
        String beside = read(jar);
        for (String name : beside.split(" ")) {
            if (!name.isEmpty()) {
                read(new File(jar.getParentFile(), name));
            }
        }
        if (ShippedRules.load().sheets().isEmpty()) {
            throw new IOException("no rules");
        }
    }

    /** Reads a jar to its end, by which its sums are checked; returns the names of those it needs. */
    private static String read(File file) throws IOException {
        try (JarFile jar = new JarFile(file)) {
            byte[] bytes = new byte[1 << 16];
            for (ZipEntry entry : Collections.list(jar.entries())) {
                try (InputStream in = jar.getInputStream(entry)) {
                    while (in.read(bytes) >= 0) {
                        continue;
                    }
                }
            }
            return jar.getManifest() == null ? "" : value(jar, Attributes.Name.CLASS_PATH) + " " + value(jar, FOR_PDF);
        }
    }

    private static String value(JarFile jar, Attributes.Name name) throws IOException {
        String value = jar.getManifest().getMainAttributes().getValue(name);
        return value == null ? "" : value;
    }
}
