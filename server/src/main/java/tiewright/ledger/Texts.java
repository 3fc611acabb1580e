package tiewright.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.Codes;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/** Values of several parts as the text of one column. A code has no comma and no line feed in it, so both part codes. */
final class Texts {
    private Texts() {}

    /** {@code A1,rubbers}. */
    static String exchange(ExchangeId id) {
        return id.tie() + "," + id.kind().code();
    }

    static ExchangeId exchange(String text) {
        List<String> parts = parts(text, 2);
        return new ExchangeId(
                TieId.of(parts.get(0)), SheetKind.parse(parts.get(1)).orElseThrow());
    }

    static String pair(Pair pair) {
        return pair.first() + "," + pair.second();
    }

    static Pair pair(String text) {
        List<String> parts = parts(text, 2);
        return Pair.of(parts.get(0), parts.get(1));
    }

    /** The club, a comma and the source; one of them may be empty. */
    static String slot(Slot slot) {
        return slot.club().map(ClubId::code).orElse("") + ","
                + slot.from().map(SlotSource::code).orElse("");
    }

    static Slot slot(String text) {
        List<String> parts = parts(text, 2);
        Optional<ClubId> club =
                Optional.of(parts.get(0)).filter(code -> !code.isEmpty()).map(ClubId::of);
        Optional<SlotSource> from = Optional.of(parts.get(1))
                .filter(code -> !code.isEmpty())
                .map(code -> SlotSource.parse(code).orElseThrow());
        return new Slot(club, from);
    }

    /** Reads {@link Sheet#canonical()}. */
    static Sheet sheet(String canonical) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        for (String line : canonical.split("\n")) {
            List<String> parts = parts(line, 3);
            pairs.put(
                    RubberNo.parse(parts.get(0)).orElseThrow(),
                    parts.get(1).isEmpty() ? Optional.empty() : Optional.of(Pair.of(parts.get(1), parts.get(2))));
        }
        return new Sheet(pairs);
    }

    static String clubs(List<ClubId> clubs) {
        return clubs.stream().map(ClubId::code).collect(Collectors.joining(","));
    }

    static List<ClubId> clubs(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(",")).map(ClubId::of).toList();
    }

    static String players(List<PlayerId> players) {
        return players.stream().map(PlayerId::code).collect(Collectors.joining(","));
    }

    static List<PlayerId> players(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(",")).map(PlayerId::of).toList();
    }

    /** {@code 21-19,15-21}. */
    static String scores(List<Score> games) {
        return games.stream().map(Score::toString).collect(Collectors.joining(","));
    }

    static List<Score> scores(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(",")).map(Texts::score).toList();
    }

    private static Score score(String game) {
        int dash = game.indexOf('-');
        return Score.of(Integer.parseInt(game.substring(0, dash)), Integer.parseInt(game.substring(dash + 1)));
    }

    /** A line for each pool: its name, then its clubs, parted by commas. */
    static String pools(SortedMap<String, List<ClubId>> pools) {
        StringBuilder text = new StringBuilder();
        pools.forEach((pool, clubs) -> {
            if (!Codes.isCode(pool)) {
                throw new IllegalArgumentException("not a pool name: \"" + pool + "\"");
            }
            text.append(pool);
            clubs.forEach(club -> text.append(',').append(club));
            text.append('\n');
        });
        return text.toString();
    }

    static SortedMap<String, List<ClubId>> pools(String text) {
        SortedMap<String, List<ClubId>> pools = new TreeMap<>();
        text.lines().forEach(line -> {
            List<String> parts = new ArrayList<>(List.of(line.split(",")));
            pools.put(parts.remove(0), parts.stream().map(ClubId::of).toList());
        });
        return pools;
    }

    /** {@code film=3,form=8}. */
    static String counts(SortedMap<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(count -> count.getKey() + "=" + count.getValue())
                .collect(Collectors.joining(","));
    }

    static SortedMap<String, Integer> counts(String text) {
        SortedMap<String, Integer> counts = new TreeMap<>();
        for (String count : text.isEmpty() ? new String[0] : text.split(",")) {
            counts.put(
                    count.substring(0, count.indexOf('=')), Integer.valueOf(count.substring(count.indexOf('=') + 1)));
        }
        return counts;
    }

    private static List<String> parts(String text, int count) {
        List<String> parts = List.of(text.split(",", -1));
        if (parts.size() != count) {
            throw new IllegalArgumentException("expected " + count + " parts in \"" + text + "\"");
        }
        return parts;
    }
}
