package tiewright.rating;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.KeptGame;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Refusal;
import tiewright.event.SameGame;

/**
 * A captain gives earlier games that only the own club knows. What is kept already is not kept twice: giving a list again, or a
 * longer one, adds what is new in it. It only adds, so two captains may give at once.
 */
public record GivePastGames(List<PastGame> games) implements PrivateDecision {
    public static final int MOST = 500;

    public GivePastGames {
        games = List.copyOf(games);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        List<PastGame> more = SameGame.beyond(
                noted.games().stream().map(kept -> SameGame.of(kept.game())).toList(), games, SameGame::of);
        return NoteChecks.byCaptain(event, noted, by)
                .refuseIf(
                        noted.games().size() + more.size() > MOST,
                        Refusal.of("notes.past-too-many").with("most", MOST).at("past-results.csv"))
                .kept(() -> numbered(noted, more));
    }

    private static List<GameGiven> numbered(Noted noted, List<PastGame> more) {
        int number = noted.games().stream().mapToInt(KeptGame::number).max().orElse(0);
        List<GameGiven> given = new ArrayList<>();
        for (PastGame game : more) {
            given.add(new GameGiven(noted.club(), ++number, game));
        }
        return given;
    }

    @Override
    public boolean isNeverStale() {
        return true;
    }

    /** Says nothing of the games: what is printed or logged by mistake stays with the club. */
    @Override
    public String toString() {
        return "GivePastGames[]";
    }
}
