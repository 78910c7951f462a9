package courseworthy.render.pdf;

import courseworthy.problem.TextSanitiser;
import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The faces of a document: what they can show, and how wide it is. Substitution of glyphs is off: with it "fi" is written as one
 * character, and "firm" is not found by a search.
 */
final class Faces {

    private static final int STAND_IN = '\u25a1';
    private static final int PLAIN_STAND_IN = '?';

    private final Map<Face, LoadedFace> loaded = new EnumMap<>(Face.class);
    private boolean lacking;

    Faces(PDDocument document) throws IOException {
        for (Face face : Face.values()) {
            try (InputStream file = Faces.class.getResourceAsStream(face.resource())) {
                if (file == null) {
                    throw new NoClassDefFoundError("the typeface " + face.resource());
                }
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                font.setEnableGsub(false);
                loaded.put(face, new LoadedFace(font, font.getUnicodeCmapLookup(), PDType0Font.load(document, font, true), font.getUnitsPerEm()));
            }
        }
    }

    PDFont font(Face face) {
        return loaded.get(face).embedded();
    }

    /** Whether any text so far had characters that no face has. */
    boolean areLacking() {
        return lacking;
    }

    /** Points from the beginning of a text to its end; the text is one of {@link #shown}. */
    double width(String text, Face face, double size) {
        LoadedFace in = loaded.get(face);
        try {
            double out = 0;
            for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
                out += in.font().getAdvanceWidth(in.glyphs().getGlyphId(text.codePointAt(i)));
            }
            return out * size / in.unitsPerEm();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /**
     * The text as it can be drawn from left to right: composed, on one line, without controls and without what turns its direction; what
     * the faces lack, and scripts that are written the other way, as an empty square.
     */
    String shown(String text, Face face) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> {
            if (isSpace(c)) {
                out.append(' ');
            } else if (!isDropped(c)) {
                out.appendCodePoint(has(c, face) ? c : lacking());
            }
        });
        return out.toString();
    }

    private int lacking() {
        lacking = true;
        return has(STAND_IN, Face.REGULAR) && has(STAND_IN, Face.BOLD) ? STAND_IN : PLAIN_STAND_IN;
    }

    private boolean has(int c, Face face) {
        byte direction = Character.getDirectionality(c);
        boolean leftward = direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        return !leftward && loaded.get(face).glyphs().getGlyphId(c) != 0;
    }

    private static boolean isSpace(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c == 0x85 || Character.isSpaceChar(c);
    }

    private static boolean isDropped(int c) {
        return Character.isISOControl(c) || TextSanitiser.reorders(c);
    }

    private record LoadedFace(TrueTypeFont font, CmapLookup glyphs, PDFont embedded, int unitsPerEm) {
    }
}
