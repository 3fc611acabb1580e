package tiewright.plainfiles;

import java.time.ZoneOffset;
import tiewright.event.Refusal;
import tiewright.wording.Words;

/**
 * One fault of a folder.
 *
 * @param line 1 is the header
 * @param column its name, empty when the whole line is meant
 * @param reason a code {@code files.*} with its facts
 */
public record FolderFault(String file, long line, String column, Refusal reason) {
    /** More than this of a value or a column's name helps nobody to find it. */
    private static final int SHOWN = 200;

    private static final Words ENGLISH = Words.ofCodes(ZoneOffset.UTC);

    public FolderFault {
        column = shortened(column);
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

    /** Where it stands and what is wrong, in the language of these words. */
    public String said(Words words) {
        return file + ":" + line + ": " + (column.isEmpty() ? "" : column + ": ") + why(words);
    }

    /** What is wrong alone. */
    public String why(Words words) {
        return shortened(words.sentence(reason));
    }

    /** In English, as commands say it. */
    @Override
    public String toString() {
        return said(ENGLISH);
    }
}
