package courseworthy.report;

import courseworthy.report.picture.PressureLine;
import courseworthy.task.Brief;
import courseworthy.units.PressureSteps;
import courseworthy.worth.PressureSettings;
import courseworthy.worth.TyreSetting;
import java.util.ArrayList;
import java.util.List;

/** The tyre pressures of a brief between what strikes the rim and what is allowed. */
final class PressureFigure {

    private PressureFigure() {
    }

    /** Null where no pressure is set. */
    static Figure of(Brief brief) {
        PressureSettings pressures = brief.outlook().pressures();
        if (pressures == null || pressures.front() == null || pressures.rear() == null) {
            return null;
        }
        TyreSetting front = pressures.front();
        TyreSetting rear = pressures.rear();
        Table.Builder data = Table.builder().column("Tyre").figures("Floor, bar").figures("Worth trying, bar").figures("At the start, bar")
                .figures("On the gauge, bar").figures("If wet, bar").figures("Ceiling, bar");
        row(data, "front", front);
        row(data, "rear", rear);
        return new Figure(RichText.of("Front " + PressureSteps.bar(front.start()) + " bar, rear " + PressureSteps.bar(rear.start()) + " bar"),
                new PressureLine(List.of(wheel("front", front), wheel("rear", rear))), RichText.of(sentence(front, rear)), data.build());
    }

    private static PressureLine.Wheel wheel(String label, TyreSetting tyre) {
        return new PressureLine.Wheel(label, tyre.floor(), tyre.worth().low(), tyre.worth().high(), tyre.start(), tyre.pump(), tyre.wet(), tyre.ceiling());
    }

    private static String sentence(TyreSetting front, TyreSetting rear) {
        return "Worth trying: front " + range(front) + " bar, rear " + range(rear) + " bar; the rim strikes the ground under "
                + PressureSteps.bar(PressureSteps.up(front.floor())) + " and " + PressureSteps.bar(PressureSteps.up(rear.floor())) + " bar.";
    }

    private static String range(TyreSetting tyre) {
        return PressureSteps.bar(tyre.worth().low()) + " to " + PressureSteps.bar(tyre.worth().high());
    }

    private static void row(Table.Builder out, String label, TyreSetting tyre) {
        List<String> cells = new ArrayList<>(List.of(label, PressureSteps.bar(PressureSteps.up(tyre.floor())), range(tyre), PressureSteps.bar(tyre.start()),
                PressureSteps.bar(tyre.pump())));
        cells.add(tyre.wet() == null ? "" : PressureSteps.bar(tyre.wet()));
        cells.add(tyre.ceiling() == null ? "" : PressureSteps.bar(PressureSteps.down(tyre.ceiling())));
        out.row(cells.toArray(String[]::new));
    }
}
