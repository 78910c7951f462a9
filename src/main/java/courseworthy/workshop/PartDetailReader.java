package courseworthy.workshop;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Reads what is written of one detail of a part, each in the form that {@link PartDetail} declares for it. */
final class PartDetailReader {

    private static final int LONGEST_JOB = 60;

    private final String shown;
    private final Faults faults;

    /** @param shown the path as typed */
    PartDetailReader(String shown, Faults faults) {
        this.shown = shown;
        this.faults = faults;
    }

    /** The value, in the form that the detail has; null where it is not given or not usable. */
    Object read(FieldReader from, PartDetail detail) {
        String key = detail.written();
        if (!from.has(key)) {
            return null;
        }
        return switch (detail.form()) {
            case AMOUNT -> amount(from, key, detail.dimension(), detail);
            case NUMBER -> number(from, key, detail);
            case WHOLE -> from.whole(key, (int) detail.least(), (int) detail.most());
            case YES_NO -> from.yesNo(key);
            case WORD -> from.word(key, detail.words());
            case WORDS -> words(from, key, detail);
            case LABEL -> label(from, key);
            case LABELS -> from.texts(key);
            case TEETH -> teeth(from, key, detail);
            case DAY -> from.day(key);
            case CLEARANCES -> clearances(from, key);
            case SIZES -> sizes(from, key, detail);
            case INTERVALS -> intervals(from, key);
            case CHART -> chart(from, key, detail);
        };
    }

