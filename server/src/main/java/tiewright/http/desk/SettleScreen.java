package tiewright.http.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.desk.CorrectCard;
import tiewright.event.Card;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.pieces.TextField;
import tiewright.http.views.SettleView;
import tiewright.http.visit.ByRuling;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Score;

/** A held card and its readings: whoever has the paper card presses the one that it says. */
final class SettleScreen {
    /** The field that says which reading the card says, by its number from 1. */
    static final String ENTRY = "entry";
    /** Asked for in the address: the numbers are typed from the card. */
    static final String TYPED = "typed";

    private final Visit visit;
    private final Tie tie;
    private final RubberNo rubber;
    private final TieViews views;
    private final CardWords words;
    private final Tried tried;

    SettleScreen(Visit visit, Tried tried) {
        this.visit = visit;
        this.tie = visit.tie();
        this.rubber = visit.rubber();
        this.views = new TieViews(visit.event());
        this.words = new CardWords(visit, tie, rubber);
        this.tried = tried;
    }

    /** The form as if the chosen reading had been typed; as it is where none was chosen. Its winner stood in words beside it. */
    static Form chosen(Visit visit, Form form) {
        List<Card.Entry> readings = visit.tie().card(visit.rubber()).readings();
        Optional<Card.Entry> chosen = form.maybe(ENTRY)
                .filter(number -> number.matches("[1-9]"))
                .map(Integer::parseInt)
                .filter(number -> number <= readings.size())
                .map(number -> readings.get(number - 1));
        return chosen.map(entry -> form.with(typed(entry))).orElse(form);
    }

    private static Map<String, String> typed(Card.Entry entry) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("how", entry.how().code());
        typed.put("confirmed", "yes");
        List<Score> games = entry.asItStood().isEmpty() ? entry.games() : entry.asItStood();
        for (int game = 1; game <= games.size(); game++) {
            typed.put("home-" + game, Integer.toString(games.get(game - 1).home()));
            typed.put("away-" + game, Integer.toString(games.get(game - 1).away()));
        }
        return typed;
    }

    /** @param back where somebody goes who leaves it for later */
    Screen screen(String back) {
        String here = "/cards/" + tie.id() + "/" + rubber + "/correct";
        List<Card.Entry> readings = tie.card(rubber).readings();
        List<SettleView.Reading> shown = new ArrayList<>();
        for (Card.Entry entry : readings) {
            shown.add(reading(shown.size() + 1, entry));
        }
        return Screen.of(
                "settle",
                say("page-desk.two-entries-differ"),
                new SettleView(
                        here,
                        tried.refusal(),
                        Stream.of(Side.values()).map(words::clubAndPair).toList(),
                        shown,
                        ByRuling.all(visit, tried, reason()),
                        warnings(readings),
                        here + "?" + TYPED + "=1",
                        back));
    }

    private SettleView.Reading reading(int number, Card.Entry entry) {
        Optional<Side> winner = CardWords.winner(entry, rubber);
        String club = winner.map(side -> views.side(tie, side)).orElseGet(() -> say("page-desk.nobody"));
        String score = entry.games().isEmpty() ? say("page-desk.without-play") : CardWords.score(entry.games(), winner);
        String how = entry.how() == How.PLAYED ? "" : words.how(entry.how());
        return new SettleView.Reading(
                number,
                say(how.isEmpty() ? "page-desk.club-won" : "page-desk.club-won-how", "club", club, "how", how),
                score,
                say(
                        "page-desk.entered-by-at",
                        "who",
                        entry.by().name(),
                        "at",
                        HallClock.said(visit.event().clock(entry.receivedAt()))),
                words.then(winner),
                say("page-desk.settle-as", "club", club, "score", score));
    }

    private TextField reason() {
        String mine = visit.visitor().name();
        return TextField.of(
                        "reason",
                        TextField.Kind.LINE,
                        say("page-desk.who-read-the-card"),
                        tried.value("reason", say("page-desk.read-from-the-card-by", "who", mine)))
                .withError(tried.error("reason"))
                .mustBeFilled()
                .withMaxLength(300);
    }

    /** Before the press: whoever typed one of the two had better not settle it. */
    private List<String> warnings(List<Card.Entry> readings) {
        return readings.stream()
                .limit(1)
                .flatMap(entry -> visit
                        .wouldRefuse(new CorrectCard(
                                tie.id(), rubber, entry.games(), entry.how(), say("page-desk.who-read-the-card")))
                        .stream())
                .map(visit.words()::sentence)
                .toList();
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
