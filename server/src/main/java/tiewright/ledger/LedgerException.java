package tiewright.ledger;

/** The ledger cannot be opened, written or restored; the message is a plain sentence saying why and what to do. */
public final class LedgerException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    LedgerException(String sentence) {
        super(sentence);
    }

    LedgerException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
