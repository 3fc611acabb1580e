package tiewright.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tiewright.rating.Strengths;

/**
 * Everything that bears on one club's sheet for one tie.
 *
 * @param strengths of both clubs' players
 */
public record LineupProblem(
    TieRules rules, Squad ours, Squad theirs, Belief belief, List<Wish> wishes, PlayingTime playingTime, Strengths strengths) {
  public LineupProblem {
    wishes = List.copyOf(wishes);
    for (Belief.Expected expected : belief.sheets()) {
      if (expected.sheet().players().stream().anyMatch(player -> ours.member(player).isPresent())) {
        throw new IllegalArgumentException("a player stands on both sides");
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
  }

  /**
   * A tie without wishes against pairs that follow from the other club's list.
   *
   * @param theirs empty = nothing is known of them: they count as a full squad of even players
   * @param seed for drawing orders where there are too many
   */
  public static LineupProblem of(TieRules rules, Squad ours, Squad theirs, Strengths strengths, Against against, long seed) {
    Squad known = theirs.members().isEmpty() ? Squad.unknown(2 * rules.rubbers()) : theirs;
    Belief belief =
        switch (against) {
          case STRAIGHT -> Belief.straight(rules, known);
          case UNKNOWN -> Belief.unknownOrder(rules, known, seed);
        };
    return new LineupProblem(rules, ours, known, belief, List.of(), PlayingTime.NOTHING_PROMISED, strengths);
  }

  public LineupProblem wishing(Wish... more) {
    List<Wish> all = Stream.concat(wishes.stream(), Stream.of(more)).distinct().toList();
    return withWishes(all);
  }

  public LineupProblem promising(PlayingTime promise) {
    return new LineupProblem(rules, ours, theirs, belief, wishes, promise, strengths);
  }

  public LineupProblem expecting(Belief other) {
    return new LineupProblem(rules, ours, theirs, other, wishes, playingTime, strengths);
  }

  /** The same with nobody absent. */
  LineupProblem withEverybody() {
    Squad all = new Squad(ours.members().stream().map(member -> new Squad.Member(member.id(), member.rank(), true)).toList());
    return new LineupProblem(rules, all, theirs, belief, wishes, playingTime, strengths);
  }

  LineupProblem withWishes(List<Wish> others) {
    return new LineupProblem(rules, ours, theirs, belief, new ArrayList<>(others), playingTime, strengths);
  }
}
