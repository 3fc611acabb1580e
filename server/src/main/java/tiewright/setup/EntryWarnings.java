package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.RubberKind;
import tiewright.event.Club;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.SameName;

/**
 * What looks wrong about the entries: one person in two squads, names that are alike, clubs without players. Both entries
 * are always named, so that a person can look; names compare as {@link SameName} says.
 */
public final class EntryWarnings {
    private final Event event;
    private final Directory directory;
    private final List<EntryWarning> warnings = new ArrayList<>();

    private EntryWarnings(Event event, Directory directory) {
        this.event = event;
        this.directory = directory;
    }

    /** The warnings, clubs first, in the order of entry. Clubs that withdrew are passed over. */
    public static List<EntryWarning> of(Event event, Directory directory) {
        EntryWarnings found = new EntryWarnings(event, directory);
        List<Club> clubs = event.clubs().values().stream()
                .filter(club -> !event.withdrawals().containsKey(club.id()))
                .toList();
        found.alike(clubs);
        clubs.forEach(found::squad);
        found.people();
        return List.copyOf(found.warnings);
    }

    private void alike(List<Club> clubs) {
        List<SameName> names =
                clubs.stream().map(club -> SameName.of(club.name())).toList();
        for (int one = 0; one < clubs.size(); one++) {
            for (int other = one + 1; other < clubs.size(); other++) {
                boolean sameCode = clubs.get(one)
                        .id()
                        .code()
                        .equalsIgnoreCase(clubs.get(other).id().code());
                if (sameCode
                        || names.get(one).is(names.get(other))
                        || names.get(one).isLike(names.get(other))) {
                    warnings.add(new EntryWarning(
                            EntryWarning.Kind.LIKE_CLUBS,
                            List.of(clubs.get(one).id(), clubs.get(other).id()),
                            List.of()));
                }
            }
        }
    }

    private void squad(Club club) {
        List<Player> squad = event.squad(club.id());
        if (squad.isEmpty()) {
            warnings.add(EntryWarning.of(EntryWarning.Kind.NO_SQUAD, club.id()));
        } else if (squad.size() < 2
                || squad.size() * event.conditions().maxRubbersPerPlayer() / 2
                        < event.conditions().rubbers()) {
            warnings.add(EntryWarning.of(EntryWarning.Kind.SHORT_SQUAD, club.id()));
        } else if (event.conditions().tieRubbers().kinds().each().stream().anyMatch(kind -> lacks(squad, kind))) {
            warnings.add(EntryWarning.of(EntryWarning.Kind.NO_PAIR_FOR_A_KIND, club.id()));
        }
        if (event.draw().isPresent() && event.pools().values().stream().noneMatch(pool -> pool.contains(club.id()))) {
            warnings.add(EntryWarning.of(EntryWarning.Kind.NOT_DRAWN, club.id()));
        }
        if (event.conditions().orderOfStrength() != OrderOfStrength.NONE) {
            ranks(squad);
        }
    }

    private boolean lacks(List<Player> squad, RubberKind kind) {
        return squad.stream()
                .noneMatch(one -> squad.stream()
                        .anyMatch(other -> !one.equals(other)
                                && kind.admits(directory.plays(one.id()), directory.plays(other.id()))));
    }

    private void ranks(List<Player> squad) {
        for (int one = 0; one < squad.size(); one++) {
            Player player = squad.get(one);
            OptionalInt rank = player.rank();
            if (rank.isEmpty()) {
                warnings.add(new EntryWarning(EntryWarning.Kind.NO_RANK, List.of(player.club()), List.of(player.id())));
            }
            squad.stream()
                    .skip(one + 1L)
                    .filter(other -> rank.isPresent() && other.rank().equals(rank))
                    .forEach(other -> pair(EntryWarning.Kind.SAME_RANK, player, other));
        }
    }

    private void people() {
        List<Player> players = event.players().values().stream()
                .filter(player -> !event.withdrawals().containsKey(player.club()))
                .filter(player -> directory.person(player.id()).isPresent())
                .toList();
        List<SameName> names = players.stream()
                .map(player -> SameName.of(directory.name(player.id())))
                .toList();
        for (int one = 0; one < players.size(); one++) {
            for (int other = one + 1; other < players.size(); other++) {
                compare(players.get(one), names.get(one), players.get(other), names.get(other));
            }
        }
    }

    private void compare(Player one, SameName name, Player other, SameName otherName) {
        if (event.disputes().areTwoPeople(one.id(), other.id())) {
            return;
        }
        boolean oneSquad = one.club().equals(other.club());
        if (name.is(otherName)) {
            pair(oneSquad ? EntryWarning.Kind.TWICE_IN_SQUAD : EntryWarning.Kind.SAME_PERSON, one, other);
        } else if (!oneSquad && name.isShortened(otherName)) {
            pair(EntryWarning.Kind.SHORTENED_PERSON, one, other);
        } else if (!oneSquad && name.isLike(otherName)) {
            pair(EntryWarning.Kind.LIKE_PERSON, one, other);
        }
    }

    private void pair(EntryWarning.Kind kind, Player one, Player other) {
        warnings.add(new EntryWarning(kind, List.of(one.club(), other.club()), List.of(one.id(), other.id())));
    }
}
