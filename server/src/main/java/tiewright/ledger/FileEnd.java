package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * Where a file ended at some moment, and what it was like there: a file that was only appended to since is known again by it.
 *
 * @param like 16 digits, of its last bytes
 */
record FileEnd(long size, String like) {
    /** Nothing is known; no file goes on from there. */
    static final FileEnd UNKNOWN = new FileEnd(0, "0".repeat(16));

    private static final int PAGE = 4096;
    private static final byte[] EACH = "chunk:".getBytes(StandardCharsets.US_ASCII);
    private static final int DIGITS = 16;

    static FileEnd of(Path file) throws IOException {
        long size = Files.size(file);
        return new FileEnd(size, like(file, size));
    }

    /** Whether this file goes on behind this end, and was the same up to it. */
    boolean isWithin(Path file) {
        try {
            return size > 0 && Files.size(file) > size && like(file, size).equals(like);
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** How often the database has written behind it: each time in whole pages, of which the first begins with this word. */
    int writtenSince(Path file) throws IOException {
        int written = 0;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            for (long page = size; page < channel.size(); page += PAGE) {
                ByteBuffer word = ByteBuffer.allocate(EACH.length);
                channel.read(word, page);
                written += Arrays.equals(word.array(), EACH) ? 1 : 0;
            }
        }
        return written;
    }

    /** Takes off what lies behind; returns when that is so on the disk. */
    void cut(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(size);
            channel.force(true);
        }
    }

    private static String like(Path file, long end) throws IOException {
        ByteBuffer last = ByteBuffer.allocate((int) Math.min(PAGE, end));
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (last.hasRemaining() && channel.read(last, end - last.capacity() + last.position()) >= 0) {
                // the system may give it in parts
            }
        }
        return hash(last.array()).substring(0, DIGITS);
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
