package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TieLine;
import tiewright.scoring.Score;
import tiewright.wording.Words;

/** Ties as one viewer may see them, in words and in one line. */
public final class TieViews {
    private final VisibleEvent event;
    private final Map<TieId, String> expected;

    public TieViews(VisibleEvent event) {
        this(event, Map.of());
    }

    /** @param expected when ties are likely to begin, in words */
    public TieViews(VisibleEvent event, Map<TieId, String> expected) {
        this.event = event;
        this.expected = expected;
    }

    /** When the tie is likely to begin; empty where nothing can be said. */
    public String expected(Tie tie) {
        return expected.getOrDefault(tie.id(), "");
    }

    String say(String code, Object... facts) {
        return Words.say(event, code, facts);
    }

    public String title(Tie tie) {
        return Words.say(event, "page-visit.v", "home", side(tie, Side.HOME), "away", side(tie, Side.AWAY));
    }

    /** The club, or where it will come from. */
    public String side(Tie tie, Side side) {
        return tie.club(side)
                .map(event::clubName)
                .orElseGet(() -> tie.slot(side).from().map(this::source).orElse(""));
    }

    public String source(SlotSource source) {
        return switch (source.kind()) {
            case POOL_PLACE ->
                Words.say(
                        event,
                        "page-visit.of-pool",
                        "place",
                        ordinal(Words.of(event), source.place()),
                        "source",
                        source.of());
            case WINNER -> Words.say(event, "page-visit.winner-of", "source", source.of());
            case LOSER -> Words.say(event, "page-visit.loser-of", "source", source.of());
        };
    }

    /** 1st, 2nd. */
    public static String ordinal(Words words, int place) {
        return words.say("page-visit.ordinal", "place", place);
    }

    /** Pool and round, or the round of the knockout. */
    public String stage(Tie tie) {
        if (tie.stage() == Stage.POOL) {
            return Words.say(event, "page-visit.pool-round", "pool", tie.pool().orElse(""), "round", tie.round());
        }
        if (tie.stage() == Stage.PLACING) {
            return Words.say(event, "page-visit.tie-for-places", "tie", tie.id());
        }
        if (tie.isOfLosers()) {
            return Words.say(event, "page-visit.tie-for-third-place");
        }
        int full = KnockoutRounds.full(event, tie.round());
        return full == 1
                ? Words.say(event, "page-visit.final")
                : Words.say(
                        event,
                        full == 2
                                ? "page-visit.semi-final"
                                : full == 4 ? "page-visit.quarter-final" : "page-visit.knockout",
                        "tie",
                        tie.id());
    }

    public String when(Tie tie) {
        return tie.start().map(HallClock::said).orElse(Words.say(event, "page-visit.no-time-yet"));
    }

    public String where(Tie tie) {
        List<String> courts = event.order().courts(tie);
        return courts.isEmpty() ? "" : Words.say(event, "page-visit.courts", "count", courts.size(), "courts", courts);
    }

    public TieLine line(Tie tie) {
        return line(tie, "/tie/" + tie.id(), Words.say(event, "page-visit.tie", "tie", tie.id()));
    }

    public TieLine line(Tie tie, String href, String words) {
        TieProgress progress = event.progress(tie);
        boolean begun = Scored.is(event, tie);
        Optional<Moved> moved = new Changes(event).last(tie);
        return new TieLine(
                side(tie, Side.HOME),
                begun ? Integer.toString(progress.won(Side.HOME)) : "",
                side(tie, Side.AWAY),
                begun ? Integer.toString(progress.won(Side.AWAY)) : "",
                progress.winner().map(side -> side == Side.HOME ? 1 : 2).orElse(0),
                when(tie),
                where(tie),
                state(tie),
                stage(tie) + onDuty(tie),
                href,
                words,
                moved.map(Moved::old).orElse(""),
                moved.map(Moved::why).orElse(""),
                expected(tie));
    }

    public String onDuty(Tie tie) {
        List<ClubId> umpires = event.order().umpires(tie.id());
        return umpires.isEmpty()
                ? ""
                : Words.say(
                        event,
                        "page-visit.umpires",
                        "umpires",
                        String.join(", ", umpires.stream().map(event::clubName).toList()));
    }

    public String pair(Optional<Pair> pair) {
        return Words.say(event, "page-visit.pair", "names", names(pair));
    }

    /** How far the tie is. */
    public State state(Tie tie) {
        return new TieStates(event, this).of(tie);
    }

    /** The rubbers of the conditions, and the decider once it is needed or the conditions can lead to one. */
    public List<RubberNo> rubbers(Tie tie) {
        List<RubberNo> all = new ArrayList<>(RubberNo.upTo(event.conditions().rubbers()));
        if (event.progress(tie).deciderNeeded()) {
            all.add(RubberNo.DECIDER);
        }
        return all;
    }

    /** As a title of its own, in the reader's language. */
    public static String rubber(Words words, RubberNo rubber) {
        return words.say("page-visit.rubber", "rubber", rubber, "kind", rubber.isDecider() ? "decider" : "rubber");
    }

    /** Won or lost from one side; said of a rubber that has ended. */
    String outcome(Optional<Side> winner, Side side) {
        return Words.say(
                event,
                "page-visit.outcome",
                "kind",
                winner.map(won -> won == side ? "won" : "lost").orElse("none"));
    }

    /** Within a line, in the reader's language. */
    public static String rubberWithin(Words words, RubberNo rubber) {
        return words.say(
                "page-visit.rubber-within", "rubber", rubber, "kind", rubber.isDecider() ? "decider" : "rubber");
    }

    public List<String> names(Optional<Pair> pair) {
        return pair.map(two -> List.of(event.name(two.first()), event.name(two.second())))
                .orElse(List.of(Words.say(event, "page-visit.no-pair")));
    }

    /** How a rubber ended, in words that name the club; empty for one that was simply played. */
    public String how(Tie tie, How how) {
        String home = side(tie, Side.HOME);
        String away = side(tie, Side.AWAY);
        return switch (how) {
            case PLAYED -> "";
            case RETIRED_HOME -> Words.say(event, "page-visit.retired-2", "home", home);
            case RETIRED_AWAY -> Words.say(event, "page-visit.retired", "away", away);
            case WALKOVER_HOME -> Words.say(event, "page-visit.walkover-did-not-play-2", "home", home);
            case WALKOVER_AWAY -> Words.say(event, "page-visit.walkover-did-not-play", "away", away);
            case VOID -> Words.say(event, "page-visit.void");
        };
    }

    public static String score(List<Score> games) {
        return games.stream()
                .map(game -> game.home() + "-" + game.away())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }

    public boolean isOf(Tie tie, Optional<ClubId> club) {
        return club.filter(tie::has).isPresent();
    }
}
