package tiewright.lineup;

import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.Role;

/** The service keeps what the advice to a club expects, as the sheets of a tie open. */
public record KeepForecasts(List<Forecast> forecasts) implements PrivateDecision {
    /** Who keeps them when nobody presses anything. */
    public static final Actor AUTOMATIC = Actor.of(Role.ORGANISER, "forecast at the opening");

    public KeepForecasts {
        forecasts = List.copyOf(forecasts);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        NoteChecks checks = NoteChecks.of(event, noted);
        forecasts.stream().map(Forecast::tie).distinct().forEach(checks::ownTie);
        return checks.kept(() -> forecasts);
    }

    @Override
    public boolean isNeverStale() {
        return true;
    }
}
