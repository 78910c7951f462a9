package courseworthy.cli;

import java.io.File;

/**
 * Runs typical commands once, while the launcher, which shows nothing of it, has the virtual machine record which classes
 * they load. The record makes later runs start fast; it changes no result. Takes the folder of the checkout.
 */
public final class ClassListTraining {

    private ClassListTraining() {
    }

    public static void main(String[] args) {
        for (String[] command : typical(args[0])) {
            CommandRunner.main(command);
        }
    }

    private static String[][] typical(String home) {
        String courses = home + File.separator + "course-profiles" + File.separator;
        String maps = home + File.separator + "docs" + File.separator + "examples" + File.separator + "maps" + File.separator;
        return new String[][] {
            {"brief", courses + "heather-ridge.yaml"},
            {"brief", courses + "tracks" + File.separator + "grey-shoulder.gpx"},
            {"brief", maps + "sorrel-wood.gpx", "--map", maps + "sorrel-wood.osm", "--no-cache"},
            {"--version"},
            {"--help"},
        };
    }
}
