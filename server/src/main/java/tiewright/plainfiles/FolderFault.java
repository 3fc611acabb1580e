package tiewright.plainfiles;

/** One fault of a folder. Line 1 is the header; column is the column's name, empty when the whole line is meant. */
public record FolderFault(String file, long line, String column, String reason) {
    /** A row that is broken as a whole is not called wrong again value by value. */
    boolean isOfTheRowOf(FolderFault other) {
        return line > 1 && file.equals(other.file) && line == other.line;
    }

    @Override
    public String toString() {
        return file + ":" + line + ": " + (column.isEmpty() ? "" : column + ": ") + reason;
    }
}
