package courseworthy.build;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * The sets in which parts of a wish list are bought (common practice, no source): each by itself; a wheel, or another part, with what is
 * wished mounted on it; a front and a rear that belong together, with what is mounted on them.
 */
final class WishSets {

    private WishSets() {
    }

    /** Single parts first, in the order of the file. */
    static List<List<Part>> of(Workshop workshop) {
        List<Part> wished = new ArrayList<>();
        for (Part part : workshop.parts()) {
            if (!part.owned()) {
                wished.add(part);
            }
        }
        Set<List<Part>> out = new LinkedHashSet<>();
        wished.forEach(part -> out.add(List.of(part)));
        wished.forEach(part -> out.add(with(wished, part)));
        Set<Part> paired = new LinkedHashSet<>();
        for (Part one : wished) {
            Part other = paired.contains(one) ? null : partner(wished, one, paired);
            if (other != null) {
                paired.add(one);
                paired.add(other);
                out.add(List.of(one, other));
                List<Part> all = new ArrayList<>(with(wished, one));
                all.addAll(with(wished, other));
                out.add(List.copyOf(all));
            }
        }
        return List.copyOf(out);
    }

    /** A part and what is wished mounted on it. */
    private static List<Part> with(List<Part> wished, Part host) {
        List<Part> out = new ArrayList<>(List.of(host));
        for (Part part : wished) {
            if (part != host && MountingEffort.isOn(part, host)) {
                out.add(part);
            }
        }
        return List.copyOf(out);
    }

    private static Part partner(List<Part> wished, Part one, Set<Part> taken) {
        for (Part other : wished) {
            if (other != one && other.kind() == one.kind() && !taken.contains(other) && belongTogether(one, other)) {
                return other;
            }
        }
        return null;
    }

    private static boolean belongTogether(Part one, Part other) {
        return switch (one.kind()) {
            case TYRE -> BuildVariables.isPair(one, other) && sameNumber(one, other, PartDetail.BEAD_SEAT);
            case WHEEL -> ends(one, other) && sameNumber(one, other, PartDetail.BEAD_SEAT) && sameNumber(one, other, PartDetail.RIM_INNER_WIDTH)
                    && sameWord(one, other, PartDetail.RIM_MATERIAL);
            case PADS -> ends(one, other) && sameWord(one, other, PartDetail.COMPOUND) && sameWord(one, other, PartDetail.PAD_SHAPE);
            case LIGHTS -> ends(one, other);
            case ROTOR -> sameWord(one, other, PartDetail.ROTOR_MOUNT);
            case INSERT -> sameNumber(one, other, PartDetail.BEAD_SEAT);
            default -> false;
        };
    }

    /** One for the front and one for the rear. */
    private static boolean ends(Part one, Part other) {
        return one.has(PartDetail.END) && other.has(PartDetail.END) && !one.word(PartDetail.END).equals(other.word(PartDetail.END));
    }

    private static boolean sameNumber(Part one, Part other, PartDetail detail) {
        return Objects.equals(one.number(detail), other.number(detail));
    }

    private static boolean sameWord(Part one, Part other, PartDetail detail) {
        return Objects.equals(one.word(detail), other.word(detail));
    }
}
