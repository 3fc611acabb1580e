package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Sheet;
import tiewright.http.answers.Answers;
import tiewright.http.views.SheetFormView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Nobody is barred for being hurt or ill; but nobody marked so is proposed, planned or sealed without a word before. */
final class HurtFirst {
    private static final String ASKED = "hurt-asked";

    private HurtFirst() {}

    /** What the captain is asked first, then these lines. */
    static List<String> before(Visit visit, Collection<PlayerId> marked, String... lines) {
        List<String> all = new ArrayList<>(visit.event().squad(visit.club()).stream()
                .filter(player -> marked.contains(player.id()))
                .map(player ->
                        Cautions.beforeNaming(visit.words(), visit.event().name(player.id())))
                .toList());
        all.addAll(List.of(lines));
        return all;
    }

    static List<PlayerId> marked(Visit visit) {
        return visit.ask(Answers::new).hurt(visit.club());
    }

    /** Beside the form of a sheet. */
    static SheetFormView.Asks asks(Visit visit, Tried tried) {
        List<String> lines = before(visit, marked(visit));
        return lines.isEmpty()
                ? SheetFormView.Asks.NOTHING
                : new SheetFormView.Asks(
                        lines,
                        Optional.of(Fields.of("sheet", tried)
                                .tick(
                                        ASKED,
                                        visit.words().say("page-captain.before-naming-the-hurt"),
                                        visit.words().say("page-captain.we-asked"),
                                        false)));
    }

    /** A sheet that names somebody marked is sealed once the form says that it was asked. */
    static void check(Visit visit, Form form, Sheet sheet) {
        List<PlayerId> named =
                marked(visit).stream().filter(sheet.players()::contains).toList();
        if (!named.isEmpty() && !form.isTicked(ASKED)) {
            form.fault(Refusal.of("form.ask-the-hurt")
                    .with("players", named)
                    .with("count", named.size())
                    .at(ASKED));
        }
    }
}
