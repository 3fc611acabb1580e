package tiewright.event;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the club of a slot comes from while it is not yet known: a place in a pool, or the winner or loser of a tie.
 *
 * <p>Written {@code A-1} (first of pool A), {@code winner-SF1}, {@code loser-SF1}. A pool or tie may have any code, also
 * with hyphens in it: the last hyphen parts a pool from its place, the first one parts {@code winner} and {@code loser}
 * from the tie. A pool therefore may not be called {@code winner} or {@code loser}, nor begin with {@code winner-} or
 * {@code loser-}.
 *
 * @param of the pool or the tie
 * @param place place in the pool, 1 is first; 0 where the source is a tie
 */
public record SlotSource(Kind kind, String of, int place) {
    private static final Pattern POOL_PLACE = Pattern.compile("(.+)-([1-9][0-9]{0,2})");

    /** The three kinds of source. */
    public enum Kind {
        POOL_PLACE(""),
        WINNER("winner-"),
        LOSER("loser-");

        private final String prefix;

        Kind(String prefix) {
            this.prefix = prefix;
        }
    }

    public SlotSource {
        of = Codes.checked(kind == Kind.POOL_PLACE ? "pool" : "tie", of);
        if (kind == Kind.POOL_PLACE && !isPoolName(of)) {
            throw new IllegalArgumentException("a pool may not be called \"" + of + "\"");
        }
        if (kind == Kind.POOL_PLACE ? place < 1 || place > 999 : place != 0) {
            throw new IllegalArgumentException("not a place of a " + kind + ": " + place);
        }
    }

    public static SlotSource place(String pool, int place) {
        return new SlotSource(Kind.POOL_PLACE, pool, place);
    }

    public static SlotSource winner(TieId tie) {
        return new SlotSource(Kind.WINNER, tie.code(), 0);
    }

    public static SlotSource loser(TieId tie) {
        return new SlotSource(Kind.LOSER, tie.code(), 0);
    }

    /** True where places of a pool of this name cannot be mistaken for the winner or loser of a tie. */
    public static boolean isPoolName(String pool) {
        return Codes.isCode(pool) && !(pool + "-").startsWith("winner-") && !(pool + "-").startsWith("loser-");
    }

    /** Reads what {@link #code()} writes; empty for anything else. */
    public static Optional<SlotSource> parse(String text) {
        for (Kind kind : new Kind[] {Kind.WINNER, Kind.LOSER}) {
            if (text.startsWith(kind.prefix)) {
                String tie = text.substring(kind.prefix.length());
                return Codes.isCode(tie) ? Optional.of(new SlotSource(kind, tie, 0)) : Optional.empty();
            }
        }
        Matcher place = POOL_PLACE.matcher(text);
        return place.matches() && isPoolName(place.group(1))
                ? Optional.of(place(place.group(1), Integer.parseInt(place.group(2))))
                : Optional.empty();
    }

    public String code() {
        return kind == Kind.POOL_PLACE ? of + "-" + place : kind.prefix + of;
    }

    @Override
    public String toString() {
        return code();
    }

    /** The club that its tie sends on: who won it, or who lost it. Empty while it is not finished, and for a place of a pool. */
    public Optional<ClubId> sent(Event event) {
        return switch (kind) {
            case POOL_PLACE -> Optional.empty();
            case WINNER -> sent(event, true);
            case LOSER -> sent(event, false);
        };
    }

    private Optional<ClubId> sent(Event event, boolean winner) {
        return event.tie(TieId.of(of))
                .filter(Tie::isReady)
                .flatMap(tie -> event.progress(tie).winner().flatMap(side -> tie.club(winner ? side : side.other())));
    }
}
