package tiewright.ledger;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The ledger cannot be opened, written or restored; the message is a plain sentence saying why and what to do. */
public final class LedgerException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean isForNow;

    LedgerException(String sentence) {
        super(sentence);
        this.isForNow = false;
    }

    LedgerException(String sentence, Throwable cause) {
        this(sentence, cause, false);
    }

    private LedgerException(String sentence, @Nullable Throwable cause, boolean isForNow) {
        super(sentence, cause);
        this.isForNow = isForNow;
    }

    static LedgerException forNow(String sentence, @Nullable Throwable cause) {
        return new LedgerException(sentence, cause, true);
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }

    /** The same may succeed later, for example once there is room on the disk; nothing was kept. */
    public boolean isForNow() {
        return isForNow;
    }
}
