package tiewright.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Estimates with their doubt, one below the other on one axis: a line as long as the doubt, a dot at the best guess. In units of
 * the drawing, {@link #WIDTH} wide.
 *
 * @param even where neither side is ahead
 */
public record EstimatePicture(int height, List<Row> rows, List<Tick> ticks, int even) {
    public static final int WIDTH = 358;

    private static final int LANE = 30;
    private static final int FOOT = 24;
    private static final int NARROWEST_NAME = 64;
    private static final int WIDEST_NAME = 190;
    private static final int LETTER = 8;
    private static final int RIGHT = 44;
    private static final int MARGIN = 8;
    /** Steps of the axis; the least is taken whose numbers do not run into each other. */
    private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100};

    /** Room for a number such as +10, or for the word that says even. */
    private static final int NUMBER = 34;

    public EstimatePicture {
        rows = List.copyOf(rows);
        ticks = List.copyOf(ticks);
    }

    /**
     * An estimate, its ends in the unit of the axis.
     *
     * @param isFirm enough was seen to act on it
     * @param seen how much was seen, for the right edge
     * @param words all of it in words, for those who hear the picture
     */
    public record Line(String name, double low, double best, double high, boolean isFirm, String seen, String words) {
        public Line {
            if (!(low <= best && best <= high)) {
                throw new IllegalArgumentException("not an interval: " + low + ", " + best + ", " + high);
            }
        }
    }

    /**
     * Where an estimate is drawn.
     *
     * @param squeezed how wide its name may be where it is too long for its column; 0 where it is not
     */
    public record Row(Line line, int y, int low, int best, int high, int squeezed) {}

    /** @param value in the unit of the axis */
    public record Tick(int x, int value) {}

    public static EstimatePicture of(List<Line> lines) {
        int longest = lines.stream()
                .map(Line::name)
                .mapToInt(name -> LETTER * name.codePointCount(0, name.length()))
                .max()
                .orElse(0);
        int left = Math.min(WIDEST_NAME, Math.max(NARROWEST_NAME, longest)) + MARGIN;
        Scale scale = Scale.of(lines, left);
        List<Row> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(new Row(
                    line,
                    rows.size() * LANE + LANE / 2,
                    scale.x(line.low()),
                    scale.x(line.best()),
                    scale.x(line.high()),
                    LETTER * line.name().length() > left - MARGIN ? left - MARGIN : 0));
        }
        return new EstimatePicture(lines.size() * LANE + FOOT, rows, scale.ticks(), scale.x(0));
    }

    /** How low the lines reach: there the axis lies. */
    public int axis() {
        return height - FOOT;
    }

    /** From and to in the unit of the axis, both whole steps and even among them. */
    private record Scale(int from, int to, int step, int left) {
        static Scale of(List<Line> lines, int left) {
            double low = Math.min(0, lines.stream().mapToDouble(Line::low).min().orElse(0));
            double high =
                    Math.max(0, lines.stream().mapToDouble(Line::high).max().orElse(0));
            return Arrays.stream(STEPS)
                    .mapToObj(step -> of(low, high, step, left))
                    .filter(Scale::hasRoom)
                    .findFirst()
                    .orElseGet(() -> of(low, high, 2 * STEPS[STEPS.length - 1], left));
        }

        private static Scale of(double low, double high, int step, int left) {
            int from = (int) Math.floor(low / step) * step;
            int to = (int) Math.ceil(high / step) * step;
            return new Scale(from, from == to ? to + step : to, step, left);
        }

        private boolean hasRoom() {
            return x(from + step) - x(from) >= NUMBER;
        }

        int x(double value) {
            int from0 = left + MARGIN;
            int width = WIDTH - RIGHT - MARGIN - from0;
            return from0 + (int) Math.round((value - from) * width / (to - from));
        }

        List<Tick> ticks() {
            List<Tick> ticks = new ArrayList<>();
            for (int value = from; value <= to; value += step) {
                ticks.add(new Tick(x(value), value));
            }
            return ticks;
        }
    }
}
