package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import tiewright.event.ClubNotes;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.PairWish;
import tiewright.event.Refusal;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.SquadNotesView;
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
import tiewright.rating.JudgeForm;
import tiewright.rating.JudgePair;
import tiewright.setup.ForgetPlayer;
import tiewright.wording.Words;

/** The captain's own judgement of form and pairs. Private to the club: in no other page, export or log. */
final class SquadNotesPages implements Page {
    private static final String FORGET = "/captain/squad/forget";
    private static final List<String> CAUTIONS = List.of(
            "Form is how many rallies in 100 you expect the player to win above an even game: +3 means 53 of 100."
                    + " The doubt is how far you could be wrong in two cases of three.",
            "This is kept for your club alone: no other role, no public page, no plain export shows it.",
            Cautions.OF_ADVICE);

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, "/captain/squad", visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, "/captain/squad/form", SquadNotesPages::form);
        routes.post(Door.NOTES, "/captain/squad/pair", SquadNotesPages::pair);
        routes.post(Door.NOTES, "/captain/squad/half-life", SquadNotesPages::halfLife);
        routes.post(Door.NOTES, FORGET, SquadNotesPages::forget);
    }

    private static void form(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> player = ownPlayer(visit, form, "player");
        String suffix = "-" + form.text("player");
        OptionalDouble value = figure(form, "form" + suffix);
        OptionalDouble doubt = figure(form, "doubt" + suffix);
        note(visit, form, () -> new JudgeForm(player.orElseThrow(), value, doubt));
    }

    private static void pair(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> first = ownPlayer(visit, form, "pair-first");
        Optional<PlayerId> second = ownPlayer(visit, form, "pair-second");
        if (first.isPresent() && first.equals(second)) {
            form.fault(Refusal.of("form.same-player-twice")
                    .with("rubber", visit.words().say("page-captain.a-pair"))
                    .at("pair-second"));
        }
        OptionalDouble extra = figure(form, "pair-extra");
        OptionalDouble doubt = figure(form, "pair-doubt");
        Optional<PairWish> wish =
                switch (form.text("pair-wish")) {
                    case "together" -> Optional.of(PairWish.TOGETHER);
                    case "apart" -> Optional.of(PairWish.APART);
                    default -> Optional.empty();
                };
        note(
                visit,
                form,
                () -> new JudgePair(Pair.of(first.orElseThrow(), second.orElseThrow()), extra.orElse(0), doubt, wish));
    }

    private static void halfLife(Visit visit) {
        Form form = visit.form();
        OptionalInt days = HalfLifeForm.days(form);
        note(visit, form, () -> new ChooseHalfLife(days));
    }

    /** What was noted about one player goes at once; film in which the player was on court too, if that was ticked. */
    private static void forget(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> player = ownPlayer(visit, form, "forget-player");
        visit.forget(
                form,
                () -> new ForgetPlayer(player.orElseThrow(), filmsOf(visit, form, player.orElseThrow())),
                "/captain/squad",
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

    private static ActionForm forget(Visit visit, Tried tried) {
        return ActionForm.of(
                        "forget",
                        FORGET,
                        visit.words().say("page-captain.delete-what-is-noted-about"),
                        Button.stop(visit.words().say("page-captain.delete-it")))
                .saying(visit.words().say("page-captain.at-the-players-wish-form"))
                .asking(
                        squad(visit, "forget-player", visit.words().say("page-captain.player"), tried),
                        new ChoiceList(
                                "forget-film",
                                visit.words().say("page-captain.film"),
                                "",
                                tried.error("forget-film"),
                                true,
                                List.of(Option.of(
                                        "yes", visit.words().say("page-captain.delete-the-notes-of-every"), false))));
    }

    private static void note(Visit visit, Form form, Supplier<PrivateDecision> decision) {
        visit.note(form, decision, "/captain/squad", tried -> screen(visit, tried));
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

    private static OptionalDouble figure(Form form, String field) {
        return form.read(
                        field,
                        "form.not-a-figure",
                        text -> Double.valueOf(text.replace(',', '.').replace("+", "")))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        ClubNotes notes = visit.hall().ledger().privateOf(visit.club());
        List<SquadNotesView.Form> players = new ArrayList<>();
        for (Player player : event.squad(visit.club())) {
            Optional<FormJudged> judged = Optional.ofNullable(notes.forms().get(player.id()));
            players.add(new SquadNotesView.Form(
                    player.id().code(),
                    event.name(player.id()),
                    judged.map(SquadNotesPages::words).orElse(visit.words().say("page-captain.no-judgement-yet")),
                    form(player.id().code(), judged, tried)));
        }
        List<SquadNotesView.PairLine> pairs = notes.chemistry().values().stream()
                .map(note -> new SquadNotesView.PairLine(words(event, note), remove(note.pair())))
                .toList();
        return Screen.of(
                "squadNotes",
                visit.words().say("page-captain.my-squad", "club", event.clubName(visit.club())),
                new SquadNotesView(
                        tried.refusal(),
                        players,
                        pairs,
                        pairForm(visit, tried),
                        HalfLifeForm.of(notes.halfLife(), tried),
                        forget(visit, tried),
                        Cautions.with(CAUTIONS, event)));
    }

    private static String words(FormJudged note) {
        String form =
                note.form().isPresent() ? signed(note.form().getAsDouble()) + " in 100" : "no judgement of the level";
        return form
                + (note.sd().isPresent()
                        ? ", could be wrong by " + figure(note.sd().getAsDouble())
                        : "");
    }

    private static String words(VisibleEvent event, ChemistryJudged note) {
        String wish = note.wish()
                .map(one -> one == PairWish.TOGETHER
                        ? Words.of(event).say("page-captain.should-play-together")
                        : Words.of(event).say("page-captain.should-not-play-together"))
                .orElse("");
        return event.name(note.pair().first()) + " and "
                + event.name(note.pair().second()) + ": " + signed(note.extra()) + " in 100 as a pair"
                + (note.sd().isPresent()
                        ? ", could be wrong by " + figure(note.sd().getAsDouble())
                        : "") + wish;
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + figure(value);
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }

    private static ActionForm form(String player, Optional<FormJudged> judged, Tried tried) {
        String form = "form-" + player;
        String doubt = "doubt-" + player;
        return ActionForm.of("judge-" + player, "/captain/squad/form", "", Button.other("Keep this"))
                .sending("player", player)
                .asking(
                        TextField.of(
                                        form,
                                        TextField.Kind.LINE,
                                        "Form, rallies in 100",
                                        tried.value(
                                                form,
                                                judged.filter(one -> one.form().isPresent())
                                                        .map(one -> figure(
                                                                one.form().getAsDouble()))
                                                        .orElse("")))
                                .withError(tried.error(form)),
                        TextField.of(
                                        doubt,
                                        TextField.Kind.LINE,
                                        "Its doubt",
                                        tried.value(
                                                doubt,
                                                judged.filter(one -> one.sd().isPresent())
                                                        .map(one ->
                                                                figure(one.sd().getAsDouble()))
                                                        .orElse("")))
                                .withError(tried.error(doubt)));
    }

    private static ActionForm remove(Pair pair) {
        return ActionForm.of(
                        "remove-" + pair.first() + "-" + pair.second(),
                        "/captain/squad/pair",
                        "",
                        Button.other("Take it back"))
                .sending("pair-first", pair.first().code())
                .sending("pair-second", pair.second().code())
                .sending("pair-extra", "0");
    }

    private static ActionForm pairForm(Visit visit, Tried tried) {
        return ActionForm.of(
                        "pair",
                        "/captain/squad/pair",
                        visit.words().say("page-captain.note-something-about-a-pair"),
                        Button.main(visit.words().say("page-captain.keep-this")))
                .asking(
                        squad(visit, "pair-first", visit.words().say("page-captain.player"), tried),
                        squad(visit, "pair-second", visit.words().say("page-captain.partner"), tried),
                        SelectField.of(
                                "pair-wish",
                                visit.words().say("page-captain.wish"),
                                visit.words().say("page-captain.no-wish-2"),
                                List.of(
                                        Option.of(
                                                "together",
                                                visit.words().say("page-captain.play-them-together"),
                                                tried.value("pair-wish", "").equals("together")),
                                        Option.of(
                                                "apart",
                                                visit.words().say("page-captain.do-not-play-them-together"),
                                                tried.value("pair-wish", "").equals("apart")))))
                .asking(
                        TextField.of(
                                        "pair-extra",
                                        TextField.Kind.LINE,
                                        visit.words().say("page-captain.extra-as-a-pair-rallies"),
                                        tried.value("pair-extra", ""))
                                .withError(tried.error("pair-extra")),
                        TextField.of(
                                        "pair-doubt",
                                        TextField.Kind.LINE,
                                        visit.words().say("page-captain.its-doubt"),
                                        tried.value("pair-doubt", ""))
                                .withError(tried.error("pair-doubt")));
    }

    private static SelectField squad(Visit visit, String id, String label, Tried tried) {
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
}
