package tiewright.desk;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.MayPlay;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * The published start and court of a tie. What was published before does not change silently: then a notice with the old
 * and the new goes out with it, and a reason is needed.
 *
 * @param start empty = not fixed
 * @param court empty = not fixed
 * @param told clubs that know already of a start earlier than the published one, or agreed to it
 */
public record RetimeTie(TieId tie, Optional<LocalTime> start, Optional<String> court, String reason, Set<ClubId> told)
        implements Decision {
    public RetimeTie {
        told = Set.copyOf(told);
    }

    public RetimeTie(TieId tie, Optional<LocalTime> start, Optional<String> court, String reason) {
        this(tie, start, court, reason, Set.of());
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Tie now = found.get();
        boolean changes = isChange(event, now);
        Earlier earlier = new Earlier(event, told);
        Asked asked = asked(event, given, now, earlier);
        if (changes) {
            asked.text("reason", reason, Asked.LONG);
        } else {
            asked.notTooLong("reason", reason, Asked.LONG);
        }
        if (!asked.isFine()) {
            return asked.refused();
        }
        List<Fact> facts = new ArrayList<>(List.of(new DrawFact.TieTimed(tie, start, court)));
        facts.addAll(shifted(event, now));
        if (changes) {
            facts.addAll(notice(event, now, earlier));
        }
        return new Accepted(facts, List.of());
    }

    private Asked asked(Event event, Given given, Tie now, Earlier earlier) {
        Asked asked = Asked.byOfficial(given)
                .unless(
                        !(now.start().equals(start) && now.court().equals(court)),
                        Refusal.of("desk.time-stands-already").with("tie", tie).at("start"))
                .unless(
                        !event.progress(now).finished(),
                        Refusal.of("desk.tie-is-over-for-times")
                                .with("tie", tie)
                                .at("tie"));
        court.filter(name -> !event.courts().containsKey(name))
                .ifPresent(name -> asked.unless(
                        false,
                        Refusal.of("desk.no-such-court").with("court", name).at("court")));
        start.ifPresent(at -> asked.all(earlier.untold(now, at)));
        return asked;
    }

    /** Something else than what was published for the tie. */
    private boolean isChange(Event event, Tie now) {
        return changes(now.start(), start)
                || changes(now.court(), court)
                || now.start().isEmpty()
                        && now.court().isEmpty()
                        && event.order().hadTime(tie);
    }

    /** A planned tie that only begins at another time keeps its courts, and its rubbers their distances. */
    private List<DrawFact.RubberTimed> shifted(Event event, Tie now) {
        if (!now.court().equals(court) || now.start().isEmpty() || start.isEmpty()) {
            return List.of();
        }
        long minutes = Duration.between(now.start().get(), start.get()).toMinutes();
        return event.order().rubbers(tie).entrySet().stream()
                .map(one -> new DrawFact.RubberTimed(
                        tie,
                        one.getKey(),
                        one.getValue().start().plusMinutes(minutes),
                        one.getValue().court(),
                        one.getValue().umpires()))
                .toList();
    }

    private static <T> boolean changes(Optional<T> published, Optional<T> wanted) {
        return published.isPresent() && !published.equals(wanted);
    }

    private List<Fact> notice(Event event, Tie now, Earlier earlier) {
        int number = Numbers.notice(event);
        List<ClubId> clubs = start.map(at -> earlier.clubs(now, at)).orElse(List.of());
        Saying times = said(start, court);
        List<Fact> facts = new ArrayList<>();
        facts.add(new OfficialFact.NoticeStated(
                number,
                Saying.of("notices.tie").with("tie", tie),
                Optional.of(tie),
                Optional.of(said(now.start(), now.court())),
                Optional.of(earlier.said(times, clubs)),
                Saying.typed(reason.strip()),
                List.copyOf(MayPlay.of(event, tie))));
        clubs.forEach(club -> facts.add(new OfficialFact.NoticeTold(number, club, true)));
        return facts;
    }

    /** As it is printed and shown struck through: <em>10:20, court 3</em>. */
    private static Saying said(Optional<LocalTime> start, Optional<String> court) {
        String place =
                court.map(name -> name.matches("\\d+") ? "numbered" : "named").orElse("none");
        return Saying.of("notices.time")
                .with("time", start.isPresent() ? "yes" : "no")
                .with("start", start.map(LocalTime::toString).orElse(""))
                .with("place", place)
                .with("court", court.orElse(""));
    }

    /** The time that somebody else published for the tie meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof DrawFact.TieTimed other && other.tie().equals(tie);
    }
}
