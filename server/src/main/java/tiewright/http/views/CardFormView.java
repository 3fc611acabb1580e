package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.TextField;

/**
 * Entering one rubber.
 *
 * @param confirm the winner in words, to be said aloud before it counts; empty while the numbers are typed
 * @param entries what was entered for it so far
 */
public record CardFormView(
        String action,
        Side home,
        Side away,
        Asked asked,
        Refusal refusal,
        Optional<Confirm> confirm,
        List<String> entries,
        String back) {

    /** @param pair who plays, empty as long as the sheets are closed */
    public record Side(String club, String pair) {}

    /**
     * @param games a pair of fields for each game, home first
     * @param reason asked where the entry settles or corrects, else empty
     * @param differing what became of it where the readings differ, else empty
     */
    public record Asked(List<Game> games, ChoiceList how, Optional<TextField> reason, String differing) {}

    public record Game(String label, TextField home, TextField away) {}

    public record Confirm(String sentence, String button, List<HiddenField> fields) {}
}
