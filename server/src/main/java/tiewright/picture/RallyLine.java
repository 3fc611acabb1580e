package tiewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A game rally by rally: how far one side was ahead, to the right as it went on. In units of the drawing, {@link #WIDTH} wide.
 *
 * @param points the corners of the line, as SVG writes them
 * @param level where nobody is ahead
 */
public record RallyLine(String points, int level, List<Tick> leads, List<Tick> rallies) {
    public static final int WIDTH = 358;
    public static final int HEIGHT = 120;

    private static final int LEFT = 30;
    private static final int RIGHT = 8;
    private static final int TOP = 8;
    private static final int FOOT = 22;
    private static final int FEW = 3;
    private static final int MOST_TICKS = 6;

    public RallyLine {
        leads = List.copyOf(leads);
        rallies = List.copyOf(rallies);
    }

    /** @param at across for a rally, down for a lead */
    public record Tick(int at, int value) {}

    /** @param ahead points of one side minus those of the other, before the first rally and after each */
    public static RallyLine of(List<Integer> ahead) {
        int most = Math.max(FEW, ahead.stream().mapToInt(Math::abs).max().orElse(0));
        int last = Math.max(1, ahead.size() - 1);
        List<String> corners = new ArrayList<>();
        for (int i = 0; i < ahead.size(); i++) {
            corners.add(x(i, last) + "," + y(ahead.get(i), most));
        }
        List<Tick> rallies = new ArrayList<>();
        int step = step(last);
        for (int rally = 0; rally <= last; rally += step) {
            rallies.add(new Tick(x(rally, last), rally));
        }
        return new RallyLine(
                corners.stream().collect(Collectors.joining(" ")),
                y(0, most),
                List.of(new Tick(y(most, most), most), new Tick(y(0, most), 0), new Tick(y(-most, most), -most)),
                rallies);
    }

    /** Whole fives, or all where there are few. */
    private static int step(int last) {
        return last <= MOST_TICKS ? 1 : 5 * Math.max(1, (last + 5 * MOST_TICKS - 1) / (5 * MOST_TICKS));
    }

    private static int x(int rally, int last) {
        return LEFT + Math.round((float) rally * (WIDTH - LEFT - RIGHT) / last);
    }

    private static int y(int ahead, int most) {
        int half = (HEIGHT - TOP - FOOT) / 2;
        return TOP + half - Math.round((float) ahead * half / most);
    }

    /** How low the picture reaches before its numbers. */
    public int axis() {
        return HEIGHT - FOOT;
    }
}
