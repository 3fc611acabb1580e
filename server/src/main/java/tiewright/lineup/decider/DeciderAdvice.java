package tiewright.lineup.decider;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Reason;

/**
 * Who should play the decider? A small blind game: our pairs that may play it against theirs.
 *
 * @param candidates all of them, the best first; empty where nobody is named (no decider, singles in turns, nobody here)
 * @param chance what the game is worth: our chance if both sides choose well
 * @param sure the best single pair, for a captain who does not want to mix
 */
public record DeciderAdvice(List<Candidate> candidates, double chance, Optional<Sure> sure, List<Reason> notes) {
    public DeciderAdvice {
        candidates = List.copyOf(candidates);
        notes = List.copyOf(notes);
    }

    /**
     * One pair.
     *
     * @param weight how often to send it; 0 = never
     * @param chance against the mix that is best for them
     * @param low lower end of the 95 % interval from the doubt about the strengths
     * @param asBest chance that it is at least as strong as the first pair
     * @param loss what rest and rubbers have taken off the two, in rallies per 100
     * @param hurt one of the two is marked hurt: ask before naming, nobody is barred
     */
    public record Candidate(
            int rank,
            Pair pair,
            double weight,
            double chance,
            double low,
            double high,
            double asBest,
            Verdict verdict,
            double loss,
            boolean hurt) {}

    /**
     * One pair, always.
     *
     * @param guarantee our chance at least, whomever they send
     */
    public record Sure(Pair pair, double guarantee) {}

    /** What to make of a pair. */
    public enum Verdict {
        /** The only pair within reach of the best. */
        BEST("best"),
        /** Within noise of the best: choose who wants it. */
        EITHER("either"),
        /** Weaker, as far as anybody can tell. */
        BEHIND("behind");

        private final String code;

        Verdict(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /**
     * Advice once the tie is being played, with everybody as tired as the problem says.
     *
     * @param ourSheet the opened or planned sheet, where the conditions want one player from each of two pairs
     * @param theirSheet theirs, if it is open
     * @param hurt players marked hurt
     */
    public static DeciderAdvice of(
            LineupProblem problem, Optional<Sheet> ourSheet, Optional<Sheet> theirSheet, Set<PlayerId> hurt) {
        return DeciderGame.advice(problem, ourSheet, theirSheet, hurt, problem.freshness()::loss);
    }

    /** Advice before the tie: who plays on this sheet will come straight off court, and who does not will have rested meanwhile. */
    public static DeciderAdvice planned(LineupProblem problem, Sheet sheet, Set<PlayerId> hurt) {
        Set<PlayerId> theirs =
                Set.copyOf(problem.belief().sheets().get(0).sheet().players());
        return DeciderGame.advice(
                problem,
                Optional.of(sheet),
                Optional.empty(),
                hurt,
                player -> problem.freshness()
                        .lossInDecider(player, sheet.players().contains(player) || theirs.contains(player)));
    }

    /** The pair to send first, if anybody is named. */
    public Optional<Candidate> best() {
        return candidates.stream().findFirst();
    }

    /** The pairs among which nobody can tell, the best first; one where it is clear. */
    public List<Pair> withinNoise() {
        return candidates.stream()
                .filter(candidate -> candidate.verdict() != Verdict.BEHIND)
                .map(Candidate::pair)
                .toList();
    }
}
