package tiewright.http.rulings;

import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.correction.Impact;
import tiewright.desk.Correction;
import tiewright.desk.DecideCorrection;
import tiewright.event.Card;
import tiewright.event.CorrectionChoice;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.CardFormView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.Counted;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.ImpactWords;

/** A wrong score found later: what hangs on it, and the three choices with their consequences. Nothing changes before one is pressed. */
final class CorrectionPage implements Page {
    private static final String HERE = Addresses.CORRECTION + "/{tie}/{rubber}";
    private static final String CARD = "card";
    private static final String CHOICE = "choice";

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
        RubberNo rubber = visit.rubber();
        TieViews views = new TieViews(visit.event());
        List<WorkView.Section> sections = new ArrayList<>();
        sections.addAll(meanwhile(visit, tried));
        sections.add(asked(visit, views, tie, rubber, tried));
        read(visit, tried)
                .ifPresent(correction -> sections.addAll(consequences(visit, views, tie, rubber, tried, correction)));
        return Screen.of(
                "work",
                "What hangs on this score: " + views.title(tie) + ", " + TieViews.rubber(rubber),
                new WorkView(
                        tried.refusal(),
                        new NavLink("/cards/" + tie.id(), "Back to the card", false),
                        List.of(
                                "Type what the card shows. You then read everything that was built on the wrong score, and choose."
                                        + " Nothing changes before you press one of the three choices."),
                        sections));
    }

    /** Who decides second is told what came first. */
    private static List<WorkView.Section> meanwhile(Visit visit, Tried tried) {
        List<String> since = tried.refusal().problems().isEmpty() ? List.of() : visit.since(tried.typed());
        return since.isEmpty()
                ? List.of()
                : List.of(WorkView.Section.of("since", "Entered since you opened this page")
                        .saying(since));
    }

    private static WorkView.Section asked(Visit visit, TieViews views, Tie tie, RubberNo rubber, Tried tried) {
        List<FormField> fields = new ArrayList<>();
        for (CardFormView.Game game : CardFields.fields(visit.event(), views, tie, tried)) {
            fields.add(game.home());
            fields.add(game.away());
        }
        fields.add(CardFields.how(views, tie, tried));
        Card card = tie.card(rubber);
        String stands = card.score(rubber)
                .map(score -> (TieViews.score(score.games()) + " " + views.how(tie, score.how())).strip())
                .orElse(card.standing() == Card.Standing.HELD ? "held: two entries differ" : "nothing is entered");
        return WorkView.Section.of(CARD, "What the card shows", "Entered and counted so far: " + stands + ".")
                .with(new WorkView.WorkForm(
                        CARD,
                        Addresses.correction(tie, rubber),
                        fields,
                        List.of(Button.other("Show what hangs on it"))));
    }

    /** What was typed, once it can be a card. */
    private static Optional<Correction> read(Visit visit, Tried tried) {
        if (tried.isNothing()) {
            return Optional.empty();
        }
        Form form = visit.ctx().method() == HandlerType.GET ? Form.ofQuery(visit.ctx()) : visit.form();
        Correction correction = correction(visit, form);
        return form.isClean()
                        && visit.ask(DisputeAnswers::new).faults(correction).isEmpty()
                ? Optional.of(correction)
                : Optional.empty();
    }

    private static List<WorkView.Section> consequences(
            Visit visit, TieViews views, Tie tie, RubberNo rubber, Tried tried, Correction correction) {
        Impact impact = visit.ask(DisputeAnswers::new).impact(correction, CorrectionChoice.REPLAY);
        if (impact.nodes().isEmpty()) {
            return List.of(WorkView.Section.of(
                    "impact", "What hangs on it", "This is what counts already; nothing would change."));
        }
        long played = impact.nodes().stream()
                .filter(node -> node.state() == Impact.State.PLAYED)
                .count();
        long seen = impact.nodes().stream()
                .filter(node -> node.state() == Impact.State.SEEN)
                .count();
        WorkView.Section list = WorkView.Section.of(
                        "impact",
                        "What hangs on it",
                        impact.nodes().size() + " things: " + played + " played, " + seen + " seen, "
                                + (impact.nodes().size() - played - seen) + " that nobody has acted on.")
                .with(table(visit, impact));
        return List.of(list, choice(visit, views, tie, rubber, tried, correction, impact));
    }

    static ReasonTable table(Visit visit, Impact impact) {
        ImpactWords words = new ImpactWords(visit.words());
        List<ReasonTable.Row> rows = impact.nodes().stream()
                .map(node -> ReasonTable.Row.of(Stream.of(
                                words.subject(node),
                                words.value(node.before()),
                                words.value(node.after()),
                                words.state(node.state()))
                        .map(CorrectionPage::shortened)
                        .map(ReasonTable.Cell::of)
                        .toList()))
                .toList();
        return new ReasonTable(
                "impact-list",
                "If play began again from here",
                List.of(
                        new ReasonTable.Column("What", false),
                        new ReasonTable.Column("Now", false),
                        new ReasonTable.Column("Then", false),
                        new ReasonTable.Column("Gone on from it", false)),
                rows,
                "");
    }

    /** A fingerprint is 64 signs long; its beginning tells it apart. */
    private static String shortened(String text) {
        return text.matches("[0-9a-f]{64}") ? text.substring(0, 12) + "…" : text;
    }

    private static WorkView.Section choice(
            Visit visit, TieViews views, Tie tie, RubberNo rubber, Tried tried, Correction correction, Impact impact) {
        Fields fields = Fields.of(CHOICE, tried);
        List<FormField> all = new ArrayList<>(CardFields.names(visit.event()).stream()
                .filter(name -> !name.equals("reason"))
                .map(name -> new HiddenField(name, tried.typed().text(name)))
                .toList());
        all.add(new HiddenField("impact", impact.fingerprint()));
        all.add(fields.oneOf(CHOICE, "Your choice", "", options(visit, views, tie, correction, impact)));
        all.add(fields.line(
                        "reason",
                        "What the card shows, and how the mistake was found",
                        tried.typed().text("reason"))
                .withMaxLength(300)
                .mustBeFilled());
        all.add(fields.line("by", "Who rules, by name", "")
                .withAutocomplete("name")
                .mustBeFilled());
        return WorkView.Section.of(
                        CHOICE, "Choose", "Each of the three is a ruling with a numbered notice, and stays in the log.")
                .with(new WorkView.WorkForm(
                        CHOICE,
                        Addresses.correction(tie, rubber),
                        all,
                        List.of(Button.main("Give this ruling and post its notice"))));
    }

    private static List<Option> options(Visit visit, TieViews views, Tie tie, Correction correction, Impact impact) {
        String score = (TieViews.score(correction.games()) + " " + views.how(tie, correction.how())).strip();
        Impact record = visit.ask(DisputeAnswers::new).impact(correction, CorrectionChoice.RECORD_ONLY);
        String again = ties(impact);
        String back = sheets(visit.event(), impact);
        return List.of(
                new Option(
                        CorrectionChoice.LET_STAND.code(),
                        "Let it stand by ruling",
                        "Nothing changes. The ruling says that the card shows " + score + ".",
                        false,
                        false),
                new Option(
                        CorrectionChoice.REPLAY.code(),
                        "Play again from here",
                        "It counts " + score + ". "
                                + (again.isEmpty() ? "No other tie begins again." : "Begin again: " + again + ".")
                                + back,
                        false,
                        false),
                new Option(
                        CorrectionChoice.RECORD_ONLY.code(),
                        "Correct the record only",
                        "It counts " + score + "; " + places(visit.event(), record)
                                + " Who plays whom stays, and what was played stays.",
                        false,
                        false));
    }

    private static String ties(Impact impact) {
        return impact.of(Impact.Kind.SLOT).stream()
                .filter(node -> node.state() != Impact.State.PLAIN)
                .map(node -> "tie " + node.subject().get(0))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String sheets(VisibleEvent event, Impact impact) {
        long sealed = impact.of(Impact.Kind.SHEET).stream()
                .filter(node -> node.before().equals(Optional.of("sealed")))
                .count();
        return sealed == 0
                ? ""
                : " " + Counted.of((int) sealed, "sealed sheet") + (sealed == 1 ? " goes" : " go") + " back unseen.";
    }

    private static String places(VisibleEvent event, Impact record) {
        String moved = record.of(Impact.Kind.PLACE).stream()
                .map(node ->
                        event.clubName((tiewright.event.ClubId) node.subject().get(0)) + " "
                                + node.before().map(Object::toString).orElse("-") + " to "
                                + node.after().map(Object::toString).orElse("-"))
                .collect(Collectors.joining(", "));
        return moved.isEmpty() ? "no place in a table changes." : "places in the table: " + moved + ".";
    }
}
