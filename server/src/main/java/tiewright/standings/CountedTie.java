package tiewright.standings;

import tiewright.event.TieId;

/**
 * A tie as it counts in the table; clubs by their position in the table's list of clubs.
 *
 * @param result as the home side has it
 */
record CountedTie(TieId tie, int home, int away, Result result, SideCount forHome, SideCount forAway) {
    boolean has(int club) {
        return home == club || away == club;
    }
}
