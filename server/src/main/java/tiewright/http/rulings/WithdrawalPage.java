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

/** A club goes home: what each treatment does to who goes on stands side by side before one is chosen. */
final class WithdrawalPage implements Page {
    private static final String ASK = "/organiser/withdraw";
    private static final String FORM = "withdraw";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, ASK + "/{club}", visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, ASK, visit -> {
            Form form = visit.form();
            Optional<ClubId> club = form.must("club", form.read("club", "form.not-a-code", ClubId::of));
            visit.go(club.filter(id -> visit.event().club(id).isPresent())
                    .map(id -> ASK + "/" + id)
                    .orElse("/organiser/tables"));
        });
        routes.post(Door.OFFICIALS, ASK + "/{club}", WithdrawalPage::withdraw);
    }

    /** The way here, on the page of tables. */
    static WorkView.Section choice(VisibleEvent event) {
        List<Option> clubs = event.clubs().stream()
                .filter(club -> !event.withdrawals().containsKey(club.id()))
                .map(club -> Option.of(club.id().code(), club.name(), false))
                .toList();
        return WorkView.Section.of(
                        FORM,
                        "A club goes home",
                        "You first see what each treatment does to the table and to who goes on. Nothing is chosen for you.")
                .with(new WorkView.WorkForm(
                        FORM,
                        ASK,
                        List.of(Fields.of(FORM, Tried.NOTHING)
                                .select("club", "The club", "Choose the club", "", clubs)),
                        List.of(Button.other("Show what each treatment does"))));
    }

    private static ClubId club(Visit visit) {
        return visit.readId("club", ClubId::of)
                .filter(id -> visit.event().club(id).isPresent())
                .orElseThrow(() -> new NotFound("There is no club \"" + visit.path("club") + "\" in this event."));
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
                name + " goes home",
                new WorkView(
                        tried.refusal(),
                        new NavLink("/organiser/tables", "Back to the tables", false),
                        List.of(
                                "Walkover, retirement and withdrawal are three things. A rubber not played is a walkover, one given up a retirement:"
                                        + " both are entered on its card. This page is for a club that leaves the event; what becomes of its ties is your ruling."),
                        sections));
    }

    private static WorkView.Section sideBySide(VisibleEvent event, WithdrawalPreview preview, Table now) {
        List<Outlook> all = Stream.concat(Stream.of(preview.now()), preview.treatments().stream())
                .toList();
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(new ReasonTable.Column("Place", false)));
        all.forEach(outlook -> columns.add(new ReasonTable.Column(
                outlook.treatment().map(WithdrawalPage::title).orElse("As it stands"), false)));
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (int line = 0; line < now.rows().size(); line++) {
            int at = line;
            List<ReasonTable.Cell> cells = new ArrayList<>(List.of(ReasonTable.Cell.of(TieViews.ordinal(line + 1))));
            all.forEach(outlook -> cells.add(ReasonTable.Cell.of(cell(event, outlook, at))));
            rows.add(ReasonTable.Row.of(cells));
        }
        int left = now.tiesLeft();
        return WorkView.Section.of("side", "Pool " + preview.pool().orElse("") + ", side by side")
                .with(new ReasonTable(
                        "side-by-side",
                        "The table under each treatment",
                        columns,
                        rows,
                        left == 0
                                ? "Every tie is finished."
                                : "Ties not finished now: " + left + ". The order can still change."));
    }

    private static String cell(VisibleEvent event, Outlook outlook, int line) {
        if (!outlook.refused().isEmpty()) {
            return "cannot be chosen";
        }
        List<Row> rows = outlook.table().map(Table::rows).orElse(List.of());
        if (line >= rows.size()) {
            return "no club";
        }
        Row row = rows.get(line);
        boolean goes = outlook.goesOn().values().stream()
                .anyMatch(club -> club.filter(row.club()::equals).isPresent());
        String lot = row.onlyALotParts() ? ", level: a lot would part" : "";
        return event.clubName(row.club()) + " (" + row.tiePoints()
                + (row.tiePoints() == 1 ? " tie point" : " tie points") + lot + ")" + (goes ? ", goes on" : "");
    }

    private static WorkView.Section knockout(VisibleEvent event, WithdrawalPreview preview) {
        List<String> lines = new ArrayList<>();
        for (Outlook outlook : preview.treatments()) {
            String goes = outlook.goesOn().entrySet().stream()
                    .map(slot -> new TieViews(event).source(slot.getKey()) + ": "
                            + slot.getValue().map(event::clubName).orElse("not known yet"))
                    .collect(Collectors.joining("; "));
            String walkovers = outlook.walkovers().entrySet().stream()
                    .map(tie -> "Tie " + tie.getKey() + " goes to " + event.clubName(tie.getValue()))
                    .collect(Collectors.joining("; "));
            String all =
                    Stream.of(goes, walkovers).filter(text -> !text.isEmpty()).collect(Collectors.joining(". "));
            outlook.treatment()
                    .ifPresent(treatment -> lines.add(title(treatment) + ": "
                            + (!outlook.refused().isEmpty()
                                    ? "cannot be chosen."
                                    : all.isEmpty() ? "nobody goes on from here." : all + ".")));
        }
        return WorkView.Section.of("goes-on", "Who goes on into the knockout").saying(lines);
    }

    private static WorkView.Section form(Visit visit, WithdrawalPreview preview, Tried tried) {
        Fields fields = Fields.of(FORM, tried);
        List<Option> treatments = preview.treatments().stream()
                .map(outlook -> option(visit, outlook))
                .toList();
        return WorkView.Section.of(
                        FORM, "The ruling", "Sheets that are sealed for ties that will not be played go back unseen.")
                .with(new WorkView.WorkForm(
                        FORM,
                        ASK + "/" + preview.club(),
                        List.of(
                                fields.oneOf("treatment", "Its ties", "", treatments),
                                fields.line("reason", "Why", "")
                                        .withHint("Read by everybody; no health matters of a person.")
                                        .mustBeFilled(),
                                fields.line("by", "Who rules, by name", "")
                                        .withAutocomplete("name")
                                        .mustBeFilled()),
                        List.of(Button.stop("Record the withdrawal"))));
    }

    private static Option option(Visit visit, Outlook outlook) {
        Withdrawal treatment = outlook.treatment().orElseThrow();
        String announced =
                visit.event().conditions().withdrawal() == treatment ? " This is what the conditions announce." : "";
        String refused = outlook.refused().stream().map(visit.words()::sentence).collect(Collectors.joining(" "));
        String what =
                switch (treatment) {
                    case ANNUL -> "All its results are taken out; the table is made as if the club had never played.";
                    case KEEP -> "Its results stand; ties not played are not counted for anybody.";
                    case AWARD -> "Its results stand; each tie not played is lost, every rubber without a point.";
                };
        return new Option(
                treatment.code(),
                title(treatment),
                refused.isEmpty() ? what + announced : refused,
                false,
                !refused.isEmpty());
    }

    private static String title(Withdrawal treatment) {
        return switch (treatment) {
            case ANNUL -> "Annul them";
            case KEEP -> "Keep what was played";
            case AWARD -> "Award the rest";
        };
    }
}
