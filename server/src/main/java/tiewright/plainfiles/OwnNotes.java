package tiewright.plainfiles;

import java.util.Collection;
import java.util.List;
import tiewright.event.PrivateNote;

/** What a club noted about the own squad, as an export with that club's link adds it; nobody else's export has it. */
public record OwnNotes(List<PrivateNote.FormJudged> forms, List<PrivateNote.ChemistryJudged> chemistry) {
  /** A plain export. */
  public static final OwnNotes NONE = new OwnNotes(List.of(), List.of());

  public OwnNotes {
    forms = List.copyOf(forms);
    chemistry = List.copyOf(chemistry);
  }

  public static OwnNotes of(
      Collection<PrivateNote.FormJudged> forms, Collection<PrivateNote.ChemistryJudged> chemistry) {
    return new OwnNotes(List.copyOf(forms), List.copyOf(chemistry));
  }
}
