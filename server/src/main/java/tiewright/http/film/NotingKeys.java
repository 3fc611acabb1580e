package tiewright.http.film;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import tiewright.event.VisibleEvent;
import tiewright.film.RallyKey;
import tiewright.http.views.NotingView;
import tiewright.http.visit.Visit;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

/** The keys with which a rally is noted, and what each of them says. */
final class NotingKeys {
    private final VisibleEvent event;
    private final FilmWords words;

    NotingKeys(Visit visit) {
        this.event = visit.event();
        this.words = new FilmWords(visit.words());
    }

    NotingView.Pad of(NotedGame noted) {
        return new NotingView.Pad(endings(), players(noted), keys());
    }

    private List<NotingView.Key> endings() {
        return Arrays.stream(RallyKey.values())
                .filter(key -> key.note() == RallyKey.Note.ENDING)
                .map(key -> new NotingView.Key(Character.toString(key.key()), words.ending(key)))
                .toList();
    }

    private List<NotingView.Group> keys() {
        return List.of(
                group(Words.of(event).say("page-film.how-it-ended"), true, RallyKey.Note.ENDING, RallyKey.Note.WHERE),
                group(
                        Words.of(event).say("page-film.first-balls"),
                        false,
                        RallyKey.Note.SERVE,
                        RallyKey.Note.RETURN,
                        RallyKey.Note.THIRD),
                group(
                        Words.of(event).say("page-film.pair-play-calls-breaks"),
                        false,
                        RallyKey.Note.SIGNAL,
                        RallyKey.Note.CALL,
                        RallyKey.Note.CALL_END,
                        RallyKey.Note.MARK,
                        RallyKey.Note.SERVER));
    }

    private NotingView.Group group(String title, boolean isFirst, RallyKey.Note... notes) {
        return new NotingView.Group(
                title,
                isFirst,
                Arrays.stream(RallyKey.values())
                        .filter(key -> List.of(notes).contains(key.note()))
                        .map(key -> new NotingView.Key(Character.toString(key.key()), words.key(key)))
                        .toList());
    }

    private List<NotingView.Key> players(NotedGame noted) {
        Function<Integer, String> name = number -> noted.game()
                .map(game -> event.name(game.start().players().get(number - 1)))
                .orElse(Words.of(event).say("page-film.player", "value", number));
        return IntStream.rangeClosed(1, 4)
                .mapToObj(number -> new NotingView.Key("" + number, name.apply(number)))
                .toList();
    }
}
