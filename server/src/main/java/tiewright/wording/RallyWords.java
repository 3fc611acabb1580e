package tiewright.wording;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.film.RallyNote;
import tiewright.film.Replay;
import tiewright.film.Situation;
import tiewright.film.Step;
import tiewright.scoring.Court;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** One rally after the other in sentences: what was noted, how it stands then, and who stands where. */
final class RallyWords {
    private final Words words;

    RallyWords(Words words) {
        this.words = words;
    }

    /** How it stands after the rallies, and who stands where. */
    List<String> stands(Replay replay) {
        Optional<Situation> next = replay.next();
        if (next.isPresent()) {
            return List.of(serve(next.get()), halves(next.get()));
        }
        return List.of(
                replay.isOver()
                        ? words.sentence("film.stands-over", Map.of("score", replay.score()))
                        : words.sentence(
                                "film.stands-unsure",
                                Map.of(
                                        "scores",
                                        replay.scores().stream()
                                                .map(Score::toString)
                                                .sorted()
                                                .collect(Collectors.joining(" or ")))));
    }

    private String serve(Situation next) {
        boolean sideOut = next.state().format().kind() == Format.Kind.SIDE_OUT;
        return words.sentence(
                sideOut ? "film.stands-side-out" : "film.stands-rally",
                Map.of(
                        "call",
                        next.call(),
                        "server",
                        next.server(),
                        "number",
                        next.serverNumber(),
                        "receiver",
                        next.receiver(),
                        "half",
                        next.servesFrom() == Court.RIGHT ? "right" : "left"));
    }

    private String halves(Situation now) {
        return words.sentence(
                "film.halves",
                Map.of(
                        "right1",
                        now.at(SideNo.ONE, Court.RIGHT),
                        "left1",
                        now.at(SideNo.ONE, Court.LEFT),
                        "right2",
                        now.at(SideNo.TWO, Court.RIGHT),
                        "left2",
                        now.at(SideNo.TWO, Court.LEFT)));
    }

    /** A rally with the call before it, as far as that is known. */
    String rally(Step step) {
        RallyNote note = step.note();
        return words.sentence(
                "film.rally",
                Map.of(
                        "rally", note.number(),
                        "call",
                                step.situation()
                                        .map(at -> words.sentence("film.rally-call", Map.of("call", at.call())))
                                        .orElse(""),
                        "server",
                                step.server()
                                        .map(server -> words.sentence("film.rally-server", Map.of("server", server)))
                                        .orElse(""),
                        "ending", ending(note),
                        "where",
                                note.detail()
                                        .where()
                                        .map(where -> " (" + where + ")")
                                        .orElse("")));
    }

    private String ending(RallyNote note) {
        return words.sentence(
                "film.rally-" + note.ending().code(),
                note.player().map(player -> Map.of("player", player)).orElse(Map.of()));
    }
}
