package courseworthy.workshop;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Reads a workshop's file and says everything that is wrong with it at once. What is missing is unknown; a missing mass is
 * warned of, since totals leave it out.
 */
public final class WorkshopReader {

    /** What is often printed on parts of a kind, and no figure or decision rests on. */
    private static final Map<PartKind, Set<PartDetail>> UNUSED = Map.of(PartKind.BAG, Set.of(PartDetail.VOLUME), PartKind.CHAINRING, Set.of(PartDetail.SPEEDS),
            PartKind.SHOCK, Set.of(PartDetail.LOCKOUT));

    /** The keys of a workshop's file. */
    public static final List<String> KEYS = List.of("workshop", "minutes", "bikes", "parts", "log", "stock");
    /** The keys of a part beside its details. */
    public static final List<String> PART_KEYS = List.of("name", "kind", "on");
    /** The keys of a {@code tyre clearance} for one wheel size. */
    public static final List<String> CLEARANCE_KEYS = List.of("bead seat", "width");
    /** The keys of one of a part's {@code intervals}. */
    public static final List<String> INTERVAL_KEYS = List.of("job", "hours", "length", "days");
    /** The keys of a stock. */
    public static final List<String> STOCK_KEYS = StockReader.STOCK_KEYS;

    /** The keys of a row of an {@code air chart}. */
    public static final List<String> CHART_KEYS = List.of("rider", "pressure");

    private static final int LONGEST_NAME = 80;

    private final String shown;
    private final Faults faults;
    private final PartDetailReader detailReader;
    private final Map<String, Part> byName = new LinkedHashMap<>();
    private final Map<Part, Node.Scalar> mounted = new LinkedHashMap<>();
    private final Map<String, List<Label>> labels = new LinkedHashMap<>();

    /** A label of an interface, where it is written. */
    private record Label(Part part, PartDetail detail, String text, int line) {
    }

