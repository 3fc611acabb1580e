package tiewright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;

/** Opens the data folder of the service for one command, or says why it cannot. */
final class DataFolders {
    private DataFolders() {}

    /** A folder that need not be there yet. */
    static Ledger any(Path data) {
        try {
            return Ledger.open(data, Clock.systemUTC());
        } catch (LedgerException cannot) {
            throw new BadInput(String.valueOf(cannot.getMessage()));
        }
    }

    /** One that is there. */
    static Ledger existing(Path data) {
        if (!Files.isDirectory(data)) {
            throw new BadInput("There is no folder " + data + ": give the data folder of the service.");
        }
        if (!Ledger.isIn(data)) {
            throw new BadInput("There is no event in the folder " + data + ": give the data folder of the service.");
        }
        return any(data);
    }
}
