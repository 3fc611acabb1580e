package tiewright.setup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Enters a player into a squad, or alters the one who has this code. Who it is goes beside the ledger. After the first sealed
 * sheet only the organiser may, and a new player or another rank is a numbered notice.
 *
 * @param rank place in the club's order of strength, 1 the strongest
 * @param from not here before this time
 * @param until leaves at this time
 */
public record EnterPlayer(
        PlayerId player,
        ClubId club,
        Directory.Person person,
        OptionalInt rank,
        Optional<LocalTime> from,
        Optional<LocalTime> until,
        boolean deputy)
        implements Decision {
    private static final int LARGEST_SQUAD = 99;
    private static final int OLDEST = 120;

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Player> before = event.player(player);
        int year = event.about()
                .map(SetUpFact.EventDescribed::date)
                .orElse(LocalDate.ofInstant(given.now(), ZoneOffset.UTC))
                .getYear();
        Checks checks = new Checks()
                .refuseAll(Squads.mayAlter(event, given, club))
                .refuseIf(
                        event.club(club).isEmpty(),
                        Refusal.of("setup.no-such-club").with("club", club).at("club"))
                .line("name", person.name())
                .refuseIf(
                        isOutside(rank, 1, LARGEST_SQUAD),
                        Refusal.of("setup.not-a-rank")
                                .with("most", LARGEST_SQUAD)
                                .at("rank"))
                .refuseIf(
                        isOutside(person.bornYear(), year - OLDEST, year),
                        Refusal.of("setup.not-a-birth-year")
                                .with("least", year - OLDEST)
                                .with("most", year)
                                .at("bornYear"))
                .refuseIf(
                        from.isPresent() && until.isPresent() && !from.get().isBefore(until.get()),
                        Refusal.of("setup.leaves-before-coming")
                                .with("from", from.orElse(LocalTime.MIN))
                                .with("until", until.orElse(LocalTime.MIN))
                                .at("until"))
                .refuseIf(
                        before.isEmpty() && event.squad(club).size() >= LARGEST_SQUAD,
                        Refusal.of("setup.squad-full")
                                .with("most", LARGEST_SQUAD)
                                .at("player"));
        before.filter(old -> !old.club().equals(club))
                .ifPresent(old -> checks.refuseIf(
                        true,
                        Refusal.of("setup.player-of-other-club")
                                .with("code", player.code())
                                .with("club", old.club())
                                .at("player")));
        return checks.allFine() ? new Accepted(facts(event, before), List.of(named())) : checks.refused();
    }

    private static boolean isOutside(OptionalInt number, int least, int most) {
        return number.isPresent() && (number.getAsInt() < least || number.getAsInt() > most);
    }

    private PrivateNote named() {
        return new PrivateNote.PersonNamed(
                player, new Directory.Person(Plain.of(person.name()), person.bornYear(), person.plays()));
    }

    private List<Fact> facts(Event event, Optional<Player> before) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new SetUpFact.PlayerEntered(player, club, rank, from, until, deputy));
        Optional<OptionalInt> old = before.map(Player::rank);
        boolean published = event.conditions().orderOfStrength() != OrderOfStrength.NONE;
        if (event.isFrozen() && !old.equals(Optional.of(rank)) && (published || old.isEmpty())) {
            String clubName = event.club(club).map(Club::name).orElse(club.code());
            Saying what = Saying.of(old.isPresent() ? "notices.rank-of" : "notices.joins")
                    .with("player", player)
                    .with("club", clubName);
            facts.add(old.map(was -> Notices.changed(event, what, rank(was), rank(rank)))
                    .orElseGet(() -> Notices.added(event, what, rank(published ? rank : OptionalInt.empty()))));
        }
        return facts;
    }

    private static Saying rank(OptionalInt rank) {
        return rank.isPresent()
                ? Saying.of("notices.rank").with("rank", rank.getAsInt())
                : Saying.of("notices.no-rank");
    }

    /** The same player as somebody else entered meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof SetUpFact.PlayerEntered other && other.player().equals(player);
    }
}
