package courseworthy.task;

import courseworthy.build.BuildCall;
import courseworthy.engine.ShippedRules;
import courseworthy.worth.GearChoice;

/** Works out what a course asks of the gears, and what chainrings and cassettes that exist give on it. */
public final class GearsTask {

    private GearsTask() {
    }

    public static GearsResult of(Workspace workspace, Request request) {
        BriefResult answer = BriefTask.withoutOutlook(workspace, request);
        GearChoice choice = GearChoice.of(answer.mounted(), ShippedRules.realPairs(), BuildCall.drivetrain(answer.brief().build()));
        return new GearsResult(answer.brief(), choice, BriefTask.shortfall(answer.call(), answer.mounted(), answer.ride()));
    }
}
