package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.protobuf.ByteString;
import courseworthy.RealData;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import crosby.binary.Fileformat;
import crosby.binary.Osmformat;
import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reading an extract of 500 MB: at least 80 MB a second on two cores, and no more memory than for the small one of which it is made of copies, each
 * shifted to another place and other ids ((c) OpenStreetMap contributors, ODbL 1.0).
 */
class LargeExtractMeasure {

    private static final String PBF = "osm/liechtenstein-2022.osm.pbf";
    private static final int COPIES = Integer.getInteger("courseworthy.copies", 185);
    private static final long ID_STEP = 1L << 34;
    private static final double LEAST_MEGABYTES_A_SECOND = 80;
    /** More than the small one may take, bytes: what the collector has not yet come round to. */
    private static final long MORE_HEAP = 16_000_000;
    private static final long NANODEGREES = 700_000_000;

    @TempDir
    Path folder;

    private record Block(String type, byte[] content) {
    }

    private static List<Block> blocks(Path file) throws Exception {
        List<Block> out = new ArrayList<>();
        try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
            while (in.available() > 0) {
                Fileformat.BlobHeader header = Fileformat.BlobHeader.parseFrom(in.readNBytes(in.readInt()));
                Fileformat.Blob blob = Fileformat.Blob.parseFrom(in.readNBytes(header.getDatasize()));
                byte[] content = new byte[blob.getRawSize()];
                Inflater inflater = new Inflater();
                inflater.setInput(blob.getZlibData().toByteArray());
                inflater.inflate(content);
                inflater.end();
                out.add(new Block(header.getType(), content));
            }
        }
        return out;
    }

    private static void write(DataOutputStream out, String type, byte[] content) throws IOException {
        Deflater deflater = new Deflater(4);
        deflater.setInput(content);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 16];
        while (!deflater.finished()) {
            packed.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        byte[] blob = Fileformat.Blob.newBuilder().setRawSize(content.length).setZlibData(ByteString.copyFrom(packed.toByteArray())).build().toByteArray();
        byte[] header = Fileformat.BlobHeader.newBuilder().setType(type).setDatasize(blob.length).build().toByteArray();
        out.writeInt(header.length);
        out.write(header);
        out.write(blob);
    }

    /** A block as one of a country so many places farther east, with ids of its own. */
    private static byte[] shifted(byte[] content, int copy) throws IOException {
        Osmformat.PrimitiveBlock.Builder block = Osmformat.PrimitiveBlock.parseFrom(content).toBuilder();
        int column = copy % 200;
        block.setLonOffset(block.getLonOffset() + column * NANODEGREES);
        for (Osmformat.PrimitiveGroup.Builder group : block.getPrimitivegroupBuilderList()) {
            if (group.hasDense()) {
                group.getDenseBuilder().setId(0, group.getDense().getId(0) + copy * ID_STEP);
            }
            for (Osmformat.Way.Builder way : group.getWaysBuilderList()) {
                way.setId(way.getId() + copy * ID_STEP).setRefs(0, way.getRefs(0) + copy * ID_STEP);
            }
        }
        return block.build().toByteArray();
    }

    private static boolean hasNodes(byte[] content) throws IOException {
        return Osmformat.PrimitiveBlock.parseFrom(content).getPrimitivegroup(0).hasDense();
    }

    private static boolean hasWays(byte[] content) throws IOException {
        return Osmformat.PrimitiveBlock.parseFrom(content).getPrimitivegroup(0).getWaysCount() > 0;
    }

    private Path copies(int copies) throws Exception {
        List<Block> small = blocks(RealData.at(PBF));
        Path file = folder.resolve(copies + ".osm.pbf");
        try (OutputStream bytes = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20); DataOutputStream out = new DataOutputStream(bytes)) {
            Osmformat.HeaderBlock header = Osmformat.HeaderBlock.newBuilder().addRequiredFeatures("OsmSchema-V0.6").addRequiredFeatures("DenseNodes").build();
            write(out, "OSMHeader", header.toByteArray());
            for (boolean nodes : new boolean[] {true, false}) {
                for (int copy = 0; copy < copies; copy++) {
                    for (Block block : small) {
                        if (block.type.equals("OSMData") && (nodes ? hasNodes(block.content) : hasWays(block.content))) {
                            write(out, "OSMData", shifted(block.content, copy));
                        }
                    }
                }
            }
        }
        return file;
    }

    private static Track track() {
        Faults faults = new Faults();
        return CourseReader.read(RealData.at("tracks/course_osm_valley.gpx"), "valley", null, faults).track();
    }

    private record Reading(double seconds, double processor, long heap, MapExtract extract) {
    }

    private static Reading read(Path file) {
        Faults faults = new Faults();
        System.gc();
        List<MemoryPoolMXBean> pools = ManagementFactory.getMemoryPoolMXBeans();
        pools.forEach(MemoryPoolMXBean::resetPeakUsage);
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long processor = machine.getProcessCpuTime();
        long start = System.nanoTime();
        MapExtract read = ExtractReader.read(List.of(file), Corridor.around(track(), 200), faults, Progress.UNSEEN);
        double seconds = (System.nanoTime() - start) / 1e9;
        double worked = (machine.getProcessCpuTime() - processor) / 1e9;
        assertThat(faults.faults()).isEmpty();
        long kept = 0;
        for (MemoryPoolMXBean pool : pools) {
            kept += pool.getName().matches(".*(Tenured|Old).*") ? pool.getPeakUsage().getUsed() : 0;
        }
        return new Reading(seconds, worked, kept, read);
    }

    @Test
    void speedAndMemory() throws Exception {
        Path small = copies(1);
        Path large = copies(COPIES);
        Reading once = read(small);
        double fastest = 0;
        for (int i = 0; i < 3; i++) {
            Reading reading = read(large);
            double megabytes = Files.size(large) / 1e6;
            System.out.printf(Locale.ROOT, "%.0f MB in %.2f s (%.2f s of processor time): %.0f MB/s; old generation %.1f MB, of the small one %.1f MB; %d ways%n", megabytes,
                    reading.seconds, reading.processor, megabytes / reading.seconds, reading.heap / 1e6, once.heap / 1e6, reading.extract.ways().size());
            assertThat(reading.extract.ways()).hasSameSizeAs(once.extract.ways());
            assertThat(reading.heap).isLessThan(once.heap + MORE_HEAP);
            fastest = Math.max(fastest, megabytes / reading.seconds);
        }
        assertThat(fastest).isGreaterThan(LEAST_MEGABYTES_A_SECOND);
    }
}
