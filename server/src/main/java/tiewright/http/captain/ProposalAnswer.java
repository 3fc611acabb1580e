package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.Tie;
import tiewright.http.answers.OwnSheets;
import tiewright.http.views.ActionForm;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.Budget;
import tiewright.lineup.Reason;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.order.OrderAdvice;
import tiewright.lineup.tie.Evaluation;
import tiewright.lineup.tie.Proposal;
import tiewright.lineup.tie.Proposals;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.wording.LineupWords;
import tiewright.wording.OrderWords;

/** The proposal for a tie whose sheets are closed: the answer, then what is nearly as good, then what if. */
final class ProposalAnswer {
    private static final int SHOWN = 3;

    private final Visit visit;
    private final Tie tie;
    private final LineupInputs inputs;
    private final Question asked;
    private final LineupWords words;
    private final ProposedSheets sheets;
    private final Budget budget;

    ProposalAnswer(Visit visit, Tie tie, LineupInputs inputs) {
        this.visit = visit;
        this.tie = tie;
        this.inputs = inputs;
        this.asked = Question.of(visit);
        this.words = LineupWords.inWholes(visit.words());
        this.sheets = new ProposedSheets(visit, tie, inputs);
        this.budget = asked.budget(visit, tie.id());
    }

    ProposalView view(Tried tried, ProposalView.Head head, List<ActionForm> forms) {
        Proposal proposal = Proposals.propose(inputs.problem(), budget, SHOWN);
        Optional<ProposalView.Sheet> best = Optional.empty();
        List<String> impossible = List.of();
        List<ProposalView.Part> parts = new ArrayList<>();
        if (proposal instanceof Proposal.Proposed proposed) {
            best = Optional.of(sheets.sheet(proposed.sheets().get(0), "", true));
            parts.addAll(parts(proposed));
        } else if (proposal instanceof Proposal.Impossible none) {
            impossible = sentences(none.reasons());
            parts.add(new ProposalView.Part(
                    say("page-captain.nearly-as-good"), own().stream().toList()));
        }
        return new ProposalView(
                tried.refusal(),
                head,
                best,
                impossible,
                parts.stream().filter(part -> !part.isEmpty()).toList(),
                List.of(inShort(visit, inputs)),
                Optional.of(asked.ask(visit, tie.id())),
                forms);
    }

    private List<ProposalView.Part> parts(Proposal.Proposed proposed) {
        ProposedSheet first = proposed.sheets().get(0);
        return List.of(
                new ProposalView.Part(say("page-captain.nearly-as-good"), nearly(proposed, first)),
                new AndIf(visit, inputs, asked.aim()).part(new DeciderAnswer(visit, inputs).fold(proposed.decider())),
                new ProposalView.Part(say("page-captain.why"), why(proposed, first)));
    }

    private List<ProposalView.Fold> nearly(Proposal.Proposed proposed, ProposedSheet first) {
        List<ProposalView.Fold> folds = new ArrayList<>();
        own().ifPresent(folds::add);
        proposed.sheets().stream().skip(1).forEach(other -> folds.add(sheets.against(first, other)));
        proposed.keeping()
                .map(kept -> ProposalView.Fold.of(say("page-captain.the-best-sheet-that-keeps"), "", List.of())
                        .withFigure(LineupWords.whole(kept.chance()))
                        .with(List.of(sheets.sheet(kept, "", true))))
                .ifPresent(folds::add);
        return folds;
    }

    /** The captain's own sealed sheet, measured the same way. */
    private Optional<ProposalView.Fold> own() {
        ExchangeId id = ExchangeId.sheets(tie.id());
        return new OwnExchange(visit, id, tie, tie.sideOf(visit.club()).orElseThrow())
                .sealed()
                .filter(kept -> visit.ask(OwnSheets::new).isLegal(id, kept.sheet()))
                .map(kept -> own(Proposals.evaluate(inputs.problem(), kept.sheet(), budget)));
    }

    private ProposalView.Fold own(Evaluation evaluation) {
        List<String> lines = new ArrayList<>();
        lines.add(visit.words()
                .say(
                        "page-captain.against-the-first-proposal-it",
                        "aim",
                        words.costOf(evaluation.sheet().cost(), asked.aim())));
        evaluation
                .wishesNotGranted()
                .forEach(wish -> lines.add(visit.words().say("page-captain.not-granted", "wish", words.wish(wish))));
        return ProposalView.Fold.of(say("page-captain.your-sealed-sheet"), "", lines)
                .withFigure(LineupWords.whole(evaluation.sheet().chance()))
                .with(List.of(sheets.sheet(evaluation.sheet(), "", false)));
    }

    private List<ProposalView.Fold> why(Proposal.Proposed proposed, ProposedSheet first) {
        List<ProposalView.Fold> folds = new ArrayList<>();
        List<String> reasons = new ArrayList<>(sentences(first.reasons()));
        reasons.addAll(sentences(proposed.notes()));
        reasons.add(words.restsOn(inputs.basis()));
        reasons.add(say("page-captain.nothing-of-theirs"));
        reasons.add(Cautions.ofAdvice(visit.words()));
        new ExpectedPairs(visit, inputs.problem()).fold(first.sheet()).ifPresent(folds::add);
        folds.add(ProposalView.Fold.of(say("page-captain.why-these-pairs"), "", reasons));
        if (!proposed.promises().isEmpty()) {
            folds.add(ProposalView.Fold.of(say("page-captain.what-you-promised"), "", sentences(proposed.promises())));
        }
        OrderAdvice.of(inputs.problem(), inputs.theirEarlier(), budget.seed())
                .map(this::order)
                .ifPresent(folds::add);
        return folds;
    }

    private ProposalView.Fold order(OrderAdvice advice) {
        List<ProposalView.Sheet> drawn = advice
                .drawn()
                .map(sheet ->
                        Proposals.evaluate(inputs.problem(), sheet, budget).sheet())
                .map(sheet -> sheets.sheet(
                        sheet, visit.words().say("page-captain.drawn-with-the-number", "seed", asked.seed()), true))
                .stream()
                .toList();
        return ProposalView.Fold.of(
                        say("page-captain.naming-it-blind"),
                        "",
                        new OrderWords(visit.words()).said(advice, asked.aim(), asked.seed()))
                .with(drawn);
    }

    /** What it rests on, and whose decision it is, in one breath. */
    static String inShort(Visit visit, LineupInputs inputs) {
        return visit.words()
                .say(
                        "page-captain.rests-in-short",
                        "cards",
                        inputs.basis().cards(),
                        "earlier",
                        inputs.basis().earlier(),
                        "rallies",
                        inputs.basis().rallies());
    }

    private String say(String key) {
        return visit.words().say(key);
    }

    private List<String> sentences(List<Reason> reasons) {
        return reasons.stream().map(words::sentence).toList();
    }
}
