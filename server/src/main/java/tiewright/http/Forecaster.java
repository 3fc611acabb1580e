package tiewright.http;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.PrivateNote;
import tiewright.event.Tie;
import tiewright.http.answers.ClubAnswers;
import tiewright.ledger.Ledger;
import tiewright.lineup.Forecasts;

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
            boolean fresh = tie.cards().isEmpty() && tie.isOpened();
            if (fresh && made.add(tie.id().code())) {
                make(event, tie, false);
            }
            if (tie.isDeciderOpened()
                    && tie.card(tiewright.event.RubberNo.DECIDER).entries().isEmpty()
                    && made.add(tie.id().code() + "/D")) {
                make(event, tie, true);
            }
        }
    }

    /** The service closes: what is being written down is finished, what is told later is not begun. */
    synchronized void end() {
        ended = true;
    }

    private void make(Event event, Tie tie, boolean decider) {
        for (ClubId club : Stream.of(tie.home(), tie.away())
                .flatMap(slot -> slot.club().stream())
                .toList()) {
            List<PrivateNote> own = ledger.privateOf(club).all(club);
            Forecasts.of(event, tie, club, own, ClubAnswers.earlier(ledger, event, club), decider)
                    .forEach(forecast -> ledger.note(club, forecast));
        }
    }
}
