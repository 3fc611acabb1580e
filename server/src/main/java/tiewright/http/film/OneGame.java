package tiewright.http.film;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.Player;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Refusal;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;
import tiewright.wording.FormatWords;
import tiewright.wording.Words;

/** One earlier game by a form: two of the own squad, whom they met, and how it ended. */
final class OneGame {
    static final String PATH = PastPage.PATH + "/one";

    private static final List<String> OURS = List.of("one-ours-1", "one-ours-2");
    private static final List<String> THEIRS = List.of("one-theirs-1", "one-theirs-2");
    /** How most games are played; the event's own way stands first. */
    private static final List<String> USUAL =
            List.of("side-out-11", "side-out-15", "side-out-21", "rally-11", "rally-15", "rally-21");

    private static final int LONGEST_NAME = 60;
    private static final int MOST_POINTS = 99;

    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;

    OneGame(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
    }

    /** The game, or nothing after a fault that stands in the form. */
    Optional<PastGame> read(Form form) {
        Optional<LocalDate> date = form.must("one-date", form.date("one-date"));
        List<String> players = players(form);
        Optional<Format> format =
                form.must("one-format", form.read("one-format", "form.not-a-format", OneGame::format));
        OptionalInt ours = points(form, "one-points-ours");
        OptionalInt theirs = points(form, "one-points-theirs");
        if (date.isEmpty() || format.isEmpty() || ours.isEmpty() || theirs.isEmpty() || !form.isClean()) {
            return Optional.empty();
        }
        Score score = Score.of(ours.getAsInt(), theirs.getAsInt());
        Legality.game(format.get(), score)
                .ifPresent(fault -> form.fault(
                        Refusal.of("form.no-such-score").with("why", fault).at("one-points-ours")));
        return Optional.of(new PastGame(
                date.get(),
                players.get(0),
                players.get(1),
                players.get(2),
                players.get(3),
                score,
                format.get(),
                Optional.empty()));
    }

    private static Format format(String code) {
        return Format.parse(code).orElseThrow(() -> new IllegalArgumentException(code));
    }

    private static OptionalInt points(Form form, String field) {
        OptionalInt points = form.mustNumber(field);
        if (points.isPresent() && (points.getAsInt() < 0 || points.getAsInt() > MOST_POINTS)) {
            form.fault(Refusal.of("form.not-a-number")
                    .with("typed", form.text(field))
                    .at(field));
        }
        return points;
    }

    /** By their codes; whoever is a stranger to the event as typed. */
    private List<String> players(Form form) {
        List<String> players = new ArrayList<>();
        for (String field : OURS) {
            players.add(form.mustText(field));
        }
        for (String field : THEIRS) {
            players.add(code(form.mustText(field)));
        }
        for (int i = 1; i < players.size(); i++) {
            if (!players.get(i).isEmpty() && players.subList(0, i).contains(players.get(i))) {
                form.fault(Refusal.of("form.same-player-in-game")
                        .at((i < OURS.size() ? OURS : THEIRS).get(i % OURS.size())));
            }
        }
        return players;
    }

    private String code(String typed) {
        return event.players().stream()
                .map(Player::id)
                .filter(id ->
                        event.name(id).equalsIgnoreCase(typed) || id.code().equals(typed))
                .map(id -> id.code())
                .findFirst()
                .orElse(typed);
    }

    ActionForm form(Tried tried) {
        return ActionForm.of("one", PATH, "", Button.main(words.say("page-film.keep-this-game")))
                .asking(
                        own(OURS.get(0), "page-film.one-of-ours", tried),
                        own(OURS.get(1), "page-film.and-partner", tried),
                        points("one-points-ours", "page-film.our-points", tried),
                        points("one-points-theirs", "page-film.their-points", tried),
                        name(THEIRS.get(0), "page-film.one-of-theirs", tried),
                        name(THEIRS.get(1), "page-film.and-partner", tried),
                        TextField.of(
                                        "one-date",
                                        TextField.Kind.DATE,
                                        words.say("page-film.played-on"),
                                        tried.value("one-date", ""))
                                .withError(tried.error("one-date")),
                        formats(tried));
    }

    private SelectField own(String field, String label, Tried tried) {
        return SelectField.of(
                        field,
                        words.say(label),
                        words.say("page-film.choose"),
                        event.squad(visit.club()).stream()
                                .map(player -> Option.of(
                                        player.id().code(),
                                        event.name(player.id()),
                                        tried.value(field, "")
                                                .equals(player.id().code())))
                                .toList())
                .withError(tried.error(field));
    }

    private TextField name(String field, String label, Tried tried) {
        return TextField.of(field, TextField.Kind.LINE, words.say(label), tried.value(field, ""))
                .withMaxLength(LONGEST_NAME)
                .withError(tried.error(field));
    }

    private TextField points(String field, String label, Tried tried) {
        return TextField.of(field, TextField.Kind.NUMBER, words.say(label), tried.value(field, ""))
                .withError(tried.error(field));
    }

    private SelectField formats(Tried tried) {
        String usual = event.conditions().scoring().code();
        return SelectField.of(
                        "one-format",
                        words.say("page-film.played-to"),
                        "",
                        Stream.concat(Stream.of(usual), USUAL.stream())
                                .distinct()
                                .map(code -> Option.of(
                                        code,
                                        new FormatWords(words).of(format(code)),
                                        tried.value("one-format", usual).equals(code)))
                                .toList())
                .withError(tried.error("one-format"));
    }
}
