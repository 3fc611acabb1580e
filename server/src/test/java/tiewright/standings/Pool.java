package tiewright.standings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/** A pool written as a test reads it; sets only what matters. */
final class Pool {
    private final List<ClubId> clubs;
    private final List<TieScore> ties = new ArrayList<>();
    private final Map<ClubId, Treatment> withdrawals = new HashMap<>();
    private final List<LotDrawn> lots = new ArrayList<>();

    private Pool(List<ClubId> clubs) {
        this.clubs = clubs;
    }

    static Pool of(String... clubs) {
        return new Pool(Arrays.stream(clubs).map(ClubId::of).toList());
    }

    /** A finished tie; a rubber is its games joined by a slash, as in {@code 11-5/7-11/11-9}. */
    Pool tie(String home, String away, String... rubbers) {
        return tie(home, away, true, rubbers);
    }

    Pool unfinished(String home, String away, String... rubbers) {
        return tie(home, away, false, rubbers);
    }

    /** A finished tie of which only the rubbers are known: each is one game 11-0. */
    Pool rubbers(String home, String away, int homeRubbers, int awayRubbers) {
        List<String> rubbers = new ArrayList<>();
        for (int i = 0; i < homeRubbers; i++) {
            rubbers.add("11-0");
        }
        for (int i = 0; i < awayRubbers; i++) {
            rubbers.add("0-11");
        }
        return tie(home, away, true, rubbers.toArray(String[]::new));
    }

    Pool withdrew(String club, Treatment treatment) {
        withdrawals.put(ClubId.of(club), treatment);
        return this;
    }

    Pool lot(String witness, String... order) {
        lots.add(new LotDrawn(Arrays.stream(order).map(ClubId::of).toList(), witness));
        return this;
    }

    private Pool tie(String home, String away, boolean finished, String... rubbers) {
        List<RubberScore> scores = new ArrayList<>();
        for (int i = 0; i < rubbers.length; i++) {
            scores.add(new RubberScore(RubberNo.of(i + 1), games(rubbers[i]), How.PLAYED));
        }
        TieId id = TieId.of("T" + (ties.size() + 1));
        ties.add(new TieScore(id, ClubId.of(home), ClubId.of(away), scores, finished));
        return this;
    }

    private static List<Score> games(String rubber) {
        return Arrays.stream(rubber.split("/"))
                .map(game -> game.split("-"))
                .map(points -> Score.of(Integer.parseInt(points[0]), Integer.parseInt(points[1])))
                .toList();
    }

    TableInput input(TableRules rules) {
        return new TableInput(clubs, ties, rules, withdrawals, lots);
    }

    Table table(TableRules rules) {
        return Standings.of(input(rules));
    }

    /** The codes of the clubs by place, those that share one in brackets: {@code A (B C) D}. */
    static String order(Table table) {
        StringBuilder order = new StringBuilder();
        int place = 0;
        for (Row row : table.rows()) {
            boolean shares = table.rows().stream()
                            .filter(other -> other.place() == row.place())
                            .count()
                    > 1;
            boolean first = row.place() != place;
            boolean last = shares
                    && table.rows().stream()
                                    .filter(other -> other.place() == row.place())
                                    .reduce((a, b) -> b)
                                    .get()
                            == row;
            order.append(order.isEmpty() ? "" : " ")
                    .append(shares && first ? "(" : "")
                    .append(row.club())
                    .append(last ? ")" : "");
            place = row.place();
        }
        return order.toString();
    }
}
