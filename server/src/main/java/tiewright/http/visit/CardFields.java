package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.How;
import tiewright.event.Refusal;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.views.CardFormView;
import tiewright.scoring.Score;
import tiewright.wording.Words;

/** The fields of a card, one rubber: the points of each game and how it ended. */
public final class CardFields {
    private CardFields() {}

    /** The games typed, in order; a game with one number missing is a fault, empty games at the end are none. */
    public static List<Score> games(VisibleEvent event, Form form, How how) {
        List<Score> games = new ArrayList<>();
        if (how.isWalkover() || how == How.VOID) {
            return games;
        }
        for (int game = 1; game <= event.conditions().bestOf(); game++) {
            OptionalInt home = form.number("home-" + game);
            OptionalInt away = form.number("away-" + game);
            if (home.isPresent() && away.isPresent() && home.getAsInt() >= 0 && away.getAsInt() >= 0) {
                games.add(Score.of(home.getAsInt(), away.getAsInt()));
            } else if (home.isPresent() || away.isPresent() || game == 1) {
                form.fault(Refusal.of("form.points-missing")
                        .with("game", game)
                        .at(home.isPresent() ? "away-" + game : "home-" + game));
            }
        }
        return games;
    }

    public static List<CardFormView.Game> fields(VisibleEvent event, TieViews views, Tie tie, Tried tried) {
        List<CardFormView.Game> games = new ArrayList<>();
        int most = event.conditions().bestOf();
        for (int game = 1; game <= most; game++) {
            games.add(new CardFormView.Game(
                    most == 1 ? "" : Words.say(event, "page-visit.game", "game", game),
                    points(
                            "home-" + game,
                            Words.say(event, "page-visit.points-of-2", "home", views.side(tie, Side.HOME)),
                            tried),
                    points(
                            "away-" + game,
                            Words.say(event, "page-visit.points-of", "away", views.side(tie, Side.AWAY)),
                            tried)));
        }
        return games;
    }

    private static TextField points(String id, String label, Tried tried) {
        return TextField.of(id, TextField.Kind.NUMBER, label, tried.value(id, ""))
                .withError(tried.error(id))
                .withMaxLength(3);
    }

    public static ChoiceList how(TieViews views, Tie tie, Tried tried) {
        List<Option> options = Stream.of(How.values())
                .map(how -> Option.of(
                        how.code(), howWords(views, tie, how), tried.isChosen("how", how.code(), how == How.PLAYED)))
                .toList();
        return ChoiceList.one("how", views.say("page-visit.how-it-ended"), options)
                .withHint(views.say("page-visit.points-of-a-walkover"))
                .withError(tried.error("how"));
    }

    public static String howWords(TieViews views, Tie tie, How how) {
        return switch (how) {
            case PLAYED -> views.say("page-visit.played-to-the-end");
            case RETIRED_HOME -> views.say("page-visit.retired-2", "home", views.side(tie, Side.HOME));
            case RETIRED_AWAY -> views.say("page-visit.retired", "away", views.side(tie, Side.AWAY));
            case WALKOVER_HOME -> views.say("page-visit.did-not-play", "club", views.side(tie, Side.HOME));
            case WALKOVER_AWAY -> views.say("page-visit.did-not-play", "club", views.side(tie, Side.AWAY));
            case VOID -> views.say("page-visit.void-neither-played");
        };
    }

    /** What was typed as the query of an address. */
    public static String query(VisibleEvent event, Form form) {
        return names(event).stream()
                .map(name -> name + "="
                        + java.net.URLEncoder.encode(form.text(name), java.nio.charset.StandardCharsets.UTF_8))
                .collect(java.util.stream.Collectors.joining("&"));
    }

    public static List<String> names(VisibleEvent event) {
        List<String> names = new ArrayList<>(List.of("how", "reason"));
        for (int game = 1; game <= event.conditions().bestOf(); game++) {
            names.add("home-" + game);
            names.add("away-" + game);
        }
        return names;
    }
}
