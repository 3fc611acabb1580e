package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.desk.SignEvent;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Saying;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CopyText;
import tiewright.http.views.TablesView;
import tiewright.wording.Words;

/** The final order of the event as its notice says it: each place with the reason that it had when it was signed. */
public final class FinalOrders {
    private FinalOrders() {}

    /** Empty before it is signed. */
    public static Optional<TablesView.FinalOrder> of(Visit visit) {
        return visit.event().signed().map(signed -> signed(visit, signed));
    }

    /** Whether this is the notice that states it. */
    public static boolean isStatedBy(Event.Posted posted) {
        return posted.notice().text().code().equals(SignEvent.NOTICE);
    }

    private static TablesView.FinalOrder signed(Visit visit, OfficialFact.EventSigned fact) {
        VisibleEvent event = visit.event();
        Words words = visit.words();
        Optional<Event.Posted> posted =
                event.notices().stream().filter(FinalOrders::isStatedBy).reduce((earlier, later) -> later);
        List<String> places = posted
                .flatMap(one -> one.notice().after())
                .map(said -> said.parts().getOrDefault(SignEvent.PLACES, List.of()))
                .orElseGet(() -> names(event, fact.order()))
                .stream()
                .map(words::saying)
                .toList();
        String signed = posted.map(one -> words.say(
                        "page-visit.final-signed-at",
                        "by",
                        fact.by(),
                        "at",
                        HallClock.said(event.clock(one.at())),
                        "number",
                        one.notice().number()))
                .orElseGet(() -> words.say("page-visit.final-signed", "by", fact.by()));
        return new TablesView.FinalOrder(places, signed, copy(visit, places, signed));
    }

    /** Of an order that was signed before its reasons went into a notice. */
    private static List<Saying> names(VisibleEvent event, List<ClubId> order) {
        List<Saying> names = new ArrayList<>();
        order.forEach(club -> names.add(Saying.of("notices.final-place-alone")
                .with("place", names.size() + 1)
                .with("club", event.clubName(club))));
        return names;
    }

    private static CopyText copy(Visit visit, List<String> places, String signed) {
        Words words = visit.words();
        String title = visit.event().about().map(about -> about.name()).orElse("");
        return new CopyText(
                "copy-final-order",
                words.say("page-visit.final-order-as-text"),
                Stream.of(List.of(words.say("page-visit.final-order-of", "event", title)), places, List.of(signed))
                        .flatMap(List::stream)
                        .reduce((before, line) -> before + "\n" + line)
                        .orElse(""),
                words.say("page-visit.copy"),
                words.say("page-visit.copied"));
    }
}
