package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.Card;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.views.CardFormView.PadKey;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** One rubber in the words of its card: who wins by what, and what the tie stands at then. */
final class CardWords {
    /** How far beyond the target the pad reaches where a game has no end; more is typed. */
    private static final int BEYOND = 9;

    private final Visit visit;
    private final VisibleEvent event;
    private final TieViews views;
    private final Tie tie;
    private final RubberNo rubber;

    CardWords(Visit visit, Tie tie, RubberNo rubber) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
        this.tie = tie;
        this.rubber = rubber;
    }

    String title() {
        return say(
                rubber.isDecider() ? "page-desk.card-of-the-decider" : "page-desk.card-of-rubber",
                "rubber",
                rubber,
                "tie",
                views.title(tie));
    }

    Optional<String> pair(Side side) {
        return Optional.ofNullable(tie.opened().get(rubber)).map(two -> views.pair(two.pair(side)));
    }

    /** Club and pair in one line, where the sheets are open. */
    String clubAndPair(Side side) {
        return pair(side)
                .map(pair -> say("page-desk.club-and-pair", "club", views.side(tie, side), "pair", pair))
                .orElseGet(() -> views.side(tie, side));
    }

    String won(Side side) {
        return say(
                rubber.isDecider() ? "page-desk.won-the-decider" : "page-desk.won-rubber",
                "club",
                views.side(tie, side),
                "rubber",
                rubber,
                "score",
                "{score}",
                "then",
                then(Optional.of(side)));
    }

    /** What the tie stands at once this side has the rubber; what stood on this card before counts no longer. */
    String then(Optional<Side> winner) {
        TieProgress progress = event.progress(tie);
        Optional<Side> before = tie.card(rubber).score(rubber).flatMap(score -> score.winner());
        List<Integer> rubbers = new ArrayList<>();
        for (Side side : Side.values()) {
            rubbers.add(progress.won(side)
                    - (before.filter(side::equals).isPresent() ? 1 : 0)
                    + (winner.filter(side::equals).isPresent() ? 1 : 0));
        }
        return say(
                "page-desk.then",
                "home",
                views.side(tie, Side.HOME),
                "homeWon",
                rubbers.get(0),
                "away",
                views.side(tie, Side.AWAY),
                "awayWon",
                rubbers.get(1));
    }

    /** The winner's side of a score first. */
    static String score(List<Score> games, Optional<Side> winner) {
        boolean away = winner.filter(Side.AWAY::equals).isPresent();
        return TieViews.score(away ? games.stream().map(Score::swapped).toList() : games);
    }

    static Optional<Side> winner(Card.Entry entry, RubberNo rubber) {
        return new Card(List.of(entry)).score(rubber).flatMap(score -> score.winner());
    }

    /** The keys for a rubber of one game; none for several games, which are typed. */
    List<PadKey> pad() {
        if (!rubber.isDecider() && event.conditions().bestOf() > 1) {
            return List.of();
        }
        Format format = rubber.isDecider()
                ? event.conditions().deciderScoring()
                : event.conditions().scoring();
        int most = format.isOpenEnded()
                ? format.target() + BEYOND
                : (format.byOne() ? format.target() : format.cap().orElse(format.target())) - 1;
        return IntStream.rangeClosed(0, most)
                .mapToObj(lost -> new PadKey(lost, format.winningScoreAgainst(lost)))
                .toList();
    }

    String how(How how) {
        return views.how(tie, how);
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
