package tiewright.http.pieces;

import java.util.List;
import tiewright.wording.Words;

/**
 * In which language a page is, and which others there are.
 *
 * @param words make its sentences
 * @param languages to choose from, empty where there is one only
 */
public record Speech(Words words, List<Choice> languages) {

    /** A language by the name that its speakers call it, and the address that chooses it. */
    public record Choice(String tag, String name, String href) {}

    public Speech {
        languages = List.copyOf(languages);
    }

    /** The language of the words, BCP 47 ("en"). */
    public String tag() {
        return words.language().tag();
    }
}
