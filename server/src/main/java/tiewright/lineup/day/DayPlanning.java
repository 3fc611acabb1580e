package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;

/** The plan of a day in the making. */
@PlanningSolution
class DayPlanning {
    @ProblemFactProperty
    @SuppressWarnings("UnusedVariable") // read by OptaPlanner
    private Facts facts;

    @ProblemFactCollectionProperty
    @SuppressWarnings("UnusedVariable") // read by OptaPlanner
    private List<DayPlayer> players;

    @PlanningEntityCollectionProperty
    private List<PlannedTie> ties;

    @PlanningScore
    private @Nullable HardSoftLongScore score;

    @SuppressWarnings("NullAway.Init") // OptaPlanner clones plans through it
    DayPlanning() {}

    /** Begins with the best sheet of each tie by itself, so that a search stopped at once has a plan. */
    DayPlanning(DayProblem day, List<DaySheets> sheets) {
        this.facts = new Facts(new DayScore(day));
        this.players = IntStream.range(0, day.players().size())
                .mapToObj(DayPlayer::new)
                .toList();
        this.ties = new ArrayList<>();
        for (int tie = 0; tie < sheets.size(); tie++) {
            ties.add(new PlannedTie(
                    tie, sheets.get(tie).sheets(), sheets.get(tie).sheets().get(0)));
        }
    }

    /** What never changes. */
    record Facts(DayScore score) {}

    /** A player by number. */
    record DayPlayer(int number) {}

    List<PlannedTie> ties() {
        return ties;
    }

    HardSoftLongScore score() {
        return java.util.Objects.requireNonNull(score);
    }
}