    private static Double amount(FieldReader from, String key, Dimension dimension, PartDetail detail) {
        Amount amount = from.amount(key, dimension, detail.least(), detail.most(), detail.range());
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    private static Double number(FieldReader from, String key, PartDetail detail) {
        Amount amount = from.sum(key, detail.least(), detail.most(), "a bare number from 0 to 100000");
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    private static String label(FieldReader from, String key) {
        String text = from.prose(key);
        return text == null || text.isBlank() ? null : text.strip();
    }

    private static List<String> words(FieldReader from, String key, PartDetail detail) {
        List<String> out = new ArrayList<>();
        for (Node item : from.items(key)) {
            String word = item instanceof Node.Scalar scalar ? from.word(key, scalar, detail.words()) : null;
            if (word != null) {
                out.add(word);
            }
        }
        return out.isEmpty() ? null : List.copyOf(out);
    }

    private int[] teeth(FieldReader from, String key, PartDetail detail) {
        List<Node> items = from.items(key);
        Node only = items.size() == 1 ? items.get(0) : from.node(key);
        if (only instanceof Node.Scalar scalar && scalar.text().matches("[0-9]{1,2} ?[-/x] ?[0-9]{1,2}")) {
            String[] ends = scalar.text().split(" ?[-/x] ?");
            boolean sprockets = detail == PartDetail.SPROCKETS;
            from.fault(key, scalar.describe(), sprockets ? "every sprocket in a list, smallest first" : "the rings in a list, large first",
                    sprockets ? "Write those between as well: [" + ends[0] + ", ..., " + ends[1] + "]." : "Write [" + ends[0] + ", " + ends[1] + "].");
            return null;
        }
        int[] out = new int[items.size()];
        for (int i = 0; i < out.length; i++) {
            Integer teeth = items.get(i) instanceof Node.Scalar scalar ? whole(scalar.text()) : null;
            if (teeth == null || teeth < detail.least() || teeth > detail.most()) {
                faults.add(shown, items.get(i).line(), key, items.get(i).describe(),
                        "teeth as whole numbers from " + (int) detail.least() + " to " + (int) detail.most(), "");
                return null;
            }
            out[i] = teeth;
        }
        return inOrder(from, key, detail, out) ? out : null;
    }

    private static Integer whole(String text) {
        return text.length() == 2 && Character.isDigit(text.charAt(0)) && Character.isDigit(text.charAt(1)) || text.length() == 1
                && Character.isDigit(text.charAt(0)) ? Integer.valueOf(text) : null;
    }

    private static boolean inOrder(FieldReader from, String key, PartDetail detail, int[] teeth) {
        if (teeth.length == 0) {
            from.fault(key, "an empty list", "teeth", "");
            return false;
        }
        if (detail == PartDetail.TEETH && teeth.length > 2) {
            from.fault(key, teeth.length + " rings", "one or two", "");
            return false;
        }
        for (int i = 1; i < teeth.length; i++) {
            boolean rising = teeth[i] > teeth[i - 1];
            if (rising != (detail == PartDetail.SPROCKETS) || teeth[i] == teeth[i - 1]) {
                from.fault(key, from.node(key).describe() + " out of order at " + teeth[i],
                        detail == PartDetail.SPROCKETS ? "the smallest first" : "the larger first", "");
                return false;
            }
        }
        return true;
    }

    private List<Double> sizes(FieldReader from, String key, PartDetail detail) {
        List<Double> out = new ArrayList<>();
        for (Node item : from.items(key)) {
            Amount amount = item instanceof Node.Scalar scalar ? from.amount(key, scalar, detail.dimension()) : null;
            if (amount != null && (amount.inBase() < detail.least() || amount.inBase() > detail.most())) {
                faults.add(shown, item.line(), key, item.describe(), detail.range(), "");
                return null;
            }
            if (amount != null) {
                out.add(amount.inBase());
            }
        }
        return out.isEmpty() ? null : List.copyOf(out);
    }

    private List<Part.ChartRow> chart(FieldReader from, String key, PartDetail detail) {
        List<Part.ChartRow> out = new ArrayList<>();
        if (from.node(key) instanceof Node.Sequence list && list.items().isEmpty()) {
            from.fault(key, "an empty list", "a row for each mass on the chart", "");
        }
        for (FieldReader each : from.blocks(key)) {
            each.required("rider", "the rider's mass it holds for");
            each.required("pressure", "the pressure to start from");
            Amount rider = each.amount("rider", Dimension.MASS, PartDetail.RIDER_LIMIT.least() / 2, PartDetail.RIDER_LIMIT.most(), "a mass from 20 kg to 250 kg");
            Amount pressure = each.amount("pressure", Dimension.PRESSURE, detail.least(), detail.most(), "a pressure from 0.5 bar to 30 bar");
            each.done();
            boolean rising = rider == null || out.isEmpty() || rider.inBase() > out.get(out.size() - 1).rider();
            boolean softer = pressure != null && rising && !out.isEmpty() && pressure.inBase() < out.get(out.size() - 1).pressure();
            if (softer) {
                each.fault("pressure", each.node("pressure").describe() + " below that of a lighter rider", "pressures that rise with the rider's mass", "");
            } else if (!rising) {
                each.fault("rider", each.node("rider").describe() + " after a heavier or the same", "riders from light to heavy, each once", "");
            } else if (rider != null && pressure != null) {
                out.add(new Part.ChartRow(rider.inBase(), pressure.inBase()));
            }
        }
        return out.isEmpty() ? null : List.copyOf(out);
    }

    private List<Part.Clearance> clearances(FieldReader from, String key) {
        Node node = from.node(key);
        if (node instanceof Node.Scalar) {
            Double width = amount(from, key, Dimension.LENGTH, "a width from 18 mm to 130 mm");
            return width == null ? null : List.of(new Part.Clearance(null, width));
        }
        List<Part.Clearance> out = new ArrayList<>();
        Set<Double> seen = new TreeSet<>();
        for (FieldReader each : from.blocks(key)) {
            each.required("bead seat", "the wheel size it holds for");
            each.required("width", "the widest tyre");
            Amount bead = each.amount("bead seat", Dimension.LENGTH, PartDetail.BEAD_SEAT.least(), PartDetail.BEAD_SEAT.most(), PartDetail.BEAD_SEAT.range());
            Double width = amount(each, "width", Dimension.LENGTH, "a width from 18 mm to 130 mm");
            each.done();
            if (bead != null && !seen.add(bead.inBase())) {
                each.fault("bead seat", "a second clearance for " + each.node("bead seat").describe(), "one for each wheel size", "");
            } else if (bead != null && width != null) {
                out.add(new Part.Clearance(bead.inBase(), width));
            }
        }
        return out.isEmpty() ? null : List.copyOf(out);
    }

    private static List<Part.StatedInterval> intervals(FieldReader from, String key) {
        List<Part.StatedInterval> out = new ArrayList<>();
        Set<String> jobs = new TreeSet<>();
        for (FieldReader each : from.blocks(key)) {
            each.required("job", "what is done");
            String job = each.line("job", LONGEST_JOB);
            Amount hours = each.amount("hours", Dimension.TIME, 3600, 36e6, "a time from 1 h to 10000 h");
            Amount length = each.amount("length", Dimension.LENGTH, 1e4, 1e9, "a distance from 10 km to 1000000 km");
            Integer days = each.whole("days", 1, 7300);
            each.done();
            boolean none = !each.has("hours") && !each.has("length") && !each.has("days");
            if (none) {
                each.fault("hours", "no hours, length or days", "at least one of them", "Write how often the maker has it done: \"hours: 50 h\".");
            } else if (job != null && !jobs.add(job)) {
                each.fault("job", "a second \"" + job + "\"", "each job once", "");
            } else if (job != null && (hours != null || length != null || days != null)) {
                out.add(new Part.StatedInterval(job, hours == null ? null : Double.valueOf(hours.inBase()), length == null ? null : Double.valueOf(length.inBase()), days));
            }
        }
        return out.isEmpty() ? null : List.copyOf(out);
    }

    private static Double amount(FieldReader from, String key, Dimension dimension, String range) {
        Amount amount = from.amount(key, dimension, PartDetail.TYRE_CLEARANCE.least(), PartDetail.TYRE_CLEARANCE.most(), range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }
}
