package tiewright.plainfiles;

/** One fault of a folder. Line 1 is the header; column is the column's name, empty when the whole line is meant. */
public record FolderFault(String file, long line, String column, String reason) {
    /** More than this of a value or a column's name helps nobody to find it. */
    private static final int SHOWN = 200;

    public FolderFault {
        column = shortened(column);
        reason = shortened(reason);
    }

    /** On one line, its beginning and its end where it is long. */
    public static String shortened(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ");
        if (line.length() <= 2 * SHOWN) {
            return line;
        }
        int head = Character.isHighSurrogate(line.charAt(SHOWN - 1)) ? SHOWN - 1 : SHOWN;
        int tail = line.length() - SHOWN;
        tail += Character.isLowSurrogate(line.charAt(tail)) ? 1 : 0;
        return line.substring(0, head) + " … " + line.substring(tail);
    }

    /** A row that is broken as a whole is not called wrong again value by value. */
    boolean isOfTheRowOf(FolderFault other) {
        return line > 1 && file.equals(other.file) && line == other.line;
    }

    @Override
    public String toString() {
        return file + ":" + line + ": " + (column.isEmpty() ? "" : column + ": ") + reason;
    }
}
