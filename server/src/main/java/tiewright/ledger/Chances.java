package tiewright.ledger;

import tiewright.event.ClubId;

/** What is by lot for one club alone. */
public final class Chances {
    private Chances() {}

    /**
     * A number by lot for this club: the same for the same question, and foreseen by nobody without the key of this folder, which
     * is in no export, backup, print or log. Another folder, or another key, draws otherwise.
     */
    public static long of(Ledger ledger, ClubId club, String question) {
        return ledger.call(() -> ledger.store.sheets.chance(club, question));
    }
}
