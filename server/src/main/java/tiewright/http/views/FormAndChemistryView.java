package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.pieces.ReasonTable;

/**
 * Form of the own players and chemistry of the own pairs. For that club's eyes only.
 *
 * @param cautions how to read it, first
 * @param players in the order of the squad
 * @param pairs those that have played or were judged; empty if none has
 * @param table the same pairs as rows, each with its sentences
 * @param notes what all of it rests on
 */
public record FormAndChemistryView(
        List<String> cautions, List<Player> players, List<DoubtBar> pairs, ReasonTable table, List<String> notes) {

    /** @param sentences best guess, range, what it does to a game, whom they played, what it is good for */
    public record Player(String id, DoubtBar form, List<String> sentences) {}
}
