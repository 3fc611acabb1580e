package tiewright.wording;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tiewright.event.Codes;
import tiewright.event.NoteSubject;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;

/** What a club noted, in words; for that club alone. */
public final class NoteWords {
    private final Words words;

    public NoteWords(Words words) {
        this.words = words;
    }

    /** What the note is about. */
    public String about(NoteSubject subject) {
        String key = "notes.about." + subject.kind().name().toLowerCase(Locale.ROOT);
        return switch (subject.kind()) {
            case FORM, PROMISE, HURT ->
                words.sentence(key, Map.of("player", subject.players().get(0)));
            case PAIR ->
                words.sentence(
                        key,
                        Map.of(
                                "first", subject.players().get(0),
                                "second", subject.players().get(1)));
            case WISH ->
                words.sentence(
                        key,
                        Map.of(
                                "player",
                                subject.players().get(0),
                                "tie",
                                subject.what().split(",")[0]));
            case FILM, GAME -> words.sentence(key, Map.of("game", subject.what()));
            case HALF_LIFE -> words.sentence(key, Map.of());
            case FORECAST, PLAYER -> subject.what();
        };
    }

    /** What it says; "nothing" where it says nothing or nothing stands. */
    public String said(Optional<PrivateNote> note) {
        return note.filter(one -> !one.ends())
                .map(this::said)
                .orElseGet(() -> words.sentence("notes.changed.nothing", Map.of()));
    }

    private String said(PrivateNote note) {
        return switch (note.kind()) {
            case FORM_JUDGED -> form((FormJudged) note);
            case CHEMISTRY_JUDGED -> pair((ChemistryJudged) note);
            case PLAYER_WISHED ->
                plain(((PlayerWished) note).wish().orElseThrow() == PlayerWish.PLAY ? "play" : "rest");
            case RUBBERS_PROMISED -> said("promise", Map.of("rubbers", ((RubbersPromised) note).rubbers()));
            case HALF_LIFE_CHOSEN ->
                said("half-life", Map.of("days", ((HalfLifeChosen) note).days().getAsInt()));
            case HURT_MARKED -> plain("hurt");
            case FILM_KEPT ->
                said(
                        "film",
                        Map.of("rallies", ((FilmKept) note).rallies().lines().count() - 1));
            case GAME_GIVEN -> game(((GameGiven) note).game());
            case PERSON_NAMED,
                    TIE_WISH,
                    FORECAST,
                    PLAYER_FORGOTTEN,
                    EVERYTHING_ERASED,
                    SHEET_KEPT,
                    SHEET_DROPPED,
                    FILM_DROPPED,
                    GAME_TAKEN_BACK,
                    PAST_GAME -> throw new IllegalStateException("no page tells two versions of a " + note.kind());
        };
    }

    private String form(FormJudged note) {
        String form = note.form().isPresent()
                ? said("form", Map.of("form", signed(note.form().getAsDouble())))
                : plain("no-form");
        return doubted(form, note.sd());
    }

    private String pair(ChemistryJudged note) {
        String wish = note.wish()
                .map(one -> plain(one == PairWish.TOGETHER ? "together" : "apart"))
                .orElseGet(() -> plain("no-wish"));
        String extra = said("form", Map.of("form", signed(note.extra())));
        return said("pair", Map.of("form", doubted(extra, note.sd()), "wish", wish));
    }

    private String doubted(String form, OptionalDouble doubt) {
        return doubt.isPresent() ? said("doubt", Map.of("form", form, "doubt", figure(doubt.getAsDouble()))) : form;
    }

    private String game(PrivateNote.PastGame game) {
        return said(
                "game",
                Map.of(
                        "date",
                        game.date(),
                        "home",
                        name(game.home1()) + " / " + name(game.home2()),
                        "away",
                        name(game.away1()) + " / " + name(game.away2()),
                        "score",
                        game.score()));
    }

    /** Whoever is a stranger to the event is called as the file does. */
    private String name(String code) {
        return Codes.isCode(code) ? words.said(PlayerId.of(code)) : code;
    }

    private String plain(String key) {
        return said(key, Map.of());
    }

    private String said(String key, Map<String, ?> data) {
        return words.sentence("notes.said." + key, data);
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + figure(value);
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
