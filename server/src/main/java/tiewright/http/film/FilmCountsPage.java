package tiewright.http.film;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.film.CardCheck;
import tiewright.film.Clips;
import tiewright.film.Ending;
import tiewright.film.FilmTotal;
import tiewright.film.RallyKey;
import tiewright.film.Step;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.AskedView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Counted;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Share;
import tiewright.wording.FilmWords;

/** What all film notes of a club come to, and where on film a kind of rally is. For that club's captain alone. */
final class FilmCountsPage implements Page {
    static final String COUNTS = FilmPage.PATH + "/counts";
    static final String CLIPS = FilmPage.PATH + "/find";

    private static final NavLink BACK = new NavLink(FilmPage.PATH, "Back to the film notes", false);
    private static final String SMALL =
            "Small samples. Describes past film, does not judge a person. Players hear of their own counts first; nobody but captains of your club sees this page.";
    private static final String PLAYER = "player";
    private static final String ENDING = "ending";
    private static final String NOTED = "noted";

    @Override
    public void at(Routes routes) {
        routes.get(Door.CAPTAIN, COUNTS, visit -> visit.show(counts(visit)));
        routes.get(Door.CAPTAIN, CLIPS, visit -> visit.show(clips(visit)));
    }

    private static List<CardCheck> games(Visit visit) {
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
            sections.add(WorkView.Section.of("none", "", visit.words().say("page-film.counts-stand-here-once-a")));
        }
        return Screen.of(
                "asked",
                visit.words()
                        .say(
                                "page-film.what-film-says-so-far",
                                "club",
                                visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        BACK,
                        List.of(
                                SMALL,
                                "A range holds the share with a chance of 95 %, if rallies are alike: of twenty ranges one misses by luck alone."),
                        Optional.empty(),
                        visit.words().say("page-film.show-the-counts"),
                        true,
                        sections));
    }

    /** Of one player or pair; nobody is ranked. */
    private static WorkView.Section section(Visit visit, List<PlayerId> who, List<FilmTotal> totals) {
        FilmWords words = new FilmWords(visit.words());
        List<ReasonTable.Row> rows = totals.stream()
                .map(total -> new ReasonTable.Row(
                        List.of(
                                Cell.of(words.measure(total.measure())),
                                new Cell(
                                        visit.words()
                                                .say("page-film.of-2", "value", total.value(), "outOf", total.outOf()),
                                        href(total)),
                                Cell.of(total.share()
                                        .map(FilmCountsPage::said)
                                        .orElse(visit.words().say("page-film.not-enough-film")))),
                        visit.words().say("page-film.what-it-is-worth"),
                        words.sentences(total),
                        false))
                .toList();
        String id = "film-" + who.stream().map(PlayerId::code).collect(Collectors.joining("-"));
        String caption = who.stream().map(visit.event()::name).collect(Collectors.joining(" and ")) + ": "
                + Counted.of(totals.get(0).games(), "game", "games");
        return WorkView.Section.of(id, caption)
                .with(new ReasonTable(
                        id + "-table",
                        caption,
                        List.of(
                                new Column(visit.words().say("page-film.what"), false),
                                new Column(visit.words().say("page-film.how-many"), true),
                                new Column(visit.words().say("page-film.of-100"), true)),
                        rows,
                        ""));
    }

    private static String said(Share share) {
        return Math.round(100 * share.value()) + " (" + Math.round(100 * share.low()) + " to "
                + Math.round(100 * share.high()) + ")";
    }

    /** To the rallies themselves, where they can be looked for. */
    private static String href(FilmTotal total) {
        Optional<Ending> ending = Ending.parse(total.measure().code());
        return ending.map(how -> CLIPS + "?" + PLAYER + "=" + total.who().get(0) + "&" + ENDING + "=" + how.code())
                .orElse("");
    }

    private static Screen clips(Visit visit) {
        Form form = Form.ofQuery(visit.ctx());
        Optional<PlayerId> player = visit.event().players().stream()
                .map(Player::id)
                .filter(one -> one.code().equals(form.text(PLAYER)))
                .findFirst();
        Optional<Ending> ending = Ending.parse(form.text(ENDING));
        Optional<RallyKey> noted = RallyKey.parse(form.text(NOTED));
        boolean isAsked = player.isPresent() || ending.isPresent() || noted.isPresent();
        FilmWords words = new FilmWords(visit.words());
        List<CardCheck> games = games(visit);
        List<PlayerId> seen = games.stream()
                .flatMap(game -> game.game().start().players().stream())
                .distinct()
                .toList();
        Fields fields = Fields.of("", Tried.NOTHING);
        AskedView.Ask ask = new AskedView.Ask(
                CLIPS,
                List.of(
                        fields.select(
                                PLAYER,
                                visit.words().say("page-film.who-ended-the-rally"),
                                visit.words().say("page-film.anybody"),
                                form.text(PLAYER),
                                seen.stream()
                                        .map(one -> Option.of(
                                                one.code(), visit.event().name(one), false))
                                        .toList()),
                        fields.select(
                                ENDING,
                                visit.words().say("page-film.how-it-ended"),
                                visit.words().say("page-film.in-any-way"),
                                form.text(ENDING),
                                keys(words, true)),
                        fields.select(
                                NOTED,
                                visit.words().say("page-film.what-else-is-noted-of"),
                                visit.words().say("page-film.anything"),
                                form.text(NOTED),
                                keys(words, false))),
                Button.main(visit.words().say("page-film.find-the-rallies")));
        return Screen.of(
                "asked",
                visit.words()
                        .say(
                                "page-film.find-rallies-on-film",
                                "club",
                                visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        BACK,
                        List.of(SMALL),
                        Optional.of(ask),
                        isAsked ? visit.words().say("page-film.show-the-rallies") : "",
                        !isAsked,
                        isAsked ? List.of(found(visit, words, games, new Clips(player, ending, noted))) : List.of()));
    }

    private static List<Option> keys(FilmWords words, boolean endings) {
        return Arrays.stream(RallyKey.values())
                .filter(key -> key != RallyKey.SERVER && endings == (key.note() == RallyKey.Note.ENDING))
                .map(key -> Option.of(
                        endings ? key.value() : key.code(), endings ? words.ending(key) : words.key(key), false))
                .toList();
    }

    private static WorkView.Section found(Visit visit, FilmWords words, List<CardCheck> games, Clips clips) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (CardCheck game : games) {
            for (Step step : clips.in(game)) {
                rows.add(ReasonTable.Row.of(List.of(
                        Cell.of(game.game().code()),
                        Cell.of(step.note()
                                .detail()
                                .filmTime()
                                .orElse(visit.words().say("page-film.not-noted"))),
                        Cell.of(words.rally(step)))));
            }
        }
        WorkView.Section section = WorkView.Section.of(
                "found",
                visit.words().say("page-film.found"),
                rows.size() == 1
                        ? visit.words().say("page-film.1-rally")
                        : visit.words().say("page-film.rallies", "rows", rows.size()));
        return rows.isEmpty()
                ? section
                : section.with(new ReasonTable(
                        "found",
                        visit.words().say("page-film.found"),
                        List.of(
                                new Column(visit.words().say("page-film.game"), false),
                                new Column(visit.words().say("page-film.on-film-at"), true),
                                new Column(visit.words().say("page-film.rally"), false)),
                        rows,
                        ""));
    }
}
