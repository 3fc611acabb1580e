package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.film.Ending;
import tiewright.film.FilmGame;
import tiewright.film.RallyNote;
import tiewright.film.Start;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class EvidenceTest {
    private static final Pair ONE = Pair.of("N1", "N2");
    private static final Pair TWO = Pair.of("S1", "S2");

    /** Side one serves first; each letter is the side that won a rally. */
    private static FilmedGame film(
            Optional<String> tie, Optional<String> rubber, Optional<Score> card, Format format, String winners) {
        List<RallyNote> rallies = new ArrayList<>();
        for (char winner : winners.toCharArray()) {
            rallies.add(RallyNote.of(rallies.size() + 1, Ending.EARNED, winner == 'A' ? ONE.first() : TWO.first()));
        }
        Start start = new Start(format, ONE.first(), ONE.first(), ONE.second(), TWO.first(), TWO.second());
        return new FilmGame("g", tie.map(TieId::of), rubber.flatMap(RubberNo::parse), start, card, rallies).counted();
    }

    private static FilmedGame film(String winners) {
        return film(Optional.empty(), Optional.empty(), Optional.empty(), Format.sideOut(11), winners);
    }

    private static PrivateNote.PastGame past(String date, int home, int away) {
        return new PrivateNote.PastGame(
                LocalDate.parse(date),
                "N1",
                "N2",
                "S1",
                "S2",
                Score.of(home, away),
                Format.sideOut(11),
                Optional.empty());
    }

    @Test
    void a_game_of_today_on_card_and_on_film_counts_once() {
        Event event = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-2", "11-3")
                .card("A1", "3", "5-9", How.RETIRED_HOME)
                .event();
        assertThat(Evidence.of(event, Earlier.of(List.of()), Ageing.none()).games())
                .hasSize(2);
        for (Optional<String> rubber : List.of(Optional.of("1"), Optional.<String>empty())) {
            FilmedGame film = film(Optional.of("A1"), rubber, Optional.empty(), Format.sideOut(11), "AAB");
            Evidence evidence = Evidence.of(event, new Earlier(List.of(), List.of(film)), Ageing.none());
            assertThat(evidence.games())
                    .singleElement()
                    .satisfies(game -> assertThat(game.score()).isEqualTo(Score.of(11, 3)));
            assertThat(evidence.films())
                    .singleElement()
                    .satisfies(one -> assertThat(one.played()).contains(Days.DATE));
        }
    }

    @Test
    void a_film_without_a_single_rally_leaves_the_card_alone() {
        Event event = Days.oneTie().opened("A1").cards("A1", "11-2").event();
        FilmedGame film = film(Optional.of("A1"), Optional.of("1"), Optional.empty(), Format.sideOut(11), "");
        Evidence evidence = Evidence.of(event, new Earlier(List.of(), List.of(film)), Ageing.none());
        assertThat(evidence.games()).hasSize(1);
        assertThat(evidence.films()).isEmpty();
    }

    @Test
    void the_filmed_game_of_a_rubber_of_several_is_the_one_with_its_score() {
        Event event = Days.oneTie()
                .with(Setting.BEST_OF, "3")
                .opened("A1")
                .card("A1", "1", "11-2 7-11 11-9")
                .event();
        FilmedGame film =
                film(Optional.of("A1"), Optional.of("1"), Optional.of(Score.of(7, 11)), Format.sideOut(11), "ABAB");
        assertThat(Evidence.of(event, new Earlier(List.of(), List.of(film)), Ageing.none())
                        .games())
                .extracting(PastGame::score)
                .containsExactly(Score.of(11, 2), Score.of(11, 9));
    }

    @Test
    void an_earlier_game_on_film_counts_once_and_gives_the_film_its_day() {
        FilmedGame film =
                film(Optional.empty(), Optional.empty(), Optional.of(Score.of(11, 4)), Format.sideOut(11), "AAB");
        Evidence evidence = Evidence.of(
                Days.oneTie().event(),
                new Earlier(List.of(past("2026-05-02", 11, 4), past("2026-05-03", 11, 5)), List.of(film)),
                Ageing.none());
        assertThat(evidence.games()).extracting(PastGame::date).containsExactly(LocalDate.parse("2026-05-03"));
        assertThat(evidence.films())
                .singleElement()
                .satisfies(one -> assertThat(one.played()).contains(LocalDate.parse("2026-05-02")));
    }

    @Test
    void a_game_that_a_club_keeps_and_everybody_knows_counts_once() {
        PrivateNote.PastGame common = past("2026-05-02", 11, 4);
        PrivateNote.PastGame turned = new PrivateNote.PastGame(
                common.date(), "S2", "S1", "N2", "N1", Score.of(4, 11), Format.rally(11), Optional.empty());
        PrivateNote.PastGame more = past("2026-05-03", 11, 5);
        Event event = Days.oneTie().event();
        Evidence evidence =
                Evidence.of(event, Earlier.of(List.of(common), List.of(turned, more), List.of()), Ageing.none());
        assertThat(evidence.earlier()).extracting(PastGame::score).containsExactly(Score.of(11, 4), Score.of(11, 5));
        assertThat(evidence).isEqualTo(Evidence.of(event, Earlier.of(List.of(common, more)), Ageing.none()));
        Evidence twice =
                Evidence.of(event, Earlier.of(List.of(common), List.of(turned, turned), List.of()), Ageing.none());
        assertThat(twice.earlier()).as("two alike on one list are two games").hasSize(2);
    }

    @Test
    void an_earlier_game_that_is_one_of_the_day_counts_once_by_its_card_or_film() {
        Event event = Days.oneTie().opened("A1").cards("A1", "11-2", "11-3").event();
        List<PrivateNote.PastGame> own = List.of(
                past(Days.DATE.toString(), 11, 2), past(Days.DATE.toString(), 11, 9), past("2026-05-02", 11, 2));
        Evidence evidence = Evidence.of(event, Earlier.of(own), Ageing.none());
        assertThat(evidence.cards()).extracting(PastGame::score).containsExactly(Score.of(11, 2), Score.of(11, 3));
        assertThat(evidence.earlier()).extracting(PastGame::score).containsExactly(Score.of(11, 9), Score.of(11, 2));
        FilmedGame film =
                film(Optional.of("A1"), Optional.of("1"), Optional.of(Score.of(11, 2)), Format.sideOut(11), "AAB");
        Evidence filmed = Evidence.of(event, Earlier.of(List.of(), own, List.of(film)), Ageing.none());
        assertThat(filmed.basis()).isEqualTo(new Basis(1, 2, 1, 3));
        Evidence withoutCard = Evidence.of(
                Days.oneTie().opened("A1").event(), Earlier.of(List.of(), own, List.of(film)), Ageing.none());
        assertThat(withoutCard.basis())
                .as("the film of a rubber whose card is not in")
                .isEqualTo(new Basis(0, 2, 1, 3));
    }

    @Test
    void what_everybody_knows_is_the_common_list_and_the_cards_of_the_day_each_once() {
        Event event = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-2", "11-3")
                .card("A1", "3", "5-9", How.RETIRED_HOME)
                .event();
        List<PrivateNote.PastGame> common = List.of(past(Days.DATE.toString(), 11, 2), past("2026-05-02", 11, 2));
        assertThat(Earlier.known(event, common))
                .hasSize(3)
                .contains(tiewright.event.SameGame.of(common.get(0)), tiewright.event.SameGame.of(common.get(1)));
    }

    /** Two games, one of them a half-life old, against the same counted one and a half times: the mode of a normal posterior. */
    @Test
    void a_game_counts_half_after_each_half_life() {
        assertThat(new Ageing(Days.DATE, OptionalInt.of(30)).weight(Days.DATE.minusDays(60)))
                .isEqualTo(0.25);
        assertThat(new Ageing(Days.DATE, OptionalInt.of(30)).weight(Days.DATE.plusDays(5)))
                .isEqualTo(1);
        assertThat(Ageing.none().weight(LocalDate.of(1990, 1, 1))).isEqualTo(1);
        Event event = Days.oneTie().event();
        String day = Days.DATE.minusDays(100).toString();
        List<PrivateNote.PastGame> two = List.of(past(day, 11, 2), past(day, 11, 2));
        Estimate once = form(Evidence.of(event, Earlier.of(List.of(past(day, 11, 2))), Ageing.none()));
        Estimate twiceHalf = form(Evidence.of(event, Earlier.of(two), Evidence.ageing(event, OptionalInt.of(100))));
        assertThat(twiceHalf.mean()).isCloseTo(once.mean(), within(1e-6));
        assertThat(twiceHalf.sd()).isCloseTo(once.sd(), within(1e-6));
        FilmedGame film = film("AAABAAABAB");
        Estimate whole = form(new Evidence(List.of(), List.of(film.on(Days.DATE)), Ageing.none()));
        Estimate halves = form(new Evidence(
                List.of(),
                List.of(film.on(Days.DATE.minusDays(7)), film.on(Days.DATE.minusDays(7))),
                new Ageing(Days.DATE, OptionalInt.of(7))));
        assertThat(halves.mean()).isCloseTo(whole.mean(), within(1e-9));
    }

    private static Estimate form(Evidence evidence) {
        return Rating.fit(Prior.none(), evidence).form(PlayerId.of("N1"));
    }

    @Test
    void a_half_life_is_a_whole_number_of_days() {
        assertThatThrownBy(() -> new Ageing(Days.DATE, OptionalInt.of(0))).isInstanceOf(IllegalArgumentException.class);
        assertThat(Ageing.isHalfLife(36500)).isTrue();
        assertThat(Ageing.isHalfLife(36501)).isFalse();
    }
}
