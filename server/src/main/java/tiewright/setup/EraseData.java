package tiewright.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Held;
import tiewright.event.NamesKept;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

/**
 * Deletes everything private: by itself once its day has come, or earlier by an organiser who types the event's name. Never before
 * the event is over, for sealed sheets and names are needed until then.
 *
 * @param held what is there at this moment
 * @param typed the event's name as the organiser typed it; empty: the day has come
 */
public record EraseData(Held held, Optional<String> typed) implements Decision {
    /** Who deletes when nobody presses anything. */
    public static final Actor AUTOMATIC = Actor.of(Role.ORGANISER, "deletion by its date");

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<SetUpFact.EventDescribed> about = event.about();
        if (about.isEmpty()) {
            return Decision.Refused.because(Refusal.of("setup.describe-first"));
        }
        LocalDate today = DateDeletion.today(event, given);
        LocalDate on =
                event.deletion().promised().map(SetUpFact.DeletionDated::date).orElse(LocalDate.MAX);
        boolean over = event.signed().isPresent() || today.isAfter(about.get().date());
        Checks checks = Checks.byOrganiser(given)
                .refuseIf(
                        !over,
                        Refusal.of("setup.erase-before-end")
                                .with("event", about.get().date())
                                .at("name"))
                .refuseIf(held.isNothing(), Refusal.of("setup.nothing-to-erase"))
                .refuseIf(
                        typed.isEmpty() && event.deletion().promised().isEmpty(), Refusal.of("setup.no-deletion-date"))
                .refuseIf(
                        typed.isEmpty() && event.deletion().promised().isPresent() && today.isBefore(on),
                        Refusal.of("setup.deletion-not-yet").with("date", on).with("today", today))
                .refuseIf(
                        typed.filter(name -> !Plain.of(name).equals(about.get().name()))
                                .isPresent(),
                        Refusal.of("setup.erase-name-differs")
                                .with("name", about.get().name())
                                .at("name"));
        return checks.allFine() ? erased(event, given, about.get().date().getYear()) : checks.refused();
    }

    private Outcome erased(Event event, Given given, int year) {
        TreeMap<String, Integer> counts = new TreeMap<>(held.told());
        counts.values().removeIf(count -> count == 0);
        NamesKept names =
                event.deletion().promised().map(SetUpFact.DeletionDated::names).orElse(NamesKept.CODES);
        return new Accepted(
                List.of(new SetUpFact.DataErased(counts)),
                List.of(new PrivateNote.EverythingErased(given.directory().erased(names, year))));
    }

    /** What was promised or deleted meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.DELETION_DATED || fact.kind() == FactKind.DATA_ERASED;
    }
}
