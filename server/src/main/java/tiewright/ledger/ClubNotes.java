package tiewright.ledger;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.TieId;

/** What a club's captain noted about the own squad; for nobody else. In code order. */
public record ClubNotes(
    Map<PlayerId, FormJudged> forms, Map<Pair, ChemistryJudged> chemistry, Map<TieId, TieWish> tieWishes) {
  public ClubNotes {
    forms = Collections.unmodifiableMap(new TreeMap<>(forms));
    chemistry = Collections.unmodifiableMap(new TreeMap<>(chemistry));
    tieWishes = Collections.unmodifiableMap(new TreeMap<>(tieWishes));
  }
}
