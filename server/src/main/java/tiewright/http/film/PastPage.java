package tiewright.http.film;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.event.KeptGame;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Refusal;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PastNotes;
import tiewright.plainfiles.PlainFile;
import tiewright.rating.GivePastGames;
import tiewright.rating.TakeBackPastGames;

/** A captain gives earlier games that only the own club knows, and takes them back. In no other page, plain export or log. */
final class PastPage implements Page {
    static final String PATH = "/captain/past";

    private static final PlainFile FILE = PlainFile.PAST_RESULTS;

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.NOTES,
                PATH,
                visit -> visit.show(screen(visit, GivenText.nothing(FILE), List.of(), Tried.NOTHING)));
        routes.postInParts(Door.NOTES, PATH, PastPage::give);
        routes.post(Door.NOTES, OneGame.PATH, PastPage::one);
        routes.post(Door.NOTES, PATH + "/take-back", PastPage::takeBack);
        routes.get(
                Door.NOTES,
                PATH + "/" + FILE.fileName(),
                visit -> visit.ctx()
                        .contentType("text/csv; charset=utf-8")
                        .header("Content-Disposition", "attachment; filename=\"" + FILE.fileName() + "\"")
                        .result(PastNotes.file(games(kept(visit)))));
    }

    /** Everything that was given is kept, or nothing; what is kept already is not kept twice. */
    private static void give(Visit visit) {
        Form form = visit.form();
        GivenText given = GivenText.of(visit.ctx(), form, FILE);
        PastNotes notes = PastNotes.read(given.text());
        given.refusal(notes.faults()).ifPresent(form::fault);
        visit.note(
                form,
                () -> new GivePastGames(notes.games()),
                PATH,
                tried -> screen(visit, given, notes.faults(), tried));
    }

    private static void one(Visit visit) {
        Form form = visit.form();
        Optional<PastGame> game = new OneGame(visit).read(form);
        visit.note(
                form,
                () -> new GivePastGames(game.stream().toList()),
                PATH,
                tried -> screen(visit, GivenText.nothing(FILE), List.of(), tried));
    }

    /** The ticked games; all of them only when that was ticked. */
    private static void takeBack(Visit visit) {
        Form form = visit.form();
        Set<Integer> ticked = form.texts(PastViews.GAME).stream()
                .filter(text -> text.matches("[0-9]{1,9}"))
                .map(Integer::valueOf)
                .collect(Collectors.toSet());
        boolean all = form.isTicked(PastViews.ALL);
        if (!all && ticked.isEmpty()) {
            form.fault(Refusal.of("form.missing").at(form.wasAsked(PastViews.EVERY) ? PastViews.ALL : PastViews.GAME));
        }
        visit.note(
                form,
                () -> new TakeBackPastGames(all ? Optional.empty() : Optional.of(ticked)),
                PATH,
                tried -> screen(visit, GivenText.nothing(FILE), List.of(), tried));
    }

    private static List<KeptGame> kept(Visit visit) {
        return visit.hall().ledger().pastGamesOf(visit.club());
    }

    private static List<PastGame> games(List<KeptGame> kept) {
        return kept.stream().map(KeptGame::game).toList();
    }

    private static Screen screen(Visit visit, GivenText given, List<FolderFault> faults, Tried tried) {
        return Screen.of(
                "past",
                visit.words()
                        .say("page-film.earlier-games", "club", visit.event().clubName(visit.club())),
                new PastViews(visit.event(), visit.ask(ClubAnswers::new).pastGames())
                        .page(new OneGame(visit).form(tried), given.field(faults, visit.words()), tried));
    }
}
