package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.http.pieces.Button;
import tiewright.http.views.ActionForm;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.SheetFields;
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
                fold(Optional.of(advice), title, named(tie)).stream().toList();
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
        return fold(advice, IF_IT_COMES, Optional.empty());
    }

    /** The tie, while its pair can still be named. */
    private Optional<Tie> named(Tie tie) {
        return Optional.of(tie).filter(visit.event()::goesOn).filter(one -> one.isReady() && !one.isDeciderOpened());
    }

    private Optional<ProposalView.Fold> fold(Optional<DeciderAdvice> advice, String title, Optional<Tie> named) {
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
                        .map(candidate -> candidate(candidate, named))
                        .toList()));
    }

    private ProposalView.Candidate candidate(DeciderAdvice.Candidate one, Optional<Tie> named) {
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
                        new ProposedSheets.Doubted(one.chance(), one.low(), one.high())),
                named.map(tie -> use(tie, one.pair())));
    }

    /** Takes the pair into the form by a press: names never stand in an address. */
    private ActionForm use(Tie tie, Pair pair) {
        return ActionForm.of(
                        "use-" + pair.first().code() + "-" + pair.second().code(),
                        OwnExchange.path(SheetKind.DECIDER) + tie.id(),
                        "",
                        Button.other(visit.words().say("page-captain.take-this-pair")))
                .sending("step", "choose")
                .sending(
                        SheetFields.field(RubberNo.DECIDER, "first"),
                        pair.first().code())
                .sending(
                        SheetFields.field(RubberNo.DECIDER, "second"),
                        pair.second().code());
    }
}
