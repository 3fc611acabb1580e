package tiewright.setup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Deletion;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.NamesKept;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Says what the event is, or says it anew. Once ties are laid out a change of day, place or hour is a numbered notice; once a
 * sheet was sealed the day and its clock stay, for every deadline hangs on them.
 */
public record DescribeEvent(
        String name, LocalDate date, String venue, ZoneId zone, LocalTime starts, Optional<LocalTime> closes)
        implements Decision {
    private static final int YEARS_AHEAD = 5;

    @Override
    public Outcome decide(Event event, Given given) {
        LocalDate today = LocalDate.ofInstant(given.now(), zone);
        Optional<SetUpFact.EventDescribed> before = event.about();
        boolean newDay = before.filter(about -> about.date().equals(date)).isEmpty();
        boolean far = date.isBefore(today.minusYears(1)) || date.isAfter(today.plusYears(YEARS_AHEAD));
        boolean moved = before.isPresent() && (newDay || !before.get().zone().equals(zone));
        return Checks.byOrganiser(given)
                .line("name", name)
                .line("venue", venue)
                .refuseIf(
                        newDay && far,
                        Refusal.of("setup.date-far")
                                .with("date", date)
                                .with("today", today)
                                .at("date"))
                .refuseIf(
                        moved && event.isFrozen(),
                        Refusal.of("setup.day-is-fixed")
                                .with(
                                        "date",
                                        before.map(SetUpFact.EventDescribed::date)
                                                .orElse(date))
                                .at("date"))
                .refuse(closes.filter(at -> !at.isAfter(starts))
                        .map(at -> Refusal.of("setup.closes-before-start")
                                .with("starts", starts)
                                .with("closes", at)
                                .at("closes")))
                .then(() -> facts(event, today));
    }

    private List<Fact> facts(Event event, LocalDate today) {
        SetUpFact.EventDescribed after =
                new SetUpFact.EventDescribed(Plain.of(name), date, Plain.of(venue), zone, starts, closes);
        List<Fact> facts = new ArrayList<>(List.of(after));
        event.about()
                .map(DescribeEvent::whenAndWhere)
                .filter(before -> !event.ties().isEmpty() && !before.equals(whenAndWhere(after)))
                .ifPresent(before -> facts.add(
                        Notices.changed(event, Saying.of("notices.when-and-where"), before, whenAndWhere(after))));
        deletion(event, today).ifPresent(facts::add);
        return facts;
    }

    /** The usual day of deletion where none is set; one that was the usual one, or would no longer be after the event, moves along. */
    private Optional<SetUpFact.DeletionDated> deletion(Event event, LocalDate today) {
        Optional<SetUpFact.DeletionDated> promised = event.deletion().promised();
        boolean follows = promised.filter(one -> one.date().isAfter(date) && !isUsual(event, one.date()))
                .isEmpty();
        boolean sameDay =
                event.about().filter(about -> about.date().equals(date)).isPresent();
        return follows && !(promised.isPresent() && sameDay)
                ? Optional.of(new SetUpFact.DeletionDated(
                        Deletion.usual(date, today),
                        promised.map(SetUpFact.DeletionDated::names).orElse(NamesKept.CODES)))
                : Optional.empty();
    }

    private static boolean isUsual(Event event, LocalDate on) {
        return event.about()
                .filter(about -> Deletion.usual(about.date(), about.date()).equals(on))
                .isPresent();
    }

    private static Saying whenAndWhere(SetUpFact.EventDescribed about) {
        return Saying.of(about.venueCloses().isPresent() ? "notices.held-until" : "notices.held")
                .with("date", about.date())
                .with("starts", about.starts())
                .with("closes", about.venueCloses().map(LocalTime::toString).orElse(""))
                .with("venue", about.venue());
    }

    /** What somebody else described meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.EVENT_DESCRIBED;
    }
}
