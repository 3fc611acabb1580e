package tiewright.wording;

import java.time.ZoneId;
import java.time.ZoneOffset;
import tiewright.event.Club;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;

/** Why not, in a sentence that says what is wrong and what to do, for the refusals of every room. */
public final class RefusalWords {
  private final Words words;

  private RefusalWords(Words words) {
    this.words = words;
  }

  /** With full names: for officials, and for a captain who is told of the own squad. */
  public static RefusalWords of(Event event, Directory directory) {
    ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
    return new RefusalWords(new Words(
        directory::name, club -> event.club(club).map(Club::name).orElse(club.code()), zone));
  }

  /** With the names that this viewer may read. */
  public static RefusalWords of(VisibleEvent event) {
    return new RefusalWords(new Words(event::name, event::clubName, event.zone()));
  }

  /** A code without a sentence is a bug and throws. */
  public String sentence(Refusal refusal) {
    return words.sentence(refusal);
  }
}
