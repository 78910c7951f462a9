package courseworthy.render.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What PDF/UA-1 (ISO 14289-1) wants to be said of a whole document: its language and title, and that it is tagged. */
final class DocumentMetadata {

    private static final String LANGUAGE = "en";

    private DocumentMetadata() {
    }

    static void write(PDDocument document, String title) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage(LANGUAGE);
        PDMarkInfo tagged = new PDMarkInfo();
        tagged.setMarked(true);
        catalog.setMarkInfo(tagged);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer("courseworthy");
        PDMetadata metadata = new PDMetadata(document, new ByteArrayInputStream(xmp(title).getBytes(StandardCharsets.UTF_8)));
        metadata.getCOSObject().setName(COSName.TYPE, "Metadata");
        metadata.getCOSObject().setName(COSName.SUBTYPE, "XML");
        catalog.setMetadata(metadata);
    }

    /** XMP (ISO 16684-1) without dates: the same report is the same document, whenever it was written. */
    private static String xmp(String title) {
        return "<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + "<rdf:Description rdf:about=\"\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\"><pdfuaid:part>1</pdfuaid:part></rdf:Description>\n"
                + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">"
                + escaped(title) + "</rdf:li></rdf:Alt></dc:title><dc:language><rdf:Bag><rdf:li>" + LANGUAGE + "</rdf:li></rdf:Bag></dc:language></rdf:Description>\n"
                + "<rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\"><pdf:Producer>courseworthy</pdf:Producer></rdf:Description>\n"
                + "</rdf:RDF></x:xmpmeta>\n<?xpacket end=\"w\"?>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
