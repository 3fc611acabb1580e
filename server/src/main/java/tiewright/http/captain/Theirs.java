package tiewright.http.captain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Deadlines;
import tiewright.event.SheetKind;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;

/**
 * What a captain reads of the other side of an exchange.
 *
 * @param other the name of the other club
 */
record Theirs(OwnExchange here, String other) {
    /** Whether the other club's is in, until when it can come, and who asked for the opening now. */
    List<String> said() {
        List<String> said = new ArrayList<>();
        VisibleExchange.VisibleSide theirs = here.exchange().side(here.side().other());
        if (theirs.in()) {
            said.add(here.visit().words().say("page-captain.theirs-in"));
        } else {
            Optional<String> last = here.exchange()
                    .deadline()
                    .filter(at -> here.own().in() && isStillTaken(at))
                    .map(at -> Deadlines.lastMinute(at, here.visit().event().conditions()))
                    .map(at -> HallClock.said(here.visit().event().clock(at)));
            said.add(last.map(at -> here.visit().words().say("page-captain.theirs-not-in-until", "last", at))
                    .orElseGet(() -> here.visit().words().say("page-captain.theirs-not-in")));
        }
        stopped().ifPresent(said::add);
        if (!here.exchange().isOpened() && theirs.openingAsked() && here.own().openingAsked()) {
            said.add(here.visit().words().say("page-captain.both-asked-to-open"));
        } else if (!here.exchange().isOpened() && theirs.openingAsked()) {
            said.add(here.visit().words().say("page-captain.they-ask-to-open", "other", other));
        } else if (!here.exchange().isOpened() && here.own().openingAsked()) {
            said.add(here.visit().words().say("page-captain.you-asked-to-open", "other", other));
        }
        return said;
    }

    private boolean isStillTaken(Instant deadline) {
        return here.visit()
                .event()
                .now()
                .isBefore(Deadlines.closes(deadline, here.visit().event().conditions()));
    }

    /** What the own captain has to know on the first page: each a sentence of its own. */
    List<String> news() {
        List<String> news = new ArrayList<>(stopped().stream().toList());
        boolean open = here.exchange().isOpened();
        boolean asked = here.exchange().side(here.side().other()).openingAsked();
        if (!open && asked && here.own().openingAsked()) {
            news.add(here.visit().words().say("page-captain.both-asked-to-open"));
        } else if (!open && asked) {
            news.add(here.visit().words().say("page-captain.they-ask-to-open-now", "other", other));
        } else if (!open && here.own().openingAsked()) {
            news.add(here.visit().words().say("page-captain.you-asked-to-open-now", "other", other));
        }
        return news;
    }

    /** For both captains alike: what is left, and what differs. */
    private Optional<String> stopped() {
        if (here.id().kind() == SheetKind.RUBBERS || here.exchange().isOpened()) {
            return Optional.empty();
        }
        String readings = here.visit().event().progress(here.tie()).held().stream()
                .map(rubber -> TieViews.rubber(here.visit().words(), rubber) + ": "
                        + here.tie().card(rubber).readings().stream()
                                .map(reading -> TieViews.score(reading.games()))
                                .collect(Collectors.joining(" / ")))
                .collect(Collectors.joining(", "));
        return here.visit()
                .ask(Answers::new)
                .restOfDecider(here.tie())
                .map(rest -> here.visit()
                        .words()
                        .say(
                                "page-captain.clock-stands-still",
                                "minutes",
                                rest.toMinutes(),
                                "seconds",
                                String.format(Locale.ROOT, "%02d", rest.toSecondsPart()),
                                "readings",
                                readings));
    }
}
