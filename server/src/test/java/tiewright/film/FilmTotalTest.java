package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.film.Played.A1;
import static tiewright.film.Played.A2;
import static tiewright.film.Played.B1;
import static tiewright.film.Played.B2;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.Share;

class FilmTotalTest {
    private static final Format LONG = Format.rally(99);
    private static final Set<PlayerId> SQUAD = Set.of(A1, A2);

    private static List<FilmTotal> totals(FilmGame... games) {
        return FilmTotal.of(List.of(games).stream().map(CardCheck::of).toList(), SQUAD::contains);
    }

    private static FilmTotal of(List<FilmTotal> totals, Measure measure, PlayerId... who) {
        return totals.stream()
                .filter(total -> total.measure() == measure && total.who().equals(List.of(who)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void games_add_up_and_only_the_own_squad_is_counted() {
        List<FilmTotal> totals =
                totals(Played.game(LONG, "A".repeat(30) + "B".repeat(10)), Played.game(LONG, "B".repeat(5)));
        FilmTotal won = of(totals, Measure.RALLIES_WON, A1, A2);
        assertThat(won)
                .isEqualTo(new FilmTotal(List.of(A1, A2), Measure.RALLIES_WON, 30, 45, Map.of(Pair.of(B1, B2), 2)));
        assertThat(won.games()).isEqualTo(2);
        assertThat(of(totals, Measure.GAVE, A2).value())
                .as("each rally that B won was given by A2")
                .isEqualTo(15);
        assertThat(totals)
                .noneMatch(total -> total.who().contains(B1) || total.who().contains(B2));
        assertThat(totals).isSortedAccordingTo(java.util.Comparator.comparing(FilmTotal::measure));
    }

    /** R. G. Newcombe, Stat. Med. 17:857 (1998), Table I, method 3 (Wilson): 15 of 148 is .0624 to .1605. */
    @Test
    void the_range_is_that_of_all_rallies_together() {
        List<FilmTotal> totals = totals(
                Played.game(LONG, "B".repeat(9) + "A".repeat(60)), Played.game(LONG, "A".repeat(73) + "B".repeat(6)));
        Share gave = of(totals, Measure.GAVE, A2).share().orElseThrow();
        assertThat(gave).isEqualTo(new Share(15, 148));
        assertThat(gave.low()).isCloseTo(.0624, org.assertj.core.data.Offset.offset(5e-5));
        assertThat(gave.high()).isCloseTo(.1605, org.assertj.core.data.Offset.offset(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"49, NOT_ENOUGH", "50, FIRST_LOOK", "149, FIRST_LOOK", "150, ENOUGH"})
    void a_share_is_said_only_when_there_is_enough_film(int rallies, FilmTotal.Worth worth) {
        FilmTotal gave = of(
                totals(
                        Played.game(LONG, "B".repeat(40)),
                        Played.game(LONG, "B".repeat(9)),
                        Played.game(LONG, "B".repeat((rallies - 49) / 2)),
                        Played.game(LONG, "B".repeat((rallies - 48) / 2))),
                Measure.GAVE,
                A2);
        assertThat(gave.worth()).isEqualTo(worth);
        assertThat(gave.share().isPresent()).isEqualTo(worth != FilmTotal.Worth.NOT_ENOUGH);
    }

    /** With all rallies even, the ranges of independent players' counts hold the truth in about 95 of 100 cases. */
    @Test
    void ranges_hold_what_is_true_in_about_nineteen_of_twenty() {
        int games = 1_000;
        int held = 0;
        for (int round = 0; round < games; round++) {
            Random random = Seed.random(round);
            StringBuilder winners = new StringBuilder();
            IntStream.range(0, 100).forEach(rally -> winners.append(random.nextBoolean() ? 'A' : 'B'));
            Share won = of(totals(Played.game(LONG, winners.toString())), Measure.RALLIES_WON, A1, A2)
                    .share()
                    .orElseThrow();
            held += won.low() <= 0.5 && 0.5 <= won.high() ? 1 : 0;
        }
        assertThat(held).as(Seed.rerun(0)).isBetween(925, 970);
    }

    @Test
    void clips_are_the_rallies_that_are_all_of_what_is_asked() {
        Detail soft = new Detail(
                Optional.of("net"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("soft"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("1:05"));
        List<RallyNote> rallies = new ArrayList<>(List.of(
                RallyNote.of(1, Ending.GAVE, A1).with(soft),
                RallyNote.of(2, Ending.GAVE, A2).with(soft),
                RallyNote.of(3, Ending.GAVE, A1),
                RallyNote.of(4, Ending.EARNED, A1).with(soft),
                RallyNote.of(5, Ending.REPLAY).servedBy(A1)));
        CardCheck game = CardCheck.of(
                new FilmGame("g", Optional.empty(), Optional.empty(), Played.start(LONG), Optional.empty(), rallies));
        Optional<PlayerId> one = Optional.of(A1);
        Optional<Ending> gave = Optional.of(Ending.GAVE);
        Optional<RallyKey> third = Optional.of(RallyKey.THIRD_SOFT);
        assertThat(numbers(new Clips(one, gave, third), game)).containsExactly(1);
        assertThat(numbers(new Clips(one, gave, Optional.empty()), game)).containsExactly(1, 3);
        assertThat(numbers(new Clips(Optional.empty(), Optional.empty(), third), game))
                .containsExactly(1, 2, 4);
        assertThat(numbers(new Clips(Optional.empty(), Optional.empty(), Optional.of(RallyKey.THIRD_HARD)), game))
                .isEmpty();
        assertThat(numbers(new Clips(Optional.empty(), Optional.empty(), Optional.empty()), game))
                .hasSize(5);
    }

    private static List<Integer> numbers(Clips clips, CardCheck game) {
        return clips.in(game).stream().map(step -> step.note().number()).toList();
    }
}
