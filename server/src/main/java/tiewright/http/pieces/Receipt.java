package tiewright.http.pieces;

import java.util.List;

/**
 * A sheet's receipt.
 *
 * @param code the 64 hexadecimal digits
 * @param line when it was given and what it is good for
 * @param hashed the lines that the code is the SHA-256 of, empty before the opening
 * @param href how to check it, empty for no link
 */
public record Receipt(String title, String code, String line, List<String> hashed, String href, String linkWords) {

    public Receipt {
        hashed = List.copyOf(hashed);
    }
}
