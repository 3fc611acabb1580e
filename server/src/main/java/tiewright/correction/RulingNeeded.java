package tiewright.correction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.SameName;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.sheet.SheetOf;
import tiewright.sheet.SheetRules;

/**
 * What was found wrong with sheets after they were opened, by the entries and the order of strength as they are now. A
 * person decides each; nothing is applied by itself.
 */
public final class RulingNeeded {
    /** What was found. */
    public enum Kind {
        /** somebody stood there who belongs to, or stood for, another club too */
        INELIGIBLE("ineligible", Set.of("sheet.not-in-squad", "sheet.other-squad", "sheet.played-for-other")),
        /** a pair stood below a weaker one, and the conditions forbid it */
        WRONG_ORDER("wrong-order", Set.of("sheet.rank-sum", "sheet.strongest-first")),
        /** somebody stood in more rubbers than the conditions allow */
        TOO_OFTEN("too-often", Set.of("sheet.player-twice", "sheet.too-often"));

        private final String code;
        private final Set<String> refusals;

        Kind(String code, Set<String> refusals) {
            this.code = code;
            this.refusals = refusals;
        }

        public String code() {
            return code;
        }
    }

    /**
     * One sheet with one thing wrong.
     *
     * @param rubbers those concerned, top down
     * @param players those concerned; for officials and the own club only
     */
    public record Case(Kind kind, TieId tie, ClubId club, SortedSet<RubberNo> rubbers, Set<PlayerId> players) {}

    private final Event event;
    private final Directory directory;
    private final Map<PlayerId, SameName> names = new LinkedHashMap<>();
    private final List<Case> cases = new ArrayList<>();

    private RulingNeeded(Event event, Directory directory) {
        this.event = event;
        this.directory = directory;
        event.players()
                .keySet()
                .forEach(player ->
                        directory.person(player).ifPresent(person -> names.put(player, SameName.of(person.name()))));
    }

    /** In the order of the ties; what a ruling has settled is not among them. */
    public static List<Case> of(Event event, Directory directory) {
        RulingNeeded needed = new RulingNeeded(event, directory);
        event.ties().values().stream()
                .filter(Tie::isOpened)
                .filter(Tie::isReady)
                .forEach(needed::look);
        return needed.cases.stream().filter(one -> !isRuled(event, one)).toList();
    }

    /**
     * Players of other clubs who have the name of somebody in this case, by that player: they may be one person, or two.
     *
     * @return empty unless a name is what was found
     */
    public static Map<PlayerId, List<PlayerId>> namesakes(Event event, Directory directory, Case one) {
        RulingNeeded needed = new RulingNeeded(event, directory);
        Map<PlayerId, List<PlayerId>> namesakes = new LinkedHashMap<>();
        if (one.kind() == Kind.INELIGIBLE) {
            one.players().forEach(player -> {
                List<PlayerId> others = needed.namesakes(one.club(), player);
                if (!others.isEmpty()) {
                    namesakes.put(player, others);
                }
            });
        }
        return namesakes;
    }

    private static boolean isRuled(Event event, Case one) {
        return event.disputes().cases().stream()
                .anyMatch(ruled -> ruled.what().equals(one.kind().code())
                        && ruled.tie().equals(one.tie())
                        && ruled.club().equals(one.club()));
    }

    private void look(Tie tie) {
        for (Side side : Side.values()) {
            ClubId club = tie.club(side).orElseThrow();
            Sheet sheet = sheet(tie, side);
            List<Refusal> faults =
                    SheetRules.faults(new SheetOf(event, ExchangeId.sheets(tie.id()), club, directory), sheet);
            for (Kind kind : Kind.values()) {
                SortedSet<RubberNo> rubbers = new TreeSet<>();
                Set<PlayerId> players = new LinkedHashSet<>();
                faults.stream()
                        .filter(fault -> kind.refusals.contains(fault.code()))
                        .forEach(fault -> {
                            RubberNo.parse(fault.field().replace("sheet-", "")).ifPresent(rubbers::add);
                            Optional.ofNullable((PlayerId) fault.data().get("player"))
                                    .ifPresent(players::add);
                        });
                if (kind == Kind.INELIGIBLE) {
                    twice(club, sheet, rubbers, players);
                }
                if (!rubbers.isEmpty() && !(kind == Kind.WRONG_ORDER && isReplaced(tie, club))) {
                    cases.add(new Case(kind, tie.id(), club, rubbers, players));
                }
            }
        }
    }

    /** Pairs that an official changed through a door stand in the order that the official gave them. */
    private boolean isReplaced(Tie tie, ClubId club) {
        return event.exchange(ExchangeId.sheets(tie.id())).replacements().stream()
                .anyMatch(replacement -> replacement.fact().club().equals(club));
    }

    private Sheet sheet(Tie tie, Side side) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        RubberNo.upTo(event.conditions().rubbers())
                .forEach(no ->
                        pairs.put(no, Optional.ofNullable(tie.opened().get(no)).flatMap(opened -> opened.pair(side))));
        return new Sheet(pairs);
    }

    /** The same name stands in the squad of another club, and nobody has said that it is another person. */
    private void twice(ClubId club, Sheet sheet, Set<RubberNo> rubbers, Set<PlayerId> players) {
        sheet.pairs()
                .forEach((rubber, pair) -> pair.ifPresent(two -> two.players().forEach(player -> {
                    if (!namesakes(club, player).isEmpty()) {
                        rubbers.add(rubber);
                        players.add(player);
                    }
                })));
    }

    /** In another squad, and nobody has said yet that they are two people. */
    private List<PlayerId> namesakes(ClubId club, PlayerId player) {
        Optional<SameName> name = Optional.ofNullable(names.get(player));
        return event.players().values().stream()
                .filter(other -> !other.club().equals(club) && !other.id().equals(player))
                .map(Player::id)
                .filter(other -> name.isPresent()
                        && Optional.ofNullable(names.get(other))
                                .filter(name.get()::is)
                                .isPresent())
                .filter(other -> !event.disputes().areTwoPeople(player, other))
                .toList();
    }
}
