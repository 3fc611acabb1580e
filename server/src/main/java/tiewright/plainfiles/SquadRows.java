package tiewright.plainfiles;

import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Who takes part and where: clubs.csv, players.csv, chemistry.csv and courts.csv. */
final class SquadRows {
    /** Rallies won per 100 above an even game lie between none and all of them. */
    private static final double MOST_FORM = 50;

    private final Reading reading;
    private final Cells cells;
    private final Set<Pair> judged = new HashSet<>();
    private final Set<String> courts = new HashSet<>();

    SquadRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
    }

    void read() {
        reading.rows(PlainFile.CLUBS).forEach(this::club);
        reading.rows(PlainFile.PLAYERS).forEach(this::player);
        reading.rows(PlainFile.CHEMISTRY).forEach(this::chemistry);
        reading.rows(PlainFile.COURTS).forEach(this::court);
    }

    private void club(CsvTable.Row row) {
        Optional<String> code = cells.clubCode(row, "club");
        Optional<String> name = cells.textNeeded(row, "name");
        Optional<String> town = cells.text(row, "town");
        OptionalInt seed = cells.whole(row, "seed", 1, 999);
        if (code.isPresent() && !reading.enterClub(code.get())) {
            cells.fault(row, "club", "files.club-twice", "club", code.get());
        } else if (code.isPresent() && name.isPresent()) {
            reading.facts().add(new SetUpFact.ClubEntered(ClubId.of(code.get()), name.get(), town, seed));
        }
    }

    private void player(CsvTable.Row row) {
        Optional<String> code = cells.code(row, "player");
        Optional<ClubId> club = reading.clubNeeded(row, "club");
        Optional<String> name = cells.textNeeded(row, "name");
        OptionalInt rank = cells.whole(row, "rank", 1, 999);
        OptionalDouble form = cells.number(row, "form", -MOST_FORM, MOST_FORM);
        OptionalDouble sd = cells.doubt(row, "form_sd", MOST_FORM);
        OptionalInt born = cells.whole(row, "born_year", 1900, 2100);
        Optional<LocalTime> from = cells.time(row, "from");
        Optional<LocalTime> until = cells.time(row, "until");
        cells.span(row, "from", from, "until", until);
        Optional<Boolean> present = cells.yes(row, "present");
        boolean deputy = cells.yes(row, "deputy").orElse(false);
        OptionalInt promised = cells.whole(row, "promised", 0, PrivateNote.RubbersPromised.MOST);
        if (code.isPresent()
                && !reading.enterPlayer(code.get(), club.map(ClubId::code).orElse(""))) {
            cells.fault(row, "player", "files.player-twice", "player", code.get());
        } else if (code.isPresent() && club.isPresent() && name.isPresent()) {
            PlayerId id = PlayerId.of(code.get());
            reading.facts().add(new SetUpFact.PlayerEntered(id, club.get(), rank, from, until, deputy));
            present.ifPresent(here -> reading.facts().add(new SetUpFact.CheckedIn(id, here)));
            reading.notes().add(new PrivateNote.PersonNamed(id, new Directory.Person(name.get(), born, plays(row))));
            if (form.isPresent() || sd.isPresent()) {
                reading.notes().add(new PrivateNote.FormJudged(id, form, sd));
            }
            if (promised.orElse(0) > 0) {
                reading.notes().add(new PrivateNote.RubbersPromised(id, promised.getAsInt()));
            }
        }
    }

    private Optional<Plays> plays(CsvTable.Row row) {
        return cells.choice(row, "plays", List.of("women", "men")).flatMap(Plays::parse);
    }

    private void chemistry(CsvTable.Row row) {
        Optional<PlayerId> one = reading.playerNeeded(row, "player_1");
        Optional<PlayerId> other = reading.playerNeeded(row, "player_2");
        OptionalDouble extra = cells.needed(row, "extra").isEmpty()
                ? OptionalDouble.empty()
                : cells.number(row, "extra", -MOST_FORM, MOST_FORM);
        OptionalDouble sd = cells.doubt(row, "extra_sd", MOST_FORM);
        Optional<PairWish> wish = cells.choice(row, "rule", List.of("together", "apart"))
                .map(rule -> rule.equals("together") ? PairWish.TOGETHER : PairWish.APART);
        if (one.isEmpty() || other.isEmpty()) {
            return;
        }
        if (one.equals(other)) {
            cells.fault(row, "player_2", "files.same-player");
        } else if (areOfTwoClubs(one.get(), other.get())) {
            cells.fault(row, "player_2", "files.two-clubs", "player", one.get(), "partner", other.get());
        } else if (!judged.add(Pair.of(one.get(), other.get()))) {
            cells.fault(row, "player_2", "files.pair-twice", "player", one.get(), "partner", other.get());
        } else if (extra.isPresent()) {
            reading.notes()
                    .add(new PrivateNote.ChemistryJudged(
                            Pair.of(one.get(), other.get()), extra.getAsDouble(), sd, wish));
        }
    }

    private boolean areOfTwoClubs(PlayerId one, PlayerId other) {
        Optional<String> club = reading.clubOf(one);
        return club.isPresent()
                && reading.clubOf(other).filter(any -> !any.equals(club.get())).isPresent();
    }

    private void court(CsvTable.Row row) {
        Optional<String> court = cells.code(row, "court");
        Optional<LocalTime> from = cells.time(row, "from");
        Optional<LocalTime> until = cells.time(row, "until");
        if (from.isPresent() && until.isPresent() && !from.get().isBefore(until.get())) {
            Refusal early = court.map(
                            code -> Refusal.of("files.court-closes-early").with("court", code))
                    .orElse(Refusal.of("files.closes-early"));
            cells.fault(row, "until", early.with("until", until.get()).with("from", from.get()));
        }
        if (court.isPresent() && !courts.add(court.get())) {
            cells.fault(row, "court", "files.court-twice", "court", court.get());
        } else {
            court.ifPresent(name -> reading.facts().add(new SetUpFact.CourtSet(name, from, until, true)));
        }
    }
}
