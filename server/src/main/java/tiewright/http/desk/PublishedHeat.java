package tiewright.http.desk;

import java.util.List;
import tiewright.http.pieces.ReasonTable;

/** What others published about heat, beside each other: they differ, so none of them is built in as a rule. */
final class PublishedHeat {
    private PublishedHeat() {}

    static ReasonTable table() {
        return new ReasonTable(
                "published-heat",
                "What others publish",
                List.of(
                        new ReasonTable.Column("From", false),
                        new ReasonTable.Column("What follows there", false),
                        new ReasonTable.Column("Source", false)),
                List.of(
                        row("WBGT", "21 °C", "caution", "Japan Sports Association 2013"),
                        row("WBGT", "25 °C", "warning: rest often", "Japan Sports Association 2013"),
                        row("WBGT", "28 °C", "severe warning", "Japan Sports Association 2013"),
                        row("WBGT", "31 °C", "danger: stop", "Japan Sports Association 2013"),
                        row("WBGT", "28.0 °C", "first action, wheelchair", "ITF weather policy, Tokyo Paralympics"),
                        row("WBGT", "30.1 °C", "first action, standing", "ITF weather policy, Tokyo Paralympics"),
                        row("WBGT", "30.1 °C", "break", "ATP heat rule from 2026 (second-hand)"),
                        row("WBGT", "32.2 °C", "stop", "ATP heat rule from 2026 (second-hand)"),
                        row("Air", "35 °C", "finish the set in play", "policy of a tennis club"),
                        row(
                                "Air",
                                "36 °C",
                                "stop for juniors and from 35 years on, 90 minutes of waiting",
                                "Tennis West 2019"),
                        row("Air", "38 °C", "stop", "Tennis West 2019"),
                        row("Air, as forecast,", "36 °C", "shorter sets; above it, cancel", "WMGTA weather rules"),
                        row(
                                "Air",
                                "above 95 °F or below 32 °F",
                                "any player may put it off by an hour",
                                "USTA Atlanta 2013")),
                "Published for other sports, ages and places. Only the figures in your conditions are used here.");
    }

    private static ReasonTable.Row row(String measured, String from, String follows, String source) {
        return ReasonTable.Row.of(List.of(
                ReasonTable.Cell.of(measured + " " + from), ReasonTable.Cell.of(follows), ReasonTable.Cell.of(source)));
    }
}
