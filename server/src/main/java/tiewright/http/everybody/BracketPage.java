package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Bracket;
import tiewright.http.pieces.TieLine;
import tiewright.http.views.BracketView;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.wording.Words;

/** The knockout, round by round. */
final class BracketPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/bracket",
                visit -> Screen.of("bracket", visit.words().say("page-everybody.knockout"), view(AsItStood.of(visit))));
    }

    private static BracketView view(AsItStood stood) {
        VisibleEvent event = stood.visit().event();
        TieViews views = new TieViews(event);
        TreeMap<Integer, List<Bracket.Slot>> rounds = new TreeMap<>();
        List<TieLine> losers = new ArrayList<>();
        Optional<String> champion = Optional.empty();
        int last = event.ties().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                .mapToInt(Tie::round)
                .max()
                .orElse(0);
        for (Tie tie : event.ties()) {
            if (tie.stage() != Stage.KNOCKOUT) {
                continue;
            }
            if (TieViews.isForLosers(tie)) {
                losers.add(views.line(tie));
                continue;
            }
            rounds.computeIfAbsent(tie.round(), round -> new ArrayList<>()).add(slot(event, views, tie));
            if (tie.round() == last) {
                champion = event.progress(tie).winner().flatMap(tie::club).map(event::clubName);
            }
        }
        List<Bracket.Round> shown = rounds.values().stream()
                .map(ties -> new Bracket.Round(title(ties.size()), ties))
                .toList();
        return new BracketView(
                new Bracket(Words.of(event).say("page-everybody.knockout"), shown),
                losers,
                !rounds.isEmpty(),
                champion,
                stood.view());
    }

    static String title(int ties) {
        return switch (ties) {
            case 1 -> "Final";
            case 2 -> "Semi-finals";
            case 4 -> "Quarter-finals";
            default -> "Round of " + 2 * ties;
        };
    }

    private static Bracket.Slot slot(VisibleEvent event, TieViews views, Tie tie) {
        TieProgress progress = event.progress(tie);
        return new Bracket.Slot(
                tie.id().code(),
                "/tie/" + tie.id(),
                entry(views, tie, Side.HOME, progress),
                entry(views, tie, Side.AWAY, progress),
                views.when(tie) + (views.where(tie).isEmpty() ? "" : ", " + views.where(tie)),
                views.state(tie));
    }

    private static Bracket.Entry entry(TieViews views, Tie tie, Side side, TieProgress progress) {
        boolean known = tie.club(side).isPresent();
        return new Bracket.Entry(
                known ? views.side(tie, side) : "",
                tie.slot(side).from().map(views::source).orElse(""),
                progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(side)),
                progress.winner().filter(side::equals).isPresent());
    }
}
