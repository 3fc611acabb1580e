package tiewright.conditions;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.desk.Heat;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;
import tiewright.setup.DrawPools;
import tiewright.setup.LayOutKnockout;
import tiewright.timetable.Pace;
import tiewright.timetable.TimeBudget;

/** For each setting that the software acts on, a small situation and what comes of it under given conditions. */
final class Situations {
    private static final Map<Setting, Function<Conditions, Object>> ALL = new EnumMap<>(Setting.class);

    static {
        SheetSituations.addTo(ALL);
        PlaySituations.addTo(ALL);
        TableSituations.addTo(ALL);
        ALL.put(Setting.TIE_PLAY, Situations::budget);
        ALL.put(Setting.REST_MINUTES, Situations::budget);
        ALL.put(
                Setting.DRAW_SEPARATION,
                conditions -> spoken().map(words -> pools(conditions, words)).toList());
        ALL.put(
                Setting.SEEDING,
                conditions -> spoken().map(words -> bracket(conditions, words)).toList());
        heat(Setting.HEAT_CAUTION_WBGT, Heat.Measure.WBGT, Setting.HEAT_STOP_WBGT, "50");
        heat(Setting.HEAT_STOP_WBGT, Heat.Measure.WBGT, Setting.HEAT_CAUTION_WBGT, "10");
        heat(Setting.HEAT_CAUTION_AIR, Heat.Measure.AIR, Setting.HEAT_STOP_AIR, "60");
        heat(Setting.HEAT_STOP_AIR, Heat.Measure.AIR, Setting.HEAT_CAUTION_AIR, "10");
    }

    private Situations() {}

    static Optional<Function<Conditions, Object>> of(Setting setting) {
        return Optional.ofNullable(ALL.get(setting));
    }

    /** Two clubs of eight, their tie A1 at 10:00 on court 1. */
    static Days tie(Conditions conditions) {
        return Days.oneTie().conditions(conditions);
    }

    /** The first number from 0 up to the most for which it does not hold, where it holds up to a border. */
    static int border(int most, IntPredicate holds) {
        int least = 0;
        int end = most + 1;
        while (least < end) {
            int middle = (least + end) / 2;
            if (holds.test(middle)) {
                least = middle + 1;
            } else {
                end = middle;
            }
        }
        return least;
    }

    /** How long a day of six clubs on four courts takes. */
    static TimeBudget budget(Conditions conditions) {
        return TimeBudget.of(
                new TimeBudget.Shape(6, 1, 0, 4, LocalTime.of(9, 0), LocalTime.of(20, 0)), conditions, Pace.USUAL, 1);
    }

    /** The warning for every tenth of a degree. */
    private static void heat(Setting setting, Heat.Measure measure, Setting other, String outOfTheWay) {
        ALL.put(
                setting,
                conditions -> IntStream.rangeClosed(100, 600)
                        .mapToObj(tenths -> new Heat(measure, tenths).tier(conditions.with(other, outOfTheWay)))
                        .toList());
    }

    private static Stream<String> spoken() {
        return Stream.of("seven grey owls", "nine red kites", "a wet morning", "two left shoes");
    }

    private static Days drawn(Conditions conditions, String words) {
        Days day = Days.aDay().conditions(conditions).by(Days.organiser());
        IntStream.rangeClosed(1, 12)
                .forEach(i -> day.fact(new SetUpFact.ClubEntered(
                        ClubId.of("C" + i),
                        "Club " + i,
                        Optional.of(i <= 4 ? "Ashford" : "Town " + i),
                        OptionalInt.empty())));
        return day.does(new DrawPools(4, words, "Ida Brandt"));
    }

    private static Map<String, List<ClubId>> pools(Conditions conditions, String words) {
        return Map.copyOf(drawn(conditions, words).event().pools());
    }

    private static List<String> bracket(Conditions conditions, String words) {
        Days day = drawn(conditions, words).does(new LayOutKnockout(2, false, words, "Ida Brandt"));
        return day.event().ties().values().stream()
                .map((Tie tie) ->
                        tie.id() + " " + tie.home().from() + " " + tie.away().from())
                .toList();
    }
}
