package tiewright.saturday;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Link;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** Whoever came by a link that was made after a sheet was sealed, and whom the club has not let in, does not read it. */
final class LateLinksReadNothing implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        return moment.fresh().stream()
                .filter(sight -> sight.isRead() && sight.path().matches("/captain/sheet/[^/]+"))
                .flatMap(sight -> look(moment, sight))
                .toList();
    }

    private static Stream<Broken> look(Moment moment, Sight sight) {
        Event event = moment.event();
        Optional<Tie> tie = event.tie(TieId.of(sight.path().replaceFirst(".*/", "")));
        Link link = event.links().get(sight.who().link());
        if (tie.isEmpty()
                || tie.get().isOpened()
                || link == null
                || link.life().letIn().isPresent()) {
            return Stream.empty();
        }
        ExchangeId id = ExchangeId.sheets(tie.get().id());
        boolean isIn = Stream.of(Side.values())
                .filter(side -> tie.get().club(side).equals(link.club()))
                .map(side -> side == Side.HOME
                        ? event.exchange(id).home()
                        : event.exchange(id).away())
                .anyMatch(Exchange.SideOfExchange::isIn);
        if (isIn) {
            moment.met(Looked.SEALED_AND_A_LATER_LINK);
        }
        boolean chosen = !sight.page()
                .select("option[selected][value~=\\S],input[type=radio][checked]")
                .isEmpty();
        return isIn && chosen
                ? Stream.of(new Broken(2, sight + " shows a sealed sheet to a link that was made later"))
                : Stream.empty();
    }
}
