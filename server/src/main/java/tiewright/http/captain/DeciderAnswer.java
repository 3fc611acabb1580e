package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Tie;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.lineup.tie.TieNow;
import tiewright.wording.LineupWords;

/** Who could play the decider, each pair with its chance. */
final class DeciderAnswer {
    private static final int SHOWN = 5;
    private static final double ALWAYS = 0.995;
    private static final String IF_IT_COMES = "page-captain.should-it-come-to-a";

    private final Visit visit;
    private final LineupInputs inputs;
    private final LineupWords words;

    DeciderAnswer(Visit visit, LineupInputs inputs) {
        this.visit = visit;
        this.inputs = inputs;
        this.words = LineupWords.inWholes(visit.words());
    }

    /** The page once both sheets are open. */
    ProposalView view(Tie tie, Tried tried, ProposalView.Head head) {
        DeciderAdvice advice = inputs.decider();
        String title = visit.event().progress(tie).awaitsDecider() ? "page-captain.for-the-decider" : IF_IT_COMES;
        List<ProposalView.Fold> folds =
                fold(Optional.of(advice), title).stream().toList();
        return new ProposalView(
                tried.refusal(),
                head,
                new WorthNow(visit, tie, inputs).sheet(odds(advice)),
                List.of(),
                List.of(new ProposalView.Part("", folds)),
                List.of(
                        visit.words().say("page-captain.both-sheets-are-open-what"),
                        words.restsOn(inputs.basis()),
                        Cautions.ofAdvice(visit.words())),
                Optional.empty(),
                List.of());
    }

    /** Of the decider with the pair that stands first; where nobody is named, of the game itself. */
    private static TieNow.Odds odds(DeciderAdvice advice) {
        return advice.best()
                .map(first -> new TieNow.Odds(first.chance(), first.low(), first.high()))
                .orElse(new TieNow.Odds(advice.chance(), advice.chance(), advice.chance()));
    }

    /** The same as one line of another page; empty where nobody is asked for. */
    Optional<ProposalView.Fold> fold(Optional<DeciderAdvice> advice) {
        return fold(advice, IF_IT_COMES);
    }

    private Optional<ProposalView.Fold> fold(Optional<DeciderAdvice> advice, String title) {
        return advice.map(one -> ProposalView.Fold.of(
                        visit.words().say(title),
                        one.candidates().stream()
                                .findFirst()
                                .map(first -> ProposedSheets.names(visit, first.pair()))
                                .orElse(""),
                        one.notes().stream().map(words::sentence).toList())
                .withFigure(one.candidates().stream()
                        .findFirst()
                        .map(first -> LineupWords.whole(first.chance()))
                        .orElse(""))
                .choosing(one.candidates().stream()
                        .limit(SHOWN)
                        .map(this::candidate)
                        .toList()));
    }

    private ProposalView.Candidate candidate(DeciderAdvice.Candidate one) {
        List<String> said = new ArrayList<>(List.of(words.verdict(one.verdict())));
        if (one.weight() > 0) {
            said.add(
                    one.weight() > ALWAYS
                            ? visit.words().say("page-captain.send-this-pair")
                            : visit.words().say("page-captain.send-it", "share", LineupWords.whole(one.weight())));
        }
        if (one.hurt()) {
            said.add(visit.words().say("page-captain.one-retired"));
        }
        return new ProposalView.Candidate(
                ProposedSheets.names(visit, one.pair()),
                String.join("; ", said),
                ProposedSheets.bar(
                        visit,
                        visit.words().say("page-captain.chance-in-the-decider"),
                        new ProposedSheets.Doubted(one.chance(), one.low(), one.high())));
    }
}
