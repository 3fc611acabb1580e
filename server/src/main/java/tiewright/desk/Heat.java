package tiewright.desk;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;

/**
 * A thermometer reading and where the conditions put it. A number is not a clearance to play: the answer is a caution for
 * people, and nothing happens by itself.
 *
 * @param tenths in tenths of a degree Celsius
 */
public record Heat(Measure measure, int tenths) {
    /** Readings outside this are slips of the pen, in tenths of a degree. */
    static final int COLDEST = -400;

    static final int HOTTEST = 650;

    /** What was read. */
    public enum Measure {
        /** wet-bulb globe temperature, which knows sun and humidity */
        WBGT("wbgt", Setting.HEAT_CAUTION_WBGT, Setting.HEAT_STOP_WBGT),
        /** the air alone */
        AIR("air", Setting.HEAT_CAUTION_AIR, Setting.HEAT_STOP_AIR);

        private final String code;
        private final Setting caution;
        private final Setting stop;

        Measure(String code, Setting caution, Setting stop) {
            this.code = code;
            this.caution = caution;
            this.stop = stop;
        }

        public String code() {
            return code;
        }

        public Setting caution() {
            return caution;
        }

        public Setting stop() {
            return stop;
        }

        public static Optional<Measure> parse(String code) {
            return Arrays.stream(values())
                    .filter(measure -> measure.code.equals(code))
                    .findFirst();
        }
    }

    /** Where the conditions put a reading; a reading on the border counts as the higher one. */
    public enum Tier {
        BELOW("below"),
        CAUTION("caution"),
        STOP("stop");

        private final String code;

        Tier(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /**
     * What the Japan Sports Association published in 2013 for WBGT, as the Ministry of the Environment shows it. The lower
     * border of each belongs to it (stated for 31, our reading for the others).
     */
    public enum Published {
        ALMOST_SAFE("almost-safe", -1000),
        CAUTION("caution", 210),
        WARNING("warning", 250),
        SEVERE_WARNING("severe-warning", 280),
        DANGER("danger", 310);

        private final String code;
        private final int from;

        Published(String code, int from) {
            this.code = code;
            this.from = from;
        }

        public String code() {
            return code;
        }

        /** Tenths of a degree from which it holds. */
        public int from() {
            return from;
        }
    }

    public Tier tier(Conditions conditions) {
        if (tenths >= tenths(conditions, measure.stop())) {
            return Tier.STOP;
        }
        return tenths >= tenths(conditions, measure.caution()) ? Tier.CAUTION : Tier.BELOW;
    }

    /** The published tier of a WBGT; empty for the air alone, for which that guideline gives other figures. */
    public Optional<Published> published() {
        return measure == Measure.AIR
                ? Optional.empty()
                : Arrays.stream(Published.values())
                        .filter(tier -> tenths >= tier.from())
                        .reduce((lower, higher) -> higher);
    }

    /**
     * The WBGT outdoors from three thermometers: 0.7 of the wet bulb, 0.2 of the globe, 0.1 of the air (American Academy of
     * Pediatrics, note to its table).
     *
     * @return tenths of a degree, rounded half up
     */
    public static int wbgt(int wetTenths, int globeTenths, int airTenths) {
        return Math.floorDiv(7 * wetTenths + 2 * globeTenths + airTenths + 5, 10);
    }

    /** {@code 30.5}. */
    public String degrees() {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    boolean isPossible() {
        return tenths >= COLDEST && tenths <= HOTTEST;
    }

    private static int tenths(Conditions conditions, Setting setting) {
        return new BigDecimal(conditions.value(setting)).movePointRight(1).intValueExact();
    }
}
