package tiewright.lineup.tie;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import tiewright.conditions.Plays;
import tiewright.conditions.TieRubbers;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;
import tiewright.sheet.Fillable;

/** Which rubbers our sheet fills, and who may stand in each. Rubbers count from 0. */
public final class Seating {
    private final TieRubbers rubbers;
    private final Squad squad;
    private final SortedSet<Integer> filled;

    Seating(LineupProblem problem) {
        this.rubbers = problem.rules().each();
        this.squad = problem.ours();
        List<Optional<Plays>> plays =
                squad.present().stream().map(Squad.Member::plays).toList();
        this.filled = Fillable.of(plays, problem.rules().mostPerPlayer(), rubbers);
    }

    /** How many rubbers a sheet fills. */
    public int count() {
        return filled.size();
    }

    boolean fills(int rubber) {
        return filled.contains(rubber + 1);
    }

    /** The first rubber of the same kind. */
    int top(int rubber) {
        return rubbers.top(rubber + 1) - 1;
    }

    /** The next filled rubber of the same kind above; below 0 = none. */
    int above(int rubber) {
        int above = rubber - 1;
        while (above >= 0 && !(fills(above) && top(above) == top(rubber))) {
            above--;
        }
        return above;
    }

    boolean admits(int rubber, Pair pair) {
        return rubbers.kinds().of(rubber + 1).admits(plays(pair.first()), plays(pair.second()));
    }

    private Optional<Plays> plays(PlayerId player) {
        return squad.member(player).flatMap(Squad.Member::plays);
    }
}
