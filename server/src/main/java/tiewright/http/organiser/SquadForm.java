package tiewright.http.organiser;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.pieces.InputTable;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Visit;
import tiewright.setup.EnterPlayer;
import tiewright.setup.RemovePlayer;

/** A squad as a table to type in: a row for each player and empty ones for more; only rows that changed are decided. */
final class SquadForm {
    private static final int ROWS = 10;
    private static final int AT_LEAST_EMPTY = 2;

    /** Beside the year of birth. */
    private static final int PLAYS_AT = 3;

    private final Visit visit;
    private final ClubId club;
    private final boolean asksPlays;

    SquadForm(Visit visit, ClubId club) {
        this.visit = visit;
        this.club = club;
        this.asksPlays = visit.ask(EntryAnswers::new).asksPlays();
    }

    /** What a row says of a player. */
    private record Typed(
            String name,
            OptionalInt rank,
            OptionalInt bornYear,
            Optional<Plays> plays,
            Optional<LocalTime> from,
            Optional<LocalTime> until,
            boolean deputy) {
        EnterPlayer as(PlayerId player, ClubId club) {
            return new EnterPlayer(
                    player, club, new Directory.Person(name, bornYear, plays), rank, from, until, deputy);
        }

        boolean isEmpty() {
            return name.isEmpty()
                    && rank.isEmpty()
                    && bornYear.isEmpty()
                    && plays.isEmpty()
                    && from.isEmpty()
                    && until.isEmpty()
                    && !deputy;
        }
    }

    List<Decision> changes(Form form) {
        List<Decision> gone = new ArrayList<>();
        List<Decision> kept = new ArrayList<>();
        for (Player player : squad()) {
            String row = row(player);
            if (form.isTicked(AtFields.id(row, "out"))) {
                gone.add(new AtFields(row, new RemovePlayer(player.id())));
            } else if (form.wasAsked(AtFields.id(row, "name"))) {
                Typed typed = typed(form, row, standing(player).plays());
                if (typed.name().isEmpty()) {
                    form.fault(Refusal.of("form.player-without-name").at(AtFields.id(row, "name")));
                } else if (!typed.equals(standing(player))) {
                    kept.add(new AtFields(row, typed.as(player.id(), club)));
                }
            }
        }
        kept.addAll(added(form));
        gone.addAll(kept);
        return gone;
    }

    private List<Decision> added(Form form) {
        List<Decision> added = new ArrayList<>();
        int number = visit.ask(EntryAnswers::new).nextPlayerNumber(stem(club));
        for (int empty = 1; form.wasAsked(AtFields.id(row(empty), "name")); empty++) {
            Typed typed = typed(form, row(empty), Optional.empty());
            if (typed.isEmpty()) {
                continue;
            }
            if (typed.name().isEmpty()) {
                form.fault(Refusal.of("form.player-without-name").at(AtFields.id(row(empty), "name")));
            } else {
                added.add(new AtFields(row(empty), typed.as(PlayerId.of(stem(club) + number++), club)));
            }
        }
        return added;
    }

    /** A code of a player is the club's and a number; a very long code of a club is cut. */
    static String stem(ClubId club) {
        String code = club.code().length() <= 30
                ? club.code()
                : club.code().substring(0, 30).strip();
        return code + "-";
    }

    /** @param stated what the player states so far: it stays where the table does not ask */
    private static Typed typed(Form form, String row, Optional<Plays> stated) {
        String plays = AtFields.id(row, PlaysField.NAME);
        return new Typed(
                form.text(AtFields.id(row, "name")),
                form.number(AtFields.id(row, "rank")),
                form.number(AtFields.id(row, "bornYear")),
                form.wasAsked(plays) ? PlaysField.read(form, plays) : stated,
                form.time(AtFields.id(row, "from")),
                form.time(AtFields.id(row, "until")),
                form.isTicked(AtFields.id(row, "deputy")));
    }

    private Typed standing(Player player) {
        return new Typed(
                visit.event().name(player.id()),
                player.rank(),
                visit.ask(EntryAnswers::new).bornYear(player.id()),
                visit.ask(EntryAnswers::new).plays(player.id()),
                player.from(),
                player.until(),
                player.deputy());
    }

    private List<Player> squad() {
        return visit.event().squad(club);
    }

    InputTable table(Fields fields) {
        List<InputTable.Row> rows = new ArrayList<>();
        for (Player player : squad()) {
            rows.add(row(fields, row(player), player.id().code(), standing(player), true));
        }
        Typed nothing = new Typed(
                "",
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        int empty = Math.max(AT_LEAST_EMPTY, ROWS - rows.size());
        for (int number = 1; number <= empty; number++) {
            rows.add(row(fields, row(number), visit.say("page-organiser.new"), nothing, false));
        }
        return new InputTable(
                "squad-table", visit.say("page-organiser.players"), visit.say("page-organiser.code"), columns(), rows);
    }

    private List<String> columns() {
        List<String> columns = new ArrayList<>(List.of(
                visit.say("page-organiser.name"),
                visit.say("page-organiser.rank"),
                visit.say("page-organiser.born-in"),
                visit.say("page-organiser.here-from"),
                visit.say("page-organiser.until"),
                visit.say("page-organiser.deputy-2"),
                visit.say("page-organiser.take-out")));
        if (asksPlays) {
            columns.add(PLAYS_AT, visit.say("page-organiser.plays-in"));
        }
        return columns;
    }

    private InputTable.Row row(Fields fields, String row, String label, Typed stands, boolean known) {
        List<InputTable.Cell> cells = new ArrayList<>(List.of(
                fields.cell(AtFields.id(row, "name"), InputTable.Kind.WORDS, stands.name()),
                fields.cell(AtFields.id(row, "rank"), InputTable.Kind.NUMBER, Fields.said(stands.rank())),
                fields.cell(AtFields.id(row, "bornYear"), InputTable.Kind.NUMBER, Fields.said(stands.bornYear())),
                fields.cell(AtFields.id(row, "from"), InputTable.Kind.SHORT, Fields.said(stands.from())),
                fields.cell(AtFields.id(row, "until"), InputTable.Kind.SHORT, Fields.said(stands.until())),
                fields.cell(AtFields.id(row, "deputy"), InputTable.Kind.TICK, stands.deputy() ? "yes" : "")));
        if (asksPlays) {
            cells.add(PLAYS_AT, PlaysField.cell(visit, fields, AtFields.id(row, PlaysField.NAME), stands.plays()));
        }
        if (known) {
            cells.add(fields.cell(AtFields.id(row, "out"), InputTable.Kind.TICK, ""));
        }
        return new InputTable.Row(label, "", cells);
    }

    private static String row(Player player) {
        return "p-" + AtFields.safe(player.id().code());
    }

    private static String row(int empty) {
        return "new-" + empty;
    }
}
