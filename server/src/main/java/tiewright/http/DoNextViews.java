package tiewright.http;

import java.util.List;
import tiewright.http.pieces.DoNext;

/** The list "do this next" of the desk and the organiser. */
final class DoNextViews {
  private final Visit visit;

  DoNextViews(Visit visit) {
    this.visit = visit;
  }

  DoNext list() {
    return new DoNext("Do this next", List.of(), "Nothing waits.");
  }
}
