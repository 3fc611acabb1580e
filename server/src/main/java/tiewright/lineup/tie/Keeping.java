package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.search.Stop;

/**
 * The best sheet that keeps as much as can be kept of the promises, and the best that keeps each of some promises by itself, by
 * trying every sheet.
 *
 * @param line of the former
 * @param missing promised rubbers that it leaves unkept
 * @param each what the best sheet is worth that keeps the promise to the player; nobody named = no sheet that grants the wishes does
 */
record Keeping(int[] line, int missing, Map<PlayerId, Double> each) {

    private static final class Search {
        private final Board board;
        private final List<PlayerId> players;
        private final Map<PlayerId, Double> each = new HashMap<>();
        private final Map<PlayerId, int[]> lines = new HashMap<>();
        private int[] best = {};
        private int missing = Integer.MAX_VALUE;
        private double worth;

        Search(Board board, List<PlayerId> players) {
            this.board = board;
            this.players = players;
        }

        void look(int[] line) {
            int here = board.owed().missing(line);
            Map<PlayerId, Integer> lost = board.owed().lost(line);
            List<PlayerId> kept = new ArrayList<>(players);
            kept.removeAll(lost.keySet());
            if (here > missing && kept.isEmpty()) {
                return;
            }
            double value = board.worth().quick(line);
            kept.stream()
                    .filter(player -> value > each.getOrDefault(player, Double.NEGATIVE_INFINITY))
                    .forEach(player -> {
                        each.put(player, value);
                        lines.put(player, line.clone());
                    });
            if (here < missing || here == missing && value > worth) {
                best = line.clone();
                missing = here;
                worth = value;
            }
        }

        /** What the best sheet for each is worth over all draws. */
        Map<PlayerId, Double> worths() {
            Map<PlayerId, Double> worths = new HashMap<>();
            lines.forEach((player, line) -> worths.put(player, board.worth().of(line)));
            return worths;
        }
    }

    /**
     * @param players whose promises are to be kept one by one
     * @return empty if there are too many sheets to try them all, or none
     */
    static Optional<Keeping> of(Board board, List<PlayerId> players, Stop stop) {
        Search search = new Search(board, players);
        long[] left = {Ranking.most(board)};
        SheetSearch.End end = SheetSearch.run(board, board.orderMatters(), Ranking.MOST_STEPS, line -> {
            search.look(line);
            return --left[0] > 0 && !stop.isPressed();
        });
        return end == SheetSearch.End.ALL_SEEN && search.best.length > 0
                ? Optional.of(new Keeping(search.best, search.missing, search.worths()))
                : Optional.empty();
    }
}
