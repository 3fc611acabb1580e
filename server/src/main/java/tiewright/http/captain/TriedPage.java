package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.views.OwnRecordView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.OwnRecord;
import tiewright.lineup.club.TriedNumbers;
import tiewright.wording.RatingWords;
import tiewright.wording.Words;

/** Would these numbers have been right for us? Earlier games of the club, each forecast from games before it alone. */
final class TriedPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.NOTES,
                "/captain/record/tried",
                visit -> visit.show(Screen.of("ownRecord", visit.say("page-captain.tried-title"), view(visit))));
    }

    private static OwnRecordView view(Visit visit) {
        Words words = visit.words();
        Optional<TriedNumbers> found = visit.ask(ClubAnswers::new).tried();
        if (found.isEmpty()) {
            return new OwnRecordView(List.of(words.say("page-captain.tried-nothing")), List.of());
        }
        OwnRecord all = found.get().all().record();
        return new OwnRecordView(
                said(visit, found.get()),
                List.of(RecordTables.bands(words, words.say("page-captain.tried-by-chance"), all)));
    }

    private static List<String> said(Visit visit, TriedNumbers tried) {
        Words words = visit.words();
        OwnRecord all = tried.all().record();
        int ours = tried.ours().record().scored();
        List<String> said = new ArrayList<>();
        if (ours > 0) {
            said.add(verdict(words, "page-captain.tried-ours", tried.ours()));
        }
        if (ours < all.scored()) {
            said.add(verdict(words, "page-captain.tried-all", tried.all()));
        }
        said.add(words.say("page-captain.tried-how", "given", tried.given()));
        said.add(RecordTables.scores(words, words.say("page-captain.tried-games"), all));
        ahead(words, all).ifPresent(said::add);
        said.add(new RatingWords(words, visit.event().conditions().scoring()).spreads(tried.last()));
        said.add(words.say("page-captain.tried-yours"));
        return said;
    }

    private static String verdict(Words words, String key, TriedNumbers.How how) {
        return words.say(key, "games", how.record().scored())
                + " "
                + words.say(
                        "page-captain.tried-"
                                + how.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        "enough",
                        OwnRecord.ENOUGH);
    }

    private static Optional<String> ahead(Words words, OwnRecord record) {
        return record.called() == 0
                ? Optional.empty()
                : Optional.of(words.say(
                        "page-captain.tried-ahead",
                        "called",
                        record.called(),
                        "wins",
                        record.rightByRating(),
                        "forecast",
                        record.rightByForecast()));
    }
}
