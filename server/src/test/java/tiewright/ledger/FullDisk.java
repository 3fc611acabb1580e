package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/** Stands between the database and the disk, which has no room, or fails in another way, while a test says so. */
public final class FullDisk extends FilePathWrapper {
    private static final String SCHEME = "fulldisk";
    private static volatile boolean isFull;
    private static volatile boolean isBroken;
    private static volatile boolean isReadOnly;
    private static volatile boolean isWithoutMemory;
    private static volatile boolean isWithoutFiles;
    private static volatile CountDownLatch answers = new CountDownLatch(0);

    /** An event whose database is written through this. */
    public static Ledger ledger(Path folder, Clock clock) {
        FilePath.register(new FullDisk());
        return Ledger.open(Store.open(DataFolder.take(folder, SCHEME), Growth.USUAL), clock);
    }

    /** One whose disk nobody waits for longer than this. */
    static Ledger ledger(Path folder, Clock clock, Duration patience) {
        FilePath.register(new FullDisk());
        return Ledger.open(Store.open(DataFolder.take(folder, SCHEME), Growth.USUAL), clock, patience);
    }

    public static void isReadOnly(boolean readOnly) {
        isReadOnly = readOnly;
    }

    /** No memory is left while something is written. */
    static void isWithoutMemory(boolean without) {
        isWithoutMemory = without;
    }

    /** The process has as many files open as it may. */
    static void isWithoutFiles(boolean without) {
        isWithoutFiles = without;
    }

    /** Writes nothing until this is counted down. */
    static void answersAfter(CountDownLatch latch) {
        answers = latch;
    }

    /** A disk as it should be. */
    public static void isMended() {
        isFull = false;
        isBroken = false;
        isReadOnly = false;
        isWithoutMemory = false;
        isWithoutFiles = false;
        answers.countDown();
    }

    public static void isFull(boolean full) {
        isFull = full;
    }

    public static void isBroken(boolean broken) {
        isBroken = broken;
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    public boolean canWrite() {
        return !isReadOnly && super.canWrite();
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        if (isWithoutFiles) {
            throw new IOException(this + ": Too many open files");
        }
        if (isReadOnly && !mode.equals("r")) {
            throw new IOException(this + ": Read-only file system");
        }
        return new Limited(super.open(mode));
    }

    /** Passes on what there is room for. */
    private static final class Limited extends FileBase {
        private final FileChannel file;

        Limited(FileChannel file) {
            this.file = file;
        }

        private static void mustHaveRoom() throws IOException {
            try {
                answers.await();
            } catch (InterruptedException ended) {
                throw new IOException(ended);
            }
            if (isWithoutMemory) {
                throw new OutOfMemoryError("Java heap space");
            }
            if (isReadOnly) {
                throw new IOException("Read-only file system");
            }
            if (isFull) {
                throw new IOException("No space left on device");
            }
            if (isBroken) {
                throw new IOException("Input/output error");
            }
        }

        @Override
        public int write(ByteBuffer from) throws IOException {
            mustHaveRoom();
            return file.write(from);
        }

        @Override
        public synchronized int write(ByteBuffer from, long position) throws IOException {
            mustHaveRoom();
            return file.write(from, position);
        }

        @Override
        public int read(ByteBuffer to) throws IOException {
            return file.read(to);
        }

        @Override
        public synchronized int read(ByteBuffer to, long position) throws IOException {
            return file.read(to, position);
        }

        @Override
        public long position() throws IOException {
            return file.position();
        }

        @Override
        public FileChannel position(long position) throws IOException {
            file.position(position);
            return this;
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            file.truncate(size);
            return this;
        }

        @Override
        public void force(boolean metadata) throws IOException {
            file.force(metadata);
        }

        @Override
        public synchronized FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }
    }
}
