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

/** The whole data folder as one file, taken while the service runs. */
final class BackupPage implements Page {
    private static final String HERE = "/organiser/backup";
    private static final String FORM = "backup";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("HHmmss");

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen()));
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

    private static Screen screen() {
        WorkView.Section section = WorkView.Section.of(
                        FORM,
                        "",
                        "The file holds everything up to this moment: names, results, log. Keep it as safe as the list of players itself, and delete it when"
                                + " the data of the event are deleted.",
                        "The key of the sealed sheets (the file seal.key in the data folder) is not in it, so whoever finds the backup cannot read a sheet"
                                + " that is still sealed. To let a spare laptop open those sheets too, carry that one file over by hand; otherwise clubs whose sheets"
                                + " are sealed at that moment seal them again.",
                        "On the spare laptop: the command \"restore\" lays the backup into a new folder, \"serve\" goes on from there. The personal links stay the"
                                + " same; everybody opens theirs once more.")
                .with(new WorkView.WorkForm(FORM, HERE, List.of(), List.of(Button.main("Download the backup now"))));
        return Screen.of(
                "work",
                "Backup",
                new WorkView(tiewright.http.pieces.Refusal.NONE, BackLinks.TO_ORGANISER, List.of(), List.of(section)));
    }
}
