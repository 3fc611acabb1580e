package tiewright.saturday;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** The morning of a random event: clubs, squads, conditions, courts, ties and their times. All invented. */
final class Scene {
    static final LocalDate DATE = LocalDate.of(2027, 5, 29);
    static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final int GROWN_UP = 1980;
    private static final int MINOR = 2012;
    private static final LocalTime FIRST_TIE = LocalTime.of(9, 45);
    private static final List<String> CLUBS = List.of(
            "Alder", "Bryony", "Clover", "Dock", "Elder", "Fennel", "Gorse", "Hazel", "Ivy", "Juniper", "Kale", "Lime");
    private static final List<String> FIRST =
            List.of("Ada", "Bo", "Cleo", "Dara", "Eve", "Finn", "Gwen", "Huw", "Ida", "Jon");
    private static final List<String> LAST = List.of("Marsh", "Orchard", "Quarry", "Heath", "Weir", "Steeple");

    private final Dice dice;
    private final List<Fact> facts = new ArrayList<>();
    private final List<PrivateNote> notes = new ArrayList<>();
    private final List<ClubId> clubs = new ArrayList<>();
    private final int courts;
    private final int squad;
    private Conditions conditions = Conditions.of(Preset.CLUB_DAY);

    /** Two clubs at least and so many at most, of squads as they come. */
    Scene(Dice dice, int most) {
        this(dice, dice.between(2, most), 0);
    }

    /** So many clubs, each with a squad of this size. */
    static Scene of(Dice dice, int clubs, int squad) {
        return new Scene(dice, clubs, squad);
    }

    private Scene(Dice dice, int count, int squad) {
        this.dice = dice;
        this.squad = squad;
        this.courts = dice.between(2, 4);
        describe();
        for (int i = 0; i < count; i++) {
            club(CLUBS.get(i));
        }
        ties();
    }

    List<Fact> facts() {
        return facts;
    }

    List<PrivateNote> notes() {
        return notes;
    }

    List<ClubId> clubs() {
        return clubs;
    }

    static Instant at(LocalTime time) {
        return DATE.atTime(time).atZone(ZONE).toInstant();
    }

    private void describe() {
        facts.add(new SetUpFact.EventDescribed(
                "Hedge Cup", DATE, "Long Barn", ZONE, LocalTime.of(9, 0), Optional.of(LocalTime.of(19, 0))));
        conditions = Conditions.of(dice.any(List.of(Preset.values())))
                .with(Setting.BEST_OF, "1")
                .with(Setting.SCORING, "side-out-11");
        maybe(Setting.RUBBERS, List.of("2", "3", "4"));
        maybe(Setting.TIE_PLAY, List.of("side-by-side", "rubber-by-rubber"));
        maybe(Setting.STOP_WHEN_DECIDED, List.of("none", "knockout", "all"));
        maybe(Setting.DECIDER, List.of("any-two", "one-from-each", "none"));
        maybe(Setting.LATE_SHEET, List.of("grace", "last-legal", "referee-fills", "forfeit"));
        maybe(Setting.GRACE_MINUTES, List.of("0", "5"));
        maybe(Setting.ORDER_OF_STRENGTH, List.of("none", "rank-sum"));
        maybe(Setting.WITHDRAWAL, List.of("annul", "keep", "award"));
        maybe(Setting.FREEZE_MINUTES, List.of("0", "20"));
        facts.add(new SetUpFact.ConditionsPublished(1, conditions, OptionalInt.empty()));
        for (int court = 1; court <= courts; court++) {
            facts.add(new SetUpFact.CourtSet(Integer.toString(court), Optional.empty(), Optional.empty(), true));
        }
    }

    private void maybe(Setting setting, List<String> values) {
        if (dice.chance(0.5)) {
            conditions = conditions.with(setting, dice.any(values));
        }
    }

    private void club(String name) {
        ClubId club = ClubId.of(name.substring(0, 2).toUpperCase(java.util.Locale.ROOT));
        clubs.add(club);
        facts.add(new SetUpFact.ClubEntered(club, name, Optional.empty(), OptionalInt.empty()));
        int usual = dice.chance(0.75) ? 8 : dice.between(3, 9);
        for (int i = 1; i <= (squad > 0 ? squad : usual); i++) {
            PlayerId player = PlayerId.of(club.code() + i);
            facts.add(new SetUpFact.PlayerEntered(
                    player, club, OptionalInt.of(i), Optional.empty(), Optional.empty(), i == 2));
            boolean minor = dice.chance(0.1);
            notes.add(new PrivateNote.PersonNamed(
                    player,
                    dice.any(FIRST) + " " + dice.any(LAST),
                    dice.chance(0.5) || minor ? OptionalInt.of(minor ? MINOR : GROWN_UP) : OptionalInt.empty()));
        }
    }

    /** Everybody meets everybody, by the circle; then the first two, or the first four, play on. */
    private void ties() {
        List<Optional<ClubId>> circle =
                new ArrayList<>(clubs.stream().map(Optional::of).toList());
        if (circle.size() % 2 == 1) {
            circle.add(Optional.empty());
        }
        int minutes = 0;
        for (int round = 1; round < circle.size(); round++) {
            int inRound = 0;
            for (int i = 0; i < circle.size() / 2; i++) {
                Optional<ClubId> home = circle.get(i);
                Optional<ClubId> away = circle.get(circle.size() - 1 - i);
                if (home.isPresent() && away.isPresent()) {
                    String id = "A-" + round + "-" + ++inRound;
                    arrange(id, Stage.POOL, round, Slot.of(home.get()), Slot.of(away.get()));
                    time(id, minutes, inRound);
                }
            }
            circle.add(1, circle.remove(circle.size() - 1));
            minutes += 60;
        }
        knockout(minutes + 15);
    }

    private void knockout(int minutes) {
        if (clubs.size() >= 4 && dice.chance(0.6)) {
            arrange("SF1", Stage.KNOCKOUT, 1, place(1), place(4));
            arrange("SF2", Stage.KNOCKOUT, 1, place(2), place(3));
            arrange("F", Stage.KNOCKOUT, 2, winner("SF1"), winner("SF2"));
            time("SF1", minutes, 1);
            time("SF2", minutes, 2);
            time("F", minutes + 75, 1);
        } else {
            arrange("F", Stage.KNOCKOUT, 1, place(1), place(2));
            time("F", minutes, 1);
        }
    }

    private static Slot place(int place) {
        return Slot.from(SlotSource.place("A", place));
    }

    private static Slot winner(String tie) {
        return Slot.from(SlotSource.winner(TieId.of(tie)));
    }

    private void arrange(String tie, Stage stage, int round, Slot home, Slot away) {
        Optional<String> pool = stage == Stage.POOL ? Optional.of("A") : Optional.empty();
        facts.add(new DrawFact.TieArranged(TieId.of(tie), stage, pool, round, home, away));
    }

    private void time(String tie, int minutes, int number) {
        LocalTime start = FIRST_TIE.plusMinutes(minutes);
        String court = Integer.toString((number - 1) % courts + 1);
        facts.add(new DrawFact.TieTimed(TieId.of(tie), Optional.of(start), Optional.of(court)));
    }
}
