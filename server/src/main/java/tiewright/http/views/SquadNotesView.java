package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Refusal;

/**
 * What a captain keeps to the club: form, its doubt, pairs and wishes.
 *
 * @param pairs what was noted about pairs, with the way to take it back
 * @param halfLife how much older games count
 * @param forget deletes early what is noted about one player
 * @param cautions how to read all of it
 */
public record SquadNotesView(
        Refusal refusal,
        List<Form> players,
        List<PairLine> pairs,
        ActionForm pair,
        ActionForm halfLife,
        ActionForm forget,
        List<String> cautions) {

    /** @param judged the judgement in words, or that there is none */
    public record Form(String player, String name, String judged, ActionForm form) {}

    public record PairLine(String words, ActionForm remove) {}
}
