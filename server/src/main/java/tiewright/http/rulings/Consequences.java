package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.correction.Impact;
import tiewright.desk.Correction;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.Fields;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.ImpactWords;

/** What was built on a score that turned out wrong, and the three choices, each with what it would bring. */
final class Consequences {
    private final Visit visit;
    private final Tie tie;
    private final RubberNo rubber;
    private final TieViews views;
    private final Tried tried;
    private final Correction correction;

    /** @param correction what the card shows, typed into the page and without fault */
    Consequences(Visit visit, Tried tried, Correction correction) {
        this.visit = visit;
        this.tie = visit.tie();
        this.rubber = visit.rubber();
        this.views = new TieViews(visit.event());
        this.tried = tried;
        this.correction = correction;
    }

    List<WorkView.Section> sections() {
        Impact impact = visit.ask(DisputeAnswers::new).impact(correction, CorrectionChoice.REPLAY);
        if (impact.nodes().isEmpty()) {
            return List.of(WorkView.Section.of(
                    "impact",
                    visit.say("page-rulings.what-hangs-on-it"),
                    visit.say("page-rulings.this-is-what-counts-already")));
        }

        WorkView.Section list = WorkView.Section.of(
                        "impact", visit.say("page-rulings.what-hangs-on-it"), counted(impact))
                .with(table(impact));
        return List.of(list, choice(impact));
    }

    private String counted(Impact impact) {
        long played = impact.nodes().stream()
                .filter(node -> node.state() == Impact.State.PLAYED)
                .count();
        long seen = impact.nodes().stream()
                .filter(node -> node.state() == Impact.State.SEEN)
                .count();
        return visit.say(
                "page-rulings.things-played-seen-that-nobody",
                "nodes",
                impact.nodes().size(),
                "played",
                played,
                "seen",
                seen,
                "nodes2",
                (impact.nodes().size() - played - seen));
    }

    private ReasonTable table(Impact impact) {
        ImpactWords words = new ImpactWords(visit.words());
        List<ReasonTable.Row> rows = impact.nodes().stream()
                .map(node -> ReasonTable.Row.of(Stream.of(
                                words.subject(node),
                                words.value(node.before()),
                                words.value(node.after()),
                                words.state(node.state()))
                        .map(Consequences::shortened)
                        .map(ReasonTable.Cell::of)
                        .toList()))
                .toList();
        return new ReasonTable(
                "impact-list",
                visit.say("page-rulings.if-play-began-again-from"),
                List.of(
                        new ReasonTable.Column(visit.say("page-rulings.what"), false),
                        new ReasonTable.Column(visit.say("page-rulings.now"), false),
                        new ReasonTable.Column(visit.say("page-rulings.then"), false),
                        new ReasonTable.Column(visit.say("page-rulings.gone-on-from-it"), false)),
                rows,
                "");
    }

    /** A fingerprint is 64 signs long; its beginning tells it apart. */
    private static String shortened(String text) {
        return text.matches("[0-9a-f]{64}") ? text.substring(0, 12) + "…" : text;
    }

    private WorkView.Section choice(Impact impact) {
        return WorkView.Section.of(
                        CorrectionPage.CHOICE,
                        visit.say("page-rulings.choose"),
                        visit.say("page-rulings.each-of-the-three-is"))
                .with(new WorkView.WorkForm(
                        CorrectionPage.CHOICE,
                        Addresses.correction(tie, rubber),
                        asked(impact),
                        List.of(Button.main(visit.say("page-rulings.give-this-ruling-and-post")))));
    }

    private List<FormField> asked(Impact impact) {
        Fields fields = Fields.of(CorrectionPage.CHOICE, tried);
        List<FormField> all = new ArrayList<>(CardFields.names(visit.event()).stream()
                .filter(name -> !name.equals("reason"))
                .map(name -> new HiddenField(name, tried.typed().text(name)))
                .toList());
        all.add(new HiddenField("impact", impact.fingerprint()));
        all.add(fields.oneOf(CorrectionPage.CHOICE, visit.say("page-rulings.your-choice"), "", options(impact)));
        all.add(fields.line(
                        "reason",
                        visit.say("page-rulings.what-the-card-shows-and"),
                        tried.typed().text("reason"))
                .withMaxLength(300)
                .mustBeFilled());
        all.add(fields.line("by", visit.say("page-rulings.who-rules-by-name"), "")
                .withAutocomplete("name")
                .mustBeFilled());
        return all;
    }

    private List<Option> options(Impact impact) {
        String score = (TieViews.score(correction.games()) + " " + views.how(tie, correction.how())).strip();
        Impact record = visit.ask(DisputeAnswers::new).impact(correction, CorrectionChoice.RECORD_ONLY);

        return List.of(
                new Option(
                        CorrectionChoice.LET_STAND.code(),
                        visit.say("page-rulings.let-it-stand-by-ruling"),
                        visit.say("page-rulings.nothing-changes-the-ruling-says", "score", score),
                        false,
                        false),
                new Option(
                        CorrectionChoice.REPLAY.code(),
                        visit.say("page-rulings.play-again-from-here"),
                        again(score, impact),
                        false,
                        false),
                new Option(
                        CorrectionChoice.RECORD_ONLY.code(),
                        visit.say("page-rulings.correct-the-record-only"),
                        visit.say("page-rulings.it-counts-who-plays-whom", "score", score, "record", places(record)),
                        false,
                        false));
    }

    private String again(String score, Impact impact) {
        List<String> again = ties(impact);
        return visit.say("page-rulings.it-counts-and-begin-again", "score", score, "count", again.size(), "ties", again)
                + sheets(impact);
    }

    private List<String> ties(Impact impact) {
        return impact.of(Impact.Kind.SLOT).stream()
                .filter(node -> node.state() != Impact.State.PLAIN)
                .map(node -> visit.say(
                        "page-rulings.tie-by-code",
                        "tie",
                        String.valueOf(node.subject().get(0))))
                .distinct()
                .toList();
    }

    private String sheets(Impact impact) {
        long sealed = impact.of(Impact.Kind.SHEET).stream()
                .filter(node -> node.before().equals(Optional.of("sealed")))
                .count();
        return sealed == 0 ? "" : " " + visit.say("page-rulings.sealed-sheets-go-back", "count", sealed);
    }

    private String places(Impact record) {
        String moved = record.of(Impact.Kind.PLACE).stream()
                .map(node -> visit.say(
                        "page-rulings.to",
                        "subject",
                        visit.event().clubName((ClubId) node.subject().get(0)),
                        "before",
                        node.before().map(Object::toString).orElse("-"),
                        "after",
                        node.after().map(Object::toString).orElse("-")))
                .collect(Collectors.joining(", "));
        return moved.isEmpty()
                ? visit.say("page-rulings.no-place-in-a-table")
                : visit.say("page-rulings.places-in-the-table", "moved", moved);
    }
}
