package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import tiewright.event.PlayerId;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.DayPlanView;
import tiewright.http.visit.Form;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.PromiseRubbers;
import tiewright.lineup.club.PlayingDay;
import tiewright.wording.DayWords;

/** Rubbers that a captain promised to single players: kept, changed and taken back on the page of the day. Private to the club. */
final class DayPromises {
    private static final String ACTION = "/captain/day/promise";
    private static final String PLAYER = "promise-player";
    private static final String RUBBERS = "promise-rubbers";

    private DayPromises() {}

    static void promise(Visit visit, Function<Tried, Screen> again) {
        Form form = visit.form();
        Optional<PlayerId> player = SquadPages.ownPlayer(visit, form, PLAYER);
        OptionalInt rubbers = form.mustNumber(RUBBERS);
        visit.note(
                form,
                () -> new PromiseRubbers(player.orElseThrow(), rubbers.orElseThrow()),
                "/captain/day#promises",
                again);
    }

    static DayPlanView.Promises view(Visit visit, PlayingDay day, Tried tried) {
        DayWords words = new DayWords(visit.words());
        List<DayPlanView.Promise> lines = new ArrayList<>();
        for (PlayingDay.Line line : day.lines()) {
            if (line.promised() > 0) {
                lines.add(new DayPlanView.Promise(
                        words.promise(line, resting(visit, line), day.mayGoOn()), takeBack(visit, line.player())));
            }
        }
        return new DayPlanView.Promises(words.beyond(day).stream().toList(), lines, form(visit, day, tried));
    }

    private static List<String> resting(Visit visit, PlayingDay.Line line) {
        TieViews views = new TieViews(visit.event());
        return line.resting().stream()
                .flatMap(tie -> visit.event().tie(tie).stream())
                .map(views::title)
                .toList();
    }

    private static ActionForm takeBack(Visit visit, PlayerId player) {
        return ActionForm.of(
                        "take-back-" + player, ACTION, "", Button.other(visit.say("page-captain.take-back-promise")))
                .sending(PLAYER, player.code())
                .sending(RUBBERS, "0");
    }

    private static ActionForm form(Visit visit, PlayingDay day, Tried tried) {
        List<Option> players = players(visit, day, tried);
        return ActionForm.of(
                        "promise",
                        ACTION,
                        visit.say("page-captain.promise-rubbers-to-a-player"),
                        Button.other(visit.say("page-captain.keep-this-promise")))
                .saying(visit.say("page-captain.at-least-so-many-rubbers"))
                .asking(
                        SelectField.of(
                                        PLAYER,
                                        visit.say("page-captain.player"),
                                        visit.say("page-captain.choose"),
                                        players)
                                .withError(tried.error(PLAYER)),
                        TextField.of(
                                        RUBBERS,
                                        TextField.Kind.NUMBER,
                                        visit.say("page-captain.rubbers-today-at-least"),
                                        tried.value(RUBBERS, ""))
                                .withHint(visit.say("page-captain.0-takes-the-promise-back"))
                                .withError(tried.error(RUBBERS)));
    }

    private static List<Option> players(Visit visit, PlayingDay day, Tried tried) {
        return day.lines().stream()
                .map(line -> Option.of(
                        line.player().code(),
                        line.promised() > 0
                                ? visit.say(
                                        "page-captain.player-promised",
                                        "player",
                                        visit.event().name(line.player()),
                                        "rubbers",
                                        line.promised())
                                : visit.event().name(line.player()),
                        tried.value(PLAYER, "").equals(line.player().code())))
                .toList();
    }
}
