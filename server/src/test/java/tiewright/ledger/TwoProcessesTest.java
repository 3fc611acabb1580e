package tiewright.ledger;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that another process has open; apart from {@link FolderTest} because that process takes seconds to begin. */
class TwoProcessesTest {
    @TempDir
    Path place;

    @Test
    void a_folder_open_in_another_process_is_not_opened_twice() throws Exception {
        try (Ledger ledger = Ledger.open(place, Asked.CLOCK)) {
            Steps.begin(ledger);
        }
        Appender child = Appender.start(place);
        try {
            child.next();
            FolderTest.assertInUse(place);
        } finally {
            child.kill();
        }
        Ledger.open(place, Asked.CLOCK).close();
    }
}
