package tiewright.lineup;

import java.time.Instant;
import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.Refusal;
import tiewright.event.Role;

/**
 * The service keeps what the advice to a club expects, as the sheets of a tie open.
 *
 * @param openedAt when they opened; what was deleted afterwards does not come back
 */
public record KeepForecasts(Instant openedAt, List<Forecast> forecasts) implements PrivateDecision {
    /** Who keeps them when nobody presses anything. */
    public static final Actor AUTOMATIC = Actor.of(Role.ORGANISER, "forecast at the opening");

    public KeepForecasts {
        forecasts = List.copyOf(forecasts);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        NoteChecks checks = NoteChecks.of(event, noted);
        forecasts.stream().map(Forecast::tie).distinct().forEach(checks::ownTie);
        checks.refuseIf(event.deletion().covers(openedAt), Refusal.of("notes.deleted-since"));
        return checks.kept(() -> forecasts);
    }

    @Override
    public boolean isNeverStale() {
        return true;
    }
}
