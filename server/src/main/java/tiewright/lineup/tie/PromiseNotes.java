package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Aim;
import tiewright.lineup.Reason;

/** What a captain should know of the promises to single players: what is due, what a sheet leaves unkept, what keeping costs. */
final class PromiseNotes {
    private PromiseNotes() {}

    /** What this sheet takes from promises that another one could still keep. */
    static List<Reason> unkept(Board board, int[] line) {
        List<Reason> reasons = new ArrayList<>();
        Owed owed = board.owed();
        Map<PlayerId, Integer> after = owed.after(line);
        owed.lost(line)
                .keySet()
                .forEach(player -> reasons.add(Reason.of("promise-unkept")
                        .with("player", player)
                        .with("missing", after.getOrDefault(player, 0))
                        .with("left", owed.elsewhere(player))));
        int together = owed.lostTogether(line);
        if (together > 0) {
            reasons.add(Reason.of("promises-unkept")
                    .with("players", List.copyOf(after.keySet()))
                    .with("rubbers", together));
        }
        return reasons;
    }

    /** What is due in this tie, what cannot be kept any more, and what cannot hold together, whatever the sheet. */
    static List<Reason> ofAll(Board board) {
        List<Reason> reasons = new ArrayList<>();
        Owed owed = board.owed();
        Map<PlayerId, Integer> missing = owed.after(new int[0]);
        owed.hopeless()
                .keySet()
                .forEach(player -> reasons.add(Reason.of("promise-gone")
                        .with("player", player)
                        .with("missing", missing.getOrDefault(player, 0))));
        owed.due()
                .forEach((player, rubbers) -> reasons.add(Reason.of("promise-due")
                        .with("player", player)
                        .with("rubbers", rubbers)
                        .with("missing", missing.getOrDefault(player, 0))
                        .with("left", owed.elsewhere(player))));
        if (!missing.isEmpty() && owed.due().isEmpty() && owed.hopeless().isEmpty()) {
            reasons.add(Reason.of("promises-wait").with("players", List.copyOf(missing.keySet())));
        }
        reasons.addAll(clash(board, missing));
        return reasons;
    }

    /** Wishes and promises that cannot all be kept; nothing where they can. */
    private static List<Reason> clash(Board board, Map<PlayerId, Integer> missing) {
        Conflict.Clash clash = Conflict.withPromises(board);
        if (clash.isNone()) {
            return List.of();
        }
        List<Reason> reasons = new ArrayList<>(List.of(Reason.of("promises-conflict")));
        clash.wishes().forEach(wish -> reasons.add(SheetNotes.wish("wish", wish)));
        Map<PlayerId, Integer> promised =
                board.problem().purpose().playingTime().promised();
        clash.promised()
                .forEach(player -> reasons.add(Reason.of("promise")
                        .with("player", player)
                        .with("promised", promised.getOrDefault(player, 0))
                        .with("missing", missing.getOrDefault(player, 0))
                        .with("left", board.owed().elsewhere(player))));
        return reasons;
    }

    /** What it would cost to keep what the first sheet leaves unkept. */
    static List<Reason> costs(Board board, int[] first, Optional<Keeping> keeping) {
        if (unkept(board, first).isEmpty()) {
            return List.of();
        }
        if (keeping.isEmpty()) {
            return List.of(Reason.of("promises-cost-unknown"));
        }
        List<Reason> reasons = new ArrayList<>();
        Aim aim = board.problem().purpose().aim();
        double worth = board.worth().of(first);
        Keeping kept = keeping.get();
        owedPlayers(board, first)
                .forEach(player -> Optional.ofNullable(kept.each().get(player))
                        .ifPresent(best -> reasons.add(Reason.of("promise-costs")
                                .with("player", player)
                                .costing(Math.max(0, worth - best), aim))));
        if (kept.missing() < board.owed().missing(first)) {
            List<Pair> pairs = pairs(board, kept);
            reasons.add(Reason.of(kept.missing() == 0 ? "promises-cost" : "promises-cost-part")
                    .costing(Math.max(0, worth - board.worth().of(kept.line())), aim)
                    .with("pairs", pairs));
        }
        return reasons;
    }

    private static List<Pair> pairs(Board board, Keeping kept) {
        return board.sheet(kept.line()).pairs().values().stream()
                .flatMap(Optional::stream)
                .toList();
    }

    /** The best sheet that keeps more than the first does; empty where none does or not every sheet can be tried. */
    static Optional<Keeping> keeping(Board board, int[] first, tiewright.search.Stop stop) {
        return unkept(board, first).isEmpty() ? Optional.empty() : Keeping.of(board, owedPlayers(board, first), stop);
    }

    private static List<PlayerId> owedPlayers(Board board, int[] line) {
        return List.copyOf(board.owed().lost(line).keySet());
    }
}
