package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import tiewright.event.PlayerId;
import tiewright.lineup.Freshness;

/** What single constraints on the plan of a day look at: one player through all ties, or one tie. */
final class DayScore {
    private static final double BILLION = 1e9;

    private final DayProblem day;
    private final List<PlayerId> players;
    private final List<DayProblem.Before> before;
    private final int[] floors;

    DayScore(DayProblem day) {
        this.day = day;
        this.players = day.players();
        this.before = players.stream().map(day::before).toList();
        this.floors = players.stream().mapToInt(day.wanted()::floor).toArray();
    }

    DayProblem day() {
        return day;
    }

    List<PlayerId> players() {
        return players;
    }

    /** Rubbers missing to what was promised to a player. */
    int missing(int player, List<DaySheet> sheets) {
        int rubbers = before.get(player).rubbers();
        for (DaySheet sheet : sheets) {
            rubbers += sheet.rubbers().get(player);
        }
        return Math.max(0, floors[player] - rubbers);
    }

    /** Ties in a row beyond what the captain wants, each tie too many counted. */
    int tooManyInARow(int player, List<DaySheet> sheets) {
        int most = day.wanted().mostInARow();
        if (most == 0) {
            return 0;
        }
        int run = before.get(player).inARow();
        int tooMany = 0;
        for (DaySheet sheet : inOrder(sheets)) {
            run = sheet.names(player) ? run + 1 : 0;
            tooMany += run > most ? 1 : 0;
        }
        return tooMany;
    }

    /** What short rest and many rubbers take off the aims, in billionths. */
    long tired(int player, List<DaySheet> sheets) {
        int rubbers = before.get(player).rubbers();
        OptionalInt ended = before.get(player).lastEnded();
        double lost = 0;
        for (DaySheet sheet : inOrder(sheets)) {
            DayProblem.Ahead tie = day.ties().get(sheet.tie());
            if (sheet.names(player)) {
                OptionalInt rest = ended.isPresent()
                        ? OptionalInt.of(Math.max(0, tie.starts() - ended.getAsInt()))
                        : OptionalInt.empty();
                lost += tie.weight() * sheet.slopes().get(player) * day.tired().loss(new Freshness.Load(rubbers, rest));
                rubbers += sheet.rubbers().get(player);
                ended = OptionalInt.of(tie.starts() + Freshness.RUBBER_MINUTES);
            }
        }
        return Math.round(lost * BILLION);
    }

    long aim(DaySheet sheet) {
        return Math.round(day.ties().get(sheet.tie()).weight() * sheet.worth() * BILLION);
    }

    long learning(DaySheet sheet) {
        return Math.round((1 - day.ties().get(sheet.tie()).weight()) * DayProblem.BIT * sheet.bits() * BILLION);
    }

    private static List<DaySheet> inOrder(List<DaySheet> sheets) {
        for (int i = 1; i < sheets.size(); i++) {
            if (sheets.get(i - 1).tie() > sheets.get(i).tie()) {
                List<DaySheet> sorted = new ArrayList<>(sheets);
                sorted.sort(Comparator.comparingInt(DaySheet::tie));
                return sorted;
            }
        }
        return sheets;
    }
}
