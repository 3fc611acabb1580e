package tiewright.ledger;

import java.io.IOException;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.MVStoreException;

/** A database file that is there already, looked at before anything may write to it. */
final class FoundDatabase {
    private FoundDatabase() {}

    /**
     * Where nothing can be found in a file that is there, the database would begin a new event in it without a word; where its newest
     * pages are damaged it would go on from older ones. What was written after the last answer is left out, for the disk may have kept
     * parts of it only.
     *
     * @throws LedgerException in the first two cases, with the way out; the file is left as it is
     */
    static void mustHoldWhatIsThere(DataFolder folder) {
        Acknowledged acknowledged = folder.acknowledged();
        if (!DataFolder.holdsEvent(folder.path())) {
            acknowledged.ofNothing();
            return;
        }
        mustNotBeEmpty(folder);
        acknowledged.leaveOutWhatNobodyWasAnswered();
        try (MVStore found = new MVStore.Builder()
                .fileName(folder.database().toString())
                .readOnly()
                .open()) {
            if (found.getMapNames().isEmpty()) {
                throw Owner.damaged(folder, new IOException("no table is found in it"));
            }
            acknowledged.mustReach(found.getCurrentVersion());
        } catch (MVStoreException unreadable) {
            throw Owner.damaged(folder, unreadable);
        }
    }

    private static void mustNotBeEmpty(DataFolder folder) {
        if (folder.size() == 0) {
            throw new LedgerException(
                    "The database file " + folder.database() + " is empty: an event was here and cannot be read."
                            + " Lay the last backup into a new folder with restore and go on from there; or move the empty file away to begin a new event.");
        }
    }
}
