package tiewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A day on its courts: time runs to the right, each court is a lane. In units of the drawing, {@link #WIDTH} wide.
 *
 * @param ticks the full hours, the first and the last included
 * @param now where the moment of the picture lies; empty before and after the day
 */
public record DayPicture(int height, List<Lane> lanes, List<Tick> ticks, OptionalInt now) {
    public static final int WIDTH = 640;

    private static final int LEFT = 34;
    private static final int RIGHT = 26;
    private static final int LANE = 30;
    private static final int BAR = 24;
    private static final int FOOT = 30;
    private static final int HOUR = 60;
    /** So many hours may be written below each other's neighbours; where the day is longer, every second one is. */
    private static final int MOST_TICKS = 7;

    public DayPicture {
        lanes = List.copyOf(lanes);
        ticks = List.copyOf(ticks);
    }

    /** How a bar looks: black, white in a bold frame, white in a dashed frame, hatched. */
    public enum Look {
        PLAYED("played"),
        RUNNING("running"),
        TO_COME("to-come"),
        LOST("lost"),
        /** Where something no longer stands: thin and dashed, drawn below the rest. */
        OLD("old"),
        /** Where it will stand instead. */
        NEW("new");

        private final String code;

        Look(String code) {
            this.code = code;
        }

        /** The name used in the stylesheet. */
        public String code() {
            return code;
        }
    }

    /** From and to in minutes of the day; a block that ends before it begins is drawn one minute long. */
    public record Block(int from, int to, Look look, String words) {}

    /** What stands on one court. */
    public record Row(String name, List<Block> blocks) {
        public Row {
            blocks = List.copyOf(blocks);
        }
    }

    /** @param baseline where the name is written */
    public record Lane(String name, int baseline, List<Bar> bars) {
        public Lane {
            bars = List.copyOf(bars);
        }
    }

    /** @param words what the bar stands for, for those who point at it or hear the picture */
    public record Bar(int x, int y, int width, int height, Look look, String words) {}

    public record Tick(int x, int hour) {}

    /**
     * @param now in minutes of the day
     * @param close when the hall closes, in minutes of the day; the picture reaches to the later of it and the last block
     */
    public static DayPicture of(List<Row> rows, int now, OptionalInt close) {
        Scale scale = Scale.of(rows, close);
        List<Lane> lanes = new ArrayList<>();
        for (Row row : rows) {
            int top = lanes.size() * LANE;
            lanes.add(new Lane(
                    row.name(),
                    top + BAR - 5,
                    row.blocks().stream().map(block -> bar(scale, block, top)).toList()));
        }
        int height = rows.size() * LANE + FOOT;
        return new DayPicture(
                height, lanes, ticks(scale), scale.holds(now) ? OptionalInt.of(scale.x(now)) : OptionalInt.empty());
    }

    private static Bar bar(Scale scale, Block block, int top) {
        int x = scale.x(block.from());
        int width = Math.max(2, scale.x(Math.max(block.to(), block.from() + 1)) - x);
        return new Bar(x, top + (LANE - BAR) / 2, width, BAR, block.look(), block.words());
    }

    private static List<Tick> ticks(Scale scale) {
        int hours = (scale.to - scale.from) / HOUR;
        int step = (hours + MOST_TICKS - 2) / (MOST_TICKS - 1);
        List<Tick> ticks = new ArrayList<>();
        for (int minute = scale.from; minute <= scale.to; minute += Math.max(1, step) * HOUR) {
            ticks.add(new Tick(scale.x(minute), minute / HOUR));
        }
        return ticks;
    }

    /** How low the bars reach: there the axis lies. */
    public int axis() {
        return height - FOOT;
    }

    /** Full hours round everything that stands in the picture. */
    private record Scale(int from, int to) {
        static Scale of(List<Row> rows, OptionalInt close) {
            List<Block> all =
                    rows.stream().flatMap(row -> row.blocks().stream()).toList();
            int first = all.stream().mapToInt(Block::from).min().orElse(9 * HOUR);
            int last = Math.max(all.stream().mapToInt(Block::to).max().orElse(first + HOUR), close.orElse(0));
            int from = Math.floorDiv(first, HOUR) * HOUR;
            return new Scale(from, Math.max(from + HOUR, -Math.floorDiv(-last, HOUR) * HOUR));
        }

        boolean holds(int minute) {
            return minute >= from && minute <= to;
        }

        int x(int minute) {
            return LEFT + Math.round((minute - from) * (float) (WIDTH - LEFT - RIGHT) / (to - from));
        }
    }
}
