package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                        visit.say(
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
        said.add(visit.say("page-captain.as-sheets-open-the-chances"));
        said.addAll(words(visit.words(), visit.say("page-captain.ties"), OwnRecord.of(ties)));
        said.addAll(words(visit.words(), visit.say("page-captain.rubbers-and-deciders"), OwnRecord.of(rubbers)));
        return new OwnRecordView(
                said,
                List.of(
                        RecordTables.bands(
                                visit.words(), visit.say("page-captain.record-by-chance"), OwnRecord.of(rubbers)),
                        forecasts(visit.event(), all)));
    }

    private static List<String> words(Words words, String what, OwnRecord record) {
        if (record.scored() == 0) {
            return List.of(words.say("page-captain.record-none", "what", what));
        }
        List<String> said = new ArrayList<>(List.of(RecordTables.scores(words, what, record)));
        if (record.called() > 0) {
            said.add(words.say(
                    "page-captain.record-against-ratings",
                    "called",
                    record.called(),
                    "rating",
                    record.rightByRating(),
                    "forecast",
                    record.rightByForecast()));
        }
        if (record.scored() < OwnRecord.ENOUGH) {
            said.add(words.say("page-captain.record-too-few", "enough", OwnRecord.ENOUGH));
        }
        return said;
    }

    private static ReasonTable forecasts(VisibleEvent event, List<ClubAnswers.Forecasted> all) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (ClubAnswers.Forecasted one : all) {
            rows.add(row(event, one));
        }
        return new ReasonTable(
                "forecasts",
                Words.say(event, "page-captain.every-forecast"),
                List.of(
                        new Column(Words.say(event, "page-captain.what"), false),
                        new Column(Words.say(event, "page-captain.chance-to-win"), true),
                        new Column(Words.say(event, "page-captain.how-it-went"), false)),
                rows,
                Words.say(event, "page-captain.walkovers-retirements-and-void-rubbers"));
    }

    private static ReasonTable.Row row(VisibleEvent event, ClubAnswers.Forecasted one) {
        Words words = Words.of(event);
        Optional<Tie> tie = event.tie(one.forecast().tie());
        String what = tie.map(known -> new TieViews(event).title(known))
                        .orElse(one.forecast().tie().code())
                + one.forecast()
                        .part()
                        .map(rubber -> ", " + TieViews.rubber(words, rubber))
                        .orElse("");
        String result = one.result()
                .map(known -> Words.say(event, known.won() ? "page-captain.now-won" : "page-captain.now-lost"))
                .orElse(Words.say(event, "page-captain.no-result-yet"));
        return new ReasonTable.Row(
                List.of(
                        Cell.of(what),
                        Cell.of(LineupWords.percent(one.forecast().chance())),
                        Cell.of(result)),
                Words.say(event, "page-captain.more"),
                given(words, one),
                "");
    }

    /** What the sheet that was named gave away; of a rubber there is nothing to say. */
    private static List<String> given(Words words, ClubAnswers.Forecasted one) {
        return one.forecast().part().isPresent()
                ? List.of()
                : List.of(words.say(
                        "page-captain.the-sheet-you-named-gave",
                        "givenAway",
                        LineupWords.points(one.forecast().givenAway())));
    }
}
