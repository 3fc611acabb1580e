package tiewright.conditions;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import tiewright.desk.RecordCard;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.plainfiles.EventFolder;
import tiewright.standings.PoolTables;
import tiewright.standings.Row;
import tiewright.standings.Standings;
import tiewright.standings.Table;

/** How a table counts and orders, and what a withdrawal leaves of it. */
final class TableSituations {
    private static final List<String> SCORES =
            List.of("11-3", "11-9", "13-11", "16-14", "5-11", "8-11", "10-12", "13-15");

    private TableSituations() {}

    static void addTo(Map<Setting, Function<Conditions, Object>> all) {
        all.put(Setting.TIE_POINTS, conditions -> {
            Days day = pool(conditions.with(Setting.DECIDER, "none"))
                    .cards("A1", "11-3", "11-3", "3-11", "3-11")
                    .cards("A2", "11-3", "11-3", "11-3", "3-11");
            return table(day).rows().stream().map(Row::tiePoints).toList();
        });
        all.put(Setting.RUBBER_WEIGHTS, conditions -> {
            Conditions fitting = conditions.with(
                    Setting.RUBBERS,
                    conditions.value(Setting.RUBBER_WEIGHTS).equals("equal")
                            ? "4"
                            : Integer.toString(
                                    conditions.tieRubbers().weights().each().size()));
            Days day = pool(fitting.with(Setting.DECIDER, "none").with(Setting.TIE_POINTS, "rubbers"))
                    .cards("A1", "11-3", "3-11", "3-11", "3-11");
            return table(day).rows().stream().map(Row::tiePoints).toList();
        });
        all.put(Setting.UNPLAYED_TIE, conditions -> {
            Days day = pool(conditions);
            for (String rubber : List.of("1", "2", "3", "4")) {
                day.does(new RecordCard(
                        TieId.of("A1"), RubberNo.parse(rubber).orElseThrow(), List.of(), How.WALKOVER_HOME));
            }
            return table(day).rows().stream().map(Row::tiePoints).toList();
        });
        all.put(Setting.WALKOVER_SCORE, conditions -> {
            Days day =
                    pool(conditions).does(new RecordCard(TieId.of("A1"), RubberNo.of(1), List.of(), How.WALKOVER_HOME));
            return day.tie("A1").card(RubberNo.of(1)).score(RubberNo.of(1));
        });
        all.put(
                Setting.LEVEL_TEAMS,
                conditions -> IntStream.range(0, 60)
                        .mapToObj(seed -> table(random(conditions, seed)).order())
                        .toList());
        all.put(
                Setting.OVERTIME_POINTS,
                conditions -> table(random(conditions, 1)).rows().stream()
                        .map(row -> row.pointsFor() + "-" + row.pointsAgainst())
                        .toList());
        all.put(Setting.WITHDRAWAL, TableSituations::withdrawn);
    }

    private static Days pool(Conditions conditions) {
        return Days.aDay()
                .conditions(conditions)
                .clubs("N", "S", "E", "W")
                .fact(new DrawFact.PoolsDrawn(
                        "words",
                        "Ida Brandt",
                        new TreeMap<>(
                                Map.of("A", List.of(ClubId.of("N"), ClubId.of("S"), ClubId.of("E"), ClubId.of("W"))))))
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "E", "N")
                .poolTie("A3", "A", 3, "S", "E")
                .poolTie("A4", "A", 1, "E", "W")
                .poolTie("A5", "A", 2, "W", "S")
                .poolTie("A6", "A", 3, "N", "W")
                .opened("A1")
                .opened("A2")
                .opened("A3")
                .opened("A4")
                .opened("A5")
                .opened("A6");
    }

    /** Four clubs, four rubbers in each tie by the seed. */
    private static Days random(Conditions conditions, long seed) {
        Random random = new Random(seed);
        Days day = pool(conditions.with(Setting.DECIDER, "none"));
        for (String tie : List.of("A1", "A2", "A3", "A4", "A5", "A6")) {
            List<String> cards = new ArrayList<>();
            for (int rubber = 0; rubber < 4; rubber++) {
                cards.add(SCORES.get(random.nextInt(SCORES.size())));
            }
            day.cards(tie, cards.toArray(String[]::new));
        }
        return day;
    }

    private static Table table(Days day) {
        return Standings.of(PoolTables.input(day.event(), "A"));
    }

    /** A club that left, in an event folder that does not say how its ties count. */
    private static Object withdrawn(Conditions conditions) {
        try {
            Path folder = Files.createTempDirectory("withdrawn");
            Map<String, String> files = Map.of(
                    "event.csv",
                    "key,value\nname,Day\ndate,2026-11-28\nvenue,Hall\ntime_zone,Europe/Dublin\nstarts,09:00\n",
                    "conditions.csv",
                    "setting,value\npreset,Club day\nwithdrawal," + conditions.value(Setting.WITHDRAWAL) + "\n",
                    "clubs.csv",
                    "club,name\nA,Aa\nB,Bb\n",
                    "ties.csv",
                    "tie,stage,pool,round,home,away\nT,pool,P,1,A,B\n",
                    "withdrawals.csv",
                    "club,after_tie,treatment\nB,T,\n");
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(folder.resolve(file.getKey()), file.getValue());
            }
            Object left = EventFolder.read(folder).event().withdrawals();
            for (String file : files.keySet()) {
                Files.delete(folder.resolve(file));
            }
            Files.delete(folder);
            return left;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
