package courseworthy.fit;

import courseworthy.claim.SourceLocation;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads the cases beside the rules of fit: parts by place, as a workshop's file writes them, and what is to be found. */
final class FitCases {

    static final String BIKE = "bike";
    static final String LOAD = "load";

    /**
     * One case.
     *
     * @param name   a sentence
     * @param parts  by place, {@code bike} among them
     * @param result what is to be found
     * @param says   what is to be told; empty for nothing
     */
    record FitCase(String rule, String name, Map<String, Part> parts, BuildLoad load, FitResult.FitVerdict result, String says, SourceLocation where) {
        FitCase with(Map<String, Part> others, BuildLoad otherLoad) {
            return new FitCase(rule, name, others, otherLoad, result, says, where);
        }
    }

    private final String shown;
    private final Faults faults;
    private final List<FitCase> out = new ArrayList<>();

    private FitCases(String shown, Faults faults) {
        this.shown = shown;
        this.faults = faults;
    }

    static List<FitCase> read(Path path, String shown, Faults faults) {
        FitCases reader = new FitCases(shown, faults);
        FieldReader fields = new FieldReader(shown, YamlReader.read(path, shown, faults), faults);
        fields.prose("cases for");
        for (FieldReader rule : fields.blocks("cases")) {
            reader.rule(rule);
        }
        fields.done();
        return reader.out;
    }

    private void rule(FieldReader fields) {
        String rule = fields.prose("rule");
        Map<String, Map<String, String>> base = parts(fields.node("parts"), new LinkedHashMap<>());
        for (FitResult.FitVerdict result : FitResult.FitVerdict.values()) {
            if (fields.node(result.words()) instanceof Node.Mapping cases) {
                for (Node.Entry each : cases.entries()) {
                    one(rule, base, result, each);
                }
            }
        }
        fields.done();
    }

    private void one(String rule, Map<String, Map<String, String>> base, FitResult.FitVerdict result, Node.Entry entry) {
        Node.Mapping changes = (Node.Mapping) entry.value();
        String says = changes.get("says") instanceof Node.Scalar text ? text.text() : "";
        Map<String, Map<String, String>> written = parts(changes, base);
        Map<String, String> load = written.remove(LOAD);
        written.putIfAbsent(BIKE, Map.of());
        out.add(new FitCase(rule, entry.key().text(), read(written), load(load == null ? Map.of() : load), result, says,
                new SourceLocation(shown, entry.key().line())));
    }

    /** The parts as written, by place, on top of others. */
    private Map<String, Map<String, String>> parts(Node node, Map<String, Map<String, String>> on) {
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        on.forEach((place, details) -> parts.put(place, new LinkedHashMap<>(details)));
        for (Node.Entry part : ((Node.Mapping) node).entries()) {
            if (part.value() instanceof Node.Mapping details) {
                Map<String, String> known = parts.computeIfAbsent(part.key().text(), place -> new LinkedHashMap<>());
                for (Node.Entry detail : details.entries()) {
                    String text = written(detail.value());
                    if (text.equals("unknown")) {
                        known.remove(detail.key().text());
                    } else {
                        known.put(detail.key().text(), text);
                    }
                }
            } else if (!part.key().text().equals("says")) {
                faults.add(shown, part.key().line(), "", part.key().describe(), "a place with its part, or says", "");
            }
        }
        return parts;
    }

    private static String written(Node node) {
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(FitCases::written).collect(Collectors.joining(", ", "[", "]"));
        }
        if (node instanceof Node.Mapping block) {
            return block.entries().stream().map(each -> each.key().text() + ": " + written(each.value())).collect(Collectors.joining(", ", "{", "}"));
        }
        return ((Node.Scalar) node).text();
    }

    /** Through the workshop's own reader, so that a case can say no more than a user can. */
    private Map<String, Part> read(Map<String, Map<String, String>> written) {
        StringBuilder bikes = new StringBuilder("bikes:\n");
        StringBuilder parts = new StringBuilder("parts:\n");
        written.forEach((place, details) -> {
            StringBuilder to = place.equals(BIKE) ? bikes : parts;
            to.append("  - name: ").append(place).append('\n');
            if (!place.equals(BIKE)) {
                MountingPlace at = place(place);
                to.append("    kind: ").append(at.kind().word()).append('\n');
                if (at.end() != null && at.kind().details().contains(PartDetail.END)) {
                    to.append("    end: ").append(at.end()).append('\n');
                }
            }
            details.forEach((key, value) -> to.append("    ").append(key).append(": ").append(value).append('\n'));
        });
        String text = bikes + (parts.length() > 8 ? parts.toString() : "");
        Workshop workshop = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), shown, faults), shown, faults);
        Map<String, Part> out = new LinkedHashMap<>();
        written.keySet().forEach(place -> out.put(place, workshop.find(place)));
        return out;
    }

    static MountingPlace place(String words) {
        for (MountingPlace place : MountingPlace.values()) {
            if (place.words().equals(words)) {
                return place;
            }
        }
        throw new IllegalArgumentException("no place " + words);
    }

    private static BuildLoad load(Map<String, String> written) {
        return new BuildLoad(amount(written.get("rider"), Dimension.MASS), amount(written.get("system"), Dimension.MASS),
                amount(written.get("ledge"), Dimension.LENGTH));
    }

    private static Double amount(String text, Dimension dimension) {
        try {
            return text == null ? null : Double.valueOf(Amount.parse(text, dimension).inBase());
        } catch (Amount.NotAnAmount e) {
            throw new IllegalArgumentException(text, e);
        }
    }
}
