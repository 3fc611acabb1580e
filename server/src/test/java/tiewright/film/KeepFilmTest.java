package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Notes.captain;
import static tiewright.event.Notes.films;
import static tiewright.event.Notes.kept;
import static tiewright.event.Notes.refused;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;

/** Keeping and dropping notes from film. */
class KeepFilmTest {
    private static final ClubId N = ClubId.of("N");
    private static final Event DAY = Days.oneTie().event();

    private static List<FilmKept> games(String... codes) {
        return Arrays.stream(codes)
                .map(code -> new FilmKept(N, code, "about", "more"))
                .toList();
    }

    private static PrivateDecision.Outcome asked(Noted noted, PrivateDecision decision) {
        return decision.decide(DAY, noted, captain("N"));
    }

    @Test
    void whole_files_take_the_place_of_games_of_the_same_code() {
        assertThat(kept(asked(films("N", "g1"), new KeepFilm(games("g1", "g2"), Optional.empty()))))
                .containsExactlyElementsOf(games("g1", "g2"));
    }

    @Test
    void a_typed_game_takes_no_other_games_place_by_mistake() {
        assertThat(refused(asked(films("N", "g1"), new KeepFilm(games("g1"), Optional.of("")))))
                .containsExactly("notes.film-there");
        assertThat(refused(asked(films("N", "g1", "g2"), new KeepFilm(games("g1"), Optional.of("g2")))))
                .containsExactly("notes.film-there");
        assertThat(kept(asked(films("N", "g1"), new KeepFilm(games("g1"), Optional.of("g1")))))
                .hasSize(1);
        assertThat(kept(asked(films("N", "g1"), new KeepFilm(games("g2"), Optional.of("g1")))))
                .hasSize(1);
    }

    @Test
    void no_more_than_so_many_games_are_kept() {
        String[] most = IntStream.range(0, KeepFilm.MOST).mapToObj(i -> "g" + i).toArray(String[]::new);
        assertThat(kept(asked(films("N"), new KeepFilm(games(most), Optional.empty()))))
                .hasSize(KeepFilm.MOST);
        assertThat(kept(asked(films("N", "g0"), new KeepFilm(games(most), Optional.empty()))))
                .hasSize(KeepFilm.MOST);
        assertThat(refused(asked(films("N", "h"), new KeepFilm(games(most), Optional.empty()))))
                .containsExactly("notes.film-too-many");
    }

    @Test
    void games_are_dropped_one_by_one_or_all() {
        assertThat(kept(asked(films("N", "g1", "g2"), new DropFilm(Optional.of("g2")))))
                .containsExactly(new FilmDropped(N, "g2"));
        assertThat(kept(asked(films("N", "g1", "g2"), new DropFilm(Optional.empty()))))
                .containsExactly(new FilmDropped(N, "g1"), new FilmDropped(N, "g2"));
        assertThat(kept(asked(films("N", "g1"), new DropFilm(Optional.of("g9")))))
                .isEmpty();
    }

    @Test
    void film_is_the_own_captains() {
        for (PrivateDecision decision :
                List.of(new KeepFilm(games("g1"), Optional.empty()), new DropFilm(Optional.empty()))) {
            assertThat(refused(decision.decide(DAY, films("N"), captain("S")))).containsExactly("notes.captain-only");
            assertThat(decision.isNeverStale()).isFalse();
        }
        assertThat(new KeepFilm(games("secretgame"), Optional.empty()).toString())
                .doesNotContain("secretgame", "about", "more");
    }
}
