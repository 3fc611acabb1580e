package tiewright.standings;

import java.util.List;
import java.util.Map;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.TieScore;

/**
 * Everything that a table is made from.
 *
 * @param clubs in the order of the entries, each once, those that withdrew among them
 * @param ties all ties among these clubs, finished or not, in any order; a tie after a club's withdrawal comes as
 *     unfinished and without rubbers
 * @param withdrawals how the ties of each club that withdrew are treated
 * @param lots the lots drawn so far, in the order in which they were drawn
 */
public record TableInput(
        List<ClubId> clubs,
        List<TieScore> ties,
        TableRules rules,
        Map<ClubId, Treatment> withdrawals,
        List<LotDrawn> lots) {
    public TableInput {
        clubs = List.copyOf(clubs);
        ties = List.copyOf(ties);
        withdrawals = Map.copyOf(withdrawals);
        lots = List.copyOf(lots);
        Set<ClubId> known = Set.copyOf(clubs);
        if (known.size() != clubs.size()) {
            throw new IllegalArgumentException("a club stands twice in the table: " + clubs);
        }
        for (TieScore tie : ties) {
            if (!known.contains(tie.home())
                    || !known.contains(tie.away())
                    || tie.home().equals(tie.away())) {
                throw new IllegalArgumentException("tie " + tie.tie() + " is not between two clubs of the table");
            }
        }
    }

    /** A table of clubs that are all still in, with no lot drawn. */
    public static TableInput of(List<ClubId> clubs, List<TieScore> ties, TableRules rules) {
        return new TableInput(clubs, ties, rules, Map.of(), List.of());
    }
}
