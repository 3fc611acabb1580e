package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.TieScore;

/** The four named procedures against a second opinion, and what must hold of every table. */
class ProceduresTest {
    private static final int ROUNDS = 800;

    /** Few points and rubbers, drawn ties in every third round: long ways through the procedures. */
    private static TieShape shape(int round) {
        return Rules.shape(2 + round % 3, round % 3 != 0, 1 + round % 2, 3 + round % 2);
    }

    private record Case(List<ClubId> clubs, List<TieScore> ties, TableRules rules) {
        static Case of(int round, String procedure) {
            Random random = Seed.random(round);
            List<ClubId> clubs = RandomPools.clubs(3 + random.nextInt(4));
            List<TieScore> ties = new RandomPools(random, shape(round)).ties(clubs, random.nextInt(4) / 3);
            return new Case(clubs, ties, Rules.of(procedure, "2/1/0", shape(round)));
        }

        Table table() {
            return Standings.of(TableInput.of(clubs, ties, rules));
        }
    }

    private static List<Set<ClubId>> groups(Table table) {
        TreeMap<Integer, Set<ClubId>> groups = new TreeMap<>();
        table.rows()
                .forEach(row -> groups.computeIfAbsent(row.place(), place -> new TreeSet<>())
                        .add(row.club()));
        return List.copyOf(groups.values());
    }

    @Test
    void each_named_procedure_agrees_with_a_second_opinion() {
        for (String procedure : Rules.NAMED) {
            Map<Integer, Integer> stepsTaken = new TreeMap<>();
            for (int round = 0; round < ROUNDS; round++) {
                Case one = Case.of(round, procedure);
                Table table = one.table();
                assertThat(groups(table))
                        .as("%s, %s", procedure, Seed.rerun(round))
                        .isEqualTo(new SecondOpinion(one.ties(), 2, 1, 0).order(procedure, one.clubs()));
                table.rows()
                        .forEach(row -> stepsTaken.merge(row.decidedBy().lines().size(), 1, Integer::sum));
            }
            assertThat(stepsTaken.keySet())
                    .as("the pools reach deep into %s", procedure)
                    .hasSizeGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void the_order_of_the_ties_changes_nothing_and_that_of_the_clubs_only_rows_that_share_a_place() {
        for (int round = 0; round < 200; round++) {
            for (String procedure : Rules.NAMED) {
                Case one = Case.of(round, procedure);
                List<TieScore> shuffled = new ArrayList<>(one.ties());
                Collections.shuffle(shuffled, Seed.random(round));
                assertThat(new Case(one.clubs(), shuffled, one.rules()).table())
                        .as(Seed.rerun(round))
                        .isEqualTo(one.table());
                List<ClubId> others = new ArrayList<>(one.clubs());
                Collections.shuffle(others, Seed.random(round));
                assertThat(groups(new Case(others, one.ties(), one.rules()).table()))
                        .as(Seed.rerun(round))
                        .isEqualTo(groups(one.table()));
            }
        }
    }

    @Test
    void clubs_that_share_a_place_stand_in_the_order_of_the_entries() {
        for (int round = 0; round < 200; round++) {
            Case one = Case.of(round, "head-to-head-points");
            List<Row> rows = one.table().rows();
            for (int i = 1; i < rows.size(); i++) {
                if (rows.get(i).place() == rows.get(i - 1).place()) {
                    assertThat(one.clubs().indexOf(rows.get(i - 1).club()))
                            .as(Seed.rerun(round))
                            .isLessThan(one.clubs().indexOf(rows.get(i).club()));
                }
            }
        }
    }

    /** For any two clubs the reasons share their beginning; the last shared step tells who is ahead, or that a lot must. */
    @Test
    void reasons_account_for_every_rank() {
        for (int round = 0; round < 250; round++) {
            for (String procedure : Rules.NAMED) {
                Case one = Case.of(round, procedure);
                List<Row> rows = one.table().rows();
                for (int i = 0; i < rows.size(); i++) {
                    for (int j = i + 1; j < rows.size(); j++) {
                        assertThat(accountsFor(rows.get(i), rows.get(j)))
                                .as("%s, %s, rows %d %d", procedure, Seed.rerun(round), i, j)
                                .isTrue();
                    }
                }
            }
        }
    }

    private static boolean accountsFor(Row ahead, Row behind) {
        Line shared = null;
        List<Line> one = ahead.decidedBy().lines();
        List<Line> other = behind.decidedBy().lines();
        for (int i = 0; i < Math.min(one.size(), other.size()) && one.get(i).equals(other.get(i)); i++) {
            shared = one.get(i);
        }
        if (shared instanceof Line.Compared compared) {
            boolean decides = compared.of(ahead.club()).compareTo(compared.of(behind.club())) > 0;
            return decides && ahead.place() < behind.place();
        }
        return shared instanceof Line.LotNeeded
                && ahead.place() == behind.place()
                && ahead.onlyALotParts()
                && behind.onlyALotParts();
    }

    /** The facts in a reason are those of the cards. */
    @Test
    void the_values_in_a_reason_can_be_added_up_from_the_cards() {
        for (int round = 0; round < 200; round++) {
            for (String procedure : Rules.NAMED) {
                Case one = Case.of(round, procedure);
                SecondOpinion cards = new SecondOpinion(one.ties(), 2, 1, 0);
                for (Row row : one.table().rows()) {
                    for (Line line : row.decidedBy().lines()) {
                        if (line instanceof Line.Compared compared
                                && compared.criterion().quantity().ordinal() >= Quantity.RUBBERS.ordinal()) {
                            Criterion criterion = compared.criterion();
                            Set<ClubId> among = criterion.among() ? new HashSet<>(line.level()) : null;
                            int what = criterion.quantity().ordinal() - Quantity.RUBBERS.ordinal();
                            assertThat((double) compared.of(row.club()).won())
                                    .as(Seed.rerun(round))
                                    .isEqualTo(cards.sum(row.club(), what, among, true));
                        }
                    }
                }
            }
        }
    }

    @Test
    void one_pool_has_four_different_orders_under_the_four_named_procedures() {
        for (int round = 0; round < 100_000; round++) {
            List<ClubId> clubs = RandomPools.clubs(4);
            TieShape shape = Rules.shape(4, true, 1, 11);
            List<TieScore> ties = new RandomPools(new Random(round), shape).ties(clubs, 0);
            Set<List<ClubId>> orders = new HashSet<>();
            boolean lots = false;
            for (String procedure : Rules.NAMED) {
                Table table = Standings.of(TableInput.of(clubs, ties, Rules.of(procedure, "1/0/0", shape)));
                lots |= !table.lotsToDraw().isEmpty();
                orders.add(table.order());
                if (table.lotsToDraw().isEmpty()) {
                    assertThat(groups(table)).isEqualTo(new SecondOpinion(ties, 1, 0, 0).order(procedure, clubs));
                }
            }
            if (orders.size() == 4 && !lots) {
                return;
            }
        }
        throw new AssertionError("no pool with four different orders among 100,000");
    }
}
