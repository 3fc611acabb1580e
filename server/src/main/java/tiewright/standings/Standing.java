package tiewright.standings;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** Where another club of a group ends up after a criterion, seen from the club that asks. */
enum Standing {
    AHEAD,
    LEVEL,
    BEHIND;

    private static final Standing[] ALL = values();

    /** Every way in which the clubs of a group can stand to the one at {@code own}, itself level: 3^(n-1) rows. */
    static Standing[][] ways(int clubs, int own) {
        int count = 1;
        for (int i = 1; i < clubs; i++) {
            count *= ALL.length;
        }
        Standing[][] ways = new Standing[count][clubs];
        for (int way = 0; way < count; way++) {
            int rest = way;
            for (int i = 0; i < clubs; i++) {
                ways[way][i] = i == own ? LEVEL : ALL[rest % ALL.length];
                rest = i == own ? rest : rest / ALL.length;
            }
        }
        return ways;
    }

    static Split split(Standing[] standing, int[] level) {
        Split.Builder split = new Split.Builder();
        for (int i = 0; i < level.length; i++) {
            switch (standing[i]) {
                case AHEAD -> split.ahead();
                case LEVEL -> split.level(level[i]);
                case BEHIND -> {}
            }
        }
        return split.build();
    }

    /** The splits of the level clubs that can still be, as one of them sees it. */
    static List<Split> possible(int[] level, int own, Predicate<Standing[]> canBe) {
        return Arrays.stream(ways(level.length, own))
                .filter(canBe)
                .map(standing -> split(standing, level))
                .toList();
    }
}