    private WorkshopReader(String shown, Faults faults) {
        this.shown = shown;
        this.faults = faults;
        this.detailReader = new PartDetailReader(shown, faults);
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return the workshop, or null where the file could not be read at all; with faults it is not to be used
     */
    public static Workshop read(Path path, String shown, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        return tree == null ? null : new WorkshopReader(shown, faults).workshop(new FieldReader(shown, tree, faults), path);
    }

    /** As {@link #read}, from a tree. */
    public static Workshop decode(Node.Mapping tree, String shown, Faults faults) {
        return new WorkshopReader(shown, faults).workshop(new FieldReader(shown, tree, faults), null);
    }

    /** @param path the file; null where it is not known, and then no other is read */
    private Workshop workshop(FieldReader fields, Path path) {
        String name = fields.prose("workshop");
        Map<PartKind, Double> minutes = minutes(fields.fields("minutes"));
        List<Part> bikes = new ArrayList<>();
        for (FieldReader each : fields.blocks("bikes")) {
            add(bikes, part(each, PartKind.BIKE));
        }
        List<Part> parts = new ArrayList<>();
        for (FieldReader each : fields.blocks("parts")) {
            add(parts, part(each, kind(each)));
        }
        StockReader others = new StockReader(shown, byName.keySet(), faults);
        List<StockItem> stock = others.stock(fields);
        fields.has("log");
        fields.done();
        oneTrainedOn(bikes);
        mount();
        parts.stream().filter(each -> each.on() != null).forEach(each -> MountedInterfaces.check(each, mounted.get(each).line(), shown, faults));
        places(parts);
        lonelyLabels();
        Workshop out = new Workshop(name == null ? "" : name.strip(), shown, bikes, parts, minutes).stocked(stock);
        return out.with(others.log(fields, path, out));
    }

    private void oneTrainedOn(List<Part> bikes) {
        Map<String, Part> first = new LinkedHashMap<>();
        for (Part bike : bikes) {
            if (Boolean.TRUE.equals(bike.yes(PartDetail.TRAINED_ON))) {
                String whose = bike.has(PartDetail.SET_UP_FOR) ? bike.word(PartDetail.SET_UP_FOR) : "";
                Part same = first.putIfAbsent(whose.toLowerCase(Locale.ROOT), bike);
                Part before = same != null || first.size() == 1 ? same : whose.isEmpty() ? first.values().iterator().next() : first.get("");
                if (before != null) {
                    faults.add(shown, bike.line(), "trained on", "\"" + bike.name() + "\" beside \"" + before.name() + "\"",
                            "one bike whose position the others take over", "Where each rider has one, say whose each is: set up for: Ann");
                }
            }
        }
    }

    private static void add(List<Part> to, Part part) {
        if (part != null) {
            to.add(part);
        }
    }

    private Map<PartKind, Double> minutes(FieldReader from) {
        Map<PartKind, Double> out = new EnumMap<>(PartKind.class);
        if (from == null) {
            return out;
        }
        for (String word : PartKind.mountedWords()) {
            Amount amount = from.amount(word, Dimension.TIME, 0, 86_400, "the time one swap takes, from 0 min to 24 h");
            if (amount != null) {
                out.put(PartKind.of(word), amount.inBase());
            }
        }
        from.done();
        return out;
    }

    private PartKind kind(FieldReader from) {
        from.required("kind", "the kind of part");
        String word = from.word("kind", PartKind.partWords());
        return word == null ? null : PartKind.of(word);
    }

    /** A part; null where it has no usable kind or name. */
    private Part part(FieldReader from, PartKind kind) {
        String name = name(from);
        Node at = kind == PartKind.BIKE || kind != null && kind.isSpare() ? null : from.node("on");
        if (kind == null) {
            return null;
        }
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        for (PartDetail detail : kind.details()) {
            Object value = detailReader.read(from, detail);
            if (value != null) {
                details.put(detail, value);
            }
        }
        if (details.get(PartDetail.PIECES) instanceof List<?> pieces) {
            details.putIfAbsent(PartDetail.HEIGHT, sum(pieces));
        }
        from.done();
        if (name == null) {
            return null;
        }
        Part part = new Part(name, kind, from.line(), details);
        named(part, from);
        remember(part, from);
        believable(part, from);
        if (at != null) {
            mountedAt(part, at);
        }
        return part;
    }

    private static double sum(List<?> sizes) {
        double sum = 0;
        for (Object size : sizes) {
            sum += (Double) size;
        }
        return sum;
    }

    private String name(FieldReader from) {
        from.required("name", "a name of its own");
        String name = from.line("name", LONGEST_NAME);
        return name == null || name.isEmpty() ? null : name;
    }

    private void named(Part part, FieldReader from) {
        Part other = byName.putIfAbsent(part.name(), part);
        if (other != null) {
            faults.add(shown, from.lineOf("name"), "name", "a second \"" + part.name() + "\" (the first is on line " + other.line() + ")",
                    "a name of its own for every bike and part", "Tell them apart: \"" + part.name() + " 2\".");
        }
        if (!from.has("mass") && !part.kind().isSpare()) {
            faults.add(Fault.warning(shown, from.line(), "mass", "no mass of \"" + part.name() + "\"", "one",
                    "Totals leave it out and say so; weigh it."));
        }
        if (!part.owned() && !from.has("price")) {
            faults.add(Fault.warning(shown, from.line(), "price", "no price of \"" + part.name() + "\", which is on the wish list", "one",
                    "Without it the wish list cannot say what it saves for its price."));
        }
        for (PartDetail detail : UNUSED.getOrDefault(part.kind(), Set.of())) {
            if (part.has(detail)) {
                String key = detail.written();
                faults.add(Fault.warning(shown, from.lineOf(key), key, from.node(key).describe(), "what a figure or a decision rests on",
                        "It is not used. Leave it out."));
            }
        }
    }

    private void mountedAt(Part part, Node at) {
        if (at instanceof Node.Scalar scalar) {
            mounted.put(part, scalar);
        } else if (at instanceof Node.Sequence list) {
            faults.add(shown, list.line(), "on", "\"" + part.name() + "\" mounted in " + list.items().size() + " places", "one bike or part",
                    "Name where it is now; what serves several bikes is moved when it is its turn.");
        } else {
            faults.add(shown, at.line(), "on", at.describe(), "the name of a bike or a part", "");
        }
    }

    /** What is believable by itself and not together. */
    private void believable(Part part, FieldReader from) {
        inOrder(part, from, PartDetail.LEAST_FORK_TRAVEL, PartDetail.MOST_FORK_TRAVEL);
        inOrder(part, from, PartDetail.LEAST_FORK_LENGTH, PartDetail.MOST_FORK_LENGTH);
        inOrder(part, from, PartDetail.LEAST_ROTOR, PartDetail.MOST_ROTOR);
        inOrder(part, from, PartDetail.SMALLEST_RING, PartDetail.LARGEST_RING);
        inOrder(part, from, PartDetail.LEAST_CHAINLINE, PartDetail.MOST_CHAINLINE);
        inOrder(part, from, PartDetail.LEAST_TYRE, PartDetail.MOST_TYRE);
        inOrder(part, from, PartDetail.LEAST_RIM, PartDetail.MOST_RIM);
        inOrder(part, from, PartDetail.LEAST_STEM, PartDetail.MOST_STEM);
        inOrder(part, from, PartDetail.LEAST_POST_INSERTION, PartDetail.MOST_POST_INSERTION);
        inOrder(part, from, PartDetail.LEAST_INSERTION, PartDetail.LENGTH);
        inOrder(part, from, PartDetail.TRAVEL, PartDetail.LENGTH);
        inOrder(part, from, PartDetail.DROPPER_TRAVEL, PartDetail.LENGTH);
        inOrder(part, from, PartDetail.SHOCK_STROKE, PartDetail.SHOCK_LENGTH);
        inOrder(part, from, PartDetail.CHAINSTAY, PartDetail.WHEELBASE);
        nearlyAsMarked(part, from);
        asHeavyAsItsKind(part, from);
        List<Double> pieces = part.sizes(PartDetail.PIECES);
        if (pieces != null && Math.abs(sum(pieces) - part.number(PartDetail.HEIGHT)) > 0.0005) {
            from.fault("pieces", "pieces that do not add up to the height of \"" + part.name() + "\"", "pieces that do", "");
        }
        Double reach = part.number(PartDetail.REACH);
        if (part.kind() == PartKind.BIKE && reach != null && reach < 0) {
            from.fault("reach", from.node("reach").describe(), "a frame's reach from 0 mm to 600 mm", "");
        }
        Double width = part.number(PartDetail.WIDTH);
        if (part.kind() == PartKind.TYRE && width != null && width > 0.13) {
            from.fault("width", from.node("width").describe(), "a tyre's width from 18 mm to 130 mm", "");
        }
        int[] sprockets = part.teeth(PartDetail.SPROCKETS);
        Double speeds = part.number(PartDetail.SPEEDS);
        if (sprockets != null && speeds != null && sprockets.length != speeds.intValue()) {
            from.fault("speeds", speeds.intValue() + " with " + sprockets.length + " sprockets", "one number", "");
        }
    }

    /** A tyre measures within a third of what is marked on it, on any rim (judgement: 0.4 mm for each mm of rim, ISO 5775-1 as quoted). */
    private static void nearlyAsMarked(Part part, FieldReader from) {
        Double marked = part.kind() == PartKind.TYRE ? part.number(PartDetail.WIDTH) : null;
        Double measured = part.number(PartDetail.MEASURED_WIDTH);
        if (marked != null && measured != null && Math.abs(measured - marked) > marked / 3) {
            from.fault("measured width", from.node("measured width").describe() + " of a tyre of " + from.node("width").describe(),
                    "within a third of the width marked", "");
        }
    }

    /** A slip of the decimal point, or grams written as kilograms. */
    private static void asHeavyAsItsKind(Part part, FieldReader from) {
        Double mass = part.number(PartDetail.MASS);
        double most = part.kind().heaviest();
        if (mass != null && mass > most) {
            from.fault("mass", from.node("mass").describe(), "the mass of a " + part.kind().word() + ", at most " + Math.round(most) + " kg",
                    "Is it " + Math.round(mass * 100) + " g?");
        }
    }

    private static void inOrder(Part part, FieldReader from, PartDetail least, PartDetail most) {
        Double low = part.number(least);
        Double high = part.number(most);
        if (low != null && high != null && low > high) {
            from.fault(least.written(), from.node(least.written()).describe(), "no more than the " + most.written(), "");
        }
    }

    private void remember(Part part, FieldReader from) {
        for (PartDetail detail : part.kind().details()) {
            if (detail.form() == PartDetail.Form.LABEL && !detail.family().isEmpty() && part.has(detail)) {
                labels.computeIfAbsent(detail.family(), family -> new ArrayList<>())
                        .add(new Label(part, detail, part.word(detail), from.lineOf(detail.written())));
            } else if (detail.form() == PartDetail.Form.LABELS && part.has(detail)) {
                for (String text : part.words(detail)) {
                    labels.computeIfAbsent(detail.family(), family -> new ArrayList<>())
                            .add(new Label(part, detail, text, from.lineOf(detail.written())));
                }
            }
        }
    }

    /**
     * A label that nothing else carries and that is nearly another is a slip of the pen; but a family that a part is published with need not
     * be in the workshop.
     */
    private void lonelyLabels() {
        for (List<Label> family : labels.values()) {
            Map<String, Integer> count = new LinkedHashMap<>();
            for (Label label : family) {
                count.merge(label.text(), 1, Integer::sum);
            }
            for (Label label : family) {
                if (count.get(label.text()) == 1 && label.detail() != PartDetail.PUBLISHED_WITH) {
                    lonely(label, count.keySet());
                }
            }
        }
    }

    private void lonely(Label label, Collection<String> all) {
        Set<String> others = new LinkedHashSet<>(all);
        others.remove(label.text());
        String mend = Spelling.didYouMean(label.text(), others);
        if (!mend.isEmpty() && !onlyDigitsDiffer(label.text(), Spelling.nearest(label.text(), others))) {
            faults.add(Fault.warning(shown, label.line(), label.detail().written(), "\"" + label.text() + "\", which nothing else carries",
                    "a label that the other side carries too", mend));
        }
    }

    /** Sizes that differ are different interfaces, not slips. */
    private static boolean onlyDigitsDiffer(String one, String other) {
        return !one.replaceAll("[^0-9]", "").equals(other.replaceAll("[^0-9]", ""));
    }

    private void mount() {
        Set<Part> inCircle = new LinkedHashSet<>();
        for (Map.Entry<Part, Node.Scalar> each : mounted.entrySet()) {
            Part part = each.getKey();
            Node.Scalar at = each.getValue();
            Part host = byName.get(at.text());
            if (host == null) {
                String near = Spelling.didYouMean(at.text(), byName.keySet());
                faults.add(shown, at.line(), "on", at.describe() + ", which is neither a bike nor a part", "the name of a bike or a part",
                        near.isEmpty() ? "Leave the key out where the part lies loose." : near);
            } else if (inCircle.contains(part)) {
                continue;
            } else if (closes(part, host)) {
                circle(part, at, inCircle);
            } else if (takes(host, part)) {
                part.mount(host);
            } else {
                faults.add(shown, at.line(), "on", "a " + part.kind().word() + " on a " + host.kind().word(), hosts(part.kind()), "");
            }
        }
    }

    /** Said once, at the first part that is written, with all that are in it. */
    private void circle(Part part, Node.Scalar at, Set<Part> inCircle) {
        StringBuilder way = new StringBuilder("a circle: \"" + part.name() + "\"");
        Part each = part;
        do {
            inCircle.add(each);
            each = byName.get(mounted.get(each).text());
            way.append(" is on \"").append(each.name()).append('"').append(each == part ? "" : ", which");
        } while (each != part);
        faults.add(shown, at.line(), "on", way.toString(), "what carries it", "One of them is on a bike, or lies loose: then leave its key out.");
    }

    /** Whether mounting the part would close a circle, whatever may carry what: what is written is followed, not what is right. */
    private boolean closes(Part part, Part host) {
        Part at = host;
        for (int steps = 0; at != null && steps <= mounted.size(); steps++) {
            if (at == part) {
                return true;
            }
            Node.Scalar next = mounted.get(at);
            at = next == null ? null : byName.get(next.text());
        }
        return false;
    }

    private static boolean takes(Part host, Part part) {
        return host.kind() == PartKind.BIKE ? part.kind().onABike() : part.kind().hosts().contains(host.kind());
    }

    private static String hosts(PartKind kind) {
        List<String> out = new ArrayList<>();
        if (kind.onABike()) {
            out.add("a bike");
        }
        for (PartKind host : kind.hosts()) {
            out.add("a " + host.word());
        }
        return String.join(" or ", out);
    }

    /** One part in each place; a front wheel and a rear wheel can be told apart. */
    private void places(List<Part> parts) {
        Map<String, Part> taken = new LinkedHashMap<>();
        for (Part part : parts) {
            if (part.kind() == PartKind.WHEEL && part.word(PartDetail.END) == null) {
                faults.add(shown, part.line(), "end", "no end of \"" + part.name() + "\"", "front or rear", "Add \"end: front\" or \"end: rear\".");
            }
            if (isOfOneEnd(part.kind()) && part.on() != null && part.word(PartDetail.END) == null) {
                faults.add(shown, part.line(), "end", "no end of \"" + part.name() + "\"", "front or rear", "Add \"end: front\" or \"end: rear\".");
            }
            MountingPlace place = part.place();
            if (place != null && part.kind() != PartKind.LIGHTS && part.kind() != PartKind.BAG) {
                Part carrier = carrier(part, place);
                Part other = taken.putIfAbsent(carrier.name() + "\n" + place, part);
                if (other != null) {
                    faults.add(shown, mounted.get(part).line(), "on", "\"" + part.name() + "\" as a second " + place.words() + " on \""
                            + carrier.name() + "\" (there is \"" + other.name() + "\")", "one", "");
                }
            }
        }
    }

    private static boolean isOfOneEnd(PartKind kind) {
        return kind == PartKind.PADS || kind == PartKind.CALIPER || kind == PartKind.ADAPTER;
    }

    /** The wheel, crank or bike in whose place it stands, so that two tyres on a spare wheel are seen too. */
    private static Part carrier(Part part, MountingPlace place) {
        if (place.host() != null) {
            for (Part at = part.on(); at != null; at = at.on()) {
                if (at.kind() == place.host().kind()) {
                    return at;
                }
            }
        }
        Part bike = part.bike();
        return bike == null ? part.on() : bike;
    }
}
