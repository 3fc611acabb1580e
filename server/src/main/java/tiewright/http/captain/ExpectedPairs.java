package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.VisibleEvent;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Visit;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.tie.PairGrid;
import tiewright.wording.LineupWords;
import tiewright.wording.Words;

/** Our pairs against those that are expected of the other club: with whom, why, and what each meeting is worth. */
final class ExpectedPairs {
    private final VisibleEvent event;
    private final Words words;
    private final LineupProblem problem;
    private final GivenNames names;

    ExpectedPairs(Visit visit, LineupProblem problem) {
        this.event = visit.event();
        this.words = visit.words();
        this.problem = problem;
        this.names = new GivenNames(
                event,
                event.players().stream()
                        .filter(player -> problem.ours().member(player.id()).isPresent()
                                || problem.theirs().member(player.id()).isPresent())
                        .toList());
    }

    /** Empty where nobody of the other club is known by name, or no pair of ours stands. */
    Optional<ProposalView.Fold> fold(Sheet sheet) {
        PairGrid grid = PairGrid.of(problem, sheet);
        boolean known = grid.theirs().stream().allMatch(pair -> isKnown(pair.first()) && isKnown(pair.second()));
        return grid.ours().isEmpty() || grid.theirs().isEmpty() || !known
                ? Optional.empty()
                : Optional.of(
                        ProposalView.Fold.of(words.say("page-captain.against-expected"), range(grid), List.of(why()))
                                .with(view(grid)));
    }

    private boolean isKnown(PlayerId player) {
        return event.player(player).isPresent();
    }

    private String range(PairGrid grid) {
        List<Double> all =
                grid.chances().stream().flatMap(List::stream).sorted().toList();
        return words.say(
                "page-captain.from-to",
                "low",
                LineupWords.whole(all.get(0)),
                "high",
                LineupWords.whole(all.get(all.size() - 1)));
    }

    private String why() {
        return words.say(
                problem.belief().sheets().size() == 1
                        ? "page-captain.expected-straight"
                        : "page-captain.expected-in-any-order");
    }

    private ProposalView.Grid view(PairGrid grid) {
        List<ProposalView.GridRow> rows = new ArrayList<>();
        for (int row = 0; row < grid.ours().size(); row++) {
            rows.add(new ProposalView.GridRow(
                    two(grid.ours().get(row)),
                    grid.chances().get(row).stream().map(LineupWords::whole).toList()));
        }
        return new ProposalView.Grid(
                words.say("page-captain.grid-caption"),
                grid.theirs().stream().map(this::two).toList(),
                rows);
    }

    private List<String> two(Pair pair) {
        return pair.players().stream().map(names::of).toList();
    }
}
