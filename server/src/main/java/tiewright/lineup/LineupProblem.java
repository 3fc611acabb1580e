package tiewright.lineup;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.conditions.Plays;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.rating.Strengths;

/**
 * Everything that bears on one club's sheet for one tie.
 *
 * @param freshness of both clubs' players when the tie begins
 * @param strengths of both clubs' players
 */
public record LineupProblem(
        TieRules rules,
        Squad ours,
        Squad theirs,
        Belief belief,
        List<Wish> wishes,
        Purpose purpose,
        Freshness freshness,
        Strengths strengths) {
    public LineupProblem {
        wishes = List.copyOf(wishes);
        Set<PlayerId> own = ours.members().stream().map(Squad.Member::id).collect(Collectors.toSet());
        for (Belief.Expected expected : belief.sheets()) {
            for (Optional<Pair> pair : expected.sheet().pairs().values()) {
                if (pair.filter(two -> own.contains(two.first()) || own.contains(two.second()))
                        .isPresent()) {
                    throw new IllegalArgumentException("a player stands on both sides");
                }
            }
        }
    }

    /** How the other club may go about its order. */
    public enum Against {
        /** Two by two down its order of strength. */
        STRAIGHT("straight"),
        /** The same pairs in any order that it may choose. */
        UNKNOWN("unknown");

        private final String code;

        Against(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }

        private Belief belief(TieRules rules, Squad theirs, long seed) {
            return switch (this) {
                case STRAIGHT -> Belief.straight(rules, theirs);
                case UNKNOWN -> Belief.unknownOrder(rules, theirs, seed);
            };
        }
    }

    /**
     * A tie without wishes against pairs that follow from the other club's list.
     *
     * @param theirs empty = nothing is known of them: they count as a full squad of even players
     * @param seed for drawing orders where there are too many
     */
    public static LineupProblem of(
            TieRules rules, Squad ours, Squad theirs, Strengths strengths, Against against, long seed) {
        Squad known = theirs.members().isEmpty() ? Squad.unknown(2 * rules.rubbers()) : theirs;
        Belief belief = against.belief(rules, known, seed);
        return new LineupProblem(
                rules, ours, known, belief, List.of(), Purpose.WIN, Freshness.rested(), strengths.drawnBy(seed));
    }

    /** The same where it is known what players play in beside open rubbers; what to expect of the other club follows from it. */
    public LineupProblem stating(Map<PlayerId, Plays> plays, Against against, long seed) {
        Squad known = theirs.stating(plays);
        Belief expected = against.belief(rules, known, seed);
        return new LineupProblem(rules, ours.stating(plays), known, expected, wishes, purpose, freshness, strengths);
    }

    /**
     * The same where of the other club only that is known which its opened sheets showed. Where that fills fewer rubbers than a squad
     * of its size could, its players are expected two by two down its list, whatever the kinds.
     */
    public LineupProblem guessing(Map<PlayerId, Plays> plays, Against against, long seed) {
        LineupProblem known = stating(plays, against, seed);
        Belief blind = against.belief(rules.withOpenRubbers(), theirs, seed);
        return known.belief.pairs() < blind.pairs() ? known.expecting(new Belief(blind.sheets(), false)) : known;
    }

    public LineupProblem wishing(Wish... more) {
        List<Wish> all =
                Stream.concat(wishes.stream(), Stream.of(more)).distinct().toList();
        return withWishes(all);
    }

    public LineupProblem promising(PlayingTime promise) {
        return with(new Purpose(purpose.aim(), promise, purpose.learning()));
    }

    public LineupProblem aimingAt(Aim aim) {
        return with(new Purpose(aim, purpose.playingTime(), purpose.learning()));
    }

    /** What a sheet would teach decides among those that are otherwise equal. */
    public LineupProblem learning() {
        return with(new Purpose(purpose.aim(), purpose.playingTime(), true));
    }

    private LineupProblem with(Purpose other) {
        return new LineupProblem(rules, ours, theirs, belief, wishes, other, freshness, strengths);
    }

    public LineupProblem after(Freshness other) {
        return new LineupProblem(rules, ours, theirs, belief, wishes, purpose, other, strengths);
    }

    public LineupProblem expecting(Belief other) {
        return new LineupProblem(rules, ours, theirs, other, wishes, purpose, freshness, strengths);
    }

    /**
     * The same with our players listed by lot. Sheets are gone through in the order of the list and the first of equal ones stands
     * first, so that the lot chooses among them; and what the draws of the strengths favour by chance, they favour in somebody by lot.
     */
    public LineupProblem listedBy(long lot) {
        return withSquad(ours.listedBy(lot));
    }

    /** The same with nobody absent. */
    public LineupProblem withEverybody() {
        return withSquad(new Squad(ours.members().stream()
                .map(member -> new Squad.Member(member.id(), member.rank(), true, member.plays()))
                .toList()));
    }

    /** The same with only some of those present. */
    public LineupProblem withOnly(Predicate<PlayerId> here) {
        return withSquad(new Squad(ours.members().stream()
                .map(member -> new Squad.Member(
                        member.id(), member.rank(), member.present() && here.test(member.id()), member.plays()))
                .toList()));
    }

    private LineupProblem withSquad(Squad squad) {
        return new LineupProblem(rules, squad, theirs, belief, wishes, purpose, freshness, strengths);
    }

    public LineupProblem withWishes(List<Wish> others) {
        return new LineupProblem(rules, ours, theirs, belief, others, purpose, freshness, strengths);
    }

    /** The same with every strength at its best guess, as if there were no doubt. */
    public LineupProblem atBestGuess() {
        return new LineupProblem(rules, ours, theirs, belief, wishes, purpose, freshness, strengths.atBestGuess());
    }

    /** What one pair is ahead of the other in the rubbers by the best guess, rest counted, in rallies per 100. */
    public double edge(Pair own, Pair other) {
        return strengths.edge(own, other).mean() - freshness.loss(own) + freshness.loss(other);
    }
}
