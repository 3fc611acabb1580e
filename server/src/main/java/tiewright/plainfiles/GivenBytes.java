package tiewright.plainfiles;

import java.util.Optional;

/** A file that was sent by somebody. */
public final class GivenBytes {
    private GivenBytes() {}

    /** Its words; empty if they are no UTF-8. */
    public static Optional<String> text(byte[] bytes) {
        return CsvTable.text(bytes);
    }

    public static FolderFault notText(PlainFile file) {
        return CsvTable.notText(file.fileName());
    }
}
