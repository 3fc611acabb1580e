package tiewright.http.organiser;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Deletion;
import tiewright.event.Held;
import tiewright.event.NamesKept;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.TextField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.ledger.KnownBackup;
import tiewright.setup.DateDeletion;
import tiewright.setup.EraseData;
import tiewright.wording.DeletionWords;
import tiewright.wording.Words;

/** When private data go, how much is held (never what it says), which copies lie elsewhere, and the button that deletes now. */
final class PrivateDataPage implements Page {
    static final String HERE = "/organiser/private-data";
    private static final String DATE = "date-form";
    private static final String NOW = "now-form";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, visit -> {
            Form form = visit.form();
            Optional<LocalDate> date = form.must("date", form.date("date"));
            Optional<NamesKept> names = form.must("names", form.maybe("names").flatMap(NamesKept::parse));
            visit.attempt(
                    form,
                    () -> new DateDeletion(date.orElseThrow(), names.orElseThrow()),
                    HERE,
                    tried -> screen(visit, tried));
        });
        routes.post(Door.ORGANISER, HERE + "/erase", visit -> {
            Form form = visit.form();
            String typed = form.mustText("name");
            if (form.isClean()) {
                visit.erase(form, held -> new EraseData(held, Optional.of(typed)), HERE, tried -> screen(visit, tried));
            } else {
                visit.refuse(form, tried -> screen(visit, tried));
            }
        });
    }

    private static Screen screen(Visit visit, Tried tried) {
        Held held = visit.hall().ledger().held();
        boolean isGone = visit.event().deletion().erasedAt().isPresent() && held.isNothing();
        List<WorkView.Section> sections = new ArrayList<>(List.of(date(visit.event(), tried), held(held, isGone)));
        sections.add(copies(visit.hall().ledger().backups()));
        if (!isGone) {
            sections.add(now(tried));
        }
        return Screen.of(
                "work",
                visit.say("page-organiser.private-data"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(
                                DeletionWords.sentence(
                                        visit.event().deletion(), visit.event().zone()),
                                visit.say("page-organiser.the-law-of-the-place")),
                        sections));
    }

    private static WorkView.Section date(VisibleEvent event, Tried tried) {
        Fields fields = Fields.of(DATE, tried);
        Optional<SetUpFact.DeletionDated> stands = event.deletion().promised();
        LocalDate today = LocalDate.ofInstant(event.now(), event.zone());
        String date = stands.map(SetUpFact.DeletionDated::date)
                .or(() -> event.about().map(about -> Deletion.usual(about.date(), today)))
                .map(LocalDate::toString)
                .orElse("");
        return WorkView.Section.of(
                        DATE,
                        Words.say(event, "page-organiser.the-day-of-deletion"),
                        Words.say(event, "page-organiser.at-the-beginning-of-that"))
                .with(new WorkView.WorkForm(
                        DATE,
                        HERE,
                        List.of(
                                fields.text(
                                        "date",
                                        TextField.Kind.DATE,
                                        Words.say(event, "page-organiser.deleted-on"),
                                        date),
                                names(event, stands, fields)),
                        List.of(Button.main(Words.say(event, "page-organiser.promise-this-day")))));
    }

    private static ChoiceList names(VisibleEvent event, Optional<SetUpFact.DeletionDated> stands, Fields fields) {
        return fields.oneOf(
                "names",
                Words.say(event, "page-organiser.what-stands-for-a-player"),
                stands.map(SetUpFact.DeletionDated::names)
                        .orElse(NamesKept.CODES)
                        .code(),
                List.of(
                        Option.of(NamesKept.CODES.code(), Words.say(event, "page-organiser.the-code-alone"), false),
                        Option.of(
                                NamesKept.INITIALS.code(),
                                Words.say(event, "page-organiser.first-name-and-initial-of"),
                                false)));
    }

    /** Before the deletion the page looks the same whether or not a club has noted anything. */
    private static WorkView.Section held(Held held, boolean isGone) {
        if (isGone) {
            return WorkView.Section.of("held", "What is held", "Nothing private is held any more.");
        }
        List<ReasonTable.Row> rows = held.told().entrySet().stream()
                .filter(count -> count.getValue() > 0)
                .map(count -> row(DeletionWords.kind(count.getKey()), Integer.toString(count.getValue())))
                .collect(Collectors.toCollection(ArrayList::new));
        rows.add(row("What clubs noted for themselves", "known to each club alone"));
        return WorkView.Section.of("held", "What is held")
                .with(
                        new ReasonTable(
                                "held-table",
                                "What is held",
                                List.of(
                                        new ReasonTable.Column("What", false),
                                        new ReasonTable.Column("How many", true)),
                                rows,
                                "Counts only. What clubs noted, and how much, is read by their captains alone; it is deleted all the same."));
    }

    private static ReasonTable.Row row(String what, String count) {
        return ReasonTable.Row.of(List.of(ReasonTable.Cell.of(what), ReasonTable.Cell.of(count)));
    }

    private static WorkView.Section copies(List<KnownBackup> backups) {
        if (backups.isEmpty()) {
            return WorkView.Section.of(
                    "copies",
                    "Copies",
                    "No backup was taken. Exported folders and printed lists are not counted here: delete those too.");
        }
        return WorkView.Section.of(
                        "copies",
                        "Copies",
                        "A backup holds everything that was not deleted when it was taken. Those in the data folder"
                                + " itself are deleted with the rest; the others, exported folders and printed lists are yours to delete.")
                .saying(backups.stream().map(PrivateDataPage::copy).toList());
    }

    private static String copy(KnownBackup backup) {
        String at = backup.at()
                .map(moment -> "Backup of " + moment.toString().substring(0, 16).replace('T', ' ') + " UTC")
                .orElse("Backup");
        return at
                + backup.file()
                        .map(file -> ", " + file + (backup.isThere() ? "" : ": not there any more"))
                        .orElse(", downloaded by somebody");
    }

    private static WorkView.Section now(Tried tried) {
        Fields fields = Fields.of(NOW, tried);
        return WorkView.Section.of(
                        NOW,
                        "Delete now",
                        "Everything in the list above goes at once and for good, and every personal link but the organisers' ends. Possible once the event is"
                                + " over or its final order is signed.")
                .with(new WorkView.WorkForm(
                        NOW,
                        HERE + "/erase",
                        List.of(fields.line("name", "To be sure, write the name of the event", "")),
                        List.of(Button.stop("Delete all private data"))));
    }
}
