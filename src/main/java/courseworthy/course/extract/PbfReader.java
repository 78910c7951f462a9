package courseworthy.course.extract;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongConsumer;

/** Reads one PBF file: its blocks are decoded by two threads and put together in the order of the file. */
final class PbfReader implements MapFileReader {

    private static final int THREADS = 2;
    /** Bytes that all blocks may inflate to: so many, and so many times the file; real extracts inflate to two or three times their size. */
    private static final long MOST_INFLATED = 64L * 1024 * 1024;
    private static final int MOST_RATIO = 20;

    private final int file;
    private final Path path;
    private final Corridor corridor;
    private final ExtractContents contents;
    private final NodeBlockIndex nodeBlocks = new NodeBlockIndex();
    private final BlockOrder order = new BlockOrder();
    private final BoundsE7 seen = new BoundsE7();

    private ExtractStream in;
    private boolean ended;
    private long blocks;
    private long inflated;
    private boolean anyWay;
    private boolean anyData;
    /** The block with the first way; all nodes stand before it or in it. */
    private volatile long firstBlockOfWays = Long.MAX_VALUE;

    /** @param file its number among those that are read */
    PbfReader(int file, Path path, Corridor corridor, ExtractContents contents) {
        this.file = file;
        this.path = path;
        this.corridor = corridor;
        this.contents = contents;
    }

    @Override
    public ExtractFile read(LongConsumer progress) throws IOException {
        try (ExtractStream stream = ExtractStream.of(path)) {
            in = stream;
            PbfHeader header = header();
            boolean outside = header.bounds() != null && !corridor.mayTouch(header.bounds());
            if (outside) {
                pass(progress);
            } else {
                decode(progress);
            }
            if (!anyData || !anyWay && !outside) {
                throw RefusedExtract.kind(anyData ? "an extract without a way" : "an extract without data", "Fetch the file again.");
            }
            return new ExtractFile(path.toString(), stream.digest(), header.bounds() != null ? header.bounds() : seen.bounds(), true);
        }
    }

    private PbfHeader header() throws IOException {
        Blob blob = new Blob();
        try {
            take(blob);
            blob.inflate();
            return PbfHeader.of(blob);
        } finally {
            order.done(0);
            blob.end();
        }
    }

    /** Reads the next block as it is stored; false at the end of the file. */
    private boolean take(Blob blob) throws IOException {
        return blob.read(in, in.position(), in.size() - in.position());
    }

    /** Goes through the blocks of a file that lies elsewhere, to see that it is whole. */
    private void pass(LongConsumer progress) throws IOException {
        Blob blob = new Blob();
        try {
            while (take(blob)) {
                anyData |= blob.type() == Blob.BlobType.DATA;
                progress.accept(in.position());
            }
        } finally {
            blob.end();
        }
    }

    private void decode(LongConsumer progress) throws IOException {
        blocks = 1;
        Thread[] others = new Thread[Math.min(THREADS, Runtime.getRuntime().availableProcessors()) - 1];
        for (int i = 0; i < others.length; i++) {
            others[i] = new Thread(() -> work(bytes -> { }), "map blocks");
            others[i].setDaemon(true);
            others[i].start();
        }
        work(progress);
        for (Thread each : others) {
            join(each);
        }
        Throwable failure = order.failure();
        if (failure instanceof IOException e) {
            throw e;
        } else if (failure instanceof RuntimeException e) {
            throw e;
        } else if (failure instanceof Error e) {
            throw e;
        }
    }

    private static void join(Thread thread) throws IOException {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    private void work(LongConsumer progress) {
        Blob blob = new Blob();
        PrimitiveBlock block = PrimitiveBlock.near(file, corridor);
        long number = 0;
        try {
            for (number = next(blob); number >= 0; number = next(blob)) {
                progress.accept(blob.start());
                block(number, blob, block);
                order.done(number);
            }
        } catch (BlockOrder.StoppedException stopped) {
            // An earlier block says why.
        } catch (Throwable e) {
            order.fail(number, e);
        } finally {
            blob.end();
        }
    }

    /** Takes the next block, and gives its number; -1 at the end of the file. */
    private synchronized long next(Blob blob) {
        if (ended) {
            return -1;
        }
        try {
            ended = !take(blob);
        } catch (IOException | RuntimeException e) {
            ended = true;
            order.fail(blocks, e);
        }
        return ended ? -1 : blocks++;
    }

    private void block(long number, Blob blob, PrimitiveBlock block) {
        if (blob.type() == Blob.BlobType.DATA) {
            blob.inflate();
            block.read(blob, () -> nodesBefore(number, block.contents()));
            order.await(number);
            inflated += blob.size();
            if (inflated > MOST_INFLATED + MOST_RATIO * in.size()) {
                throw RefusedExtract.damaged("blocks that inflate to more than " + MOST_RATIO + " times the file");
            }
            add(number, blob.start(), block.contents());
        } else {
            if (blob.type() == Blob.BlobType.HEADER) {
                blob.inflate();
                PbfHeader.of(blob);
            }
            order.await(number);
        }
    }

    /** All nodes near the track, once the blocks before the first way have been put together. */
    private NodeTable nodesBefore(long number, BlockContents own) {
        if (firstBlockOfWays > number) {
            order.await(number);
        }
        if (firstBlockOfWays == Long.MAX_VALUE) {
            own.nodesInto(contents);
            firstBlockOfWays = number;
        }
        return contents.nodes();
    }

    private void add(long number, long start, BlockContents block) {
        if (block.hasNodes && number > firstBlockOfWays) {
            throw RefusedExtract.waysBeforeNodes();
        }
        anyData = true;
        anyWay |= block.hasWays;
        if (block.hasNodes) {
            nodeBlocks.add(start, block.firstId(), block.lastId());
            seen.add(block.seen());
        }
        block.nodesInto(contents);
        block.ways().forEach(contents::addWay);
    }

    /** Reads again the blocks that may hold the nodes. */
    @Override
    public void find(LongSet wanted) throws IOException {
        long[] sorted = wanted.sorted();
        Blob blob = new Blob();
        PrimitiveBlock block = PrimitiveBlock.ofNodes(wanted);
        try (SeekableByteChannel channel = Files.newByteChannel(path); InputStream stream = Channels.newInputStream(channel)) {
            for (int i = 0; i < nodeBlocks.size(); i++) {
                if (!nodeBlocks.mayHold(i, sorted)) {
                    continue;
                }
                channel.position(nodeBlocks.start(i));
                if (!blob.read(stream, nodeBlocks.start(i), channel.size() - nodeBlocks.start(i))) {
                    throw RefusedExtract.cut("inside a block");
                }
                blob.inflate();
                block.read(blob, contents::nodes);
                block.contents().placesInto(contents);
            }
        } finally {
            blob.end();
        }
    }
}
