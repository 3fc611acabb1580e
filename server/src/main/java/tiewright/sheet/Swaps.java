package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.Link;
import tiewright.event.OfficialFact;
import tiewright.event.Saying;
import tiewright.event.Sealings;
import tiewright.event.Side;
import tiewright.event.Tie;

/**
 * What everybody is told with the opening: that a sheet was sealed by a link which was made after the one before it, or which its
 * club had not let in, and that no older link of the club has confirmed it.
 */
public final class Swaps {
    /** The code of that notice. */
    public static final String SAYING = "notices.sealed-by-new-link";

    private Swaps() {}

    /** A numbered notice for each side that it is true of. */
    static List<Fact> told(Event event, ExchangeId exchange) {
        Tie tie = event.tie(exchange.tie()).orElseThrow();
        List<Fact> notices = new ArrayList<>();
        for (Side side : Side.values()) {
            by(event, event.exchange(exchange).side(side))
                    .ifPresent(link ->
                            notices.add(notice(event, tie, tie.club(side).orElseThrow(), link, notices.size())));
        }
        return notices;
    }

    private static Optional<Link> by(Event event, Exchange.SideOfExchange side) {
        return side.sealings()
                .inPlace()
                .filter(sheet -> side.ruled().isEmpty() && sheet.isUnconfirmed())
                .flatMap(Sealings.InPlace::by)
                .map(event.links()::get);
    }

    private static Fact notice(Event event, Tie tie, ClubId club, Link link, int before) {
        int last = event.notices().stream()
                .mapToInt(posted -> posted.notice().number())
                .max()
                .orElse(0);
        Saying text = Saying.of(SAYING)
                .with("club", event.club(club).map(Club::name).orElse(club.code()))
                .with("tie", tie.id())
                .with("label", link.label())
                .with("by", link.life().made().by().name());
        return new OfficialFact.NoticeStated(
                        last + 1 + before,
                        text,
                        Optional.of(tie.id()),
                        Optional.empty(),
                        Optional.empty(),
                        Saying.typed(""))
                .concerning(tie.clubs());
    }
}
