package tiewright.plainfiles;

/** One fault of a folder. Line 1 is the header; column is the column's name, empty when the whole line is meant. */
public record FolderFault(String file, long line, String column, String reason) {
  @Override
  public String toString() {
    return file + ":" + line + ": " + (column.isEmpty() ? "" : column + ": ") + reason;
  }
}
