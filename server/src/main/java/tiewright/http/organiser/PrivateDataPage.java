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
        Words words = visit.words();
        Held held = visit.hall().ledger().held();
        boolean isGone = visit.event().deletion().erasedAt().isPresent() && held.isNothing();
        List<WorkView.Section> sections =
                new ArrayList<>(List.of(date(visit.event(), tried), held(words, held, isGone)));
        sections.add(copies(words, visit.hall().ledger().backups()));
        if (!isGone) {
            sections.add(now(words, tried));
        }
        return Screen.of(
                "work",
                visit.say("page-organiser.private-data"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(
                                DeletionWords.sentence(
                                        words,
                                        visit.event().deletion(),
                                        visit.event().zone()),
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
    private static WorkView.Section held(Words words, Held held, boolean isGone) {
        if (isGone) {
            return WorkView.Section.of(
                    "held", words.say("page-organiser.private.held"), words.say("page-organiser.private.nothing-held"));
        }
        List<ReasonTable.Row> rows = held.told().entrySet().stream()
                .filter(count -> count.getValue() > 0)
                .map(count -> row(DeletionWords.kind(words, count.getKey()), Integer.toString(count.getValue())))
                .collect(Collectors.toCollection(ArrayList::new));
        rows.add(row(
                words.say("page-organiser.private.clubs-noted"), words.say("page-organiser.private.known-to-each")));
        return WorkView.Section.of("held", words.say("page-organiser.private.held"))
                .with(new ReasonTable(
                        "held-table",
                        words.say("page-organiser.private.held"),
                        List.of(
                                new ReasonTable.Column(words.say("page-organiser.private.what"), false),
                                new ReasonTable.Column(words.say("page-organiser.private.how-many"), true)),
                        rows,
                        words.say("page-organiser.private.counts-only")));
    }

    private static ReasonTable.Row row(String what, String count) {
        return ReasonTable.Row.of(List.of(ReasonTable.Cell.of(what), ReasonTable.Cell.of(count)));
    }

    private static WorkView.Section copies(Words words, List<KnownBackup> backups) {
        if (backups.isEmpty()) {
            return WorkView.Section.of(
                    "copies",
                    words.say("page-organiser.private.copies"),
                    words.say("page-organiser.private.no-backup"));
        }
        return WorkView.Section.of(
                        "copies",
                        words.say("page-organiser.private.copies"),
                        words.say("page-organiser.private.copies-are"))
                .saying(backups.stream().map(backup -> copy(words, backup)).toList());
    }

    private static String copy(Words words, KnownBackup backup) {
        return words.say(
                "page-organiser.private.backup",
                "at",
                backup.at()
                        .map(moment -> moment.toString().substring(0, 16).replace('T', ' '))
                        .orElse(""),
                "timed",
                backup.at().isPresent() ? "yes" : "no",
                "file",
                backup.file().map(Object::toString).orElse(""),
                "where",
                backup.file().isEmpty() ? "downloaded" : backup.isThere() ? "there" : "gone");
    }

    private static WorkView.Section now(Words words, Tried tried) {
        Fields fields = Fields.of(NOW, tried);
        return WorkView.Section.of(
                        NOW,
                        words.say("page-organiser.private.delete-now"),
                        words.say("page-organiser.private.everything-goes"))
                .with(new WorkView.WorkForm(
                        NOW,
                        HERE + "/erase",
                        List.of(fields.line("name", words.say("page-organiser.private.to-be-sure"), "")),
                        List.of(Button.stop(words.say("page-organiser.private.delete-all")))));
    }
}
