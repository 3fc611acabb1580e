package tiewright.http.captain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.views.ActionForm;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.wording.LineupWords;

/** Proposed sheets as a captain reads them: pairs with their chances, and another sheet as what is different in it. */
final class ProposedSheets {
    private final Visit visit;
    private final Tie tie;
    private final LineupInputs inputs;
    private final LineupWords words;
    private final SheetChange changes;

    ProposedSheets(Visit visit, Tie tie, LineupInputs inputs) {
        this.visit = visit;
        this.tie = tie;
        this.inputs = inputs;
        this.words = LineupWords.inWholes(visit.words());
        this.changes = new SheetChange(
                visit.words(), new GivenNames(visit.event(), visit.event().squad(visit.club())));
    }

    ProposalView.Sheet sheet(ProposedSheet sheet, String title, boolean usable) {
        return new ProposalView.Sheet(
                title,
                sheet.lines().stream().map(this::line).toList(),
                ofTie(visit, new Doubted(sheet.chance(), sheet.low(), sheet.high())),
                sheet.reasons().stream().map(words::sentence).toList(),
                usable ? List.of(use(sheet)) : List.of());
    }

    private ProposalView.Line line(ProposedSheet.Line line) {
        Optional<Doubted> doubted = line.chance()
                .flatMap(chance -> line.range().map(range -> new Doubted(chance, range.low(), range.high())));
        return new ProposalView.Line(
                line.rubber().toString(),
                ofKind(visit, line.rubber(), line.pair()),
                line.pair().map(this::askFirst).orElse(""),
                line.chance().map(LineupWords::whole).orElse(visit.say("page-captain.not-played")),
                doubted.map(known -> range(visit, known)).orElse(""),
                doubted.map(known -> bar(visit, line.rubber().toString(), known)));
    }

    /** The names, and the kind of their rubber where not all are open. */
    static String ofKind(Visit visit, RubberNo rubber, Optional<Pair> pair) {
        String names = pair.map(two -> names(visit, two)).orElseGet(() -> visit.say("page-captain.no-pair"));
        String kind = visit.words().kind(rubber);
        return kind.isEmpty() ? names : visit.say("page-captain.pair-of-kind", "pair", names, "kind", kind);
    }

    /** The chance of a whole tie; its doubt stands beside it in words of its own. */
    static DoubtBar ofTie(Visit visit, Doubted chance) {
        DoubtBar bar = bar(visit, visit.say("page-captain.chance-to-win-the-tie"), chance);
        String doubt = visit.say(
                "page-captain.could-be-alone",
                "low",
                LineupWords.bare(bar.low()),
                "high",
                LineupWords.bare(bar.high()));
        return new DoubtBar(
                bar.label(), bar.words(), doubt, bar.low(), bar.best(), bar.high(), bar.from(), bar.to(), bar.even());
    }

    /** Both ends of a chance, without repeating it. */
    static String range(Visit visit, Doubted chance) {
        return visit.say(
                "page-captain.range",
                "low",
                LineupWords.bare(Math.min(chance.low(), chance.best())),
                "high",
                LineupWords.bare(Math.max(chance.high(), chance.best())));
    }

    private String askFirst(Pair pair) {
        List<String> hurt = pair.players().stream()
                .filter(inputs.hurt()::contains)
                .map(visit.event()::name)
                .toList();
        return hurt.isEmpty() ? "" : visit.words().say("page-captain.ask-first", "players", hurt);
    }

    /** Another sheet in the words of what is different, with what it gives away. */
    ProposalView.Fold against(ProposedSheet first, ProposedSheet other) {
        String changed = changes.said(first, other);
        return ProposalView.Fold.of(
                        changed.isEmpty() ? visit.words().say("page-captain.the-same-pairs") : changed,
                        visit.words().say("page-captain.better-with", "share", LineupWords.whole(other.beatsBest())),
                        List.of(doubt(other)))
                .withFigure(LineupWords.whole(other.chance()))
                .with(List.of(sheet(other, "", true)));
    }

    private String doubt(ProposedSheet other) {
        String cost = words.costOf(other.cost(), Question.of(visit).aim());
        return visit.words()
                .say(
                        other.isWithinDoubt() ? "page-captain.gives-away-in-doubt" : "page-captain.gives-away",
                        "cost",
                        cost,
                        "share",
                        LineupWords.whole(other.beatsBest()));
    }

    static String names(Visit visit, Pair pair) {
        return visit.words()
                .say(
                        "page-captain.pair",
                        "first",
                        visit.event().name(pair.first()),
                        "second",
                        visit.event().name(pair.second()));
    }

    /** A chance with both ends of its range, from 0 to 1. */
    record Doubted(double best, double low, double high) {}

    static DoubtBar bar(Visit visit, String label, Doubted chance) {
        double best = chance.best();
        double from = Math.min(chance.low(), best);
        double to = Math.max(chance.high(), best);
        String said = visit.words()
                .say(
                        "page-captain.could-be",
                        "chance",
                        LineupWords.whole(best),
                        "low",
                        LineupWords.bare(from),
                        "high",
                        LineupWords.bare(to));
        return new DoubtBar(label, said, "", from, best, to, 0, 1, 0.5);
    }

    /** Takes the sheet into the form by a press: names never stand in an address. */
    private ActionForm use(ProposedSheet sheet) {
        ActionForm form = ActionForm.of(
                        "use-" + Integer.toHexString(sheet.sheet().hashCode()),
                        "/captain/sheet/" + tie.id(),
                        "",
                        Button.main(visit.words().say("page-captain.take-this")))
                .sending("step", "choose");
        for (Map.Entry<RubberNo, Optional<Pair>> one : sheet.sheet().pairs().entrySet()) {
            if (one.getValue().isPresent()) {
                Pair pair = one.getValue().get();
                form = form.sending(
                                SheetFields.field(one.getKey(), "first"),
                                pair.first().code())
                        .sending(
                                SheetFields.field(one.getKey(), "second"),
                                pair.second().code());
            }
        }
        return form;
    }
}
