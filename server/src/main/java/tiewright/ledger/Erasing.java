package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.letterbox.Letterbox;

/**
 * Deleting in three steps: a mark on the disk, one transaction, the file written anew. Cut off anywhere, it is finished by whoever
 * opens the folder next, or nothing was deleted yet.
 */
final class Erasing {
    private static final Logger LOG = LoggerFactory.getLogger(Erasing.class);

    private Erasing() {}

    /** Asks; if everything private was deleted by the answer, it also leaves the file, the folder's backups and the key. */
    static Asking.Result everything(Store store, String request, Supplier<Asking.Result> asked) {
        begin(store, request);
        Asking.Result result = asked.get();
        finish(store);
        return result;
    }

    /** What a club noted about one player; what is refused deletes nothing. */
    static PrivateAnswer onePlayer(Store store, Supplier<PrivateAnswer> asked) {
        begin(store, "");
        PrivateAnswer answer = asked.get();
        finish(store);
        return answer;
    }

    /**
     * Finishes what was begun. Without room on the disk the rows are gone and the old file stays; then the mark stays too, and it is
     * tried again at the next start.
     */
    static void finish(Store store) {
        try {
            Optional<String> request = store.folder().erasing().request();
            if (request.isEmpty()) {
                return;
            }
            boolean everything =
                    !request.get().isEmpty() && store.answered(request.get()).isPresent();
            if (everything || request.get().isEmpty()) {
                store.whileClosed(() -> leave(store.folder(), everything));
            }
            store.folder().erasing().done();
        } catch (IOException failure) {
            LOG.error(
                    "What was deleted could not yet be taken out of the files in {}: {}. Look whether the disk is full, then start Tiewright again.",
                    store.folder().path(),
                    failure.getMessage());
        }
    }

    /** A backup in the folder and the key would bring back what has gone. */
    private static void leave(DataFolder folder, boolean everything) throws IOException {
        Rewriting.rewrite(folder.database());
        if (everything) {
            BackupList.deleteInside(folder.path());
            Files.deleteIfExists(folder.key());
            Files.deleteIfExists(
                    Letterbox.fileIn(folder.path())); // who recorded what phones sent could read it by this
        }
    }

    private static void begin(Store store, String request) {
        try {
            store.folder().erasing().begin(request);
        } catch (IOException failure) {
            throw new LedgerException(
                    "Nothing was deleted: the folder " + store.folder().path() + " cannot be written: "
                            + failure.getMessage() + ".",
                    failure);
        }
    }
}
