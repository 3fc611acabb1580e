package tiewright.standings;

import java.util.stream.IntStream;
import tiewright.event.ClubId;

/** The figures of every row. */
final class Sums {
    private final Value[] tiePoints;
    private final Value[] rubbers;
    private final Value[] games;
    private final Value[] points;
    private final int[] won;
    private final int[] drawn;
    private final int[] lost;

    private Sums(Tallies tallies) {
        int[] all = IntStream.range(0, tallies.clubs()).toArray();
        tiePoints = tallies.values(Criterion.TIE_POINTS, all);
        rubbers = tallies.values(new Criterion(Quantity.RUBBERS, Form.DIFFERENCE, false), all);
        games = tallies.values(new Criterion(Quantity.GAMES, Form.DIFFERENCE, false), all);
        points = tallies.values(new Criterion(Quantity.POINTS, Form.DIFFERENCE, false), all);
        won = new int[all.length];
        drawn = new int[all.length];
        lost = new int[all.length];
        for (CountedTie tie : tallies.ties()) {
            note(tie.home(), tie.result());
            note(tie.away(), tie.result().other());
        }
    }

    static Sums of(Tallies tallies) {
        return new Sums(tallies);
    }

    private void note(int club, Result result) {
        int[] count =
                switch (result) {
                    case WON -> won;
                    case DRAWN -> drawn;
                    case LOST, LOST_BY_BOTH -> lost;
                };
        count[club]++;
    }

    Row row(Placing.Placed placed, ClubId club) {
        int i = placed.club();
        return new Row(
                placed.place(),
                club,
                won[i],
                drawn[i],
                lost[i],
                (int) tiePoints[i].won(),
                (int) rubbers[i].won(),
                (int) rubbers[i].lost(),
                (int) games[i].won(),
                (int) games[i].lost(),
                (int) points[i].won(),
                (int) points[i].lost(),
                placed.reason());
    }
}
