package tiewright.http.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.VisibleEvent;
import tiewright.film.CardCheck;
import tiewright.film.Counted;
import tiewright.film.GameCounts;
import tiewright.film.Measure;
import tiewright.film.Replay;
import tiewright.film.Step;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.NotingView;
import tiewright.http.visit.Visit;
import tiewright.picture.RallyLine;
import tiewright.scoring.Score;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

/** How a noted game stands: what cannot be read, the score, the last rallies, and the counts. */
final class NotingStands {
    private static final int LAST = 3;
    private static final List<Measure> OF_PAIRS =
            List.of(Measure.RALLIES_WON, Measure.WON_SERVING, Measure.WON_RECEIVING);
    private static final List<Measure> OF_PLAYERS =
            List.of(Measure.WON_OWN_SERVE, Measure.EARNED, Measure.FORCED, Measure.GAVE);

    private final Visit visit;
    private final VisibleEvent event;
    private final FilmWords words;

    NotingStands(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = new FilmWords(visit.words());
    }

    NotingView.Stands of(NotedGame noted) {
        List<String> faults = new ArrayList<>(noted.faults().stream()
                .filter(fault -> fault.field().equals(NotedGame.RALLIES))
                .map((Refusal fault) -> visit.words().sentence(fault))
                .toList());
        if (noted.game().isEmpty()) {
            return new NotingView.Stands(
                    faults,
                    List.of(Words.of(event).say("page-film.say-who-plays-then-it")),
                    "",
                    Optional.empty(),
                    List.of());
        }
        CardCheck check = visit.ask(ClubAnswers::new).checked(noted.game().get());
        if (check.replay().isOver()
                || check.beyondCard().isPresent()
                || check.firstImpossible().isPresent()) {
            faults.addAll(words.conflicts(check));
        }
        return stands(check, faults);
    }

    private NotingView.Stands stands(CardCheck check, List<String> faults) {
        List<String> lines = new ArrayList<>(words.stands(check.replay()));
        List<Step> steps = check.replay().steps();
        steps.subList(Math.max(0, steps.size() - LAST), steps.size()).forEach(step -> lines.add(words.rally(step)));
        return new NotingView.Stands(
                faults,
                lines,
                check.replay().score().home() + "–" + check.replay().score().away(),
                steps.isEmpty() ? Optional.empty() : Optional.of(RallyLine.of(leads(check.replay()))),
                steps.isEmpty() ? List.of() : tables(GameCounts.of(check)));
    }

    private List<ReasonTable> tables(List<Counted> counts) {
        return List.of(
                table("noted-pairs", Words.of(event).say("page-film.pairs"), OF_PAIRS, counts),
                table("noted-players", Words.of(event).say("page-film.players"), OF_PLAYERS, counts));
    }

    /** How far the own side was ahead, before the first rally and after each, as far as that is known. */
    private static List<Integer> leads(Replay replay) {
        List<Integer> leads = new ArrayList<>();
        replay.steps().forEach(step -> leads.add(lead(step.seen().score())));
        leads.add(lead(replay.score()));
        return leads;
    }

    private static int lead(Score score) {
        return score.home() - score.away();
    }

    /** A row for each pair or player, a column for each count: how many of how many. */
    private ReasonTable table(String id, String caption, List<Measure> measures, List<Counted> counts) {
        List<List<PlayerId>> all = counts.stream()
                .filter(count -> measures.contains(count.measure()))
                .map(Counted::who)
                .distinct()
                .toList();
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(new ReasonTable.Column(caption, false)));
        measures.forEach(measure -> columns.add(new ReasonTable.Column(words.measure(measure), true)));
        List<ReasonTable.Row> rows = all.stream()
                .map(who -> {
                    List<ReasonTable.Cell> cells = new ArrayList<>(List.of(ReasonTable.Cell.of(visit.say(
                            "page-film.names",
                            "names",
                            who.stream().map(event::name).toList()))));
                    measures.forEach(measure -> cells.add(ReasonTable.Cell.of(count(counts, who, measure))));
                    return ReasonTable.Row.of(cells);
                })
                .toList();
        return new ReasonTable(id, caption, columns, rows, "");
    }

    private String count(List<Counted> counts, List<PlayerId> who, Measure measure) {
        return counts.stream()
                .filter(one -> one.measure() == measure
                        && one.who().equals(who)
                        && one.outOf().orElse(0) > 0)
                .findFirst()
                .map(one -> visit.say(
                        "page-film.of-2",
                        "value",
                        one.value(),
                        "outOf",
                        one.outOf().getAsInt()))
                .orElse(visit.say("page-film.none"));
    }
}
