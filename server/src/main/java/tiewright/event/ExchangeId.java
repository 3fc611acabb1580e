package tiewright.event;

import java.util.List;
import tiewright.conditions.Conditions;

/** One blind exchange: the sheets of a tie, or the pairs for its decider. */
public record ExchangeId(TieId tie, SheetKind kind) implements Comparable<ExchangeId> {
    public static ExchangeId sheets(TieId tie) {
        return new ExchangeId(tie, SheetKind.RUBBERS);
    }

    public static ExchangeId decider(TieId tie) {
        return new ExchangeId(tie, SheetKind.DECIDER);
    }

    /** The rubbers that a sheet of this exchange names, each of them, in order. */
    public List<RubberNo> rubbers(Conditions conditions) {
        return kind == SheetKind.DECIDER ? List.of(RubberNo.DECIDER) : RubberNo.upTo(conditions.rubbers());
    }

    @Override
    public int compareTo(ExchangeId other) {
        int byTie = tie.compareTo(other.tie);
        return byTie != 0 ? byTie : kind.compareTo(other.kind);
    }
}
