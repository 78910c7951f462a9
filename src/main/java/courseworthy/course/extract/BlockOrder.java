package courseworthy.course.extract;

/**
 * Lets threads that decode blocks side by side hand on what they found in the order of the file, so that the outcome is that of one thread;
 * and of several failures keeps the first in the file.
 */
final class BlockOrder {

    private long turn;
    private long failedBlock = Long.MAX_VALUE;
    private Throwable failure;

    /** Ends the work of a thread whose block comes behind one that failed. */
    static final class StoppedException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        StoppedException() {
            super("an earlier block failed", null, false, false);
        }
    }

    /** Waits until all blocks before one are done. */
    synchronized void await(long block) {
        while (turn != block) {
            if (failedBlock < block) {
                throw new StoppedException();
            }
            try {
                wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new StoppedException();
            }
        }
    }

    /** Says that a block is done, and lets the next have its turn. */
    synchronized void done(long block) {
        turn = block + 1;
        notifyAll();
    }

    synchronized void fail(long block, Throwable why) {
        if (block < failedBlock) {
            failedBlock = block;
            failure = why;
        }
        notifyAll();
    }

    /** Why the first block that failed did so; null where none did. */
    synchronized Throwable failure() {
        return failure;
    }
}
