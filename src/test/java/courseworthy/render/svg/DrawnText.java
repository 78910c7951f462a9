package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The lines of text of a drawn picture, read back from its markup by the JDK's XML parser, with the room that each takes. */
record DrawnText(String words, TextBox box) {

    /** One picture of the two that are drawn. */
    static Element parse(String markup) {
        try {
            Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(markup)));
            return document.getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(markup, e);
        }
    }

    static List<DrawnText> of(Element svg) {
        return of(svg, "");
    }

    /** In customary units, for those who choose them. */
    static List<DrawnText> customary(Element svg) {
        return of(svg, "data-us");
    }

    private static List<DrawnText> of(Element svg, String attribute) {
        List<DrawnText> out = new ArrayList<>();
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element each = (Element) texts.item(i);
            TextStyle style = TextStyle.PLAIN;
            for (TextStyle known : TextStyle.values()) {
                style = each.getAttribute("class").equals(known.styleClass()) ? known : style;
            }
            Anchor anchor = switch (each.getAttribute("text-anchor")) {
                case "middle" -> Anchor.MIDDLE;
                case "end" -> Anchor.END;
                default -> Anchor.START;
            };
            String words = each.hasAttribute(attribute) ? each.getAttribute(attribute) : each.getTextContent();
            out.add(new DrawnText(words, TextBox.of(new PictureText(words, words), style, anchor, Double.parseDouble(each.getAttribute("x")),
                    Double.parseDouble(each.getAttribute("y")))));
        }
        return out;
    }

    /** What overlaps or leaves the picture in either units, in words. */
    static List<String> faults(Element svg) {
        List<String> out = faults(svg, of(svg));
        out.addAll(faults(svg, customary(svg)));
        return out;
    }

    private static List<String> faults(Element svg, List<DrawnText> all) {
        double width = Double.parseDouble(svg.getAttribute("width"));
        double height = Double.parseDouble(svg.getAttribute("height"));
        List<String> out = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            TextBox box = all.get(i).box;
            if (box.left() < -0.2 || box.right() > width + 0.2 || box.top() < -0.2 || box.bottom() > height + 0.2) {
                out.add("leaves the picture: " + all.get(i));
            }
            for (int j = 0; j < i; j++) {
                if (box.overlaps(all.get(j).box)) {
                    out.add("overlap: " + all.get(i) + " and " + all.get(j));
                }
            }
        }
        return out;
    }
}
