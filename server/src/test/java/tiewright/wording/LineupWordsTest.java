package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.TieRubbers;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.Reason;
import tiewright.lineup.Squad;
import tiewright.lineup.TieRules;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.lineup.tie.Proposal;
import tiewright.lineup.tie.Proposals;
import tiewright.rating.Basis;
import tiewright.rating.Prior;
import tiewright.rating.Rating;
import tiewright.scoring.Format;

class LineupWordsTest {
    private static final LineupWords WORDS = LineupWords.ofCodes();

    private static Squad squad(String club, int players, int present) {
        return new Squad(IntStream.rangeClosed(1, players)
                .mapToObj(i -> new Squad.Member(PlayerId.of(club + i), OptionalInt.of(i), i <= present))
                .toList());
    }

    private static LineupProblem problem(Squad ours, int theirs, DeciderKind decider, LineupProblem.Against against) {
        TieRules rules = new TieRules(
                TieRubbers.alike(4), 1, OrderOfStrength.NONE, Format.sideOut(11), 1, decider, Format.sideOut(11), 0);
        return LineupProblem.of(
                rules, ours, squad("b", theirs, theirs), Rating.fit(Prior.none(), List.of()), against, 1);
    }

    private static List<String> said(LineupProblem problem) {
        List<Reason> reasons = new ArrayList<>();
        Proposal proposal = Proposals.propose(problem, Budget.ofSteps(50, 1));
        switch (proposal.kind()) {
            case PROPOSED -> {
                Proposal.Proposed proposed = (Proposal.Proposed) proposal;
                proposed.sheets().forEach(sheet -> reasons.addAll(sheet.reasons()));
                reasons.addAll(proposed.notes());
            }
            case IMPOSSIBLE -> reasons.addAll(((Proposal.Impossible) proposal).reasons());
        }
        return reasons.stream().map(WORDS::sentence).toList();
    }

    @Test
    void what_it_rests_on_is_told_apart_in_games_and_rallies() {
        assertThat(WORDS.restsOn(new Basis(12, 40, 3, 96)))
                .isEqualTo(
                        "It rests on what was noted about the squad, on 12 games of today's cards, 40 earlier games and 96 rallies on film of 3 games."
                                + " A game that is known twice counts once.");
        assertThat(WORDS.restsOn(new Basis(1, 1, 1, 1)))
                .contains("on 1 game of today's cards, 1 earlier game and 1 rally on film of 1 game.");
        assertThat(WORDS.restsOn(new Basis(0, 0, 0, 0))).contains("on no card of today, no earlier game and no film.");
    }

    @Test
    void a_short_squad_with_absentees_hears_what_that_costs() {
        assertThat(said(problem(squad("a", 8, 6), 8, DeciderKind.ANY_TWO, LineupProblem.Against.STRAIGHT)
                        .atBestGuess()))
                .contains(
                        "Rubber 4: nobody left to name, so it goes to the other club.",
                        "Too few players for 1 of the rubbers. With an even pair in each of them the chance would be 18.8 points higher.",
                        "Being without a7, a8 costs 18.8 points.",
                        "If it may come to a decider, keep these fresh: a1, a2.");
    }

    @Test
    void wishes_hear_their_price_and_contradictions_their_names() {
        LineupProblem free = problem(squad("a", 10, 9), 8, DeciderKind.NONE, LineupProblem.Against.UNKNOWN);
        assertThat(said(free.wishing(
                                Wish.apart(Pair.of("a1", "a2")),
                                Wish.together(Pair.of("a3", "a10")),
                                Wish.mustRest(PlayerId.of("a9")))
                        .promising(new PlayingTime(1, Map.of()))))
                .contains(
                        "Your wish that a1 and a2 do not play together costs nothing.",
                        "Your wish that a10 and a3 play together does not count: one of the two is not here.")
                .anyMatch(sentence -> sentence.startsWith("Resting: "))
                .anyMatch(sentence -> sentence.equals("Still missing to the 1 promised to everybody: 1."));
        assertThat(said(free.wishing(Wish.mustPlay(PlayerId.of("a1")), Wish.mustRest(PlayerId.of("a1")))))
                .contains("These wishes cannot hold together. Take back one of them:", "a1 plays.", "a1 rests.");
    }

    @Test
    void nobody_and_both_short_have_their_words() {
        assertThat(said(problem(squad("a", 1, 1), 8, DeciderKind.ANY_TWO, LineupProblem.Against.STRAIGHT)))
                .hasSize(1);
        assertThat(said(problem(squad("a", 6, 6), 6, DeciderKind.ANY_TWO, LineupProblem.Against.STRAIGHT)))
                .contains("Rubber 4: neither club is expected to have a pair, so it would not be played.");
        assertThat(said(problem(squad("a", 8, 8), 6, DeciderKind.ANY_TWO, LineupProblem.Against.STRAIGHT)))
                .anyMatch(sentence -> sentence.endsWith("no pair is expected against them."));
    }

    @Test
    void the_decider_speaks_of_doubt_and_of_who_had_to_stop() {
        LineupProblem problem = problem(squad("a", 8, 8), 8, DeciderKind.ANY_TWO, LineupProblem.Against.STRAIGHT);
        DeciderAdvice advice = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of(PlayerId.of("a3")));
        assertThat(advice.notes())
                .extracting(WORDS::sentence)
                .anyMatch(sentence -> sentence.endsWith("choose whoever wants it."))
                .anyMatch(sentence -> sentence.startsWith("a3 had to stop"));
        assertThat(WORDS.verdict(DeciderAdvice.Verdict.EITHER)).isEqualTo("either; choose whoever wants it");
    }
}
