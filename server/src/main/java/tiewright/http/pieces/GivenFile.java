package tiewright.http.pieces;

import java.util.List;

/**
 * A file that is chosen, or pasted as text.
 *
 * @param id of the box for text, and the name sent with it
 * @param columns the header that the file needs
 * @param value what was pasted or stood in the file, kept after a refusal
 * @param faults {@code file:line: column: reason}
 */
public record GivenFile(String id, String fileName, String columns, String value, List<String> faults) {
    public GivenFile {
        faults = List.copyOf(faults);
    }

    public String described() {
        return id + "-hint" + (faults.isEmpty() ? "" : " " + id + "-error");
    }
}
