package tiewright.http.captain;

import java.util.List;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.FormAndChemistryView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.rating.Estimate;
import tiewright.rating.Ratings;
import tiewright.wording.RatingWords;

/** What games and notes make of the own players and pairs, with all doubt. For the own captain: in nobody else's page. */
final class FormAndChemistryPage implements Page {
    private static final double AXIS = 15; // rallies in 100 to either side of even
    private static final List<String> CAUTIONS = List.of(
            "Small samples. Describes past film, does not judge a person.",
            "Form is rallies won in 100 above an even player. The dot is the best guess; in nineteen of twenty cases the truth lies"
                    + " on the whisker. The dashed line is even.",
            "For your club alone: no other role, no public page and no export shows it.");

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.NOTES,
                "/captain/form",
                visit -> visit.show(Screen.of(
                        "formAndChemistry",
                        visit.words()
                                .say(
                                        "page-captain.form-and-chemistry",
                                        "club",
                                        visit.event().clubName(visit.club())),
                        view(visit))));
    }

    private static FormAndChemistryView view(Visit visit) {
        Ratings ratings = visit.ask(ClubAnswers::new).ratings();
        RatingWords words =
                new RatingWords(visit.words(), visit.event().conditions().scoring());
        List<Ratings.Line> pairs = ratings.lines().stream()
                .filter(line -> line.kind() == Ratings.Kind.CHEMISTRY)
                .toList();
        return new FormAndChemistryView(
                CAUTIONS,
                ratings.lines().stream()
                        .filter(line -> line.kind() == Ratings.Kind.FORM)
                        .map(line -> new FormAndChemistryView.Player(
                                "why-" + line.players().get(0), bar(words, line), words.sentences(ratings, line)))
                        .toList(),
                pairs.stream().map(line -> bar(words, line)).toList(),
                table(ratings, words, pairs),
                words.notes(ratings));
    }

    private static DoubtBar bar(RatingWords words, Ratings.Line line) {
        Estimate estimate = line.estimate();
        return new DoubtBar(
                words.who(line),
                range(estimate),
                words.counted(line) + "; " + words.brief(line.verdict()),
                estimate.low(),
                estimate.mean(),
                estimate.high(),
                -AXIS,
                AXIS,
                0);
    }

    private static String range(Estimate estimate) {
        return RatingWords.figure(estimate.mean()) + ", could be " + RatingWords.figure(estimate.low()) + " to "
                + RatingWords.figure(estimate.high());
    }

    private static ReasonTable table(Ratings ratings, RatingWords words, List<Ratings.Line> pairs) {
        return new ReasonTable(
                "pairs",
                "Pairs: what they win together beyond what each brings, rallies in 100",
                List.of(
                        new ReasonTable.Column("Pair", false),
                        new ReasonTable.Column("Best guess", true),
                        new ReasonTable.Column("Could be", false),
                        new ReasonTable.Column("Rallies on film", true),
                        new ReasonTable.Column("Games", true),
                        new ReasonTable.Column("All told", true),
                        new ReasonTable.Column("What to make of it", false)),
                pairs.stream().map(line -> row(ratings, words, line)).toList(),
                "All told: mean form of the two and what they win together.");
    }

    private static ReasonTable.Row row(Ratings ratings, RatingWords words, Ratings.Line line) {
        List<String> cells = List.of(
                words.who(line),
                RatingWords.figure(line.estimate().mean()),
                RatingWords.figure(line.estimate().low()) + " to "
                        + RatingWords.figure(line.estimate().high()),
                Integer.toString(line.seen().rallies()),
                Integer.toString(line.seen().games()),
                RatingWords.figure(line.whole().mean()),
                words.brief(line.verdict()));
        return new ReasonTable.Row(
                cells.stream().map(ReasonTable.Cell::of).toList(), "In words", words.sentences(ratings, line), false);
    }
}
