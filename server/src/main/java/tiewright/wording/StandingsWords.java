package tiewright.wording;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tiewright.event.ClubId;
import tiewright.standings.Criterion;
import tiewright.standings.Form;
import tiewright.standings.Line;
import tiewright.standings.Reason;
import tiewright.standings.TieBetween;
import tiewright.standings.Value;

/** The reason for a place, in one sentence for a page, a command and paper alike. */
public final class StandingsWords {
    private final Words words;

    /** @param words call a club by its name on a page, by its code in a file */
    public StandingsWords(Words words) {
        this.words = words;
    }

    /** Sentences that call a club by its code. */
    public static StandingsWords withCodes() {
        return new StandingsWords(Words.ofCodes(ZoneOffset.UTC));
    }

    /** All steps that led to the place of the club, tie points first; never empty. */
    public String reason(ClubId club, Reason reason) {
        List<String> lines =
                reason.lines().stream().map(line -> line(club, line)).toList();
        return words.list(lines, "lines");
    }

    /** One step. */
    public String line(ClubId club, Line line) {
        return switch (line.kind()) {
            case COMPARED -> compared(club, (Line.Compared) line);
            case BY_LOT -> byLot(club, (Line.ByLot) line);
            case LOT_NEEDED -> say("lot.needed", "clubs", without(club, line.level()));
        };
    }

    private String byLot(ClubId club, Line.ByLot line) {
        List<ClubId> order = line.lot().order();
        return say(
                "lot.drawn",
                "place",
                order.indexOf(club) + 1,
                "order",
                order,
                "witness",
                line.lot().witness());
    }

    private String compared(ClubId club, Line.Compared line) {
        if (line.criterion().equals(Criterion.HEAD_TO_HEAD) && line.values().size() == 2) {
            return between(club, line);
        }
        StringBuilder sentence = new StringBuilder(
                say("compared", "criterion", criterion(line.criterion()), "value", value(line.of(club))));
        if (line.values().size() == 1) {
            return sentence.append(say("compared.alone")).toString();
        }
        if (!line.stillLevelWith(club).isEmpty()) {
            sentence.append(say("compared.level", "clubs", line.stillLevelWith(club)));
        }
        if (!line.behind(club).isEmpty()) {
            sentence.append(say("compared.ahead", "clubs", withValues(line, line.behind(club))));
        }
        if (!line.ahead(club).isEmpty()) {
            sentence.append(say("compared.behind", "clubs", withValues(line, line.ahead(club))));
        }
        return sentence.toString();
    }

    private String between(ClubId club, Line.Compared line) {
        ClubId other = without(club, line.level()).get(0);
        String ties = line.ties().isEmpty()
                ? say("between.not-played", "club", other)
                : words.list(
                        line.ties().stream().map(tie -> tie(club, other, tie)).toList(), "plain");
        return line.stillLevelWith(club).isEmpty() ? ties : say("between.still-level", "ties", ties);
    }

    private String tie(ClubId club, ClubId other, TieBetween tie) {
        return say(
                (tie.isByWeight() ? "by-weight." : "between.") + tie.of(club),
                "club",
                other,
                "won",
                tie.rubbersOf(club),
                "lost",
                tie.rubbersOf(other),
                "tie",
                tie.tie());
    }

    /** What a step compares, such as <em>rubbers difference</em>. */
    public String criterion(Criterion criterion) {
        String quantity = say("quantity." + criterion.quantity());
        String form = "form." + criterion.form() + (criterion.form() == Form.WON ? "." + criterion.quantity() : "");
        String plain = say(form, "what", quantity);
        return criterion.among() ? say("among", "what", plain) : plain;
    }

    private String value(Value value) {
        return switch (value.form()) {
            case WON -> say("value.WON", "won", value.won());
            case DIFFERENCE ->
                say(
                        "value.DIFFERENCE",
                        "difference",
                        signed(value.difference()),
                        "won",
                        value.won(),
                        "lost",
                        value.lost());
            case RATIO ->
                value.lost() == 0
                        ? say("value.RATIO.nothing-lost", "won", value.won())
                        : say("value.RATIO", "ratio", fraction(value), "won", value.won(), "lost", value.lost());
        };
    }

    private static String signed(long difference) {
        return difference > 0 ? "+" + difference : Long.toString(difference);
    }

    private static String fraction(Value value) {
        return String.format(Locale.ROOT, "%.4f", (double) value.won() / value.lost());
    }

    private List<String> withValues(Line.Compared line, List<ClubId> clubs) {
        return clubs.stream()
                .map(club -> say("other", "club", club, "value", value(line.of(club))))
                .toList();
    }

    private String say(String key, Object... namesAndValues) {
        return words.say("standings." + key, namesAndValues);
    }

    private static List<ClubId> without(ClubId club, List<ClubId> clubs) {
        List<ClubId> others = new ArrayList<>(clubs);
        others.remove(club);
        return others;
    }
}
