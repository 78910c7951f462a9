package courseworthy.workshop;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what a workshop says of its stock, and which log belongs to it. */
final class StockReader {

    /** The keys of a stock. */
    static final List<String> STOCK_KEYS = List.of("name", "kind", "quantity", "keep", "for", "price", "counted");

    private static final int LONGEST = 200;
    private static final int MOST_PIECES = 10_000;
    private static final double LITRES = 100;
    private static final String LOG = "a path beside the workshop's file or below it";

    private final Collection<String> names;
    private final Faults faults;
    private final String shown;

    /** @param names of the bikes and parts that a stock may be for */
    StockReader(String shown, Collection<String> names, Faults faults) {
        this.shown = shown;
        this.names = names;
        this.faults = faults;
    }

    List<StockItem> stock(FieldReader fields) {
        List<StockItem> out = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>();
        for (FieldReader each : fields.blocks("stock")) {
            StockItem item = item(each);
            if (item != null && !taken.add(item.name())) {
                each.fault("name", "a second \"" + item.name() + "\"", "a name of its own for every stock", "");
            } else if (item != null) {
                out.add(item);
            }
        }
        return out;
    }

    private StockItem item(FieldReader from) {
        from.required("name", "a name of its own");
        from.required("kind", "what it is");
        from.required("quantity", "how much there is");
        String name = from.line("name", LONGEST);
        String kind = from.word("kind", StockItem.KINDS);
        boolean liquid = kind != null && StockItem.LIQUIDS.contains(kind);
        Double quantity = quantity(from, "quantity", liquid);
        Double keep = quantity(from, "keep", liquid);
        List<String> serves = from.texts("for");
        Amount price = from.sum("price", 0, 100_000, "a bare number from 0 to 100000");
        LocalDate counted = from.day("counted");
        from.done();
        for (String each : serves) {
            if (!names.contains(each)) {
                from.fault("for", "\"" + each + "\", which is neither a bike nor a part", "names of bikes and parts", Spelling.didYouMean(each, names));
            }
        }
        return name == null || kind == null || quantity == null ? null : new StockItem(name, kind, quantity, keep == null ? 0 : keep, serves,
                price == null ? null : Double.valueOf(price.inBase()), counted, from.line());
    }

    /** Pieces, or litres of a liquid; null where not given. */
    static Double quantity(FieldReader from, String key, boolean liquid) {
        if (liquid) {
            Amount amount = from.amount(key, Dimension.VOLUME, 0, LITRES, "a volume from 0 ml to 100 L");
            return amount == null ? null : Double.valueOf(amount.inBase());
        }
        Integer pieces = from.whole(key, 0, MOST_PIECES);
        return pieces == null ? null : Double.valueOf(pieces);
    }

    /** The log that a workshop names; null where it names none or it cannot be used. @param file the workshop's file; null where it is not known */
    RideLog log(FieldReader fields, Path file, Workshop workshop) {
        Node.Scalar named = fields.scalar("log", LOG);
        if (named == null || file == null) {
            return null;
        }
        if (!inside(named.text())) {
            fields.fault("log", named.describe(), LOG, "Put the log beside the workshop's file.");
            return null;
        }
        String typed = shown.substring(0, shown.lastIndexOf('/') + 1) + named.text();
        Path parent = file.toAbsolutePath().normalize().getParent();
        Path log = parent.resolve(named.text());
        if (leadsOut(log, parent)) {
            fields.fault("log", named.describe() + ", a link that leads out of the folder", LOG, "Copy the log into the folder.");
            return null;
        }
        return RideLogReader.read(log, typed, workshop, faults);
    }

    /** Whether a file that is there lies elsewhere, behind a link. */
    private static boolean leadsOut(Path file, Path folder) {
        try {
            return Files.exists(file) && !file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return true;
        }
    }

    /** Whether a path stays in its folder. */
    static boolean inside(String path) {
        try {
            return !Path.of(path).isAbsolute() && !path.startsWith("\\") && !path.contains(":") && !Path.of(path).normalize().startsWith("..")
                    && !path.isBlank();
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
