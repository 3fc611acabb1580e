package tiewright.lineup.club;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.TiePlaces;
import tiewright.sheet.Eligibility;
import tiewright.sheet.StrengthOrder;

/** One club's day: how often its players have been on court, and what the ties ahead can still give them. */
final class ClubDay {
    private final Event event;
    private final ClubId club;
    private final Map<TieId, List<PlayerId>> resting = new HashMap<>();

    /** @param own the club's notes: who is to rest in which tie */
    ClubDay(Event event, ClubId club, List<PrivateNote> own) {
        this.event = event;
        this.club = club;
        for (PrivateNote note : own) {
            if (note instanceof PrivateNote.TieWish wish && wish.club().equals(club)) {
                resting.put(wish.tie(), wish.mustRest());
            }
        }
    }

    /** Ties that are sure to come and whose sheets are not open, whether or not the other club is known. */
    List<Tie> ahead() {
        return event.ties().values().stream()
                .filter(tie -> isAhead(event, tie, club))
                .toList();
    }

    static boolean isAhead(Event event, Tie tie, ClubId club) {
        boolean calledOff = Stream.of(Side.values())
                .flatMap(side -> tie.club(side).stream())
                .anyMatch(event.withdrawals()::containsKey);
        return tie.has(club)
                && !tie.isOpened()
                && !calledOff
                && !event.progress(tie).finished();
    }

    /** What a tie can give at best. */
    TiePlaces places(Tie tie) {
        Set<PlayerId> out = event.squad(club).stream()
                .filter(player -> !LineupInputs.isHere(player, tie) || !Eligibility.mayPlay(event, tie, player.id()))
                .map(Player::id)
                .collect(Collectors.toSet());
        int each = event.conditions().maxRubbersPerPlayer();
        int filled = StrengthOrder.fullest(
                event.squad(club).size() - out.size(), each, event.conditions().rubbers());
        return new TiePlaces(2 * filled, Math.min(each, filled), out);
    }

    /** The same without those whom the captain wants to rest in it. */
    TiePlaces granted(Tie tie) {
        TiePlaces places = places(tie);
        Set<PlayerId> out = new HashSet<>(places.out());
        out.addAll(mustRest(tie));
        return new TiePlaces(places.all(), places.each(), out);
    }

    List<PlayerId> mustRest(Tie tie) {
        return resting.getOrDefault(tie.id(), List.of());
    }

    /** Another tie may come that nobody can be sure of: in the knockout, if the club goes through. */
    boolean mayGoOn() {
        return !event.withdrawals().containsKey(club)
                && event.ties().values().stream().anyMatch(tie -> !tie.has(club) && mayCome(tie, new HashSet<>()));
    }

    private boolean mayCome(Tie tie, Set<TieId> seen) {
        return seen.add(tie.id())
                && Stream.of(Side.values())
                        .filter(side -> tie.club(side).isEmpty())
                        .flatMap(side -> tie.slot(side).from().stream())
                        .anyMatch(source -> mayFill(source, seen));
    }

    private boolean mayFill(SlotSource source, Set<TieId> seen) {
        if (source.kind() == SlotSource.Kind.POOL_PLACE) {
            return event.pools().getOrDefault(source.of(), List.of()).contains(club);
        }
        return event.tie(TieId.of(source.of()))
                .filter(tie -> tie.has(club) || mayCome(tie, seen))
                .isPresent();
    }

    /** Rubbers of today: played or on court, and named on an opened sheet and still to be played. */
    record Had(Map<PlayerId, Integer> played, Map<PlayerId, Integer> named) {
        int all(PlayerId player) {
            return played.getOrDefault(player, 0) + named.getOrDefault(player, 0);
        }
    }

    /** @param without a tie that does not count, for it is the one asked about */
    Had had(Optional<TieId> without) {
        Had had = new Had(new TreeMap<>(), new TreeMap<>());
        event.ties().values().stream()
                .filter(tie -> without.filter(tie.id()::equals).isEmpty())
                .forEach(tie -> tie.sideOf(club).ifPresent(side -> count(tie, side, had)));
        return had;
    }

    private void count(Tie tie, Side side, Had had) {
        List<RubberNo> left = event.progress(tie).left();
        tie.opened().forEach((rubber, opened) -> {
            Card card = tie.card(rubber);
            Optional<Pair> pair = opened.pair(side);
            boolean onCourt =
                    card.standing() == Card.Standing.EMPTY && tie.calls().containsKey(rubber);
            if (onCourt
                    || card.standing() == Card.Standing.HELD
                    || card.score(rubber).filter(ClubDay::wasPlayed).isPresent()) {
                pair.ifPresent(two -> note(two, had.played()));
            } else if (left.contains(rubber) && opened.pair(side.other()).isPresent()) {
                pair.ifPresent(two -> note(two, had.named()));
            }
        });
    }

    private static boolean wasPlayed(RubberScore score) {
        return score.how() == How.PLAYED || score.how().isRetirement();
    }

    private static void note(Pair pair, Map<PlayerId, Integer> rubbers) {
        rubbers.merge(pair.first(), 1, Integer::sum);
        rubbers.merge(pair.second(), 1, Integer::sum);
    }
}
