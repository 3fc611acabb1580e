package tiewright.http.desk;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.http.pieces.ReasonTable;
import tiewright.wording.Words;

/** What others published about heat, beside each other: they differ, so none of them is built in as a rule. */
final class PublishedHeat {
    private static final int ROWS = 13;

    private PublishedHeat() {}

    static ReasonTable table(Words words) {
        return new ReasonTable(
                "published-heat",
                words.say("page-desk.heat-published"),
                List.of(
                        new ReasonTable.Column(words.say("page-desk.heat-column-from"), false),
                        new ReasonTable.Column(words.say("page-desk.heat-column-follows"), false),
                        new ReasonTable.Column(words.say("page-desk.heat-column-source"), false)),
                IntStream.rangeClosed(1, ROWS).mapToObj(row -> row(words, row)).toList(),
                words.say("page-desk.heat-published-foot"));
    }

    private static ReasonTable.Row row(Words words, int row) {
        return ReasonTable.Row.of(Stream.of(
                        words.say("page-desk.heat-from." + row),
                        words.say("page-desk.heat-follows." + row),
                        words.say("page-desk.heat-source." + row))
                .map(ReasonTable.Cell::of)
                .toList());
    }
}
