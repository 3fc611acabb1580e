package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PlayerWish;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.OwnSheets;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.Budget;
import tiewright.lineup.Reason;
import tiewright.lineup.WishForTie;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.lineup.order.OrderAdvice;
import tiewright.lineup.tie.Evaluation;
import tiewright.lineup.tie.Proposal;
import tiewright.lineup.tie.Proposals;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.lineup.tie.WhatIf;
import tiewright.wording.LineupWords;
import tiewright.wording.OrderWords;
import tiewright.wording.Words;

/** What to hand in, and who could play the decider: proposed to the own captain, decided by the captain. */
final class ProposalPages implements Page {
    private static final int SHOWN = 3;

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, "/captain/proposal/{tie}", visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, "/captain/proposal/{tie}/wishes", ProposalPages::wish);
    }

    private static Tie ownTie(Visit visit) {
        Tie tie = visit.tie();
        if (!tie.has(visit.club())) {
            throw new NotFound(visit.words().say("page-captain.your-club-does-not-play", "tie", tie.id()));
        }
        return tie;
    }

    /** Keeps one wish more, or ends those of a player. */
    private static void wish(Visit visit) {
        Tie tie = ownTie(visit);
        Form form = visit.form();
        Optional<PlayerId> player = SquadNotesPages.ownPlayer(visit, form, "player");
        Optional<PlayerWish> wish =
                switch (form.text("wish")) {
                    case "play" -> Optional.of(PlayerWish.PLAY);
                    case "rest" -> Optional.of(PlayerWish.REST);
                    default -> Optional.empty();
                };
        visit.note(
                form,
                () -> new WishForTie(tie.id(), player.orElseThrow(), wish),
                "/captain/proposal/" + tie.id(),
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        Tie tie = ownTie(visit);
        TieViews views = new TieViews(visit.event());
        Question asked = Question.of(visit);
        LineupInputs inputs = asked.inputs(visit, tie.id());
        LineupWords words = new LineupWords(visit.words());
        String title = visit.words()
                .say(
                        "page-captain.proposal-for-the-tie-with",
                        "club",
                        visit.event().clubName(visit.club()),
                        "other",
                        views.side(tie, tie.sideOf(visit.club()).orElseThrow().other()));
        return Screen.of(
                "proposal",
                title,
                tie.isOpened()
                        ? afterOpening(visit, inputs, words, tried)
                        : beforeOpening(visit, tie, inputs, words, tried));
    }

    private static ProposalView beforeOpening(
            Visit visit, Tie tie, LineupInputs inputs, LineupWords words, Tried tried) {
        Question asked = Question.of(visit);
        Budget budget = asked.budget(visit, tie.id());
        Proposal proposal = Proposals.propose(inputs.problem(), budget, SHOWN);
        List<ProposalView.Sheet> own = visit
                .ask(OwnSheets::new)
                .sealed(ExchangeId.sheets(tie.id()))
                .filter(kept -> visit.ask(OwnSheets::new).isLegal(ExchangeId.sheets(tie.id()), kept.sheet()))
                .map(kept -> own(visit, Proposals.evaluate(inputs.problem(), kept.sheet(), budget), words))
                .stream()
                .toList();
        if (proposal instanceof Proposal.Proposed proposed) {
            Optional<OrderAdvice> order = OrderAdvice.of(inputs.problem(), inputs.theirEarlier(), budget.seed());
            List<ProposalView.Sheet> drawn = order
                    .flatMap(OrderAdvice::drawn)
                    .map(sheet ->
                            Proposals.evaluate(inputs.problem(), sheet, budget).sheet())
                    .map(sheet -> sheet(
                            visit,
                            tie,
                            sheet,
                            visit.words().say("page-captain.drawn-with-the-number", "seed", asked.seed()),
                            words,
                            true))
                    .stream()
                    .toList();
            return new ProposalView(
                    tried.refusal(),
                    cautions(visit, inputs, words),
                    List.of(),
                    sentences(proposed.promises(), words),
                    proposed.sheets().stream()
                            .map(sheet -> sheet(
                                    visit,
                                    tie,
                                    sheet,
                                    visit.words().say("page-captain.proposal-2", "rank", sheet.rank()),
                                    words,
                                    true))
                            .toList(),
                    proposed.keeping().stream()
                            .map(sheet -> sheet(
                                    visit,
                                    tie,
                                    sheet,
                                    visit.words().say("page-captain.the-best-sheet-that-keeps"),
                                    words,
                                    true))
                            .toList(),
                    sentences(proposed.notes(), words),
                    own,
                    candidates(visit, proposed.decider(), words),
                    notes(proposed.decider(), words),
                    order.map(advice -> new OrderWords(visit.words()).said(advice, asked.aim(), asked.seed()))
                            .orElse(List.of()),
                    drawn,
                    whatIf(inputs, asked, words),
                    List.of(asked.ask(visit, tie.id())),
                    forms(visit, tie, tried));
        }
        Proposal.Impossible impossible = (Proposal.Impossible) proposal;
        return new ProposalView(
                tried.refusal(),
                cautions(visit, inputs, words),
                sentences(impossible.reasons(), words),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                own,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(asked.ask(visit, tie.id())),
                forms(visit, tie, tried));
    }

    private static ProposalView afterOpening(Visit visit, LineupInputs inputs, LineupWords words, Tried tried) {
        DeciderAdvice advice = inputs.decider();
        return new ProposalView(
                tried.refusal(),
                List.of(Cautions.OF_ADVICE, words.restsOn(inputs.basis())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(visit.words().say("page-captain.both-sheets-are-open-what")),
                List.of(),
                candidates(visit, Optional.of(advice), words),
                notes(Optional.of(advice), words),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static List<String> whatIf(LineupInputs inputs, Question asked, LineupWords words) {
        return WhatIf.of(inputs.problem()).stream()
                .flatMap(what -> Stream.concat(
                        what.sizes().stream().map(size -> words.size(size, asked.aim())),
                        what.absences().stream().map(absence -> words.absence(absence, asked.aim()))))
                .toList();
    }

    /** First whom to ask before naming: a mark bars nobody, and nobody marked is proposed without a word. */
    private static List<String> cautions(Visit visit, LineupInputs inputs, LineupWords words) {
        List<String> cautions = new ArrayList<>(visit.event().squad(visit.club()).stream()
                .filter(player -> inputs.hurt().contains(player.id()))
                .map(player -> Cautions.beforeNaming(visit.event().name(player.id())))
                .toList());
        cautions.add(Cautions.OF_ADVICE);
        cautions.add(words.restsOn(inputs.basis()));
        cautions.add("Nothing of the other club's sheet is known to it. Any legal sheet of your own is accepted.");
        return cautions;
    }

    private static ProposalView.Sheet own(Visit visit, Evaluation evaluation, LineupWords words) {
        ProposalView.Sheet view = sheet(
                visit,
                visit.tie(),
                evaluation.sheet(),
                visit.words().say("page-captain.your-sealed-sheet"),
                words,
                false);
        List<String> reasons = new ArrayList<>();
        reasons.add(visit.words()
                .say(
                        "page-captain.against-the-first-proposal-it",
                        "aim",
                        LineupWords.cost(
                                evaluation.sheet().cost(), Question.of(visit).aim())));
        evaluation
                .wishesNotGranted()
                .forEach(wish -> reasons.add(visit.words().say("page-captain.not-granted", "wish", words.wish(wish))));
        reasons.addAll(view.reasons());
        return new ProposalView.Sheet(view.title(), view.lines(), view.chance(), reasons, List.of());
    }

    private static ProposalView.Sheet sheet(
            Visit visit, Tie tie, ProposedSheet sheet, String title, LineupWords words, boolean usable) {
        List<ProposalView.Line> lines = sheet.lines().stream()
                .map(line -> new ProposalView.Line(
                        TieViews.rubber(line.rubber()),
                        line.pair()
                                .map(pair -> names(visit.event(), pair))
                                .orElse(visit.words().say("page-captain.no-pair")),
                        line.chance()
                                .map(LineupWords::percent)
                                .orElse(visit.words().say("page-captain.not-played"))))
                .toList();
        List<String> reasons = new ArrayList<>();
        if (usable && sheet.cost() > 0) {
            reasons.add("It gives away "
                    + LineupWords.cost(sheet.cost(), Question.of(visit).aim()) + " against the first; in "
                    + LineupWords.percent(sheet.beatsBest()) + " of what the strengths may be it is the better one"
                    + (sheet.isWithinDoubt() ? ", so the difference is within doubt." : "."));
        }
        reasons.addAll(sentences(sheet.reasons(), words));
        return new ProposalView.Sheet(
                title,
                lines,
                bar(visit.words().say("page-captain.chance-to-win-the-tie"), sheet.chance(), sheet.low(), sheet.high()),
                reasons,
                usable ? List.of(use(tie, sheet, title)) : List.of());
    }

    private static String names(VisibleEvent event, Pair pair) {
        return Words.of(event)
                .say("page-captain.and", "first", event.name(pair.first()), "second", event.name(pair.second()));
    }

    private static DoubtBar bar(String label, double best, double low, double high) {
        double from = Math.min(low, best);
        double to = Math.max(high, best);
        return new DoubtBar(
                label,
                LineupWords.percent(best) + ", could be " + LineupWords.percent(from) + " to "
                        + LineupWords.percent(to),
                "",
                from,
                best,
                to,
                0,
                1,
                0.5);
    }

    /** Takes the sheet into the form by a press: names never stand in an address. */
    private static ActionForm use(Tie tie, ProposedSheet sheet, String title) {
        ActionForm form = ActionForm.of(
                        "use-" + title.replaceAll("[^A-Za-z0-9]+", "-"),
                        "/captain/sheet/" + tie.id(),
                        "",
                        Button.other("Take this one into my sheet"))
                .sending("step", "choose");
        for (java.util.Map.Entry<RubberNo, Optional<Pair>> one :
                sheet.sheet().pairs().entrySet()) {
            if (one.getValue().isPresent()) {
                form = form.sending(
                                SheetFields.field(one.getKey(), "first"),
                                one.getValue().get().first().code())
                        .sending(
                                SheetFields.field(one.getKey(), "second"),
                                one.getValue().get().second().code());
            }
        }
        return form;
    }

    private static List<ProposalView.Candidate> candidates(
            Visit visit, Optional<DeciderAdvice> advice, LineupWords words) {
        return advice.map(DeciderAdvice::candidates).orElse(List.of()).stream()
                .limit(SHOWN + 2)
                .map(one -> new ProposalView.Candidate(
                        names(visit.event(), one.pair()),
                        words.verdict(one.verdict())
                                + (one.weight() > 0
                                        ? " Send it " + LineupWords.percent(one.weight()) + " of the time."
                                        : "")
                                + (one.hurt() ? " One of them retired today: ask before naming." : ""),
                        bar(
                                visit.words().say("page-captain.chance-in-the-decider"),
                                one.chance(),
                                one.low(),
                                one.high())))
                .toList();
    }

    private static List<String> notes(Optional<DeciderAdvice> advice, LineupWords words) {
        return advice.map(one -> sentences(one.notes(), words)).orElse(List.of());
    }

    private static List<String> sentences(List<Reason> reasons, LineupWords words) {
        return reasons.stream().map(words::sentence).toList();
    }

    private static List<ActionForm> forms(Visit visit, Tie tie, Tried tried) {
        TieWish now = Optional.ofNullable(visit.hall()
                        .ledger()
                        .privateOf(visit.club())
                        .tieWishes()
                        .get(tie.id()))
                .orElse(new TieWish(tie.id(), visit.club(), List.of(), List.of()));
        List<Option> players = visit.event().squad(visit.club()).stream()
                .map(player -> Option.of(
                        player.id().code(),
                        visit.event().name(player.id()) + wished(now, player.id()),
                        tried.value("player", "").equals(player.id().code())))
                .toList();
        return List.of(ActionForm.of(
                        "wish",
                        "/captain/proposal/" + tie.id() + "/wishes",
                        visit.words().say("page-captain.my-wishes-for-this-tie"),
                        Button.other(visit.words().say("page-captain.keep-this-wish")))
                .saying(visit.words().say("page-captain.wishes-about-pairs-stand-under"))
                .asking(
                        SelectField.of(
                                        "player",
                                        visit.words().say("page-captain.player"),
                                        visit.words().say("page-captain.choose"),
                                        players)
                                .withError(tried.error("player")),
                        SelectField.of(
                                "wish",
                                visit.words().say("page-captain.wish"),
                                "",
                                List.of(
                                        Option.of(
                                                "play",
                                                visit.words().say("page-captain.must-play"),
                                                tried.value("wish", "").equals("play")),
                                        Option.of(
                                                "rest",
                                                visit.words().say("page-captain.must-rest"),
                                                tried.value("wish", "").equals("rest")),
                                        Option.of(
                                                "none",
                                                visit.words().say("page-captain.no-wish"),
                                                tried.value("wish", "").equals("none"))))));
    }

    private static String wished(TieWish wish, PlayerId player) {
        return wish.of(player)
                .map(one -> one == PlayerWish.PLAY ? " (must play)" : " (must rest)")
                .orElse("");
    }
}
