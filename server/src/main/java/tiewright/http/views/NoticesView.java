package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Notice;

/** Notices and rulings, the newest first. */
public record NoticesView(List<Notice> notices, List<Ruling> rulings) {
  /** A ruling as everybody reads it. */
  public record Ruling(String number, String about, String ruling, String reason, String by) {}
}
