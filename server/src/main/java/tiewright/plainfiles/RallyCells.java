package tiewright.plainfiles;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.film.Detail;
import tiewright.film.Ending;
import tiewright.film.RallyNote;

/** Reads the cells of a row of rallies.csv. */
final class RallyCells {
    private static final int ON_COURT = 4;
    private final Cells cells;

    RallyCells(Cells cells) {
        this.cells = cells;
    }

    /** The rally; empty after a fault that leaves open how it ended. */
    Optional<RallyNote> note(CsvTable.Row row, int number, Collection<PlayerId> players) {
        Optional<Ending> ending = cells.needed(row, "ending")
                .flatMap(any -> cells.choice(row, "ending", List.of("earned", "forced", "gave", "replay", "unsure")))
                .flatMap(Ending::parse);
        Optional<PlayerId> server = onCourt(row, "server", players);
        boolean mustBeNamed = ending.map(Ending::namesPlayer).orElse(true);
        Optional<PlayerId> player =
                mustBeNamed ? onCourtNeeded(row, "player", players) : onCourt(row, "player", players);
        Detail detail = detail(row, players);
        return ending.filter(any -> player.isPresent() || !mustBeNamed)
                .map(how -> new RallyNote(number, how, player, server, detail));
    }

    private Detail detail(CsvTable.Row row, Collection<PlayerId> players) {
        Optional<String> third = cells.choice(row, "third", List.of("soft", "hard", "lob", "none"));
        Optional<String> signal = cells.choice(row, "signal", List.of("stay", "switch", "crossed"));
        return new Detail(
                cells.text(row, "where"),
                cells.text(row, "serve"),
                cells.text(row, "return"),
                third,
                ofTheFour(row, "third_to", players),
                signal,
                cells.text(row, "call"),
                ofTheFour(row, "call_by", players),
                cells.text(row, "call_end"),
                cells.text(row, "mark"),
                cells.text(row, "film_time"));
    }

    /** A player whom a reader may also leave in words of another kind: then nobody is noted. */
    private Optional<PlayerId> ofTheFour(CsvTable.Row row, String column, Collection<PlayerId> players) {
        return cells.text(row, column)
                .flatMap(text -> players.stream()
                        .filter(player -> player.code().equals(text))
                        .findFirst());
    }

    Optional<PlayerId> onCourtNeeded(CsvTable.Row row, String column, Collection<PlayerId> players) {
        return cells.needed(row, column).isEmpty() ? Optional.empty() : onCourt(row, column, players);
    }

    /** A player who must be one of the four, as far as these are known. */
    Optional<PlayerId> onCourt(CsvTable.Row row, String column, Collection<PlayerId> players) {
        Optional<PlayerId> player = cells.codeIfAny(row, column).map(PlayerId::of);
        if (player.isPresent() && players.size() == ON_COURT && !players.contains(player.get())) {
            cells.fault(row, column, "files.not-in-game", "player", player.get());
        }
        return player.filter(players::contains);
    }
}
