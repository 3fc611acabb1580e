package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Player;
import tiewright.http.views.SquadView;
import tiewright.http.visit.Visit;
import tiewright.picture.EstimatePicture;
import tiewright.rating.Estimate;
import tiewright.rating.Ratings;
import tiewright.rating.Verdict;
import tiewright.wording.RatingWords;
import tiewright.wording.Words;

/** What games and notes make of the own players and pairs, as pictures with all doubt and as words. */
final class SquadPictures {
    private static final int NEAREST = 3;

    private final Words words;
    private final Ratings ratings;
    private final RatingWords said;
    private final List<Player> squad;
    private final GivenNames names;
    private final PairTable table;

    SquadPictures(Visit visit, Ratings ratings) {
        this.words = visit.words();
        this.ratings = ratings;
        this.said = new RatingWords(words, visit.event().conditions().scoring());
        this.squad = visit.event().squad(visit.club());
        this.names = new GivenNames(visit.event(), squad);
        this.table = new PairTable(words, said, ratings);
    }

    /** Empty while there is neither a game nor a judgement of any of them. */
    Optional<SquadView.Form> form() {
        List<Ratings.Line> forms = lines(Ratings.Kind.FORM);
        if (!SquadPages.isAnythingKnown(ratings)) {
            return Optional.empty();
        }
        List<SquadView.InWords> inWords = new ArrayList<>(forms.stream()
                .map(line -> new SquadView.InWords(said.who(line), said.sentences(ratings, line)))
                .toList());
        inWords.add(new SquadView.InWords(words.say("page-captain.what-it-rests-on"), said.notes(ratings)));
        return Optional.of(new SquadView.Form(
                EstimatePicture.of(forms.stream()
                        .sorted(best())
                        .map(line -> drawn(line, line.seen().rallies()))
                        .toList()),
                inWords));
    }

    private List<Ratings.Line> lines(Ratings.Kind kind) {
        return ratings.lines().stream().filter(line -> line.kind() == kind).toList();
    }

    private static Comparator<Ratings.Line> best() {
        return Comparator.comparingDouble((Ratings.Line line) -> line.estimate().mean())
                .reversed();
    }

    /** Those first that come nearest to being proven better. */
    private static Comparator<Ratings.Line> surest() {
        return Comparator.comparingDouble((Ratings.Line line) ->
                        line.estimate().mean() / Math.max(line.estimate().sd(), 1e-9))
                .reversed();
    }

    private EstimatePicture.Line drawn(Ratings.Line line, int seen) {
        Estimate estimate = line.estimate();
        return new EstimatePicture.Line(
                names.of(line.players()),
                estimate.low(),
                estimate.mean(),
                estimate.high(),
                isFirm(line.verdict()),
                Integer.toString(seen),
                words.say(
                        "page-captain.estimate",
                        "who",
                        said.who(line),
                        "best",
                        figure(estimate.mean()),
                        "low",
                        figure(estimate.low()),
                        "high",
                        figure(estimate.high()),
                        "seen",
                        said.counted(line),
                        "verdict",
                        said.brief(line.verdict())));
    }

    static boolean isFirm(Verdict verdict) {
        return switch (verdict) {
            case ABOVE, BELOW, NO_DIFFERENCE -> true;
            case NOT_ENOUGH_FILM, CANNOT_TELL_APART, FIRST_LOOK -> false;
        };
    }

    /** Those that were seen or judged; empty where none was. */
    Optional<SquadView.Pairs> pairs() {
        List<Ratings.Line> pairs =
                lines(Ratings.Kind.CHEMISTRY).stream().sorted(surest()).toList();
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SquadView.Pairs(
                proven(pairs),
                isProven(pairs) ? "" : nearest(pairs.get(0)),
                EstimatePicture.of(pairs.stream()
                        .limit(NEAREST)
                        .map(line -> drawn(line, line.seen().games()))
                        .toList()),
                words.say("page-captain.pairs-seen", "seen", pairs.size(), "of", squad.size() * (squad.size() - 1) / 2),
                new PairStairs(
                                names,
                                squad,
                                line -> drawn(line, line.seen().games()).words(),
                                words)
                        .of(pairs),
                table.of(pairs)));
    }

    private static boolean isProven(List<Ratings.Line> pairs) {
        return pairs.stream().anyMatch(line -> line.verdict() == Verdict.ABOVE || line.verdict() == Verdict.BELOW);
    }

    private String proven(List<Ratings.Line> pairs) {
        if (!isProven(pairs)) {
            return words.say("page-captain.no-pair-is-proven");
        }
        return pairs.stream()
                .filter(line -> line.verdict() == Verdict.ABOVE || line.verdict() == Verdict.BELOW)
                .map(line -> words.say(
                        "page-captain.pair-is-proven",
                        "pair",
                        names.of(line.players()),
                        "how",
                        line.verdict().code()))
                .collect(Collectors.joining(" "));
    }

    private String nearest(Ratings.Line line) {
        return words.say(
                "page-captain.comes-nearest",
                "pair",
                names.of(line.players()),
                "best",
                figure(line.estimate().mean()),
                "low",
                figure(line.estimate().low()),
                "high",
                figure(line.estimate().high()));
    }

    /** With the sign that is as wide as a plus. */
    static String figure(double strength) {
        return RatingWords.figure(strength).replace('-', '−');
    }
}
