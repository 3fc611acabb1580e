package tiewright.wording;

import java.time.ZoneId;
import java.time.ZoneOffset;
import tiewright.desk.DoNext;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.SetUpFact;

/** What to do next, each item in one sentence. */
public final class DoNextWords {
  private final Words words;

  private DoNextWords(Words words) {
    this.words = words;
  }

  /** Clubs by name, moments by the hall's clock. The list names no players. */
  public static DoNextWords of(Event event) {
    ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
    return new DoNextWords(new Words(
        PlayerId::code, (ClubId club) -> event.club(club).map(Club::name).orElse(club.code()), zone));
  }

  public String sentence(DoNext.Item item) {
    return words.sentence("desk.next." + item.kind().code(), item.data());
  }
}
