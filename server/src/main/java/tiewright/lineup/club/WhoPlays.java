package tiewright.lineup.club;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.conditions.RubberKinds;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;

/**
 * What players play in beside open rubbers, as far as whoever asks may know it. What players state is their own club's to
 * know; that somebody stood in a rubber for women, men or a mixed pair is as public as the opened sheet.
 *
 * @param ofEverybody nothing is kept from whoever asks
 */
public record WhoPlays(Map<PlayerId, Plays> known, boolean ofEverybody) {
    public static final WhoPlays NOTHING = new WhoPlays(Map.of(), false);

    public WhoPlays {
        known = Map.copyOf(known);
    }

    public static WhoPlays everybody(Map<PlayerId, Plays> stated) {
        return new WhoPlays(stated, true);
    }

    /** What the club's own players state, and what opened sheets show of all others. */
    public static WhoPlays to(ClubId club, Event event, Map<PlayerId, Plays> stated) {
        Map<PlayerId, Plays> known = shown(event);
        event.squad(club).forEach(own -> {
            known.remove(own.id());
            Optional.ofNullable(stated.get(own.id())).ifPresent(plays -> known.put(own.id(), plays));
        });
        return new WhoPlays(known, false);
    }

    LineupProblem in(LineupProblem problem, LineupProblem.Against against, long seed) {
        return ofEverybody ? problem.stating(known, against, seed) : problem.guessing(known, against, seed);
    }

    private static Map<PlayerId, Plays> shown(Event event) {
        RubberKinds kinds = event.conditions().tieRubbers().kinds();
        Map<PlayerId, Plays> shown = new HashMap<>();
        int before;
        do { // a mixed pair shows something once one of the two is known
            before = shown.size();
            event.ties()
                    .values()
                    .forEach(tie -> tie.opened().forEach((rubber, opened) -> {
                        if (!rubber.isDecider()) {
                            Stream.of(opened.home(), opened.away())
                                    .flatMap(Optional::stream)
                                    .forEach(pair -> note(kinds.of(rubber.number()), pair, shown));
                        }
                    }));
        } while (shown.size() > before);
        return shown;
    }

    private static void note(RubberKind kind, Pair pair, Map<PlayerId, Plays> shown) {
        switch (kind) {
            case OPEN -> {}
            case WOMEN -> pair.players().forEach(player -> shown.put(player, Plays.WOMEN));
            case MEN -> pair.players().forEach(player -> shown.put(player, Plays.MEN));
            case MIXED -> {
                other(pair.first(), shown).ifPresent(plays -> shown.putIfAbsent(pair.second(), plays));
                other(pair.second(), shown).ifPresent(plays -> shown.putIfAbsent(pair.first(), plays));
            }
        }
    }

    private static Optional<Plays> other(PlayerId player, Map<PlayerId, Plays> shown) {
        return Optional.ofNullable(shown.get(player)).map(plays -> plays == Plays.WOMEN ? Plays.MEN : Plays.WOMEN);
    }
}
