package tiewright.standings;

import tiewright.event.ClubId;

/**
 * A line of a table. All sums are over finished ties; the decider is one of the rubbers.
 *
 * @param place from 1; shared by clubs that only a lot can part
 * @param tiePoints as the conditions give them for each tie
 */
public record Row(
        int place,
        ClubId club,
        int tiesWon,
        int tiesDrawn,
        int tiesLost,
        int tiePoints,
        int rubbersWon,
        int rubbersLost,
        int gamesWon,
        int gamesLost,
        int pointsFor,
        int pointsAgainst,
        Reason decidedBy) {

    /** The club shares its place until a lot is drawn. */
    public boolean onlyALotParts() {
        return decidedBy.deciding().kind() == Line.Kind.LOT_NEEDED;
    }
}
