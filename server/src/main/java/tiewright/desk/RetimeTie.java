package tiewright.desk;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.MayPlay;
import tiewright.event.OfficialFact;
import tiewright.event.OrderOfPlay;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Saying;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * The published start and courts of a tie. What was published before does not change silently: then a notice with the old
 * and the new goes out with it, and a reason is needed.
 *
 * @param start empty = not fixed
 * @param where its courts
 * @param told clubs that know already of a start earlier than the published one, or agreed to it
 */
public record RetimeTie(TieId tie, Optional<LocalTime> start, Where where, String reason, Set<ClubId> told)
        implements Decision {
    /**
     * Courts on which the rubbers of a tie are played, in turn.
     *
     * @param courts empty = not fixed
     * @param slotMinutes from one rubber to the next on the same court
     */
    public record Where(List<String> courts, int slotMinutes) {
        public Where {
            courts = List.copyOf(courts);
        }

        /** One court for all of it, or none yet. */
        static Where of(Optional<String> court) {
            return new Where(court.stream().toList(), 0);
        }

        Optional<String> first() {
            return courts.stream().findFirst();
        }
    }

    public RetimeTie {
        told = Set.copyOf(told);
    }

    public RetimeTie(TieId tie, Optional<LocalTime> start, Optional<String> court, String reason) {
        this(tie, start, Where.of(court), reason, Set.of());
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
        List<Fact> facts = new ArrayList<>(List.of(new DrawFact.TieTimed(tie, start, where.first())));
        facts.addAll(rubbers(event, now));
        if (changes) {
            facts.addAll(notice(event, now, earlier));
        }
        return new Accepted(facts, List.of());
    }

    private Asked asked(Event event, Given given, Tie now, Earlier earlier) {
        Asked asked = Asked.byOfficial(given)
                .unless(
                        !(now.start().equals(start) && courts(event, now).equals(where.courts())),
                        Refusal.of("desk.time-stands-already").with("tie", tie).at("start"))
                .unless(
                        !event.progress(now).finished(),
                        Refusal.of("desk.tie-is-over-for-times")
                                .with("tie", tie)
                                .at("tie"));
        where.courts().stream()
                .filter(name -> !event.courts().containsKey(name))
                .forEach(name -> asked.unless(
                        false,
                        Refusal.of("desk.no-such-court").with("court", name).at("court")));
        asked.unless(
                where.courts().size() < 2 || start.isPresent(),
                Refusal.of("desk.courts-need-a-start").with("tie", tie).at("start"));
        start.ifPresent(at -> asked.all(earlier.untold(now, at)));
        return asked;
    }

    /** Something else than what was published for the tie. */
    private boolean isChange(Event event, Tie now) {
        return changes(now.start(), start)
                || !courts(event, now).isEmpty() && !courts(event, now).equals(where.courts())
                || now.start().isEmpty()
                        && now.court().isEmpty()
                        && event.order().hadTime(tie);
    }

    private static List<String> courts(Event event, Tie now) {
        return event.order().courts(now);
    }

    private List<DrawFact.RubberTimed> rubbers(Event event, Tie now) {
        return courts(event, now).equals(where.courts()) ? shifted(event, now) : spread(event, now);
    }

    /** What is left of it goes onto its courts in turn; whoever umpires a rubber still does. */
    private List<DrawFact.RubberTimed> spread(Event event, Tie now) {
        if (where.courts().size() < 2) {
            return List.of();
        }
        List<RubberNo> left = event.progress(now).left();
        int width = where.courts().size();
        return IntStream.range(0, left.size())
                .mapToObj(i -> new DrawFact.RubberTimed(
                        tie,
                        left.get(i),
                        start.orElseThrow().plusMinutes((long) (i / width) * where.slotMinutes()),
                        where.courts().get(i % width),
                        Optional.ofNullable(event.order().rubbers(tie).get(left.get(i)))
                                .flatMap(OrderOfPlay.Place::umpires)))
                .toList();
    }

    /** A planned tie that only begins at another time keeps its courts, and its rubbers their distances. */
    private List<DrawFact.RubberTimed> shifted(Event event, Tie now) {
        if (now.start().isEmpty() || start.isEmpty()) {
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
        Saying times = said(start, where.courts());
        List<Fact> facts = new ArrayList<>();
        facts.add(new OfficialFact.NoticeStated(
                number,
                Saying.of("notices.tie").with("tie", tie),
                Optional.of(tie),
                Optional.of(said(now.start(), courts(event, now))),
                Optional.of(earlier.said(times, clubs)),
                Saying.typed(reason.strip()),
                List.copyOf(MayPlay.of(event, tie))));
        clubs.forEach(club -> facts.add(new OfficialFact.NoticeTold(number, club, true)));
        return facts;
    }

    /** As it is printed and shown struck through: <em>10:20, court 3</em>. */
    private static Saying said(Optional<LocalTime> start, List<String> courts) {
        String first = courts.isEmpty() ? "" : courts.get(0);
        String one = first.isEmpty() ? "none" : first.matches("\\d+") ? "numbered" : "named";
        return Saying.of("notices.time")
                .with("time", start.isPresent() ? "yes" : "no")
                .with("start", start.map(LocalTime::toString).orElse(""))
                .with("place", courts.size() > 1 ? "several" : one)
                .with("court", String.join(", ", courts));
    }

    /** The time that somebody else published for the tie meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof DrawFact.TieTimed other && other.tie().equals(tie);
    }
}
