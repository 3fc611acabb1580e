package tiewright.draw;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.conditions.Seeding;
import tiewright.event.SlotSource;

/**
 * Draws the places of the pools into a knockout of 2, 4, 8, 16 or 32 lines, before anyone knows who will hold them.
 *
 * <p>Seeds are the firsts in the order of the pools, then the seconds and so on, whole places only and no more than half
 * of the lines (common practice, no source); each group of seeds is drawn for its {@linkplain SeedLines lines}. Byes go
 * to the seeds in order and the rest of them to lines for the seeds that would come next, so that they are evenly
 * spread; clubs of the next place are drawn for those. Every arrangement is equally likely among those with, first, the
 * fewest first-round ties inside a pool and, second, the fewest pools whose second is in the half of its first.
 */
public final class KnockoutDraw {
  public static final int MOST_FROM_A_POOL = 4;
  public static final int MOST_QUALIFIERS = 32;
  static final String KNOCKOUT = "knockout";

  /**
   * What is to be drawn.
   *
   * @param pools in their order: the first of pool 1 is seed 1
   * @param fromEach how many of each pool go on, 1 to {@value #MOST_FROM_A_POOL}
   * @param thirdPlace whether the losers of the semifinals play for third place
   */
  public record Shape(List<String> pools, int fromEach, Seeding seeding, boolean thirdPlace) {
    public Shape {
      pools = List.copyOf(pools);
    }

    int qualifiers() {
      return pools.size() * fromEach;
    }

    int lines() {
      return Math.max(2, Integer.highestOneBit(2 * qualifiers() - 1));
    }
  }

  private final Shape shape;
  private final BracketMembers members;
  private final List<Optional<SlotSource>> lines;
  private final List<DrawStep> steps = new ArrayList<>();
  private final boolean[] used;

  private KnockoutDraw(Shape shape) {
    this.shape = shape;
    this.members = new BracketMembers(shape);
    this.lines = new ArrayList<>(Collections.nCopies(shape.lines(), Optional.empty()));
    this.used = new boolean[shape.lines()];
  }

  /** The bracket, or every reason why it cannot be drawn so. */
  public static KnockoutResult draw(Shape shape, String spokenSeed) {
    List<DrawFault> faults = faults(shape, spokenSeed);
    if (!faults.isEmpty()) {
      return new KnockoutResult.Refused(faults);
    }
    try {
      return new KnockoutResult.Planned(new KnockoutDraw(shape).drawn(spokenSeed));
    } catch (Spread.TooManyCases tooMany) {
      return new KnockoutResult.Refused(
          List.of(DrawFault.of(DrawFault.Code.TOO_MANY_CASES, shape.qualifiers(), Spread.MOST_STATES)));
    }
  }

  private static List<DrawFault> faults(Shape shape, String spokenSeed) {
    List<DrawFault> faults = new ArrayList<>();
    if (PublicLot.spoken(spokenSeed).isEmpty()) {
      faults.add(DrawFault.of(DrawFault.Code.NO_SPOKEN_SEED, ""));
    }
    HashSet<String> names = new HashSet<>();
    for (String pool : shape.pools()) {
      if (!SlotSource.isPoolName(pool)) {
        faults.add(DrawFault.of(DrawFault.Code.NOT_A_POOL_NAME, pool));
      } else if (!names.add(pool)) {
        faults.add(DrawFault.of(DrawFault.Code.POOL_TWICE, pool));
      }
    }
    if (shape.pools().isEmpty()) {
      faults.add(DrawFault.of(DrawFault.Code.NO_POOL, 0, 1));
    } else if (shape.fromEach() < 1) {
      faults.add(DrawFault.of(DrawFault.Code.NO_QUALIFIER, shape.fromEach(), 1));
    } else if (shape.fromEach() > MOST_FROM_A_POOL) {
      faults.add(DrawFault.of(DrawFault.Code.TOO_MANY_FROM_A_POOL, shape.fromEach(), MOST_FROM_A_POOL));
    } else if (shape.qualifiers() < 2) {
      faults.add(DrawFault.of(DrawFault.Code.TOO_FEW_QUALIFIERS, shape.qualifiers(), 2));
    } else if (shape.qualifiers() > MOST_QUALIFIERS) {
      faults.add(DrawFault.of(DrawFault.Code.TOO_MANY_QUALIFIERS, shape.qualifiers(), MOST_QUALIFIERS));
    }
    return faults;
  }

  private KnockoutPlan drawn(String spokenSeed) {
    PublicLot lot = new PublicLot(spokenSeed, KNOCKOUT);
    Spread spread = new Spread();
    SpreadState state = spread.cheapest(members.start());
    for (BracketMembers.Entry entry : members.entries()) {
      int line = drawOne(entry, spread, state, lot);
      state = state.put(entry.member(), line / 2);
      used[line] = true;
      entry.source().ifPresent(source -> lines.set(line, Optional.of(source)));
      if (entry.withBye()) {
        used[line ^ 1] = true;
      }
    }
    List<PlannedTie> ties = BracketTies.of(lines, shape.thirdPlace());
    return new KnockoutPlan(PublicLot.spoken(spokenSeed), lines, ties, steps, samePoolFirst(), sameHalf());
  }

  /** A match has one weight; where two of its lines are open, each has half of it, so all weights are doubled. */
  private int drawOne(BracketMembers.Entry entry, Spread spread, SpreadState state, PublicLot lot) {
    List<DrawStep.Choice> choices = new ArrayList<>();
    for (int match = 0; match < state.bins(); match++) {
      if (state.allows(entry.member(), match)) {
        BigInteger ways = spread.count(state.put(entry.member(), match)).shiftLeft(1);
        List<Integer> open = members.openLines(entry, match, used);
        for (int line : open) {
          choices.add(new DrawStep.Choice("" + (line + 1), ways.divide(BigInteger.valueOf(open.size()))));
        }
      }
    }
    DrawStep step = DrawStep.draw(entry.name(), KNOCKOUT, choices, lot);
    steps.add(step);
    return Integer.parseInt(step.chosen()) - 1;
  }

  private List<String> samePoolFirst() {
    return IntStream.range(0, lines.size() / 2)
        .filter(m -> lines.get(2 * m).isPresent() && lines.get(2 * m + 1).isPresent())
        .filter(m -> lines.get(2 * m).get().of().equals(lines.get(2 * m + 1).get().of()))
        .mapToObj(m -> lines.get(2 * m).get().of()).toList();
  }

  private List<String> sameHalf() {
    Stream<String> pools = lines.size() > 2 && shape.fromEach() > 1 ? shape.pools().stream() : Stream.of();
    return pools.filter(pool -> half(pool, 1) == half(pool, 2)).toList();
  }

  private int half(String pool, int place) {
    return lines.indexOf(Optional.of(SlotSource.place(pool, place))) / (lines.size() / 2);
  }
}
