package tiewright.event;

/** One blind exchange: the sheets of a tie, or the pairs for its decider. */
public record ExchangeId(TieId tie, SheetKind kind) implements Comparable<ExchangeId> {
  public static ExchangeId sheets(TieId tie) {
    return new ExchangeId(tie, SheetKind.RUBBERS);
  }

  public static ExchangeId decider(TieId tie) {
    return new ExchangeId(tie, SheetKind.DECIDER);
  }

  @Override
  public int compareTo(ExchangeId other) {
    int byTie = tie.compareTo(other.tie);
    return byTie != 0 ? byTie : kind.compareTo(other.kind);
  }
}
