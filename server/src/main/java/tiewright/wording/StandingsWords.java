package tiewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.standings.Criterion;
import tiewright.standings.Form;
import tiewright.standings.Line;
import tiewright.standings.Reason;
import tiewright.standings.TieBetween;
import tiewright.standings.Value;

/** The reason for a place, in one sentence for a page, a command and paper alike. */
public final class StandingsWords {
    private final Text text = Text.of("standings");
    private final Function<ClubId, String> name;

    /** @param name how a club is called in the sentence: its name on a page, its code in a file */
    public StandingsWords(Function<ClubId, String> name) {
        this.name = name;
    }

    /** Sentences that call a club by its code. */
    public static StandingsWords withCodes() {
        return new StandingsWords(ClubId::code);
    }

    /** All steps that led to the place of the club, tie points first; never empty. */
    public String reason(ClubId club, Reason reason) {
        List<String> lines =
                reason.lines().stream().map(line -> line(club, line)).toList();
        return String.join(text.plain("lines"), lines);
    }

    /** One step. */
    public String line(ClubId club, Line line) {
        return switch (line.kind()) {
            case COMPARED -> compared(club, (Line.Compared) line);
            case BY_LOT -> byLot(club, (Line.ByLot) line);
            case LOT_NEEDED -> text.say("lot.needed", names(without(club, line.level())));
        };
    }

    private String byLot(ClubId club, Line.ByLot line) {
        List<ClubId> order = line.lot().order();
        return text.say(
                "lot.drawn", order.indexOf(club) + 1, names(order), line.lot().witness());
    }

    private String compared(ClubId club, Line.Compared line) {
        if (line.criterion().equals(Criterion.HEAD_TO_HEAD) && line.values().size() == 2) {
            return between(club, line);
        }
        StringBuilder sentence =
                new StringBuilder(text.say("compared", criterion(line.criterion()), value(line.of(club))));
        if (line.values().size() == 1) {
            return sentence.append(text.say("compared.alone")).toString();
        }
        if (!line.stillLevelWith(club).isEmpty()) {
            sentence.append(text.say("compared.level", names(line.stillLevelWith(club))));
        }
        if (!line.behind(club).isEmpty()) {
            sentence.append(text.say("compared.ahead", withValues(line, line.behind(club))));
        }
        if (!line.ahead(club).isEmpty()) {
            sentence.append(text.say("compared.behind", withValues(line, line.ahead(club))));
        }
        return sentence.toString();
    }

    private String between(ClubId club, Line.Compared line) {
        ClubId other = without(club, line.level()).get(0);
        String ties = line.ties().isEmpty()
                ? text.say("between.not-played", name.apply(other))
                : String.join(
                        text.plain("list"),
                        line.ties().stream().map(tie -> tie(club, other, tie)).toList());
        return line.stillLevelWith(club).isEmpty() ? ties : text.say("between.still-level", ties);
    }

    private String tie(ClubId club, ClubId other, TieBetween tie) {
        return text.say(
                "between." + tie.of(club),
                name.apply(other),
                tie.rubbersOf(club),
                tie.rubbersOf(other),
                tie.tie().code());
    }

    /** What a step compares, such as <em>rubbers difference</em>. */
    public String criterion(Criterion criterion) {
        String quantity = text.say("quantity." + criterion.quantity());
        String form = "form." + criterion.form() + (criterion.form() == Form.WON ? "." + criterion.quantity() : "");
        String plain = text.say(form, quantity);
        return criterion.among() ? text.say("among", plain) : plain;
    }

    private String value(Value value) {
        return switch (value.form()) {
            case WON -> text.say("value.WON", value.won());
            case DIFFERENCE -> text.say("value.DIFFERENCE", signed(value.difference()), value.won(), value.lost());
            case RATIO ->
                value.lost() == 0
                        ? text.say("value.RATIO.nothing-lost", "", value.won())
                        : text.say("value.RATIO", fraction(value), value.won(), value.lost());
        };
    }

    private static String signed(long difference) {
        return difference > 0 ? "+" + difference : Long.toString(difference);
    }

    private static String fraction(Value value) {
        return String.format(Locale.ROOT, "%.4f", (double) value.won() / value.lost());
    }

    private String withValues(Line.Compared line, List<ClubId> clubs) {
        return String.join(
                text.plain("list"),
                clubs.stream()
                        .map(club -> text.say("other", name.apply(club), value(line.of(club))))
                        .toList());
    }

    /** <em>A</em>, <em>A and B</em>, <em>A, B and C</em>. */
    String names(List<ClubId> clubs) {
        return text.enumerate(clubs.stream().map(name).toList(), "and");
    }

    private static List<ClubId> without(ClubId club, List<ClubId> clubs) {
        List<ClubId> others = new ArrayList<>(clubs);
        others.remove(club);
        return others;
    }
}
