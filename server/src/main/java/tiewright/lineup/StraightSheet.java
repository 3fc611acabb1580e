package tiewright.lineup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.Pair;
import tiewright.sheet.Fillable;

/** A squad two by two down its order of strength: rubber by rubber the strongest two who may stand there, nobody again before all had a rubber. */
final class StraightSheet {
    private final TieRules rules;
    private final List<Squad.Member> players;
    private final List<Optional<Plays>> plays;
    private final int[] named;
    private final Squad squad;

    private StraightSheet(TieRules rules, Squad squad) {
        this.rules = rules;
        this.squad = squad;
        this.players = squad.present().stream()
                .sorted(Comparator.comparingInt(member -> squad.rank(member.id())))
                .toList();
        this.plays = players.stream().map(Squad.Member::plays).toList();
        this.named = new int[players.size()];
    }

    /** Rubber 1 first; as full as the squad allows. */
    static List<Optional<Pair>> of(TieRules rules, Squad squad) {
        return new StraightSheet(rules, squad).named();
    }

    private List<Optional<Pair>> named() {
        TreeSet<Integer> left = new TreeSet<>(Fillable.of(plays, rules.mostPerPlayer(), rules.each()));
        List<Optional<Pair>> sheet = new ArrayList<>();
        for (int rubber = 1; rubber <= rules.rubbers(); rubber++) {
            sheet.add(left.remove(rubber) ? Optional.of(strongest(rubber, left)) : Optional.empty());
        }
        return inOrder(sheet);
    }

    /** Among rubbers of one kind the stronger pair stands above. */
    private List<Optional<Pair>> inOrder(List<Optional<Pair>> sheet) {
        List<Optional<Pair>> sorted = new ArrayList<>(sheet);
        for (RubberKind kind : RubberKind.values()) {
            List<Integer> places = IntStream.range(0, sheet.size())
                    .filter(rubber -> rules.each().kinds().of(rubber + 1) == kind
                            && sheet.get(rubber).isPresent())
                    .boxed()
                    .toList();
            List<Optional<Pair>> pairs = places.stream()
                    .map(sheet::get)
                    .sorted(Comparator.comparingInt(pair -> sum(pair.orElseThrow())))
                    .toList();
            IntStream.range(0, places.size()).forEach(i -> sorted.set(places.get(i), pairs.get(i)));
        }
        return sorted;
    }

    private int sum(Pair pair) {
        return squad.rank(pair.first()) + squad.rank(pair.second());
    }

    /** The first two in turn after whom the rest can still be filled. */
    private Pair strongest(int rubber, SortedSet<Integer> left) {
        RubberKind kind = rules.each().kinds().of(rubber);
        List<RubberKind> rest = left.stream().map(rules.each().kinds()::of).toList();
        List<Integer> inTurn = IntStream.range(0, named.length)
                .boxed()
                .sorted(Comparator.comparingInt(player -> named[player]))
                .toList();
        for (int one : inTurn) {
            for (int other : inTurn.subList(inTurn.indexOf(one) + 1, inTurn.size())) {
                if (kind.admits(plays.get(one), plays.get(other)) && isLeft(one) && isLeft(other)) {
                    named[one]++;
                    named[other]++;
                    List<Integer> soFar = Arrays.stream(named).boxed().toList();
                    if (Fillable.canFill(plays, soFar, rules.mostPerPlayer(), rest)) {
                        return Pair.of(players.get(one).id(), players.get(other).id());
                    }
                    named[one]--;
                    named[other]--;
                }
            }
        }
        throw new IllegalStateException("rubber " + rubber + " could be filled");
    }

    private boolean isLeft(int player) {
        return named[player] < rules.mostPerPlayer();
    }
}
