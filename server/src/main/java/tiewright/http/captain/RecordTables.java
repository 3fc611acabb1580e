package tiewright.http.captain;

import java.util.List;
import java.util.Locale;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.lineup.club.OwnRecord;
import tiewright.wording.LineupWords;
import tiewright.wording.Words;

/** How forecasts are held against what came: scores in a sentence, and shares won by the chance that was given. */
final class RecordTables {
    private RecordTables() {}

    static String scores(Words words, String what, OwnRecord record) {
        return words.say(
                "page-captain.record-scores",
                "what",
                what,
                "forecasts",
                record.scored(),
                "log",
                figure(record.logLoss()),
                "brier",
                figure(record.brier()));
    }

    private static String figure(double score) {
        return String.format(Locale.ROOT, "%.3f", score);
    }

    static ReasonTable bands(Words words, String title, OwnRecord record) {
        return new ReasonTable(
                "bands",
                title,
                List.of(
                        new Column(words.say("page-captain.record-chance"), false),
                        new Column(words.say("page-captain.record-forecasts"), true),
                        new Column(words.say("page-captain.record-mean"), true),
                        new Column(words.say("page-captain.record-won"), true)),
                record.bands().stream().map(band -> band(words, band)).toList(),
                words.say("page-captain.record-good-if"));
    }

    private static ReasonTable.Row band(Words words, OwnRecord.Band band) {
        return new ReasonTable.Row(
                List.of(
                        Cell.of(words.say(
                                "page-captain.record-band",
                                "from",
                                Math.round(100 * band.from()),
                                "to",
                                Math.round(100 * band.to()))),
                        Cell.of(Integer.toString(band.forecasts())),
                        Cell.of(LineupWords.percent(band.meanChance())),
                        Cell.of(LineupWords.percent((double) band.won() / band.forecasts()))),
                words.say("page-captain.record-range"),
                List.of(words.say(
                        "page-captain.record-may-be",
                        "low",
                        LineupWords.percent(band.low()),
                        "high",
                        LineupWords.percent(band.high()))),
                "");
    }
}
