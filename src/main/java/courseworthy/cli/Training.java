package courseworthy.cli;

import java.io.File;
import java.io.OutputStream;

/**
 * Runs typical commands once, showing nothing, while the launcher has the virtual machine record which classes they load.
 * The record makes later runs start fast; it changes no result. Takes the folder of the checkout.
 */
public final class Training {

    private Training() {
    }

    public static void main(String[] args) {
        for (String[] command : typical(args[0])) {
            Tool.run(command, OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Terminal.NONE);
        }
    }

    private static String[][] typical(String home) {
        String courses = home + File.separator + "course-profiles" + File.separator;
        return new String[][] {
            {"brief", courses + "heather-ridge.yaml"},
            {"--version"},
            {"--help"},
        };
    }
}
