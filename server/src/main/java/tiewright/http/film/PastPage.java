package tiewright.http.film;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.GamesGiven;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Refusal;
import tiewright.event.SameGame;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.ledger.KeptGame;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PastNotes;
import tiewright.plainfiles.PlainFile;

/** A captain gives earlier games that only the own club knows, and takes them back. In no other page, plain export or log. */
final class PastPage implements Page {
    static final String PATH = "/captain/past";
    static final int MOST_GAMES = 500;

    private static final PlainFile FILE = PlainFile.PAST_RESULTS;

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.CAPTAIN,
                PATH,
                visit -> visit.show(screen(visit, GivenText.nothing(FILE), List.of(), Tried.NOTHING)));
        routes.postInParts(Door.CAPTAIN, PATH, PastPage::give);
        routes.post(Door.CAPTAIN, PATH + "/take-back", PastPage::takeBack);
        routes.get(
                Door.CAPTAIN,
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
        List<PastGame> kept = games(kept(visit));
        int more = SameGame.beyond(kept.stream().map(SameGame::of).toList(), notes.games(), SameGame::of)
                .size();
        if (kept.size() + more > MOST_GAMES) {
            form.fault(Refusal.of("form.past-too-many").with("most", MOST_GAMES).at(FILE.fileName()));
        }
        if (!form.isClean()) {
            visit.refuse(form, tried -> screen(visit, given, notes.faults(), tried));
            return;
        }
        visit.hall().ledger().note(visit.club(), List.of(new GamesGiven(visit.club(), notes.games())));
        visit.go(PATH);
    }

    /** The ticked games; all of them only when that was ticked. */
    private static void takeBack(Visit visit) {
        Form form = visit.form();
        ClubId club = visit.club();
        List<String> ticked = form.texts(PastViews.GAME);
        List<PrivateNote> back = new ArrayList<>();
        for (KeptGame game : kept(visit)) {
            if (form.isTicked(PastViews.ALL) || ticked.contains(Integer.toString(game.number()))) {
                back.add(new GameTakenBack(club, game.number()));
            }
        }
        if (back.isEmpty()) {
            form.fault(Refusal.of("form.missing").at(form.wasAsked(PastViews.EVERY) ? PastViews.ALL : PastViews.GAME));
            visit.refuse(form, tried -> screen(visit, GivenText.nothing(FILE), List.of(), tried));
            return;
        }
        visit.hall().ledger().note(club, back);
        visit.go(PATH);
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
                visit.event().clubName(visit.club()) + ": earlier games",
                new PastViews(visit.event(), visit.ask(ClubAnswers::new).pastGames()).page(given.field(faults), tried));
    }
}
