package courseworthy.task;

import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Faults;
import courseworthy.rider.Rider;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Loads rules on a thread of its own, while the course is read: each takes about as long as the other. */
final class RuleLoader {

    private final Path home;
    private final Rider rider;
    private final List<String> sheets;
    private final List<Row> settled;
    private final Faults faults = new Faults();
    private final List<Sheet> given = new ArrayList<>();
    private final FutureTask<DroolsRules> loading = new FutureTask<>(this::load);

    private RuleLoader(Path home, Rider rider, List<String> sheets, List<Row> settled) {
        this.home = home;
        this.rider = rider;
        this.sheets = sheets;
        this.settled = settled;
    }

    /** @param rider whose constraints take part; null where there is none */
    static RuleLoader start(Path home, Rider rider, List<String> sheets) {
        return start(home, rider, sheets, List.of());
    }

    /** @param settled rows that stand for what is settled already */
    static RuleLoader start(Path home, Rider rider, List<String> sheets, List<Row> settled) {
        RuleLoader out = new RuleLoader(home, rider, sheets, settled);
        Thread thread = new Thread(out.loading, "rules");
        thread.setDaemon(true);
        thread.start();
        return out;
    }

    /** Waits for the rules; null where there are faults, which are added to the given ones. */
    DroolsRules finish(Faults others) {
        try {
            DroolsRules rules = loading.get();
            others.addAll(faults);
            return rules;
        } catch (ExecutionException e) {
            throw unchecked(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** The coaches' sheets in force, in the order given; to be asked for once loading is finished. */
    List<Sheet> given() {
        return given;
    }

    static RuntimeException unchecked(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
    }

    private DroolsRules load() {
        List<Row> own = rider == null ? List.of() : SheetReader.rider(rider.constraints(), rider.file(), faults);
        RequestReader inputs = new RequestReader(home, faults);
        for (int i = 0; i < sheets.size(); i++) {
            Path path = inputs.path(sheets.get(i));
            Sheet sheet = path == null ? null : FileKind.sheet(path, sheets.get(i), i, faults);
            if (sheet != null) {
                given.add(sheet);
            }
        }
        ShippedRules shipped = ShippedRules.load();
        Rulebook book = Rulebook.of(shipped.sheets(), own, given, faults);
        if (faults.stop() || settled.isEmpty()) {
            return faults.stop() ? null : new DroolsRules(book.rows(), shipped);
        }
        List<Row> all = new ArrayList<>(book.rows());
        all.addAll(settled);
        return new DroolsRules(all, shipped);
    }
}
