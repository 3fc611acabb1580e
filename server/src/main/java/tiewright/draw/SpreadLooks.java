package tiewright.draw;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Which states of a spread, and which of its bins, are alike but for names? What is alike is counted once. */
final class SpreadLooks {
    private final SpreadState state;

    SpreadLooks(SpreadState state) {
        this.state = state;
    }

    /** How a bin looks to those who are left: equal looks allow equally many ways. */
    String ofBin(int bin) {
        StringBuilder look = new StringBuilder(look(state.bin(bin)));
        for (int g = 0; g < state.groups(); g++) {
            if (state.membersLeft(g) > 0) {
                look.append((char) ('0' + state.in()[g][bin]));
            }
        }
        return look.toString();
    }

    private static String look(SpreadState.Bin bin) {
        return "" + (char) ('0' + bin.room()) + bin.half() + (char) ('1' + bin.tag()) + (bin.reserved() ? 'r' : '-');
    }

    /** The same for states that differ only in the names of bins and groups; never the same for states that differ otherwise. */
    String key() {
        List<Integer> groups = new SpreadColours(state.bins(), state.in(), b -> look(state.bin(b)), this::rest)
                .sorted(IntStream.range(0, state.groups())
                        .filter(g -> state.membersLeft(g) > 0)
                        .toArray());
        String[] columns = new String[state.bins()];
        for (int b = 0; b < state.bins(); b++) {
            StringBuilder column = new StringBuilder(look(state.bin(b)));
            for (int g : groups) {
                column.append((char) ('0' + state.in()[g][b]));
            }
            columns[b] = column.toString();
        }
        Arrays.sort(columns, Collections.reverseOrder());
        StringBuilder key = new StringBuilder(state.budget());
        for (int g : groups) {
            key.append('|').append(rest(g));
        }
        key.append('+').append(byesAndFreeLeft());
        return key.append('#').append(String.join("|", columns)).toString();
    }

    private String rest(int group) {
        StringBuilder rest = new StringBuilder();
        boolean halfMatters = false;
        for (int k = 0; k < state.kinds().size(); k++) {
            rest.append((char) ('0' + state.left(group, k)));
            halfMatters |= state.kinds().get(k).avoidsFirst() && state.left(group, k) > 0;
        }
        return halfMatters ? rest.append('/').append(state.halfOfFirst(group)).toString() : rest.toString();
    }

    private String byesAndFreeLeft() {
        return IntStream.range(0, state.kinds().size())
                .filter(k -> state.kinds().get(k).bye() || state.kinds().get(k).free())
                .mapToObj(k -> ""
                        + IntStream.range(0, state.groups())
                                .map(g -> state.left(g, k))
                                .sum())
                .toList()
                .toString();
    }
}
