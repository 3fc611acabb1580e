package tiewright.setup;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.NamesKept;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/**
 * Says on which day private data go and what stands for players afterwards. After the event, for sheets and names are needed until
 * then; ahead, for a day that is over would delete at once; within a year, or it would be no promise.
 */
public record DateDeletion(LocalDate date, NamesKept names) implements Decision {
    private static final int MOST_DAYS = 365;

    @Override
    public Outcome decide(Event event, Given given) {
        if (event.about().isEmpty()) {
            return Decision.Refused.because(Refusal.of("setup.describe-first"));
        }
        SetUpFact.EventDescribed about = event.about().get();
        LocalDate today = today(event, given);
        LocalDate last = (about.date().isBefore(today) ? today : about.date()).plusDays(MOST_DAYS);
        SetUpFact.DeletionDated now = new SetUpFact.DeletionDated(date, names);
        boolean early = !date.isAfter(about.date());
        return Checks.byOrganiser(given)
                .refuseIf(
                        early,
                        Refusal.of("setup.deletion-before-event")
                                .with("date", date)
                                .with("event", about.date())
                                .at("date"))
                .refuseIf(
                        !early && !date.isAfter(today),
                        Refusal.of("setup.deletion-in-the-past")
                                .with("date", date)
                                .with("today", today)
                                .at("date"))
                .refuseIf(
                        date.isAfter(last),
                        Refusal.of("setup.deletion-too-far")
                                .with("date", date)
                                .with("last", last)
                                .at("date"))
                .refuseIf(
                        event.deletion().promised().filter(now::equals).isPresent(),
                        Refusal.of("setup.deletion-stands").at("date"))
                .then(() -> List.of(now));
    }

    static LocalDate today(Event event, Given given) {
        ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
        return LocalDate.ofInstant(given.now(), zone);
    }

    /** What somebody else promised meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.DELETION_DATED || fact.kind() == FactKind.DATA_ERASED;
    }
}
