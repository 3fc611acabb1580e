package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.PairWish;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/** Who takes part and where, as rows. */
final class SquadExport {
    private static final List<String> JUDGED = List.of("form", "form_sd");
    private static final String PROMISED = "promised";

    private static final String PLAYS = "plays";

    private final Event event;
    private final Directory directory;
    private final OwnNotes own;
    private final Map<PlayerId, PrivateNote.FormJudged> forms = new HashMap<>();
    private final Map<PlayerId, Integer> promised = new HashMap<>();

    SquadExport(Event event, Directory directory, OwnNotes own) {
        this.event = event;
        this.directory = directory;
        this.own = own;
        own.forms().forEach(form -> forms.put(form.player(), form));
        own.promises().stream()
                .filter(promise -> promise.rubbers() > 0)
                .forEach(promise -> promised.put(promise.player(), promise.rubbers()));
    }

    CsvText clubs() {
        CsvText text = new CsvText(PlainFile.CLUBS);
        event.clubs().values().forEach(club -> text.row(club.id(), club.name(), club.town(), club.seed()));
        return text;
    }

    CsvText players() {
        List<String> header = new ArrayList<>(PlainFile.PLAYERS.columns());
        if (forms.isEmpty()) {
            header.removeAll(JUDGED);
        }
        if (promised.isEmpty()) {
            header.remove(PROMISED);
        }
        if (directory.stated().isEmpty()) {
            header.remove(PLAYS);
        }
        CsvText text = new CsvText(header);
        event.players().values().forEach(player -> text.row(cells(player).toArray()));
        return text;
    }

    private List<Object> cells(Player player) {
        List<Object> cells =
                new ArrayList<>(List.of(player.id(), player.club(), directory.name(player.id()), player.rank()));
        if (!forms.isEmpty()) {
            Optional<PrivateNote.FormJudged> form = Optional.ofNullable(forms.get(player.id()));
            cells.add(form.map(PrivateNote.FormJudged::form).orElse(OptionalDouble.empty()));
            cells.add(form.map(PrivateNote.FormJudged::sd).orElse(OptionalDouble.empty()));
        }
        cells.add(directory.person(player.id()).map(Directory.Person::bornYear).orElse(OptionalInt.empty()));
        cells.addAll(List.of(player.from(), player.until(), present(player), player.deputy() ? "yes" : "no"));
        if (!promised.isEmpty()) {
            cells.add(Optional.ofNullable(promised.get(player.id())));
        }
        if (!directory.stated().isEmpty()) {
            cells.add(directory.plays(player.id()).map(Plays::code));
        }
        return cells;
    }

    private static String present(Player player) {
        return player.absent() ? "no" : player.checkedInAt().isPresent() ? "yes" : "";
    }

    CsvText chemistry() {
        CsvText text = new CsvText(PlainFile.CHEMISTRY);
        List<ClubId> clubs = List.copyOf(event.clubs().keySet());
        own.chemistry().stream()
                .sorted(Comparator.<PrivateNote.ChemistryJudged>comparingInt(judged -> clubs.indexOf(clubOf(judged)))
                        .thenComparing(PrivateNote.ChemistryJudged::pair))
                .forEach(judged -> text.row(
                        judged.pair().first(),
                        judged.pair().second(),
                        judged.extra(),
                        judged.sd(),
                        judged.wish().map(wish -> wish == PairWish.TOGETHER ? "together" : "apart")));
        return text;
    }

    private ClubId clubOf(PrivateNote.ChemistryJudged judged) {
        return event.player(judged.pair().first()).map(Player::club).orElse(ClubId.of("?"));
    }

    /** Courts out of use are left out. */
    CsvText courts() {
        CsvText text = new CsvText(PlainFile.COURTS);
        event.courts().values().stream()
                .filter(tiewright.event.Court::usable)
                .forEach(court -> text.row(court.name(), court.from(), court.until()));
        return text;
    }
}
