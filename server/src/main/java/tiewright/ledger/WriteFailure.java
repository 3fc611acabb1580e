package tiewright.ledger;

import org.jspecify.annotations.Nullable;

/** Why something could not be written, in a sentence that says what to do; whatever it was, the same may be sent again. */
final class WriteFailure {
    private static final String AGAIN =
            " Then send it again: Tiewright goes on by itself, and what is sent twice counts once.";

    private WriteFailure() {}

    /** @param cause nothing where it failed before and was not tried again */
    static LedgerException of(DataFolder folder, @Nullable Throwable cause) {
        return LedgerException.forNow(sentence(folder, cause), cause);
    }

    /** Nothing is known yet: it may still be written, or never. */
    static LedgerException tooSlow(DataFolder folder, long seconds) {
        return LedgerException.forNow(
                "The disk of the folder " + folder.path() + " has not answered for " + seconds
                        + " seconds, so nobody knows yet whether this was kept. Look at that disk." + AGAIN,
                null);
    }

    /** The disk is full, or can only be read. */
    static boolean isOfTheDisk(DataFolder folder, Throwable cause) {
        return folder.isFull(cause) || isReadOnly(cause);
    }

    /** For who starts Tiewright. */
    static LedgerException atStart(DataFolder folder, Throwable cause) {
        String disk = "The disk of the folder " + folder.path();
        if (folder.isFull(cause)) {
            return new LedgerException(disk + " is full. Make room on it, then try again.", cause);
        }
        return new LedgerException(
                isReadOnly(cause)
                        ? disk + " can only be read. Make it writable, or copy the folder to another disk."
                        : "The folder " + folder.path() + " cannot be used: " + cause.getMessage() + ".",
                cause);
    }

    private static String sentence(DataFolder folder, @Nullable Throwable cause) {
        if (isMemory(cause)) {
            return "The memory of Tiewright is used up, so nothing of this was kept. Wait a moment." + AGAIN
                    + " If it stays so, end it and start it with more, such as java -Xmx1g -jar tiewright.jar.";
        }
        if (folder.isFull(cause)) {
            return "The disk of the folder " + folder.path()
                    + " is full, so nothing of this was kept. Make room on that disk." + AGAIN;
        }
        return isReadOnly(cause)
                ? "The disk of the folder " + folder.path()
                        + " can only be read, so nothing of this was kept. Make it writable." + AGAIN
                : "The database in " + folder.path()
                        + " could not be written, so nothing of this was kept. Look at that disk." + AGAIN;
    }

    private static boolean isMemory(@Nullable Throwable cause) {
        return cause != null && (cause instanceof OutOfMemoryError || isMemory(cause.getCause()));
    }

    /** Systems say it in words of their own, the database by a number (90097). */
    private static boolean isReadOnly(@Nullable Throwable cause) {
        if (cause == null) {
            return false;
        }
        String said = String.valueOf(cause.getMessage());
        return said.contains("Read-only file system")
                || said.contains("write protected")
                || said.contains("[90097-")
                || isReadOnly(cause.getCause());
    }
}
