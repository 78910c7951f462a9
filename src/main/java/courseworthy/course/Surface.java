package courseworthy.course;

import java.util.ArrayList;
import java.util.List;

/** What the ground is made of: values of the OpenStreetMap key {@code surface} that matter to a rider (wiki.openstreetmap.org). */
public enum Surface {
    ASPHALT("asphalt", Family.PAVED), CHIPSEAL("chipseal", Family.PAVED), CONCRETE("concrete", Family.PAVED),
    CONCRETE_PLATES("concrete:plates", Family.PAVED), CONCRETE_LANES("concrete:lanes", Family.PAVED), PAVED("paved", Family.PAVED),
    PAVING_STONES("paving_stones", Family.PAVED), BRICKS("bricks", Family.PAVED), SETT("sett", Family.PAVED),
    COBBLESTONE("cobblestone", Family.PAVED), UNHEWN_COBBLESTONE("unhewn_cobblestone", Family.PAVED), WOOD("wood", Family.PAVED),
    METAL("metal", Family.PAVED),
    COMPACTED("compacted", Family.FIRM), FINE_GRAVEL("fine_gravel", Family.FIRM), UNPAVED("unpaved", Family.FIRM),
    GRAVEL("gravel", Family.GRAVEL), PEBBLESTONE("pebblestone", Family.GRAVEL),
    GROUND("ground", Family.EARTH), DIRT("dirt", Family.EARTH), EARTH("earth", Family.EARTH), CLAY("clay", Family.EARTH),
    GRASS("grass", Family.EARTH), WOODCHIPS("woodchips", Family.EARTH), ROCK("rock", Family.ROCK), STONE("stone", Family.ROCK),
    MUD("mud", Family.SOFT), SAND("sand", Family.SOFT), SNOW("snow", Family.SOFT), ICE("ice", Family.SOFT);

    /** Surfaces that ride alike. */
    public enum Family { PAVED, FIRM, GRAVEL, EARTH, ROCK, SOFT }

    private final String tag;
    private final Family family;

    Surface(String tag, Family family) {
        this.tag = tag;
        this.family = family;
    }

    public String tag() {
        return tag;
    }

    public Family family() {
        return family;
    }

    public static List<String> tags() {
        List<String> out = new ArrayList<>();
        for (Surface surface : values()) {
            out.add(surface.tag);
        }
        return out;
    }

    /** The surface of a tag, or null. */
    public static Surface of(String tag) {
        for (Surface surface : values()) {
            if (surface.tag.equals(tag)) {
                return surface;
            }
        }
        return null;
    }
}
