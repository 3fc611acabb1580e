package tiewright.http.rulings;

import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.desk.Correction;
import tiewright.desk.DecideCorrection;
import tiewright.event.Card;
import tiewright.event.CorrectionChoice;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.CardFormView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** A wrong score found later: what hangs on it, and the three choices with their consequences. Nothing changes before one is pressed. */
final class CorrectionPage implements Page {
    private static final String HERE = Addresses.CORRECTION + "/{tie}/{rubber}";
    private static final String CARD = "card";
    static final String CHOICE = "choice";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, asked(visit))));
        routes.post(Door.OFFICIALS, HERE, CorrectionPage::sent);
    }

    /** Somebody who typed the score elsewhere comes with it in the address. */
    private static Tried asked(Visit visit) {
        Form query = Form.ofQuery(visit.ctx());
        return query.has("how") ? Tried.again(query) : Tried.NOTHING;
    }

    private static void sent(Visit visit) {
        Form form = visit.form();
        Correction correction = correction(visit, form);
        if (form.isClean() && !form.text(Fields.FORM).equals(CHOICE)) {
            visit.ask(DisputeAnswers::new).faults(correction).forEach(form::fault);
            if (form.isClean()) {
                visit.show(screen(visit, Tried.again(form)));
                return;
            }
        }
        Optional<CorrectionChoice> choice = form.must(CHOICE, form.maybe(CHOICE).flatMap(CorrectionChoice::parse));
        String reason = form.mustText("reason");
        String by = form.mustText("by");
        visit.attempt(
                form,
                () -> new DecideCorrection(correction, choice.orElseThrow(), form.text("impact"), reason, by),
                "/notices",
                tried -> screen(visit, tried));
    }

    private static Correction correction(Visit visit, Form form) {
        How how = How.parse(form.text("how")).orElse(How.PLAYED);
        return new Correction(visit.tie().id(), visit.rubber(), CardFields.games(visit.event(), form, how), how);
    }

    private static Screen screen(Visit visit, Tried tried) {
        Tie tie = visit.tie();
        List<WorkView.Section> sections = new ArrayList<>(meanwhile(visit, tried));
        Optional<Correction> shown = read(visit, tried);
        WorkView.Section card = card(visit, tried);
        sections.add(shown.isPresent() ? card.folded(visit.say("page-rulings.type-it-again")) : card);
        shown.ifPresent(correction -> sections.addAll(new Consequences(visit, tried, correction).sections()));
        return Screen.of(
                "work",
                visit.say(
                        "page-rulings.what-hangs-on-this-score",
                        "tie",
                        new TieViews(visit.event()).title(tie),
                        "rubber",
                        TieViews.rubber(visit.words(), visit.rubber())),
                new WorkView(
                        tried.refusal(),
                        new NavLink("/cards/" + tie.id(), visit.say("page-rulings.back-to-the-card"), false),
                        List.of(
                                visit.say("page-rulings.step", "step", shown.isPresent() ? 4 : 3, "of", 4),
                                visit.say("page-rulings.type-what-the-card-shows")),
                        sections));
    }

    /** Who decides second is told what came first. */
    private static List<WorkView.Section> meanwhile(Visit visit, Tried tried) {
        List<String> since = tried.refusal().problems().isEmpty() ? List.of() : visit.since(tried.typed());
        return since.isEmpty()
                ? List.of()
                : List.of(WorkView.Section.of("since", visit.say("page-rulings.entered-since-you-opened-this"))
                        .saying(since));
    }

    private static WorkView.Section card(Visit visit, Tried tried) {
        Tie tie = visit.tie();
        RubberNo rubber = visit.rubber();
        TieViews views = new TieViews(visit.event());
        List<FormField> fields = new ArrayList<>();
        for (CardFormView.Game game : CardFields.fields(visit.event(), views, tie, tried)) {
            fields.add(game.home());
            fields.add(game.away());
        }
        fields.add(CardFields.how(views, tie, tried));

        String stands = stands(visit, views, tie, rubber);
        return WorkView.Section.of(
                        CARD,
                        visit.say("page-rulings.what-the-card-shows"),
                        visit.say("page-rulings.entered-and-counted-so-far", "stands", stands))
                .with(new WorkView.WorkForm(
                        CARD,
                        Addresses.correction(tie, rubber),
                        fields,
                        List.of(Button.other(visit.say("page-rulings.show-what-hangs-on-it")))));
    }

    private static String stands(Visit visit, TieViews views, Tie tie, RubberNo rubber) {
        Card card = tie.card(rubber);
        return card.score(rubber)
                .map(score -> (TieViews.score(score.games()) + " " + views.how(tie, score.how())).strip())
                .orElse(
                        card.standing() == Card.Standing.HELD
                                ? visit.say("page-rulings.held-two-entries-differ")
                                : visit.say("page-rulings.nothing-is-entered"));
    }

    /** What was typed, once it can be a card. */
    private static Optional<Correction> read(Visit visit, Tried tried) {
        if (tried.isNothing()) {
            return Optional.empty();
        }
        Form form = visit.ctx().method().equals(HandlerType.GET) ? Form.ofQuery(visit.ctx()) : visit.form();
        Correction correction = correction(visit, form);
        return form.isClean()
                        && visit.ask(DisputeAnswers::new).faults(correction).isEmpty()
                ? Optional.of(correction)
                : Optional.empty();
    }
}
