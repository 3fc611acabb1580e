package tiewright.sheet;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;

/** Whom a club can name in one exchange, and why not the others. */
final class Squad {
    private final Event event;
    private final ExchangeId exchange;
    private final ClubId club;
    private final Directory directory;
    private final Optional<LocalTime> start;

    Squad(SheetOf whose) {
        this.event = whose.event();
        this.exchange = whose.exchange();
        this.club = whose.club();
        this.directory = whose.directory();
        this.start = event.tie(exchange.tie()).flatMap(Tie::start);
    }

    /** Everybody of the squad, in order of entry. */
    List<PlayerId> all() {
        return event.squad(club).stream().map(Player::id).toList();
    }

    /** Those who can be named. */
    List<PlayerId> here() {
        return all().stream().filter(player -> whyNot(player).isEmpty()).toList();
    }

    /** Place in the order of strength; 0 where none is given. */
    int rank(PlayerId player) {
        return event.player(player).map(p -> p.rank().orElse(0)).orElse(0);
    }

    /** What the player states to play in beside open rubbers. */
    Optional<Plays> plays(PlayerId player) {
        return directory.plays(player);
    }

    /** Who may stand in this rubber; the decider is open. */
    RubberKind kind(RubberNo rubber) {
        return event.conditions().tieRubbers().kinds().of(rubber.number());
    }

    /** The rubbers that those who can be named fill. */
    SortedSet<Integer> fillable() {
        return Fillable.of(
                here().stream().map(this::plays).toList(),
                event.conditions().maxRubbersPerPlayer(),
                event.conditions().tieRubbers());
    }

    /** Why this player cannot be named at all, whatever the rest of the sheet. */
    Optional<Refusal> whyNot(PlayerId id) {
        Optional<Player> player = event.player(id);
        if (player.isEmpty()) {
            return Optional.of(Why.NOT_IN_SQUAD.refusal().with("player", id).with("club", club));
        }
        if (!player.get().club().equals(club)) {
            return Optional.of(Why.OTHER_SQUAD
                    .refusal()
                    .with("player", id)
                    .with("other", player.get().club()));
        }
        return away(player.get())
                .or(() -> unranked(player.get()))
                .or(() -> playedForOther(id))
                .or(() -> tooFewTies(id));
    }

    private Optional<Refusal> away(Player player) {
        if (player.absent()) {
            return Optional.of(Why.ABSENT.refusal().with("player", player.id()));
        }
        if (start.isEmpty()) {
            return Optional.empty();
        }
        LocalTime begins = start.get();
        Optional<LocalTime> comesLate = player.from().filter(begins::isBefore);
        if (comesLate.isPresent() && player.checkedInAt().isEmpty()) {
            return Optional.of(Why.NOT_YET
                    .refusal()
                    .with("player", player.id())
                    .with("from", comesLate.get())
                    .with("start", begins));
        }
        return player.until()
                .filter(until -> !until.isAfter(begins))
                .map(until -> Why.LEAVES
                        .refusal()
                        .with("player", player.id())
                        .with("until", until)
                        .with("start", begins));
    }

    private Optional<Refusal> unranked(Player player) {
        boolean needed =
                exchange.kind() == SheetKind.RUBBERS && event.conditions().orderOfStrength() != OrderOfStrength.NONE;
        return needed && player.rank().isEmpty()
                ? Optional.of(Why.RANK_MISSING.refusal().with("player", player.id()))
                : Optional.empty();
    }

    private Optional<Refusal> tooFewTies(PlayerId player) {
        return event.tie(exchange.tie())
                .filter(tie -> !Eligibility.mayPlay(event, tie, player))
                .map(tie -> Why.TOO_FEW_TIES
                        .refusal()
                        .with("player", player)
                        .with("played", Eligibility.tiesPlayed(event, player))
                        .with("needed", event.conditions().eligibilityTies()));
    }

    /** An opened sheet of another club names the same player. */
    private Optional<Refusal> playedForOther(PlayerId player) {
        for (Tie tie : event.ties().values()) {
            for (Side side : Side.values()) {
                Optional<ClubId> other = tie.club(side).filter(named -> !named.equals(club));
                if (other.isPresent() && isNamed(tie, side, player)) {
                    return Optional.of(Why.PLAYED_FOR_OTHER
                            .refusal()
                            .with("player", player)
                            .with("other", other.get())
                            .with("tie", tie.id()));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isNamed(Tie tie, Side side, PlayerId player) {
        return tie.opened().values().stream()
                .anyMatch(rubber ->
                        rubber.pair(side).filter(pair -> pair.has(player)).isPresent());
    }
}
