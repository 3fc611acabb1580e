package tiewright.standings;

import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.ClubId;

/**
 * Which places can one club have when the rubbers and games of all ties are known, but not the points of some?
 *
 * <p>Follows the club's own group through the same procedure as {@link Placing}; where a step looks at points that are
 * open, it follows every way in which that step can part the group.
 */
final class PlaceFinder {
    /** Above this many level clubs the exact splits are too many; the answer is then the whole group. */
    private static final int MOST_LEVEL = 7;

    /**
     * How the walk came to a group.
     *
     * @param ahead clubs that are ahead of the group
     * @param looked a step has looked at open points
     * @param exact every split on the way can happen together with the others
     */
    private record Path(int ahead, boolean looked, boolean exact) {
        Path behind(int more) {
            return new Path(ahead + more, looked, exact);
        }
    }

    private final List<ClubId> clubs;
    private final int own;
    private final TableRules rules;
    private final List<LotDrawn> lots;

    PlaceFinder(List<ClubId> clubs, int own, TableRules rules, List<LotDrawn> lots) {
        this.clubs = clubs;
        this.own = own;
        this.rules = rules;
        this.lots = lots;
    }

    /** @param ties every tie of the table, the open ones as they end in {@code open} */
    Outlook find(List<CountedTie> ties, List<OpenOutcome> open) {
        return new Walk(
                        new Tallies(clubs.size(), ties),
                        open.stream().filter(OpenOutcome::pointsOpen).toList())
                .start();
    }

    /** By tie points alone: anybody level may still come out on either side. */
    Outlook findByTiePoints(List<CountedTie> ties) {
        int[] all = IntStream.range(0, clubs.size()).toArray();
        Value[] values = new Tallies(clubs.size(), ties).values(Criterion.TIE_POINTS, all);
        int ahead = (int) Arrays.stream(values)
                .filter(value -> value.compareTo(values[own]) > 0)
                .count();
        int level = (int) Arrays.stream(values)
                .filter(value -> value.compareTo(values[own]) == 0)
                .count();
        Outlook outlook = Outlook.of(ahead + 1, ahead + level, level > 1);
        return level == 1 ? outlook : outlook.asBound();
    }

    /** Without going through anything: from the least and the most tie points that every club can reach. */
    Outlook bound(List<CountedTie> counted, List<List<OpenOutcome>> outcomes) {
        int[] all = IntStream.range(0, clubs.size()).toArray();
        Value[] known = new Tallies(clubs.size(), counted).values(Criterion.TIE_POINTS, all);
        long[] least = Arrays.stream(known).mapToLong(Value::won).toArray();
        long[] most = least.clone();
        for (List<OpenOutcome> ways : outcomes) {
            CountedTie any = ways.get(0).tie();
            IntSummaryStatistics home = ways.stream()
                    .mapToInt(way -> way.tie().forHome().tiePoints())
                    .summaryStatistics();
            IntSummaryStatistics away = ways.stream()
                    .mapToInt(way -> way.tie().forAway().tiePoints())
                    .summaryStatistics();
            least[any.home()] += home.getMin();
            most[any.home()] += home.getMax();
            least[any.away()] += away.getMin();
            most[any.away()] += away.getMax();
        }
        int surelyAhead =
                (int) Arrays.stream(least).filter(points -> points > most[own]).count();
        int notSurelyBehind =
                (int) Arrays.stream(most).filter(points -> points >= least[own]).count();
        return Outlook.of(surelyAhead + 1, notSurelyBehind, true).asBound();
    }

    /** One fixed set of rubbers and games. */
    private final class Walk {
        private final Tallies tallies;
        private final List<OpenOutcome> open;

        Walk(Tallies tallies, List<OpenOutcome> open) {
            this.tallies = tallies;
            this.open = open;
        }

        Outlook start() {
            int[] all = IntStream.range(0, clubs.size()).toArray();
            return follow(all, split(all, Criterion.TIE_POINTS), Procedure.TIE_POINTS, new Path(0, false, true));
        }

        private Outlook follow(int[] level, Split split, Procedure.Move move, Path path) {
            Procedure.At next = split.level().length == level.length ? move.ifStillLevel() : move.ifSeparated();
            Outlook outlook = place(split.level(), next, path.behind(split.ahead()));
            return path.exact() ? outlook : outlook.asBound();
        }

        private Outlook place(int[] level, Procedure.At at, Path path) {
            if (level.length == 1) {
                return Outlook.of(path.ahead() + 1, path.ahead() + 1, false);
            }
            Procedure.Move move = rules.procedure().move(level.length, at);
            if (move.criterion().isEmpty()) {
                return lot(level, path.ahead());
            }
            Criterion criterion = move.criterion().get();
            if (pointsOpen(criterion, level)) {
                return branch(level, criterion, move, path);
            }
            return follow(level, split(level, criterion), move, path);
        }

        private Outlook lot(int[] level, int ahead) {
            List<ClubId> names = Arrays.stream(level).mapToObj(clubs::get).toList();
            Optional<LotDrawn> drawn = LotDrawn.among(names, lots);
            if (drawn.isPresent()) {
                int place = ahead + 1 + drawn.get().order().indexOf(clubs.get(own));
                return Outlook.of(place, place, false);
            }
            return Outlook.of(ahead + 1, ahead + level.length, true);
        }

        private Split split(int[] level, Criterion criterion) {
            Value[] values = tallies.values(criterion, level);
            Value mine = values[positionOf(own, level)];
            Split.Builder split = new Split.Builder();
            for (int i = 0; i < level.length; i++) {
                int order = values[i].compareTo(mine);
                if (order > 0) {
                    split.ahead();
                } else if (order == 0) {
                    split.level(level[i]);
                }
            }
            return split.build();
        }

        private boolean pointsOpen(Criterion criterion, int[] level) {
            if (criterion.quantity() != Quantity.POINTS) {
                return false;
            }
            boolean[] in = tallies.members(level);
            return open.stream()
                    .map(OpenOutcome::tie)
                    .anyMatch(tie ->
                            criterion.among() ? in[tie.home()] && in[tie.away()] : in[tie.home()] || in[tie.away()]);
        }

        /** Joins what follows each possible split; a second look at open points is taken as free of the first: a bound. */
        private Outlook branch(int[] level, Criterion criterion, Procedure.Move move, Path path) {
            if (level.length > MOST_LEVEL) {
                return Outlook.of(path.ahead() + 1, path.ahead() + level.length, true)
                        .asBound();
            }
            boolean difference = criterion.form() == Form.DIFFERENCE;
            List<Split> splits = difference ? pointSplits(level, criterion) : looseSplits(level, criterion);
            boolean exact = splits.size() == 1 || (difference && !path.looked());
            Path after = new Path(path.ahead(), true, path.exact() && exact);
            return splits.stream()
                    .map(split -> follow(level, split, move, after))
                    .reduce(Outlook::and)
                    .orElseThrow(() -> new IllegalStateException("a group can always be parted in some way"));
        }

        private List<Split> pointSplits(int[] level, Criterion criterion) {
            Value[] known = tallies.values(criterion, level);
            return new PointSplits(level, positionOf(own, level), known, criterion.among(), open).possible();
        }

        private List<Split> looseSplits(int[] level, Criterion criterion) {
            Value[] known = tallies.values(criterion, level);
            return new LooseSplits(level, positionOf(own, level), known, criterion.among(), open).possible();
        }
    }

    private static int positionOf(int club, int[] level) {
        return IntStream.range(0, level.length)
                .filter(i -> level[i] == club)
                .findFirst()
                .orElseThrow();
    }
}
