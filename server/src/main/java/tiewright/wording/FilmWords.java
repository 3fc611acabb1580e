package tiewright.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.film.Agreement;
import tiewright.film.CardCheck;
import tiewright.film.FilmGame;
import tiewright.film.FilmTotal;
import tiewright.film.Impossible;
import tiewright.film.Measure;
import tiewright.film.RallyKey;
import tiewright.film.Replay;
import tiewright.film.Rota;
import tiewright.film.Step;
import tiewright.scoring.Score;

/** What film notes say and what does not fit in them, in sentences. */
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
            lines.add(words.sentence(
                    "film.conflict-" + conflict.source().code(),
                    Map.of(
                            "game",
                            check.game().code(),
                            "rallies",
                            check.replay().score(),
                            "card",
                            card)));
        }
        check.beyondCard()
                .ifPresent(rally -> lines.add(words.sentence(
                        "film.beyond-card", Map.of("game", check.game().code(), "rally", rally))));
        check.firstImpossible()
                .ifPresent(impossible -> lines.add(sentence(check.game().code(), impossible)));
        return lines;
    }

    /** How it stands after the rallies, and who stands where. */
    public List<String> stands(Replay replay) {
        return new RallyWords(words).stands(replay);
    }

    /** A rally with the call before it, as far as that is known. */
    public String rally(Step step) {
        return new RallyWords(words).rally(step);
    }

    /** What is counted. */
    public String measure(Measure measure) {
        return words.sentence("film.measure." + measure.code(), Map.of());
    }

    /** What a total is worth, what it rests on, and what to beware of. */
    public List<String> sentences(FilmTotal total) {
        List<String> said = new ArrayList<>();
        total.share()
                .ifPresent(share -> said.add(words.sentence(
                        "film.total-share",
                        Map.of("best", in100(share.value()), "low", in100(share.low()), "high", in100(share.high())))));
        said.add(words.sentence(
                "film.total-" + total.worth().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                Map.of(
                        "of",
                        total.outOf(),
                        "shown",
                        total.measure().shownFrom(),
                        "acted",
                        total.measure().actedOnFrom())));
        said.add(words.sentence("film.total-against", Map.of("against", against(total))));
        said.add(words.sentence("film.beware." + total.measure().code(), Map.of()));
        return said;
    }

    private String against(FilmTotal total) {
        return total.against().entrySet().stream()
                .map(pair ->
                        words.said(pair.getKey()) + (pair.getValue() == 1 ? "" : " (" + pair.getValue() + " games)"))
                .collect(Collectors.joining("; "));
    }

    private static long in100(double share) {
        return Math.round(100 * share);
    }

    /** Why notes of these two cannot be held against each other. */
    public String cannotCompare(FilmGame one, FilmGame other) {
        return words.sentence(
                one.code().equals(other.code()) ? "film.agreement-same" : "film.agreement-others",
                Map.of("one", one.code(), "other", other.code()));
    }

    /** How many rallies were compared. */
    public String compared(Agreement agreement) {
        return words.sentence(
                agreement.onlyOne() == 0 ? "film.agreement" : "film.agreement-more",
                Map.of("rallies", agreement.rallies(), "more", agreement.onlyOne()));
    }

    /** What two watchers may agree on. */
    public String what(Agreement.What what) {
        return words.sentence("film.what." + what.code(), Map.of());
    }

    /** Whether counts of it can be trusted. */
    public String worth(Agreement.Field field) {
        String worth = words.sentence(
                "film.agreement-"
                        + field.isEnough()
                                .map(enough -> enough ? "enough" : "unlike")
                                .orElse("unsaid"),
                Map.of());
        return field.onlyOne() == 0
                ? worth
                : worth + " " + words.sentence("film.agreement-one", Map.of("rallies", field.onlyOne()));
    }

    /** How evenly a rota mixes the players. */
    public String evenness(Rota rota, int players) {
        List<Pair> played = rota.games().stream()
                .flatMap(game -> Stream.of(game.one(), game.two()))
                .toList();
        long again = played.size() - played.stream().distinct().count();
        return words.sentence(
                again == 0 ? "film.rota-even" : "film.rota-uneven",
                Map.of("all", players * (players - 1) / 2, "again", again, "players", players));
    }

    /** How a rally ended, in a word. */
    public String ending(RallyKey key) {
        return words.sentence("film.ending." + key.value(), Map.of());
    }

    /** What a key notes. */
    public String key(RallyKey key) {
        return words.sentence("film.key." + key.code(), Map.of());
    }

    private String sentence(String game, Impossible impossible) {
        Map<String, Object> data =
                new LinkedHashMap<>(Map.of("game", game, "rally", impossible.rally(), "score", impossible.score()));
        impossible.noted().ifPresent(player -> data.put("noted", player));
        impossible.derived().ifPresent(player -> data.put("derived", player));
        String known = impossible.kind() == Impossible.Kind.OTHER_SERVER
                        && impossible.derived().isEmpty()
                ? "-unknown"
                : "";
        return words.sentence("film.impossible-" + impossible.kind().code() + known, data);
    }
}
