package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Routes far longer than any that is ridden are answered in little memory. */
class LongRouteMeasure {

    @TempDir
    private Path folder;

    /**
     * A degree of latitude is 111.2 km: 42 of them are 4,670 km, or 467,000 steps. The steep start lacks gears, so that each other kind of bike is
     * surveyed beside the called one.
     */
    @Test
    void aRouteAcrossAContinentIsAnsweredIn240Megabytes() throws Exception {
        StringBuilder route = new StringBuilder("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\"><rte>\n");
        for (int i = 0; i < 20; i++) {
            point(route, 46 + i / 1000.0, 400 + 27 * i);
        }
        point(route, 4, 410);
        Path file = Files.writeString(folder.resolve("far.gpx"), route + "</rte></gpx>\n");
        Path out = folder.resolve("out");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx240m", "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), "courseworthy.Main", "brief", file.toString(), "--ground",
                "surface=gravel").redirectErrorStream(true).redirectOutput(out.toFile()).start();
        int code = process.waitFor();
        assertThat(code).as(Files.readString(out)).isZero();
        assertThat(Files.readString(out)).contains("Too hard", "4658.0 km");
    }

    private static void point(StringBuilder route, double lat, int elevation) {
        route.append("<rtept lat=\"").append(lat).append("\" lon=\"9.5\"><ele>").append(elevation).append("</ele></rtept>\n");
    }
}
