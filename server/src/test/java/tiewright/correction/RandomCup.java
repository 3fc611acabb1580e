package tiewright.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tiewright.conditions.Setting;
import tiewright.desk.CallToCourt;
import tiewright.desk.DrawLot;
import tiewright.desk.RecordCard;
import tiewright.desk.SignEvent;
import tiewright.desk.SignTable;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** A cup of two pools of three and four ties of the knockout, played at random as far as the dice let it. */
final class RandomCup {
    private final Random random;
    private final Days day;

    private RandomCup(Random random) {
        this.random = random;
        this.day = Days.aDay()
                .with(Setting.RUBBERS, random.nextBoolean() ? "3" : "4")
                .clubs("N", "S", "E", "W", "V", "U")
                .courts("1", "2", "3", "4")
                .by(Days.referee());
    }

    static Days played(Random random) {
        RandomCup cup = new RandomCup(random);
        cup.layOut();
        int steps = 20 + random.nextInt(140);
        for (int i = 0; i < steps; i++) {
            cup.step();
        }
        return cup.day;
    }

    private void layOut() {
        String[][] pools = {{"A", "N", "S", "E"}, {"B", "W", "V", "U"}};
        for (String[] pool : pools) {
            day.poolTie(pool[0] + "1", pool[0], 1, pool[1], pool[2])
                    .poolTie(pool[0] + "2", pool[0], 2, pool[2], pool[3])
                    .poolTie(pool[0] + "3", pool[0], 3, pool[1], pool[3]);
        }
        day.knockoutTie("SF1", 1, "A-1", "B-2")
                .knockoutTie("SF2", 1, "B-1", "A-2")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .knockoutTie("P3", 2, "loser-SF1", "loser-SF2");
        day.timed("SF1", "13:00", "1").timed("F", "15:00", "1").timed("A1", "09:00", "1");
    }

    private void step() {
        List<Tie> ready = new ArrayList<>(
                day.event().ties().values().stream().filter(Tie::isReady).toList());
        Tie tie = ready.get(random.nextInt(ready.size()));
        if (random.nextInt(6) == 0) {
            sign();
        } else if (!tie.isOpened()) {
            if (random.nextInt(3) == 0) {
                seal(tie);
            } else {
                day.opened(tie.id().code());
            }
        } else {
            play(tie);
        }
    }

    private void seal(Tie tie) {
        Side side = random.nextBoolean() ? Side.HOME : Side.AWAY;
        day.fact(new ExchangeFact.SheetSealed(
                ExchangeId.sheets(tie.id()),
                tie.club(side).orElseThrow(),
                String.format("%064x", random.nextInt()),
                false));
    }

    private void play(Tie tie) {
        List<RubberNo> left = day.event().progress(tie).left();
        if (left.isEmpty()) {
            return;
        }
        RubberNo rubber = left.get(random.nextInt(left.size()));
        if (rubber.isDecider() && !tie.isDeciderOpened()) {
            day.opened(ExchangeId.decider(tie.id()), decider(tie, Side.HOME), decider(tie, Side.AWAY));
            return;
        }
        if (random.nextInt(4) == 0) {
            maybe(new CallToCourt(tie.id(), rubber, Integer.toString(1 + random.nextInt(4))));
        } else {
            maybe(new RecordCard(tie.id(), rubber, Days.games(score(random)), How.PLAYED));
        }
    }

    private static Sheet decider(Tie tie, Side side) {
        String club = tie.club(side).orElseThrow().code();
        return Sheet.decider(Pair.of(club + "1", club + "2"));
    }

    private void sign() {
        for (String pool : List.of("A", "B")) {
            Results.table(day.event(), pool)
                    .lotsToDraw()
                    .forEach(level -> maybe(new DrawLot(pool, level, "seven swans", "W. Witness")));
            maybe(new SignTable(pool, "R. Signer"));
        }
        maybe(new SignEvent("R. Signer"));
    }

    private void maybe(Decision decision) {
        if (day.refusals(decision).isEmpty()) {
            day.does(decision);
        }
    }

    static String score(Random random) {
        int loser = random.nextInt(10);
        return random.nextBoolean() ? "11-" + loser : loser + "-11";
    }

    /** Every rubber that has a card now. */
    static List<Tie> withCards(Days day) {
        return day.event().ties().values().stream()
                .filter(tie -> !tie.cards().isEmpty())
                .toList();
    }

    static ClubId club(String code) {
        return ClubId.of(code);
    }

    static TieId tie(String code) {
        return TieId.of(code);
    }
}
