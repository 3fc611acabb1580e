package tiewright.http.captain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubNotes;
import tiewright.event.PlayerId;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.SquadView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.FilmNotes;
import tiewright.rating.ChooseHalfLife;
import tiewright.rating.Ratings;
import tiewright.setup.ForgetPlayer;
import tiewright.wording.Words;

/** The own squad: what games, film and the captain's own view make of players and pairs. In nobody else's page, export or log. */
final class SquadPages implements Page {
    static final String PATH = "/captain/squad";

    private static final String FORGET = PATH + "/forget";

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, SquadRating.PATH, SquadPages::form);
        routes.post(Door.NOTES, PairNotes.PATH, SquadPages::pair);
        routes.post(Door.NOTES, HalfLifeForm.PATH, SquadPages::halfLife);
        routes.post(Door.NOTES, FORGET, SquadPages::forget);
    }

    private static void form(Visit visit) {
        Form form = visit.form();
        var judged = SquadRating.changed(visit, form);
        visit.note(form, () -> judged, PATH, tried -> screen(visit, tried));
    }

    private static void pair(Visit visit) {
        Form form = visit.form();
        var judged = new PairNotes(visit).decision(form);
        visit.note(form, judged, PATH, tried -> screen(visit, tried));
    }

    private static void halfLife(Visit visit) {
        Form form = visit.form();
        OptionalInt days = HalfLifeForm.days(form);
        visit.note(form, () -> new ChooseHalfLife(days), PATH, tried -> screen(visit, tried));
    }

    /** What was noted about one player goes at once; film in which the player was on court too, if that was ticked. */
    private static void forget(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> player = ownPlayer(visit, form, "forget-player");
        visit.forget(
                form,
                () -> new ForgetPlayer(player.orElseThrow(), filmsOf(visit, form, player.orElseThrow())),
                PATH,
                tried -> screen(visit, tried));
    }

    private static List<String> filmsOf(Visit visit, Form form, PlayerId player) {
        return !form.isTicked("forget-film")
                ? List.of()
                : visit.ask(ClubAnswers::new).films().stream()
                        .filter(game -> game.film().start().players().contains(player))
                        .map(FilmNotes.Game::code)
                        .toList();
    }

    /** A player of the captain's own squad; whatever else was sent counts as not filled in. */
    static Optional<PlayerId> ownPlayer(Visit visit, Form form, String field) {
        return form.must(
                field,
                form.read(field, "form.not-a-player", PlayerId::of)
                        .filter(id -> visit.event()
                                .player(id)
                                .filter(player -> player.club().equals(visit.club()))
                                .isPresent()));
    }

    static SelectField squad(Visit visit, String id, String label, Tried tried) {
        return SelectField.of(
                        id,
                        label,
                        visit.words().say("page-captain.choose"),
                        visit.event().squad(visit.club()).stream()
                                .map(player -> Option.of(
                                        player.id().code(),
                                        visit.event().name(player.id()),
                                        tried.value(id, "").equals(player.id().code())))
                                .toList())
                .withError(tried.error(id));
    }

    /** Whether any player was seen in a game, or judged. */
    static boolean isAnythingKnown(Ratings ratings) {
        return ratings.lines().stream()
                .anyMatch(line -> line.judged() || line.seen().games() > 0);
    }

    private static Screen screen(Visit visit, Tried tried) {
        Words words = visit.words();
        ClubNotes notes = visit.hall().ledger().privateOf(visit.club());
        SquadPictures pictures =
                new SquadPictures(visit, visit.ask(ClubAnswers::new).ratings());
        return Screen.of(
                "squad",
                words.say("page-captain.my-squad", "club", visit.event().clubName(visit.club())),
                new SquadView(
                        tried.refusal(),
                        pictures.form(),
                        pictures.pairs(),
                        SquadRating.view(visit, notes.forms(), tried),
                        notes(visit, notes, tried),
                        ways(visit),
                        Cautions.with(
                                List.of(
                                        words.say("page-captain.for-your-club-alone"),
                                        words.say("page-captain.describes-past-games")),
                                visit.event())));
    }

    private static SquadView.Notes notes(Visit visit, ClubNotes notes, Tried tried) {
        PairNotes pairs = new PairNotes(visit);
        return new SquadView.Notes(
                visit.words()
                        .say(
                                "page-captain.pairs-noted",
                                "count",
                                notes.chemistry().size()),
                pairs.lines(notes.chemistry().values()),
                pairs.form(tried),
                HalfLifeForm.said(visit.words(), notes.halfLife()),
                HalfLifeForm.of(visit.words(), notes.halfLife(), tried),
                forget(visit, tried));
    }

    private static List<SquadView.Way> ways(Visit visit) {
        Words words = visit.words();
        return List.of(
                new SquadView.Way(
                        new NavLink("/captain/past", words.say("frame.go.past"), false),
                        words.say(
                                "page-captain.games-of-your-own",
                                "count",
                                visit.hall().ledger().pastGamesOf(visit.club()).size())),
                new SquadView.Way(
                        new NavLink("/captain/film", words.say("frame.go.film"), false),
                        words.say(
                                "page-captain.games-on-film",
                                "count",
                                visit.hall().ledger().filmsOf(visit.club()).size())),
                new SquadView.Way(
                        new NavLink("/captain/rota", words.say("frame.go.rota"), false),
                        words.say("page-captain.whom-to-try-next")));
    }

    private static ActionForm forget(Visit visit, Tried tried) {
        Words words = visit.words();
        return ActionForm.of("forget", FORGET, "", Button.stop(words.say("page-captain.delete-it")))
                .saying(words.say("page-captain.at-the-players-wish-form"))
                .asking(
                        squad(visit, "forget-player", words.say("page-captain.player"), tried),
                        new ChoiceList(
                                "forget-film",
                                words.say("page-captain.film"),
                                "",
                                tried.error("forget-film"),
                                true,
                                List.of(Option.of("yes", words.say("page-captain.delete-the-notes-of-every"), false))));
    }
}
