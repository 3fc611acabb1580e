package tiewright.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tiewright.film.CardCheck;
import tiewright.film.Impossible;
import tiewright.scoring.Score;

/** What does not fit in film notes, in sentences. */
public final class FilmWords {
  private final Words words;

  public FilmWords(Words words) {
    this.words = words;
  }

  /** A filmed game that its card or its own rallies contradict; nothing where all fits. Scores with side one first. */
  public List<String> conflicts(CardCheck check) {
    List<String> lines = new ArrayList<>();
    for (CardCheck.Conflict conflict : check.conflicts()) {
      String card = conflict.says().stream().map(Score::toString).collect(Collectors.joining(", "));
      lines.add(words.sentence("film.conflict-" + conflict.source().code(), Map.of(
          "game", check.game().code(), "rallies", check.replay().score(), "card", card)));
    }
    check.beyondCard().ifPresent(rally -> lines.add(words.sentence("film.beyond-card", Map.of("game", check.game().code(), "rally", rally))));
    check.firstImpossible().ifPresent(impossible -> lines.add(sentence(check.game().code(), impossible)));
    return lines;
  }

  private String sentence(String game, Impossible impossible) {
    Map<String, Object> data = new LinkedHashMap<>(Map.of("game", game, "rally", impossible.rally(), "score", impossible.score()));
    impossible.noted().ifPresent(player -> data.put("noted", player));
    impossible.derived().ifPresent(player -> data.put("derived", player));
    String known = impossible.kind() == Impossible.Kind.OTHER_SERVER && impossible.derived().isEmpty() ? "-unknown" : "";
    return words.sentence("film.impossible-" + impossible.kind().code() + known, data);
  }
}
