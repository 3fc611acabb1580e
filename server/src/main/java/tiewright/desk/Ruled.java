package tiewright.desk;

import java.util.stream.Collectors;
import tiewright.event.RubberScore;
import tiewright.event.Saying;

/** Parts of what rulings and their notices say. */
final class Ruled {
    private Ruled() {}

    /** The notice of a ruling: what it is about, what was ruled, its number. */
    static Saying notice(Saying about, Saying ruled, int ruling) {
        return Saying.of("notices.ruled")
                .with("about", about)
                .with("ruled", ruled)
                .with("number", ruling);
    }

    /** The games with points, home first, and how the rubber ended. */
    static Saying score(RubberScore score) {
        String games = score.games().stream()
                .map(game -> game.home() + "-" + game.away())
                .collect(Collectors.joining(", "));
        return Saying.of(games.isEmpty() ? "notices.score-of-none" : "notices.score")
                .with("games", games)
                .with("how", score.how().code());
    }
}
