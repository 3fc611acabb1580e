package tiewright.http.organiser;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.ledger.Ledger;
import tiewright.wording.Words;

/** The whole data folder as one file, taken while the service runs. */
final class BackupPage implements Page {
    private static final String HERE = "/organiser/backup";
    private static final String FORM = "backup";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("HHmmss");

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit)));
        routes.post(Door.ORGANISER, HERE, BackupPage::download);
    }

    private static void download(Visit visit) {
        String name = "tiewright-backup-"
                + STAMP.format(visit.event().clock(visit.event().now())) + ".zip";
        visit.ctx()
                .contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(visit.hall().ledger().backedUp());
        Ledger.noteBackup(visit.hall().ledger().folder(), visit.event().now(), Optional.empty());
    }

    private static Screen screen(Visit visit) {
        Words words = visit.words();
        WorkView.Section section = WorkView.Section.of(
                        FORM,
                        "",
                        words.say("page-organiser.backup-holds"),
                        words.say("page-organiser.backup-has-no-key"),
                        words.say("page-organiser.backup-on-the-spare-laptop"))
                .with(new WorkView.WorkForm(
                        FORM, HERE, List.of(), List.of(Button.main(words.say("page-organiser.backup-download")))));
        return Screen.of(
                "work",
                words.say("page-organiser.backup"),
                new WorkView(
                        tiewright.http.pieces.Refusal.NONE, BackLinks.toOrganiser(words), List.of(), List.of(section)));
    }
}
