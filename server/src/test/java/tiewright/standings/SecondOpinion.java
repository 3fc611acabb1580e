package tiewright.standings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import tiewright.event.ClubId;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;

/**
 * The four named procedures written out a second time, straight from their text, from the cards and with no code of the
 * tables: the answer is a list of groups, best first, a group being clubs that only a lot can part.
 */
final class SecondOpinion {
    private final Collection<TieScore> ties;
    private final double win;
    private final double draw;
    private final double loss;

    SecondOpinion(Collection<TieScore> ties, int win, int draw, int loss) {
        this.ties = ties.stream().filter(TieScore::finished).toList();
        this.win = win;
        this.draw = draw;
        this.loss = loss;
    }

    List<Set<ClubId>> order(String procedure, Collection<ClubId> clubs) {
        List<Set<ClubId>> order = new ArrayList<>();
        for (Set<ClubId> level : by(clubs, club -> tiePoints(club, null))) {
            order.addAll(
                    switch (procedure) {
                        case "overall-difference" -> overall(level, 0);
                        case "among-level-ratio" -> among(level);
                        case "head-to-head-points" -> headToHeadPoints(level);
                        case "rubbers-won" -> rubbersWon(level);
                        default -> throw new IllegalArgumentException(procedure);
                    });
        }
        return order;
    }

    /** Two level: the tie between them; more: rubbers, games, points difference; whenever two are left: their tie. */
    private List<Set<ClubId>> overall(Set<ClubId> level, int step) {
        if (level.size() == 2) {
            List<Set<ClubId>> two = by(level, club -> tiePoints(club, level));
            if (two.size() == 2) {
                return two;
            }
        }
        if (level.size() == 1 || step == 3) {
            return List.of(level);
        }
        List<Set<ClubId>> order = new ArrayList<>();
        by(level, club -> difference(club, step, null)).forEach(part -> order.addAll(overall(part, step + 1)));
        return order;
    }

    /** Tie points, then ratios of rubbers, games, points, only among them; those still level start again. */
    private List<Set<ClubId>> among(Set<ClubId> level) {
        for (int step = 0; step < 4; step++) {
            int now = step;
            List<Set<ClubId>> parts =
                    by(level, club -> now == 0 ? tiePoints(club, level) : ratio(club, now - 1, level));
            if (parts.size() > 1) {
                List<Set<ClubId>> order = new ArrayList<>();
                parts.forEach(part -> order.addAll(among(part)));
                return order;
            }
        }
        return List.of(level);
    }

    /** Ties won among the level clubs, then the points difference over all ties. */
    private List<Set<ClubId>> headToHeadPoints(Set<ClubId> level) {
        List<Set<ClubId>> order = new ArrayList<>();
        by(
                        level,
                        club -> of(club, level).stream()
                                .filter(tie -> tie.winner()
                                        .map(tie::club)
                                        .filter(club::equals)
                                        .isPresent())
                                .count())
                .forEach(part -> order.addAll(by(part, club -> difference(club, 2, null))));
        return order;
    }

    /** Rubbers won over all, the ties among them, games difference, points difference. */
    private List<Set<ClubId>> rubbersWon(Set<ClubId> level) {
        List<Set<ClubId>> order = new ArrayList<>();
        for (Set<ClubId> first : by(level, club -> sum(club, 0, null, true))) {
            for (Set<ClubId> second : by(first, club -> tiePoints(club, first))) {
                for (Set<ClubId> third : by(second, club -> difference(club, 1, null))) {
                    order.addAll(by(third, club -> difference(club, 2, null)));
                }
            }
        }
        return order;
    }

    private static List<Set<ClubId>> by(Collection<ClubId> clubs, ToDoubleFunction<ClubId> value) {
        TreeMap<Double, Set<ClubId>> groups = new TreeMap<>();
        clubs.forEach(club -> groups.computeIfAbsent(-value.applyAsDouble(club), v -> new TreeSet<>())
                .add(club));
        return List.copyOf(groups.values());
    }

    private List<TieScore> of(ClubId club, @org.jspecify.annotations.Nullable Set<ClubId> among) {
        return ties.stream()
                .filter(tie -> tie.has(club))
                .filter(tie -> among == null || (among.contains(tie.home()) && among.contains(tie.away())))
                .toList();
    }

    double tiePoints(ClubId club, @org.jspecify.annotations.Nullable Set<ClubId> among) {
        double points = 0;
        for (TieScore tie : of(club, among)) {
            points +=
                    tie.winner().isEmpty() ? draw : tie.club(tie.winner().get()).equals(club) ? win : loss;
        }
        return points;
    }

    /** @param what 0 rubbers, 1 games, 2 points */
    double sum(ClubId club, int what, @org.jspecify.annotations.Nullable Set<ClubId> among, boolean own) {
        int sum = 0;
        for (TieScore tie : of(club, among)) {
            Side side = tie.home().equals(club) == own ? Side.HOME : Side.AWAY;
            for (RubberScore rubber : tie.rubbers()) {
                sum += what == 0
                        ? (rubber.winner().filter(side::equals).isPresent() ? 1 : 0)
                        : what == 1 ? rubber.gamesWon(side) : rubber.points(side);
            }
        }
        return sum;
    }

    double difference(ClubId club, int what, @org.jspecify.annotations.Nullable Set<ClubId> among) {
        return sum(club, what, among, true) - sum(club, what, among, false);
    }

    private double ratio(ClubId club, int what, Set<ClubId> among) {
        double lost = sum(club, what, among, false);
        return lost == 0
                ? Double.POSITIVE_INFINITY
                : BigDecimal.valueOf(sum(club, what, among, true))
                        .divide(BigDecimal.valueOf(lost), MathContext.DECIMAL64)
                        .doubleValue();
    }
}
