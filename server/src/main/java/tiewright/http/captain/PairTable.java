package tiewright.http.captain;

import java.util.List;
import tiewright.http.pieces.ReasonTable;
import tiewright.rating.Ratings;
import tiewright.wording.RatingWords;
import tiewright.wording.Words;

/** Pairs of the own squad in figures, each with its sentences. */
record PairTable(Words words, RatingWords said, Ratings ratings) {
    ReasonTable of(List<Ratings.Line> pairs) {
        return new ReasonTable(
                "pairs",
                words.say("page-captain.pairs-caption"),
                List.of(
                        new ReasonTable.Column(words.say("page-captain.pair-column"), false),
                        new ReasonTable.Column(words.say("page-captain.best-guess"), true),
                        new ReasonTable.Column(words.say("page-captain.could-be-column"), false),
                        new ReasonTable.Column(words.say("page-captain.rallies-on-film"), true),
                        new ReasonTable.Column(words.say("page-captain.games"), true),
                        new ReasonTable.Column(words.say("page-captain.all-told"), true),
                        new ReasonTable.Column(words.say("page-captain.what-to-make-of-it"), false)),
                pairs.stream().map(this::row).toList(),
                words.say("page-captain.all-told-means"));
    }

    private ReasonTable.Row row(Ratings.Line line) {
        List<String> cells = List.of(
                said.who(line),
                SquadPictures.figure(line.estimate().mean()),
                words.say(
                        "page-captain.from-to",
                        "low",
                        SquadPictures.figure(line.estimate().low()),
                        "high",
                        SquadPictures.figure(line.estimate().high())),
                Integer.toString(line.seen().rallies()),
                Integer.toString(line.seen().games()),
                SquadPictures.figure(line.whole().mean()),
                said.brief(line.verdict()));
        return new ReasonTable.Row(
                cells.stream().map(ReasonTable.Cell::of).toList(),
                words.say("page-captain.in-words"),
                said.sentences(ratings, line),
                "");
    }
}
