package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Stands between the database and the disk, and loses at a power cut what nobody forced to the disk: all of it, some of it in any order, or
 * parts of a write. Until then everything reads as it was written. Once the power is gone nothing is written any more.
 */
public final class UnsureDisk extends FilePathWrapper {
    private static final String SCHEME = "unsuredisk";

    private static final Map<Path, HeldBack> FILES = new ConcurrentHashMap<>();
    private static final AtomicInteger LEFT = new AtomicInteger(Integer.MAX_VALUE);

    /** An event whose database is written through this. */
    static Ledger ledger(Path folder, Clock clock) {
        FilePath.register(new UnsureDisk());
        return Ledger.open(Store.open(DataFolder.take(folder, SCHEME), Growth.USUAL), clock);
    }

    /** From now on there is power for so many writes, cuts and forced writes; the last of them is cut off. */
    static void cutAfter(int operations) {
        LEFT.set(operations);
    }

    static boolean isOff() {
        return LEFT.get() <= 0;
    }

    /** The power is back: what the disk held of this folder's files is laid into the other one. */
    static void comesBack(Path folder, Path found, Random random) throws IOException {
        LEFT.set(Integer.MAX_VALUE);
        for (Path file : FILES.keySet()) {
            if (file.startsWith(folder)) {
                Files.write(
                        found.resolve(file.getFileName()), FILES.remove(file).afterTheCut(random));
            }
        }
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        mustHavePower(0);
        Path path = Path.of(getBase().toString());
        FileChannel file = super.open(mode);
        HeldBack held = FILES.get(path);
        if (held == null) {
            held = new HeldBack(Files.readAllBytes(path));
            FILES.put(path, held);
        }
        return new Unsure(file, held);
    }

    /** @return whether it is the last thing that this disk is asked */
    private static boolean mustHavePower(int operations) throws IOException {
        int left = LEFT.addAndGet(-operations);
        if (left < 0 || left == 0 && operations == 0) {
            LEFT.set(0);
            throw new IOException("the power is gone");
        }
        return left == 0;
    }

    private static final class Unsure extends FileBase {
        private final FileChannel file;
        private final HeldBack held;

        Unsure(FileChannel file, HeldBack held) {
            this.file = file;
            this.held = held;
        }

        private static void endIf(boolean isLast) throws IOException {
            if (isLast) {
                throw new IOException("the power is gone");
            }
        }

        @Override
        public synchronized int write(ByteBuffer from) throws IOException {
            int written = write(from, file.position());
            file.position(file.position() + written);
            return written;
        }

        @Override
        public synchronized int write(ByteBuffer from, long position) throws IOException {
            boolean isLast = mustHavePower(1);
            byte[] bytes = new byte[from.remaining()];
            from.duplicate().get(bytes);
            held.write(position, bytes);
            endIf(isLast);
            return file.write(from, position);
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            boolean isLast = mustHavePower(1);
            held.truncate(size);
            endIf(isLast);
            file.truncate(size);
            return this;
        }

        /** Cut off, it has kept nothing for sure. */
        @Override
        public void force(boolean metadata) throws IOException {
            endIf(mustHavePower(1));
            held.force();
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
        public synchronized FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }
    }
}
