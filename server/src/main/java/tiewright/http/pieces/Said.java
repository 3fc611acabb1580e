package tiewright.http.pieces;

import java.util.List;
import java.util.stream.Stream;

/**
 * Part of a sentence.
 *
 * @param whole it is typed as it stands, so that no line may end within it
 */
public record Said(String text, boolean whole) {
    private static final String OPTION = "--";

    /** The parts of a sentence; where a command stands in it, each word of it that has a hyphen is whole. */
    public static List<Said> parts(String sentence) {
        if (!sentence.contains(OPTION)) {
            return List.of(new Said(sentence, false));
        }
        return Stream.of(sentence.split("(?<= )|(?= )"))
                .map(word -> new Said(word, word.contains("-")))
                .toList();
    }
}
