package tiewright.http.answers;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.ledger.Ledger;
import tiewright.lineup.Freshness;
import tiewright.lineup.club.DayLoads;
import tiewright.lineup.club.PlayingDay;
import tiewright.sheet.Choices;
import tiewright.sheet.SheetOf;
import tiewright.sheet.SheetRules;

/** What a captain is answered who names and seals pairs: the own sheet, to links that were there when it was sealed alone. */
public final class OwnSheets {
    private final Event event;
    private final VisibleEvent visible;
    private final Ledger ledger;
    private final ClubId club;

    /** @throws IllegalStateException for anybody who is no captain */
    public OwnSheets(Asker asker) {
        this.visible = asker.event();
        this.club = visible.viewer()
                .club()
                .filter(visible.viewer()::isCaptainOf)
                .orElseThrow(() -> new IllegalStateException("only the captain of a club may ask this"));
        this.event = asker.whole();
        this.ledger = asker.ledger();
    }

    /** The players that the own club may name, rubber by rubber. */
    public Choices choices(ExchangeId exchange, Map<RubberNo, List<PlayerId>> soFar) {
        return Choices.of(of(exchange), soFar);
    }

    private SheetOf of(ExchangeId exchange) {
        return new SheetOf(event, exchange, club, ledger.directory());
    }

    /** The club's own sheet still keeps the conditions: nobody on it has gone since it was sealed. */
    public boolean isLegal(ExchangeId exchange, Sheet sheet) {
        return SheetRules.faults(of(exchange), sheet).isEmpty();
    }

    /** Minutes since the last rubber of each own player who has played, on the way to this tie. */
    public Map<PlayerId, Integer> restedMinutes(TieId tie) {
        Map<PlayerId, Integer> rests = new HashMap<>();
        DayLoads.of(event, event.tie(tie).orElseThrow(), Optional.of(visible.now()), Freshness.Cost.USUAL)
                .loads()
                .forEach((player, load) -> load.minutes().ifPresent(minutes -> rests.put(player, minutes)));
        rests.keySet()
                .removeIf(player ->
                        event.squad(club).stream().noneMatch(own -> own.id().equals(player)));
        return rests;
    }

    /** What the own players have had of the day, without what was promised to them. */
    public PlayingDay playingDay() {
        return PlayingDay.of(event, club, List.of());
    }

    /** It opened since the asker's event was looked at: what is read of it from now on belongs to another moment. */
    public boolean openedMeanwhile(ExchangeId exchange) {
        return !visible.exchange(exchange).isOpened()
                && ledger.event().exchange(exchange).isOpened();
    }

    /** The club's own sealed sheet; empty for a link that was made after it. */
    public Optional<Decision.Sealed> sealed(ExchangeId exchange) {
        return visible.mayRead(exchange) ? ledger.ownSheet(exchange, club) : Optional.empty();
    }
}
