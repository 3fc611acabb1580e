package tiewright.http.film;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.film.CardCheck;
import tiewright.film.Ending;
import tiewright.film.FilmTotal;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.AskedView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.scoring.Share;
import tiewright.wording.FilmWords;

/** What all film notes of a club come to. For that club's captain alone. */
final class FilmCountsPage implements Page {
    static final String COUNTS = FilmPage.PATH + "/counts";

    static NavLink back(Visit visit) {
        return new NavLink(FilmPage.PATH, visit.say("page-film.back-to-the-film-notes"), false);
    }

    static String small(Visit visit) {
        return visit.say("page-film.small-samples-own-first");
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, COUNTS, visit -> visit.show(counts(visit)));
    }

    static List<CardCheck> games(Visit visit) {
        return visit.ask(ClubAnswers::new).films().stream()
                .map(game -> visit.ask(ClubAnswers::new).checked(game.film()))
                .toList();
    }

    private static Screen counts(Visit visit) {
        List<PlayerId> squad =
                visit.event().squad(visit.club()).stream().map(Player::id).toList();
        Map<List<PlayerId>, List<FilmTotal>> totals = FilmTotal.of(games(visit), squad::contains).stream()
                .collect(Collectors.groupingBy(FilmTotal::who, LinkedHashMap::new, Collectors.toList()));
        List<WorkView.Section> sections = new ArrayList<>();
        totals.forEach((who, of) -> sections.add(section(visit, who, of)));
        if (sections.isEmpty()) {
            sections.add(WorkView.Section.of("none", "", visit.say("page-film.counts-stand-here-once-a")));
        }
        return Screen.of(
                "asked",
                visit.say(
                        "page-film.what-film-says-so-far", "club", visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        back(visit),
                        List.of(small(visit), visit.say("page-film.what-a-range-holds")),
                        Optional.empty(),
                        true,
                        sections));
    }

    /** Of one player or pair; nobody is ranked. */
    private static WorkView.Section section(Visit visit, List<PlayerId> who, List<FilmTotal> totals) {
        List<ReasonTable.Row> rows = rows(visit, totals);
        String id = "film-" + who.stream().map(PlayerId::code).collect(Collectors.joining("-"));
        String caption = visit.say(
                "page-film.who-in-games",
                "who",
                who.stream().map(visit.event()::name).toList(),
                "games",
                totals.get(0).games());
        return WorkView.Section.of(id, "")
                .folded(folded(visit, caption, totals.get(0)))
                .with(new ReasonTable(
                        id + "-table",
                        caption,
                        List.of(
                                new Column(visit.say("page-film.what"), false),
                                new Column(visit.say("page-film.how-many"), true),
                                new Column(visit.say("page-film.of-100"), true)),
                        rows,
                        ""));
    }

    private static String folded(Visit visit, String caption, FilmTotal first) {
        return visit.say(
                "page-film.fold-of-counts",
                "caption",
                caption,
                "measure",
                new FilmWords(visit.words()).measure(first.measure()),
                "value",
                first.value(),
                "outOf",
                first.outOf());
    }

    private static List<ReasonTable.Row> rows(Visit visit, List<FilmTotal> totals) {
        FilmWords words = new FilmWords(visit.words());
        return totals.stream()
                .map(total -> new ReasonTable.Row(
                        List.of(
                                Cell.of(words.measure(total.measure())),
                                new Cell(
                                        visit.say("page-film.of-2", "value", total.value(), "outOf", total.outOf()),
                                        href(total)),
                                Cell.of(total.share()
                                        .map(share -> said(visit, share))
                                        .orElse(visit.say("page-film.not-enough-film")))),
                        visit.say("page-film.what-it-is-worth"),
                        words.sentences(total),
                        ""))
                .toList();
    }

    private static String said(Visit visit, Share share) {
        return visit.say(
                "page-film.share",
                "value",
                Math.round(100 * share.value()),
                "low",
                Math.round(100 * share.low()),
                "high",
                Math.round(100 * share.high()));
    }

    /** To the rallies themselves, where they can be looked for. */
    private static String href(FilmTotal total) {
        Optional<Ending> ending = Ending.parse(total.measure().code());
        return ending.map(how -> ClipsPage.of(total.who().get(0), how)).orElse("");
    }
}
