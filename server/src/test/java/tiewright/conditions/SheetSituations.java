package tiewright.conditions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Deadlines;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.sheet.ReplacePair;
import tiewright.sheet.SealSheet;
import tiewright.sheet.SheetCount;
import tiewright.sheet.SheetOf;
import tiewright.sheet.SheetRules;

/** What may be named, until when, and what becomes of a pair that cannot play. */
final class SheetSituations {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final ExchangeId DECIDER = ExchangeId.decider(TieId.of("A1"));
    private static final ClubId N = ClubId.of("N");

    private SheetSituations() {}

    static void addTo(Map<Setting, Function<Conditions, Object>> all) {
        all.put(Setting.MAX_RUBBERS_PER_PLAYER, SheetSituations::oftenNamed);
        all.put(
                Setting.SHEET_DEADLINE_MINUTES,
                conditions -> Deadlines.of(Situations.tie(conditions).event(), SHEETS));
        all.put(Setting.LATE_SHEET, conditions -> codes(late(conditions, 14)));
        all.put(
                Setting.GRACE_MINUTES,
                conditions ->
                        Situations.border(70, minute -> late(conditions, minute).isEmpty()));
        all.put(
                Setting.ORDER_OF_STRENGTH,
                conditions -> SheetCount.of(
                        IntStream.rangeClosed(1, 8).mapToObj(OptionalInt::of).toList(), conditions));
        all.put(Setting.CHANGES_AFTER_OPENING, SheetSituations::doors);
        all.put(
                Setting.SHORT_SQUAD,
                conditions -> List.copyOf(opened(conditions)
                        .does(replaced(2, Optional.empty(), "illness"))
                        .tie("A1")
                        .opened()
                        .values()));
        all.put(
                Setting.DECIDER,
                conditions -> codes(level(conditions)
                        .by(Days.captain("N"))
                        .refusals(seal(DECIDER, Sheet.decider(Pair.of("N1", "N2"))))));
        all.put(
                Setting.RUBBER_KINDS,
                conditions -> Stream.of("1 2 3 4 5 6 7 8", "5 6 7 8 1 2 3 4", "1 5 2 6 3 7 4 8")
                        .map(SheetSituations::sheet)
                        .map(sheet -> Situations.tie(conditions)
                                .stating("N", "wwwwmmmm")
                                .by(Days.captain("N"))
                                .refusals(seal(SHEETS, sheet)))
                        .toList());
        all.put(Setting.ELIGIBILITY_TIES, SheetSituations::eligible);
        all.put(
                Setting.DECIDER_MINUTES,
                conditions -> Deadlines.of(level(conditions).event(), DECIDER));
    }

    private static Sheet sheet(String numbers) {
        String[] players = numbers.split(" ");
        return Sheet.of(IntStream.range(0, players.length / 2)
                .mapToObj(pair -> Optional.of(Pair.of("N" + players[2 * pair], "N" + players[2 * pair + 1])))
                .toList());
    }

    /** Twelve rubbers: what is said of a sheet on which one pair stands in the first so many. */
    private static List<List<String>> oftenNamed(Conditions conditions) {
        Days day = Days.aDay()
                .conditions(conditions.with(Setting.RUBBERS, "12"))
                .club("N", 26)
                .club("S", 26)
                .poolTie("A1", "A", 1, "N", "S");
        List<List<String>> said = new ArrayList<>();
        for (int often = 1; often <= 12; often++) {
            List<Optional<Pair>> pairs = new ArrayList<>();
            for (int rubber = 1; rubber <= 12; rubber++) {
                pairs.add(Optional.of(
                        rubber <= often ? Pair.of("N1", "N2") : Pair.of("N" + 2 * rubber, "N" + (2 * rubber + 1))));
            }
            said.add(codes(SheetRules.faults(new SheetOf(day.event(), SHEETS, N, day.directory()), Sheet.of(pairs))));
        }
        return said;
    }

    /** After how many ties a sheet of the knockout may name those who played them. */
    private static int eligible(Conditions conditions) {
        Days day = Days.aDay().conditions(conditions).clubs("N", "S").knockoutTie("F", 1, "N", "S");
        for (int tie = 0; tie <= 20; tie++) {
            boolean refused = codes(SheetRules.faults(
                            new SheetOf(day.event(), ExchangeId.sheets(TieId.of("F")), N, day.directory()),
                            Days.straight("N", 4)))
                    .contains("sheet.too-few-ties");
            if (!refused) {
                return tie;
            }
            day.poolTie("A" + tie, "A", tie + 1, "N", "S")
                    .opened("A" + tie)
                    .cards("A" + tie, "11-5", "11-5", "5-11", "11-5");
        }
        return 21;
    }

    /** A first sheet so many minutes after the deadline. */
    private static List<Refusal> late(Conditions conditions, int minutes) {
        Conditions due = conditions.with(Setting.SHEET_DEADLINE_MINUTES, "120");
        return Situations.tie(due)
                .by(Days.captain("N"))
                .at(java.time.LocalTime.of(8, 0).plusMinutes(minutes).toString())
                .refusals(seal(SHEETS, Days.straight("N", 4)));
    }

    private static SealSheet seal(ExchangeId exchange, Sheet sheet) {
        return new SealSheet(exchange, N, sheet, "0123456789abcdef".repeat(4));
    }

    private static Days opened(Conditions conditions) {
        return Situations.tie(conditions).player("N9", "N", 9).opened("A1");
    }

    private static Days level(Conditions conditions) {
        return opened(conditions).at("10:30").cards("A1", "11-5", "11-5", "5-11", "5-11");
    }

    private static Decision replaced(int rubber, Optional<Pair> pair, String door) {
        return new ReplacePair(SHEETS, N, RubberNo.of(rubber), pair, door, "R. Jansen");
    }

    /** Through which doors the desk and the referee may change a pair. */
    private static List<List<String>> doors(Conditions conditions) {
        List<List<String>> said = new ArrayList<>();
        for (Actor by : List.of(Days.desk(), Days.referee())) {
            Stream.of("injury", "no-show", "substitution")
                    .map(door ->
                            opened(conditions).by(by).refusals(replaced(4, Optional.of(Pair.of("N7", "N9")), door)))
                    .forEach(refusals -> said.add(codes(refusals)));
        }
        return said;
    }

    static List<String> codes(List<Refusal> refusals) {
        return refusals.stream().map(Refusal::code).toList();
    }
}
