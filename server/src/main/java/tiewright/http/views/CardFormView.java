package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.TextField;

/**
 * Entering one rubber.
 *
 * @param sides home first
 * @param confirm the winner in words, to be said aloud before it counts; empty while the numbers are typed
 * @param entries what was entered for it so far
 */
public record CardFormView(
        String action,
        List<Side> sides,
        Asked asked,
        List<PadKey> pad,
        Refusal refusal,
        Optional<Confirm> confirm,
        List<String> entries,
        String back) {
    public CardFormView {
        sides = List.copyOf(sides);
        pad = List.copyOf(pad);
        entries = List.copyOf(entries);
    }

    /**
     * One club.
     *
     * @param pair who plays, empty as long as the sheets are closed
     * @param won what is read back when this side has won, with {@code {score}} where its points stand first
     * @param record words of the press that enters it, with the same place for the score
     */
    public record Side(String code, String club, String pair, String won, String record) {}

    /** A key of the pad: the points of the side that lost, and those that win against them. */
    public record PadKey(int lost, int wins) {}

    /**
     * @param games a pair of fields for each game, home first
     * @param why asked where the entry settles or corrects: a reason, and by which ruling; else empty
     * @param differing what became of it where the readings differ, else empty
     */
    public record Asked(List<Game> games, ChoiceList how, List<FormField> why, String differing) {
        public Asked {
            games = List.copyOf(games);
            why = List.copyOf(why);
        }
    }

    public record Game(String label, TextField home, TextField away) {}

    public record Confirm(String sentence, String button, List<HiddenField> fields) {
        public Confirm {
            fields = List.copyOf(fields);
        }
    }
}
