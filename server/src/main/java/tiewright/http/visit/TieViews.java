package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
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
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Mark;
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
        return Words.of(event).say(code, facts);
    }

    public String title(Tie tie) {
        return Words.of(event).say("page-visit.v", "home", side(tie, Side.HOME), "away", side(tie, Side.AWAY));
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
                Words.of(event)
                        .say(
                                "page-visit.of-pool",
                                "place",
                                ordinal(Words.of(event), source.place()),
                                "source",
                                source.of());
            case WINNER -> Words.of(event).say("page-visit.winner-of", "source", source.of());
            case LOSER -> Words.of(event).say("page-visit.loser-of", "source", source.of());
        };
    }

    /** 1st, 2nd. */
    public static String ordinal(Words words, int place) {
        return words.say("page-visit.ordinal", "place", place);
    }

    /** Pool and round, or the round of the knockout. */
    public String stage(Tie tie) {
        if (tie.stage() == Stage.POOL) {
            return Words.of(event)
                    .say("page-visit.pool-round", "pool", tie.pool().orElse(""), "round", tie.round());
        }
        if (isForLosers(tie)) {
            return Words.of(event).say("page-visit.tie-for-third-place");
        }
        int full = KnockoutRounds.full(event, tie.round());
        return full == 1
                ? Words.of(event).say("page-visit.final")
                : Words.of(event)
                        .say(
                                full == 2
                                        ? "page-visit.semi-final"
                                        : full == 4 ? "page-visit.quarter-final" : "page-visit.knockout",
                                "tie",
                                tie.id());
    }

    public static boolean isForLosers(Tie tie) {
        return tie.home()
                .from()
                .filter(source -> source.kind() == SlotSource.Kind.LOSER)
                .isPresent();
    }

    public String when(Tie tie) {
        return tie.start().map(HallClock::said).orElse(Words.of(event).say("page-visit.no-time-yet"));
    }

    public String where(Tie tie) {
        List<String> courts = event.order().courts(tie);
        return courts.isEmpty()
                ? ""
                : Words.of(event).say("page-visit.courts", "count", courts.size(), "courts", courts);
    }

    public TieLine line(Tie tie) {
        return line(tie, "/tie/" + tie.id(), Words.of(event).say("page-visit.tie", "tie", tie.id()));
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
                : Words.of(event)
                        .say(
                                "page-visit.umpires",
                                "umpires",
                                String.join(
                                        ", ",
                                        umpires.stream().map(event::clubName).toList()));
    }

    public String pair(Optional<Pair> pair) {
        return Words.of(event).say("page-visit.pair", "names", names(pair));
    }

    public State state(Tie tie) {
        TieProgress progress = event.progress(tie);
        if (event.isGone(tie) && !(progress.finished() && Scored.is(event, tie))) {
            return new State(Mark.STOP, Words.of(event).say("page-visit.withdrew-not-played", "tie", gone(tie)));
        }
        if (!progress.held().isEmpty()) {
            return new State(Mark.HELD, Words.of(event).say("page-visit.two-cards-differ"));
        }
        if (!tie.stopped().isEmpty()) {
            return new State(Mark.HELD, Words.of(event).say("page-visit.play-stopped"));
        }
        if (progress.finished() && !progress.rubbers().isEmpty()) {
            return new State(
                    Mark.FINAL,
                    progress.winner()
                            .map(side -> Words.of(event).say("page-visit.won", "side", side(tie, side)))
                            .orElseGet(() -> Words.of(event).say("page-visit.drawn")));
        }
        if (progress.awaitsDecider()) {
            return tie.isDeciderOpened()
                    ? new State(Mark.PLAYING, Words.of(event).say("page-visit.decider"))
                    : new State(Mark.HELD, Words.of(event).say("page-visit.level-decider-to-be-named"));
        }
        if (!tie.calls().isEmpty()) {
            return new State(Mark.PLAYING, Words.of(event).say("page-visit.on-court"));
        }
        if (!progress.rubbers().isEmpty()) {
            return new State(Mark.PLAYING, Words.of(event).say("page-visit.being-played"));
        }
        if (tie.isOpened()) {
            return new State(Mark.OPENED, Words.of(event).say("page-visit.sheets-opened"));
        }
        return beforeOpening(tie);
    }

    private String gone(Tie tie) {
        return tie.clubs().stream()
                .filter(event.withdrawals()::containsKey)
                .map(event::clubName)
                .collect(java.util.stream.Collectors.joining(" and "));
    }

    private State beforeOpening(Tie tie) {
        VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
        boolean home = exchange.home().in();
        boolean away = exchange.away().in();
        if (home && away) {
            return new State(Mark.SEALED, Words.of(event).say("page-visit.both-sheets-in"));
        }
        if (home || away) {
            return new State(
                    Mark.SEALED,
                    Words.of(event).say("page-visit.sheet-in", "club", side(tie, home ? Side.HOME : Side.AWAY)));
        }
        return exchange.deadline().isPresent() && tie.isReady()
                ? new State(
                        Mark.PLAIN,
                        Words.of(event)
                                .say(
                                        "page-visit.sheets-until",
                                        "deadline",
                                        HallClock.said(
                                                event.clock(exchange.deadline().get()))))
                : State.NONE;
    }

    /** The rubbers of the conditions, and the decider once it is needed or the conditions can lead to one. */
    public List<RubberNo> rubbers(Tie tie) {
        List<RubberNo> all = new ArrayList<>(RubberNo.upTo(event.conditions().rubbers()));
        if (event.progress(tie).deciderNeeded()) {
            all.add(RubberNo.DECIDER);
        }
        return all;
    }

    public static String rubber(RubberNo rubber) {
        return rubber.isDecider() ? "Decider" : "Rubber " + rubber;
    }

    public List<String> names(Optional<Pair> pair) {
        return pair.map(two -> List.of(event.name(two.first()), event.name(two.second())))
                .orElse(List.of(Words.of(event).say("page-visit.no-pair")));
    }

    /** How a rubber ended, in words that name the club; empty for one that was simply played. */
    public String how(Tie tie, How how) {
        String home = side(tie, Side.HOME);
        String away = side(tie, Side.AWAY);
        return switch (how) {
            case PLAYED -> "";
            case RETIRED_HOME -> Words.of(event).say("page-visit.retired-2", "home", home);
            case RETIRED_AWAY -> Words.of(event).say("page-visit.retired", "away", away);
            case WALKOVER_HOME -> Words.of(event).say("page-visit.walkover-did-not-play-2", "home", home);
            case WALKOVER_AWAY -> Words.of(event).say("page-visit.walkover-did-not-play", "away", away);
            case VOID -> Words.of(event).say("page-visit.void");
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
