package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.GroundMaterial;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a picture is drawn on: shapes and lines of text, in pixels from its upper left corner. It knows where text stands, so that a label can
 * be placed where there is room for it, and which hatches are used. Its height follows from what is drawn.
 */
final class SvgCanvas {

    private static final double ROOM_BETWEEN_LABELS = 4;

    private final PictureWidth width;
    private final String idPrefix;
    private final SvgWriter body = new SvgWriter();
    /** What is drawn over all else: text that lines would cross. */
    private final SvgWriter top = new SvgWriter();
    private final List<TextBox> texts = new ArrayList<>();
    private final Set<GroundMaterial> hatches = EnumSet.noneOf(GroundMaterial.class);
    /** Attributes of the whole picture that the page's script reads, in their order. */
    private final Map<String, String> data = new LinkedHashMap<>();
    private double height;

    /** @param idPrefix of all ids in it, unique in the page */
    SvgCanvas(PictureWidth width, String idPrefix) {
        this.width = width;
        this.idPrefix = idPrefix;
    }

    int width() {
        return width.pixels();
    }

    boolean narrow() {
        return width == PictureWidth.NARROW;
    }

    /** The picture reaches at least down to here. */
    void reach(double y) {
        height = Math.max(height, y);
    }

    double height() {
        return height;
    }

    Set<GroundMaterial> hatches() {
        return hatches;
    }

    /** A figure for the page's script, under its name with unit. */
    void figure(String name, double value) {
        data.put("data-" + name, SvgWriter.fixed(value, FigureList.DECIMALS));
    }

    /** Figures for the page's script, under their name with unit. */
    void figures(String name, String list) {
        data.put("data-" + name, list);
    }

    /** A place in the picture for the page's script. */
    void pixels(String name, double value) {
        data.put("data-" + name, SvgWriter.number(value));
    }

    void line(String styleClass, double fromX, double fromY, double toX, double toY) {
        body.open("line").attribute("class", styleClass).attribute("x1", fromX).attribute("y1", fromY).attribute("x2", toX).attribute("y2", toY)
                .close("line");
        reach(Math.max(fromY, toY) + 1);
    }

    void rectangle(String styleClass, double x, double y, double wide, double high) {
        body.open("rect").attribute("class", styleClass).attribute("x", x).attribute("y", y).attribute("width", Math.max(0, wide))
                .attribute("height", Math.max(0, high)).close("rect");
        reach(y + high + 1);
    }

    void circle(String styleClass, double x, double y, double radius) {
        body.open("circle").attribute("class", styleClass).attribute("cx", x).attribute("cy", y).attribute("r", radius).close("circle");
        reach(y + radius + 1);
    }

    /** @param path commands of the attribute d, made by the drawing from numbers alone */
    void path(String styleClass, String path, double bottom) {
        body.open("path").attribute("class", styleClass).attribute("d", path).close("path");
        reach(bottom + 1);
    }

    /** A rectangle filled with the hatch of a ground, whose tiles begin at its corner; what is unknown is left blank for a question mark. */
    void hatch(GroundMaterial material, double x, double y, double wide, double high) {
        hatchAlone(material, x, y, wide, high);
        rectangle("edge", x, y, wide, high);
    }

    /** As {@link #hatch}, without an edge. */
    void hatchAlone(GroundMaterial material, double x, double y, double wide, double high) {
        hatches.add(material);
        HatchPattern.of(material).fill(body, x, y, wide, high);
        reach(y + high + 1);
    }

    /** A rectangle filled with the slanted strokes of what cannot be, is only waited for, or lies in the dark. */
    void shade(double x, double y, double wide, double high) {
        HatchPattern.SHADE.fill(body, x, y, Math.max(0, wide), high);
        rectangle("edge", x, y, wide, high);
    }

    /** As {@link #shade}, but half as dense. */
    void twilight(double x, double y, double wide, double high) {
        HatchPattern.TWILIGHT.fill(body, x, y, Math.max(0, wide), high);
        rectangle("edge", x, y, wide, high);
    }

    /** Text at its place, whatever else is there. */
    void text(TextStyle style, Anchor anchor, double x, double y, String words) {
        text(style, anchor, x, y, PictureText.of(words));
    }

    /** As above, in the units that the reader chooses. */
    void text(TextStyle style, Anchor anchor, double x, double y, PictureText words) {
        write(body, style, anchor, x, y, words);
    }

