package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.event.ClubId;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.film.FilmGame;

/** A folder while it is read: its tables, what was found in them so far, and what is wrong. */
final class Reading {
    private final Map<PlainFile, CsvTable> tables;
    private final boolean isBesideEvent;
    private final Cells cells = new Cells();
    private final List<Fact> facts = new ArrayList<>();
    private final List<PrivateNote> notes = new ArrayList<>();
    private final List<FilmGame> films = new ArrayList<>();
    private final List<PrivateNote.PastGame> ownGames = new ArrayList<>();
    private final Set<String> clubs = new HashSet<>();
    private final Map<String, String> clubOfPlayer = new LinkedHashMap<>();
    private final Map<String, TieSides> ties = new LinkedHashMap<>();
    private Conditions conditions = Conditions.of(Preset.CLUB_DAY);

    /** The clubs of a tie, as far as they are known. */
    record TieSides(Optional<ClubId> home, Optional<ClubId> away) {
        boolean areKnown() {
            return home.isPresent() && away.isPresent();
        }

        Optional<ClubId> club(Side side) {
            return side == Side.HOME ? home : away;
        }

        Optional<Side> sideOf(ClubId club) {
            return home.filter(club::equals).isPresent()
                    ? Optional.of(Side.HOME)
                    : away.filter(club::equals).map(any -> Side.AWAY);
        }
    }

    Reading(Map<PlainFile, CsvTable> tables) {
        this(tables, false);
    }

    private Reading(Map<PlainFile, CsvTable> tables, boolean isBesideEvent) {
        this.tables = tables;
        this.isBesideEvent = isBesideEvent;
    }

    /** A few files that belong to an event which is known already: its players and ties count as if they had been read. */
    static Reading beside(FilmNotes.Known event, Map<PlainFile, CsvTable> tables) {
        Reading reading = new Reading(tables, true);
        reading.conditions(event.conditions());
        event.players().forEach(player -> reading.enterPlayer(player.code(), ""));
        event.ties().forEach(tie -> reading.enterTie(tie.code(), new TieSides(Optional.empty(), Optional.empty())));
        return reading;
    }

    Cells cells() {
        return cells;
    }

    List<Fact> facts() {
        return facts;
    }

    List<PrivateNote> notes() {
        return notes;
    }

    List<FilmGame> films() {
        return films;
    }

    /** Earlier games that one club keeps for itself. */
    List<PrivateNote.PastGame> ownGames() {
        return ownGames;
    }

    Conditions conditions() {
        return conditions;
    }

    void conditions(Conditions read) {
        conditions = read;
    }

    boolean has(PlainFile file) {
        return tables.containsKey(file) || isBesideEvent && (file == PlainFile.PLAYERS || file == PlainFile.TIES);
    }

    List<CsvTable.Row> rows(PlainFile file) {
        return Optional.ofNullable(tables.get(file)).map(CsvTable::rows).orElse(List.of());
    }

    /** False when the club stands there already. */
    boolean enterClub(String code) {
        return clubs.add(code);
    }

    boolean enterPlayer(String code, String club) {
        return clubOfPlayer.putIfAbsent(code, club) == null;
    }

    boolean enterTie(String code, TieSides sides) {
        return ties.putIfAbsent(code, sides) == null;
    }

    Map<String, TieSides> ties() {
        return ties;
    }

    /** The club in a column; a fault when clubs.csv does not have it. Empty cells are for the caller. */
    Optional<ClubId> club(CsvTable.Row row, String column) {
        Optional<String> code = cells.codeIfAny(row, column);
        if (code.isPresent() && has(PlainFile.CLUBS) && !clubs.contains(code.get())) {
            cells.fault(row, column, "files.no-club", "club", code.get());
            return Optional.empty();
        }
        return code.map(ClubId::of);
    }

    Optional<ClubId> clubNeeded(CsvTable.Row row, String column) {
        return cells.needed(row, column).flatMap(any -> club(row, column));
    }

    Optional<PlayerId> player(CsvTable.Row row, String column) {
        Optional<String> code = cells.codeIfAny(row, column);
        if (code.isPresent() && has(PlainFile.PLAYERS) && !clubOfPlayer.containsKey(code.get())) {
            cells.fault(row, column, "files.no-player" + place(), "player", code.get());
            return Optional.empty();
        }
        return code.map(PlayerId::of);
    }

    /** Where it was looked for: in a file, or in the event that is known. */
    private String place() {
        return isBesideEvent ? "-here" : "";
    }

    Optional<PlayerId> playerNeeded(CsvTable.Row row, String column) {
        return cells.needed(row, column).flatMap(any -> player(row, column));
    }

    /** A player of this club, as far as both are known. */
    Optional<PlayerId> playerOf(CsvTable.Row row, String column, Optional<ClubId> club) {
        Optional<PlayerId> player = player(row, column);
        Optional<String> squad = player.flatMap(this::clubOf);
        if (squad.isPresent()
                && club.isPresent()
                && !squad.get().equals(club.get().code())) {
            cells.fault(
                    row, column, "files.other-club", "player", player.get(), "squad", squad.get(), "club", club.get());
            return Optional.empty();
        }
        return player;
    }

    /** The club of a player by code, if players.csv says one. */
    Optional<String> clubOf(PlayerId player) {
        return Optional.ofNullable(clubOfPlayer.get(player.code())).filter(club -> !club.isEmpty());
    }

    Optional<TieId> tie(CsvTable.Row row, String column) {
        Optional<String> code = cells.codeIfAny(row, column);
        if (code.isPresent() && has(PlainFile.TIES) && !ties.containsKey(code.get())) {
            cells.fault(row, column, "files.no-tie" + place(), "tie", code.get());
            return Optional.empty();
        }
        return code.map(TieId::of);
    }

    Optional<TieId> tieNeeded(CsvTable.Row row, String column) {
        return cells.needed(row, column).flatMap(any -> tie(row, column));
    }

    /** Who plays the tie; nobody known when it has no row. */
    TieSides sides(TieId tie) {
        return ties.getOrDefault(tie.code(), new TieSides(Optional.empty(), Optional.empty()));
    }

    /** A tie in which something was already done: both its clubs must be known. */
    boolean isUnderWay(CsvTable.Row row, TieId tie) {
        if (has(PlainFile.TIES) && ties.containsKey(tie.code()) && !sides(tie).areKnown()) {
            cells.fault(row, "tie", "files.clubs-unknown", "tie", tie);
            return false;
        }
        return true;
    }
}
