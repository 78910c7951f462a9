package courseworthy.rider;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What all riders of a folder share, as a file beside theirs says. It counts for each rider whose own file leaves the key out. What is wrong is
 * said with the file and the line where it stands, which may be either.
 */
public final class SharedRider {

    /** The name of the file. */
    public static final String FILE = "riders.yaml";

    /** Keys that are one rider's alone. */
    private static final List<String> OWN = List.of("name", "notes", "constraints");
    private static final String HELD = "held for";
    /** Added to the lines of what is shared while it stands among what is not, so that a line shows which file it is of; no file has so many lines (computing). */
    private static final int APART = 1 << 28;

    private final String shown;
    private final Node.Mapping values;

    private SharedRider(String shown, Node.Mapping values) {
        this.shown = shown;
        this.values = values;
    }

    /**
     * Reads what is shared by the riders of a folder: nothing where there is no such file.
     *
     * @param shownFolder the folder as typed, with its slash; empty for the one the user stands in
     */
    public static SharedRider in(Path folder, String shownFolder, Faults faults) {
        Path path = folder.resolve(FILE);
        String shown = shownFolder + FILE;
        Node.Mapping tree = Files.isRegularFile(path) ? YamlReader.read(path, shown, faults) : null;
        if (tree == null) {
            return new SharedRider(shown, new Node.Mapping(List.of(), 1, 1));
        }
        List<Node.Entry> out = new ArrayList<>();
        for (Node.Entry entry : tree.entries()) {
            if (OWN.contains(entry.key().text())) {
                String mend = !entry.key().text().equals("constraints") ? "" : "Advice for all riders belongs in a sheet.";
                faults.add(shown, entry.key().line(), entry.key().text(), entry.value().describe(), "only what all riders of the folder share: this belongs in a rider's own file", mend);
            } else {
                out.add(apart(entry));
            }
        }
        return new SharedRider(shown, new Node.Mapping(out, tree.line(), tree.column()));
    }

    /** Reads a rider's file with what its folder shares, unless it is the file of what is shared itself. */
    public static Rider readWithFolder(Path path, String shown, Faults faults) {
        Path folder = path.toAbsolutePath().getParent();
        return folder == null || path.endsWith(FILE) ? RiderReader.read(path, shown, faults)
                : in(folder, shown.substring(0, shown.lastIndexOf('/') + 1), faults).read(path, shown, faults);
    }

    /** As {@link RiderReader#read(Path, String, Faults)}, with what is shared. */
    public Rider read(Path path, String file, Faults faults) {
        if (values.entries().isEmpty()) {
            return RiderReader.read(path, file, faults);
        }
        Node.Mapping own = YamlReader.read(path, file, faults);
        if (own == null) {
            return null;
        }
        Faults found = new Faults();
        Node.Mapping both = with(own);
        Rider rider = RiderReader.read(both, file, found);
        found.faults().forEach(each -> faults.add(placed(each)));
        found.warnings().forEach(each -> faults.add(placed(each)));
        List<String> taken = both.entries().subList(own.entries().size(), both.entries().size()).stream().map(each -> each.key().text()).toList();
        return rider == null || taken.isEmpty() ? rider : rider.sharing(new Rider.SharedFile(shown, taken));
    }

    /** A list of efforts has its times inside. */
    private Node.Mapping with(Node.Mapping own) {
        List<Node.Entry> all = new ArrayList<>(own.entries());
        for (Node.Entry entry : values.entries()) {
            boolean timed = entry.key().text().equals(HELD) && own.get("power") instanceof Node.Sequence;
            if (own.get(entry.key().text()) == null && !timed) {
                all.add(entry);
            }
        }
        return new Node.Mapping(all, own.line(), own.column());
    }

    private Fault placed(Fault fault) {
        return fault.line() < APART ? fault
                : new Fault(shown, fault.line() - APART, fault.field(), fault.found(), fault.expected(), fault.mend(), fault.severity());
    }

    private static Node.Entry apart(Node.Entry entry) {
        return new Node.Entry((Node.Scalar) apart(entry.key()), apart(entry.value()));
    }

    private static Node apart(Node node) {
        int line = node.line() + APART;
        if (node instanceof Node.Scalar text) {
            return new Node.Scalar(text.text(), text.quoted(), text.cut(), line, text.column());
        }
        return node instanceof Node.Sequence list ? new Node.Sequence(list.items().stream().map(SharedRider::apart).toList(), line, list.column())
                : new Node.Mapping(((Node.Mapping) node).entries().stream().map(SharedRider::apart).toList(), line, node.column());
    }
}
