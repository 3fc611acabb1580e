package tiewright.event;

import java.util.List;
import java.util.Optional;
import tiewright.scoring.Score;

/** Facts from the courts. */
public sealed interface PlayFact extends Fact {
  TieId tie();

  /** A rubber, or the whole tie when no rubber is named, was called to a court. */
  record CourtCalled(TieId tie, Optional<RubberNo> rubber, String court) implements PlayFact {
    @Override
    public FactKind kind() {
      return FactKind.COURT_CALLED;
    }
  }

  record CallTakenBack(TieId tie, Optional<RubberNo> rubber, String reason) implements PlayFact {
    @Override
    public FactKind kind() {
      return FactKind.CALL_TAKEN_BACK;
    }
  }

  /**
   * What somebody read off a card. A second, equal entry confirms; a different one holds the rubber.
   *
   * @param games points of each game in order, home first
   */
  record CardEntered(TieId tie, RubberNo rubber, List<Score> games, How how) implements PlayFact {
    public CardEntered {
      games = List.copyOf(games);
    }

    @Override
    public FactKind kind() {
      return FactKind.CARD_ENTERED;
    }
  }

  /** A person settled or corrected the rubber from the card; everything entered before stays in the log. */
  record CardCorrected(TieId tie, RubberNo rubber, List<Score> games, How how, String reason) implements PlayFact {
    public CardCorrected {
      games = List.copyOf(games);
    }

    @Override
    public FactKind kind() {
      return FactKind.CARD_CORRECTED;
    }
  }

  /** The rubber was never played: its entries no longer count. */
  record CardTakenBack(TieId tie, RubberNo rubber, String reason) implements PlayFact {
    @Override
    public FactKind kind() {
      return FactKind.CARD_TAKEN_BACK;
    }
  }
}
