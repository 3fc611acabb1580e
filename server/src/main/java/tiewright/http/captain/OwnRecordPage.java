package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.http.views.OwnRecordView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.OwnRecord;
import tiewright.wording.LineupWords;
import tiewright.wording.Words;

/** How good the advice was so far, for the captain of the club it was given to. */
final class OwnRecordPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.NOTES,
                "/captain/record",
                visit -> visit.show(Screen.of(
                        "ownRecord",
                        visit.words()
                                .say(
                                        "page-captain.how-good-the-advice-was",
                                        "club",
                                        visit.event().clubName(visit.club())),
                        view(visit))));
    }

    private static OwnRecordView view(Visit visit) {
        List<ClubAnswers.Forecasted> all = visit.ask(ClubAnswers::new).forecasts();
        List<OwnRecord.Scored> rubbers = all.stream()
                .filter(one -> one.forecast().part().isPresent())
                .flatMap(one -> one.result().stream())
                .toList();
        List<OwnRecord.Scored> ties = all.stream()
                .filter(one -> one.forecast().part().isEmpty())
                .flatMap(one -> one.result().stream())
                .toList();
        List<String> said = new ArrayList<>();
        said.add(visit.words().say("page-captain.as-sheets-open-the-chances"));
        said.addAll(words(visit.words().say("page-captain.ties"), OwnRecord.of(ties)));
        said.addAll(words(visit.words().say("page-captain.rubbers-and-deciders"), OwnRecord.of(rubbers)));
        return new OwnRecordView(said, bands(OwnRecord.of(rubbers)), forecasts(visit.event(), all));
    }

    private static List<String> words(String what, OwnRecord record) {
        if (record.scored() == 0) {
            return List.of(what + ": none with a forecast has ended yet.");
        }
        List<String> said = new ArrayList<>();
        said.add(String.format(
                Locale.ROOT,
                "%s: %s. Log score %.3f (a coin 0.693), Brier score %.3f (a coin 0.250); less is better.",
                what,
                record.scored() == 1 ? "1 forecast" : record.scored() + " forecasts",
                record.logLoss(),
                record.brier()));
        if (record.called() > 0) {
            said.add(String.format(
                    Locale.ROOT,
                    "Where your own ratings put a side ahead, %d in all: that side won %d, the side the forecast put ahead won %d.",
                    record.called(),
                    record.rightByRating(),
                    record.rightByForecast()));
        }
        if (record.scored() < OwnRecord.ENOUGH) {
            said.add("Fewer than " + OwnRecord.ENOUGH + ": too few to say whether it is any good.");
        }
        return said;
    }

    private static ReasonTable bands(OwnRecord record) {
        List<ReasonTable.Row> rows = record.bands().stream()
                .map(band -> new ReasonTable.Row(
                        List.of(
                                Cell.of(Math.round(100 * band.from()) + " to " + Math.round(100 * band.to()) + " %"),
                                        Cell.of(Integer.toString(band.forecasts())),
                                Cell.of(LineupWords.percent(band.meanChance())),
                                        Cell.of(LineupWords.percent((double) band.won() / band.forecasts()))),
                        "Range",
                        List.of("With so few the share behind it may be anything from "
                                + LineupWords.percent(band.low()) + " to " + LineupWords.percent(band.high()) + "."),
                        ""))
                .toList();
        return new ReasonTable(
                "bands",
                "Rubbers by the chance that was given",
                List.of(
                        new Column("Chance", false),
                        new Column("Forecasts", true),
                        new Column("Mean chance", true),
                        new Column("Won", true)),
                rows,
                "A forecast is good if the last two columns agree within the range.");
    }

    private static ReasonTable forecasts(VisibleEvent event, List<ClubAnswers.Forecasted> all) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (ClubAnswers.Forecasted one : all) {
            Optional<Tie> tie = event.tie(one.forecast().tie());
            String what = tie.map(known -> new TieViews(event).title(known))
                            .orElse(one.forecast().tie().code())
                    + one.forecast().part().map(rubber -> ", " + words(rubber)).orElse("");
            String result = one.result()
                    .map(known -> known.won() ? "won" : "lost")
                    .orElse(Words.of(event).say("page-captain.no-result-yet"));
            List<String> why = one.forecast().part().isPresent()
                    ? List.of()
                    : List.of(Words.of(event)
                            .say(
                                    "page-captain.the-sheet-you-named-gave",
                                    "givenAway",
                                    LineupWords.points(one.forecast().givenAway())));
            rows.add(new ReasonTable.Row(
                    List.of(
                            Cell.of(what),
                            Cell.of(LineupWords.percent(one.forecast().chance())),
                            Cell.of(result)),
                    Words.of(event).say("page-captain.more"),
                    why,
                    ""));
        }
        return new ReasonTable(
                "forecasts",
                Words.of(event).say("page-captain.every-forecast"),
                List.of(
                        new Column(Words.of(event).say("page-captain.what"), false),
                        new Column(Words.of(event).say("page-captain.chance-to-win"), true),
                        new Column(Words.of(event).say("page-captain.how-it-went"), false)),
                rows,
                Words.of(event).say("page-captain.walkovers-retirements-and-void-rubbers"));
    }

    private static String words(RubberNo rubber) {
        return TieViews.rubber(rubber);
    }
}