    private void write(SvgWriter layer, TextStyle style, Anchor anchor, double x, double y, PictureText words) {
        if (words.isEmpty()) {
            return;
        }
        TextBox box = TextBox.of(words, style, anchor, x, y);
        texts.add(box);
        layer.open("text");
        if (style.styleClass() != null) {
            layer.attribute("class", style.styleClass());
        }
        if (anchor != Anchor.START) {
            layer.attribute("text-anchor", anchor.value());
        }
        layer.attribute("x", x).attribute("y", y);
        if (words.differs()) {
            layer.attribute("data-us", words.customary());
        }
        layer.text(words.metric()).close("text");
        reach(box.bottom());
    }

    /** Text at its place, if it stays in the picture and off other text. @return whether it was written */
    boolean label(TextStyle style, Anchor anchor, double x, double y, String words) {
        return label(style, anchor, x, y, PictureText.of(words));
    }

    /** As above, in the units that the reader chooses. */
    boolean label(TextStyle style, Anchor anchor, double x, double y, PictureText words) {
        if (!hasRoom(TextBox.of(words, style, anchor, x, y))) {
            return false;
        }
        text(style, anchor, x, y, words);
        return true;
    }

    /** Text as near its place as the left and right edges of the picture let it, if it keeps off other text. @return whether it was written */
    boolean labelInside(TextStyle style, double middle, double y, String words) {
        return labelInside(style, middle, y, PictureText.of(words));
    }

    /** As above, in the units that the reader chooses. */
    boolean labelInside(TextStyle style, double middle, double y, PictureText words) {
        double half = words.width(style.bold()) / 2;
        return half * 2 <= width() && label(style, Anchor.MIDDLE, Math.max(half, Math.min(width() - half, middle)), y, words);
    }

    /** Text that begins at its place, on a plate of paper over all lines, whatever else is there. */
    void textOver(TextStyle style, double x, double y, PictureText words) {
        plate(top, TextBox.of(words, style, Anchor.START, x, y));
        write(top, style, Anchor.START, x, y, words);
    }

    /** As {@link #labelInside}, on a plate of paper over all lines, whenever these are drawn. @return whether it was written */
    boolean labelOver(TextStyle style, double middle, double y, String words) {
        return labelOver(style, middle, y, PictureText.of(words));
    }

    /** As above, in the units that the reader chooses. */
    boolean labelOver(TextStyle style, double middle, double y, PictureText words) {
        double half = words.width(style.bold()) / 2;
        double x = Math.max(half, Math.min(width() - half, middle));
        TextBox box = TextBox.of(words, style, Anchor.MIDDLE, x, y);
        if (!hasRoom(box)) {
            return false;
        }
        plate(top, box);
        write(top, style, Anchor.MIDDLE, x, y, words);
        return true;
    }

    /** Text on a plate of paper, in the middle of a hatched rectangle, if it fits into it. @return whether it was written */
    boolean plate(TextStyle style, double left, double right, double y, String line) {
        PictureText words = PictureText.of(line);
        TextBox box = TextBox.of(words, style, Anchor.MIDDLE, (left + right) / 2, y);
        if (box.left() - left < ROOM_BETWEEN_LABELS || !hasRoom(box)) {
            return false;
        }
        plate(body, box);
        text(style, Anchor.MIDDLE, (left + right) / 2, y, words);
        return true;
    }

    private static void plate(SvgWriter layer, TextBox box) {
        layer.open("rect").attribute("class", "plate").attribute("x", box.left() - 2).attribute("y", box.top()).attribute("width", box.right() - box.left() + 4)
                .attribute("height", box.bottom() - box.top()).close("rect");
    }

    boolean hasRoom(TextBox box) {
        if (box.left() < -0.1 || box.right() > width() + 0.1 || box.top() < -0.1) {
            return false;
        }
        TextBox wider = new TextBox(box.left() - ROOM_BETWEEN_LABELS, box.top(), box.right() + ROOM_BETWEEN_LABELS, box.bottom());
        return texts.stream().noneMatch(wider::overlaps);
    }

    /** The whole picture. @param title what is seen in it @param description the same in a sentence, for those who do not see it */
    String markup(String kind, String title, String description) {
        SvgWriter out = new SvgWriter();
        String id = idPrefix + "-" + width.styleClass();
        int high = (int) Math.ceil(height);
        out.open("svg").attribute("class", "drawing " + kind + " " + width.styleClass()).attribute("role", "img")
                .attribute("aria-labelledby", id + "-title " + id + "-desc").attribute("viewBox", "0 0 " + width() + " " + high)
                .attribute("width", width()).attribute("height", high);
        data.forEach(out::attribute);
        out.open("title").attribute("id", id + "-title").text(title).close("title");
        out.open("desc").attribute("id", id + "-desc").text(description).close("desc");
        return out.append(body).append(top).close("svg").markup();
    }
}
