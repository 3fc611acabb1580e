package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.conditions.Withdrawal;
import tiewright.desk.WithdrawClub;
import tiewright.desk.WithdrawalPreview;
import tiewright.desk.WithdrawalPreview.Outlook;
import tiewright.event.ClubId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.standings.Row;
import tiewright.standings.Table;
import tiewright.wording.Words;

/** A club goes home: what each treatment does to who goes on stands side by side before one is chosen. */
final class WithdrawalPage implements Page {
    static final String ASK = "/organiser/withdraw";
    private static final String FORM = "withdraw";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, ASK + "/{club}", visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, ASK + "/{club}", WithdrawalPage::withdraw);
    }

    private static ClubId club(Visit visit) {
        return visit.readId("club", ClubId::of)
                .filter(id -> visit.event().club(id).isPresent())
                .orElseThrow(
                        () -> new NotFound(visit.say("page-rulings.there-is-no-club-in", "club", visit.path("club"))));
    }

    private static void withdraw(Visit visit) {
        ClubId club = club(visit);
        Form form = visit.form();
        Optional<Withdrawal> treatment =
                form.must("treatment", form.maybe("treatment").flatMap(Withdrawal::parse));
        String reason = form.mustText("reason");
        String by = form.mustText("by");
        visit.attempt(
                form,
                () -> new WithdrawClub(club, treatment.orElseThrow(), reason, by),
                "/organiser/tables",
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        WithdrawalPreview preview = visit.ask(DisputeAnswers::new).withdrawal(club(visit));
        String name = event.clubName(preview.club());
        List<WorkView.Section> sections = new ArrayList<>();
        preview.now().table().ifPresent(table -> sections.add(sideBySide(event, preview, table)));
        sections.add(knockout(event, preview));
        sections.add(form(visit, preview, tried));
        return Screen.of(
                "work",
                visit.say("page-rulings.goes-home", "value", name),
                new WorkView(
                        tried.refusal(),
                        new NavLink(ASK, visit.say("page-rulings.another-club"), false),
                        List.of(
                                visit.say("page-rulings.step", "step", 2, "of", 2),
                                visit.say("page-rulings.walkover-retirement-and-withdrawal-are")),
                        sections));
    }

    private static List<ReasonTable.Column> columns(VisibleEvent event, List<Outlook> all) {
        List<ReasonTable.Column> columns =
                new ArrayList<>(List.of(new ReasonTable.Column(Words.say(event, "page-rulings.place"), false)));
        all.forEach(outlook -> columns.add(new ReasonTable.Column(
                outlook.treatment()
                        .map(treatment -> title(event, treatment))
                        .orElse(Words.say(event, "page-rulings.as-it-stands")),
                false)));
        return columns;
    }

    private static WorkView.Section sideBySide(VisibleEvent event, WithdrawalPreview preview, Table now) {
        List<Outlook> all = Stream.concat(Stream.of(preview.now()), preview.treatments().stream())
                .toList();
        int left = now.tiesLeft();
        String heading = Words.say(
                event,
                "page-rulings.pool-under-each-treatment",
                "pool",
                preview.pool().orElse(""));
        return WorkView.Section.of("side", heading)
                .with(new ReasonTable(
                        "side-by-side",
                        heading,
                        columns(event, all),
                        rows(event, all, now),
                        left == 0
                                ? Words.say(event, "page-rulings.every-tie-is-finished")
                                : Words.say(event, "page-rulings.ties-not-finished-now-the", "left", left)));
    }

    private static List<ReasonTable.Row> rows(VisibleEvent event, List<Outlook> all, Table now) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (int line = 0; line < now.rows().size(); line++) {
            int at = line;
            List<ReasonTable.Cell> cells = new ArrayList<>(List.of(ReasonTable.Cell.of(Integer.toString(line + 1))));
            all.forEach(outlook -> cells.add(ReasonTable.Cell.of(cell(event, outlook, at))));
            rows.add(ReasonTable.Row.of(cells));
        }
        return rows;
    }

    private static String cell(VisibleEvent event, Outlook outlook, int line) {
        if (!outlook.refused().isEmpty()) {
            return Words.say(event, "page-rulings.cannot-be-chosen-2");
        }
        List<Row> rows = outlook.table().map(Table::rows).orElse(List.of());
        if (line >= rows.size()) {
            return Words.say(event, "page-rulings.no-club");
        }
        Row row = rows.get(line);
        boolean goes = outlook.goesOn().values().stream()
                .anyMatch(club -> club.filter(row.club()::equals).isPresent());
        String lot = row.onlyALotParts() ? Words.say(event, "page-rulings.level-a-lot-would-part") : "";
        return Words.say(
                event,
                "page-rulings.club-with-points",
                "club",
                event.clubName(row.club()),
                "points",
                row.tiePoints(),
                "lot",
                lot,
                "goesOn",
                goes ? Words.say(event, "page-rulings.goes-on") : "");
    }

    private static WorkView.Section knockout(VisibleEvent event, WithdrawalPreview preview) {
        List<String> lines = new ArrayList<>();
        for (Outlook outlook : preview.treatments()) {
            String goes = outlook.goesOn().entrySet().stream()
                    .map(slot -> new TieViews(event).source(slot.getKey()) + ": "
                            + slot.getValue()
                                    .map(event::clubName)
                                    .orElse(Words.say(event, "page-rulings.not-known-yet")))
                    .collect(Collectors.joining("; "));
            String walkovers = outlook.walkovers().entrySet().stream()
                    .map(tie -> Words.say(
                            event,
                            "page-rulings.tie-goes-to",
                            "getKey",
                            tie.getKey(),
                            "getValue",
                            event.clubName(tie.getValue())))
                    .collect(Collectors.joining("; "));
            String all =
                    Stream.of(goes, walkovers).filter(text -> !text.isEmpty()).collect(Collectors.joining(". "));
            outlook.treatment().ifPresent(treatment -> lines.add(line(event, outlook, treatment, all)));
        }
        return WorkView.Section.of("goes-on", Words.say(event, "page-rulings.who-goes-on-into-the"))
                .saying(lines);
    }

    private static String line(VisibleEvent event, Outlook outlook, Withdrawal treatment, String goesOn) {
        String code = !outlook.refused().isEmpty()
                ? "page-rulings.cannot-be-chosen"
                : goesOn.isEmpty() ? "page-rulings.nobody-goes-on-from-here" : "page-rulings.treatment-line";
        return Words.say(event, code, "title", title(event, treatment), "what", goesOn);
    }

    private static WorkView.Section form(Visit visit, WithdrawalPreview preview, Tried tried) {
        Fields fields = Fields.of(FORM, tried);
        List<Option> treatments = preview.treatments().stream()
                .map(outlook -> option(visit, outlook))
                .toList();
        return WorkView.Section.of(
                        FORM,
                        visit.say("page-rulings.the-ruling"),
                        visit.say("page-rulings.sheets-that-are-sealed-for"))
                .with(new WorkView.WorkForm(
                        FORM,
                        ASK + "/" + preview.club(),
                        List.of(
                                fields.oneOf("treatment", visit.say("page-rulings.its-ties"), "", treatments),
                                fields.line("reason", visit.say("page-rulings.why"), "")
                                        .withHint(visit.say("page-rulings.read-by-everybody-no-health"))
                                        .mustBeFilled(),
                                fields.line("by", visit.say("page-rulings.who-rules-by-name"), "")
                                        .withAutocomplete("name")
                                        .mustBeFilled()),
                        List.of(Button.stop(visit.say("page-rulings.record-the-withdrawal")))));
    }

    private static Option option(Visit visit, Outlook outlook) {
        Withdrawal treatment = outlook.treatment().orElseThrow();
        String announced = visit.event().conditions().withdrawal() == treatment
                ? " " + visit.say("page-rulings.as-announced")
                : "";
        String refused = outlook.refused().stream().map(visit.words()::sentence).collect(Collectors.joining(" "));
        String what =
                switch (treatment) {
                    case ANNUL -> visit.say("page-rulings.all-its-results-are-taken");
                    case KEEP -> visit.say("page-rulings.its-results-stand-ties-not");
                    case AWARD -> visit.say("page-rulings.its-results-stand-each-tie");
                };
        return new Option(
                treatment.code(),
                title(visit.event(), treatment),
                refused.isEmpty() ? what + announced : refused,
                false,
                !refused.isEmpty());
    }

    private static String title(VisibleEvent event, Withdrawal treatment) {
        return Words.say(event, "page-rulings.treatment." + treatment.code());
    }
}
