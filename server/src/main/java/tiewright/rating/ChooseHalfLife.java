package tiewright.rating;

import java.util.List;
import java.util.OptionalInt;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.Refusal;

/**
 * A captain chooses how older games count in the own club's ratings.
 *
 * @param days after which a game counts half, 1 to {@value Ageing#MOST_DAYS}; empty: every game counts the same
 */
public record ChooseHalfLife(OptionalInt days) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .refuseIf(
                        days.isPresent() && !Ageing.isHalfLife(days.getAsInt()),
                        Refusal.of("notes.half-life")
                                .with("most", Ageing.MOST_DAYS)
                                .at("half-life"))
                .kept(() -> List.of(new HalfLifeChosen(noted.club(), days)));
    }
}
