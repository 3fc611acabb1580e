package tiewright.http;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.http.answers.ClubAnswers;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateRequest;
import tiewright.lineup.KeepForecasts;
import tiewright.lineup.club.ClubKnows;
import tiewright.lineup.club.Forecasts;
import tiewright.lineup.club.WhoPlays;

/**
 * Writes down for each club, as sheets open, what the advice expects; later its captain sees how good that was. Made whether or
 * not anybody looked at a proposal, so that nothing is picked out, and only from what is open by then.
 */
final class Forecaster {
    private final Ledger ledger;
    private final Set<String> made = new HashSet<>();
    private boolean ended;

    Forecaster(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Told in order, after every change. */
    synchronized void changed(Event event) {
        for (Tie tie : ended ? List.<Tie>of() : event.ties().values()) {
            if (tie.cards().isEmpty() && tie.isOpened()) {
                make(event, tie, ExchangeId.sheets(tie.id()));
            }
            if (tie.isDeciderOpened() && tie.card(RubberNo.DECIDER).entries().isEmpty()) {
                make(event, tie, ExchangeId.decider(tie.id()));
            }
        }
    }

    /** The service closes: what is being written down is finished, what is told later is not begun. */
    synchronized void end() {
        ended = true;
    }

    /** Once for each opening, however often the service is started; a tie that is played again opens again. */
    private void make(Event event, Tie tie, ExchangeId exchange) {
        Instant openedAt = event.exchange(exchange).openedAt().orElse(Instant.EPOCH);
        String opening = "forecast/" + exchange.tie() + "/" + exchange.kind().code() + "/" + openedAt.toEpochMilli();
        if (event.deletion().covers(openedAt) || !made.add(opening)) {
            return;
        }
        boolean decider = exchange.kind() == SheetKind.DECIDER;
        for (ClubId club : Stream.of(tie.home(), tie.away())
                .flatMap(slot -> slot.club().stream())
                .toList()) {
            ClubKnows knows = ClubKnows.of(
                            club, ledger.privateOf(club).all(club), ClubAnswers.earlier(ledger, event, club))
                    .stating(WhoPlays.to(club, event, ledger.directory().stated()));
            KeepForecasts keep = new KeepForecasts(openedAt, Forecasts.of(event, tie, knows, decider));
            ledger.decide(PrivateRequest.of(club, opening, KeepForecasts.AUTOMATIC), keep);
        }
    }
}
