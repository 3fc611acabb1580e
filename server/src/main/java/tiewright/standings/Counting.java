package tiewright.standings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.WalkoverScore;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/**
 * Which clubs have a row, which ties count and how, and which are still to come.
 *
 * <p>Only finished ties count, with all their rubbers, so that every club's sums are over whole ties. A withdrawal
 * treats the club's unfinished ties: annul takes out all its ties and its row; keep leaves the unfinished ones out; award
 * gives every rubber not yet decided to the other club, as any walkover counts, the decider too where it is needed. Of two clubs
 * that withdrew, an annulled one takes the tie out, else a kept one leaves it out, else both have lost it.
 */
final class Counting {
    private final TableInput input;
    private final TieShape shape;
    private final TieCounter counter;
    private final List<ClubId> clubs;
    private final List<CountedTie> counted = new ArrayList<>();
    private final List<TieScore> open = new ArrayList<>();

    private Counting(TableInput input) {
        this.input = input;
        this.shape = input.rules().shape();
        this.clubs = input.clubs().stream()
                .filter(club -> !treatment(club).equals(Optional.of(Treatment.ANNUL)))
                .toList();
        this.counter = new TieCounter(clubs, input.rules());
    }

    static Counting of(TableInput input) {
        Counting counting = new Counting(input);
        Set<ClubId> in = Set.copyOf(counting.clubs);
        input.ties().stream()
                .filter(tie -> in.contains(tie.home()) && in.contains(tie.away()))
                .forEach(counting::add);
        return counting;
    }

    /** The clubs with a row, in the order of the entries; counted ties name them by their position here. */
    List<ClubId> clubs() {
        return clubs;
    }

    List<CountedTie> counted() {
        return counted;
    }

    /** The ties that both clubs can still finish. */
    List<TieScore> open() {
        return open;
    }

    private void add(TieScore tie) {
        Optional<Treatment> home = treatment(tie.home());
        Optional<Treatment> away = treatment(tie.away());
        boolean kept = home.equals(Optional.of(Treatment.KEEP)) || away.equals(Optional.of(Treatment.KEEP));
        if (tie.finished()) {
            counted.add(counter.count(tie));
        } else if (home.isEmpty() && away.isEmpty()) {
            open.add(tie);
        } else if (home.isPresent() && away.isPresent() && !kept) {
            counted.add(counter.lostByBoth(tie));
        } else if (!kept) {
            counted.add(counter.count(awarded(tie, home.isPresent() ? Side.AWAY : Side.HOME)));
        }
    }

    private Optional<Treatment> treatment(ClubId club) {
        return Optional.ofNullable(input.withdrawals().get(club));
    }

    /** The tie as it counts when the other side withdrew: what was decided stands, the rest goes to {@code winner}. */
    private TieScore awarded(TieScore tie, Side winner) {
        List<RubberScore> rubbers = new ArrayList<>(tie.rubbers());
        for (int number = 1; number <= shape.rubbers(); number++) {
            RubberNo rubber = RubberNo.of(number);
            if (rubbers.stream().noneMatch(score -> score.rubber().equals(rubber))) {
                rubbers.add(walkover(rubber, winner));
            }
        }
        TieScore full = tie.with(rubbers, true);
        if (shape.decider().isPresent() && full.winner().isEmpty()) {
            rubbers.add(walkover(RubberNo.DECIDER, winner));
        }
        return tie.with(rubbers, true);
    }

    private RubberScore walkover(RubberNo rubber, Side winner) {
        How how = winner == Side.HOME ? How.WALKOVER_AWAY : How.WALKOVER_HOME;
        if (input.rules().walkover() == WalkoverScore.NOTHING) {
            return new RubberScore(rubber, List.of(Score.of(0, 0)), how);
        }
        Games kind = shape.games(rubber);
        Score game = winner == Side.HOME ? Score.of(kind.target(), 0) : Score.of(0, kind.target());
        return new RubberScore(rubber, Collections.nCopies(kind.toWin(), game), how);
    }
}
