package tiewright.timetable;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.conditions.TiePlay;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** What of an event is still to be planned. */
final class ProblemReader {
    /** When nobody has said when the event begins. */
    private static final LocalTime USUAL_START = LocalTime.of(9, 0);

    private final Event event;
    private final PlanAsked asked;
    private final List<Tie> open;
    private final List<PlanCourt> courts;

    ProblemReader(Event event, PlanAsked asked) {
        this.event = event;
        this.asked = asked;
        this.open = event.ties().values().stream()
                .filter(tie -> !event.isGone(tie) && !left(tie).isEmpty())
                .toList();
        this.courts = event.courts().values().stream()
                .filter(court -> court.usable() && !asked.lostCourts().contains(court.name()))
                .map(ProblemReader::court)
                .toList();
    }

    private static PlanCourt court(Court court) {
        return new PlanCourt(court.name(), court.from(), court.until());
    }

    PlanProblem problem() {
        PlanProblem wide = pinned(wide(free()));
        return onItsGrid(wide)
                .map(this::pinned)
                .filter(other -> length(other) < length(wide))
                .orElse(wide);
    }

    private PlanProblem free() {
        int slot = asked.slotMinutes().orElseGet(() -> PlanProblem.usualSlot(event, asked.pace()));
        LocalTime starts = event.about().map(SetUpFact.EventDescribed::starts).orElse(USUAL_START);
        LocalTime start = asked.now()
                .filter(now -> Clock.minute(now, Clock.minute(starts)) > Clock.minute(starts))
                .orElse(starts);
        TiePlay play = event.conditions().tiePlay();
        return PlanProblem.free(
                        new Slots(start, slot, event.conditions().restMinutes(), closes()),
                        courts,
                        open.stream().map(this::tie).toList(),
                        Manner.of(play).together(true).umpired(asked.umpires()))
                .with(new NotBefore(asked.lateClubs(), published()));
    }

    /** From the moment on that is asked for, each tie as wide as most were published; no grid is looked for. */
    PlanProblem asPublished() {
        PlanProblem free = free();
        boolean asked = this.asked.courtsPerTie().isPresent() || free.play() == TiePlay.RUBBER_BY_RUBBER;
        Optional<Integer> width = new PublishedWidth(event, open).on(free.courtNames());
        return pinned(
                asked || width.isEmpty()
                        ? wide(free)
                        : free.withCourtsPerTie(Math.max(1, Math.min(courts.size(), width.get()))));
    }

    private PlanProblem pinned(PlanProblem problem) {
        return problem.withPins(new PinReader(event, asked, problem, open).pins());
    }

    /** What people were told; what has begun or was put somewhere by hand is not asked. */
    private Map<TieId, LocalTime> published() {
        return asked.from().earlier()
                ? Map.of()
                : open.stream()
                        .filter(tie -> tie.start().isPresent() && !tie.isInPlay())
                        .filter(tie -> asked.byHand().stream()
                                .noneMatch(pin -> pin.tie().equals(tie.id())))
                        .collect(Collectors.toMap(Tie::id, tie -> tie.start().orElseThrow()));
    }

    /**
     * Slots that begin when most published starts do: else a day on time would begin each tie up to a slot after its start. Empty
     * where the slots from now on are the same.
     */
    private Optional<PlanProblem> onItsGrid(PlanProblem problem) {
        int base = Clock.minute(problem.start());
        int slot = problem.slotMinutes();
        Map<Integer, Long> offsets = problem.notBefore().published().values().stream()
                .map(start -> Clock.minute(start, base) - base)
                .filter(after -> after >= 0)
                .collect(Collectors.groupingBy(after -> after % slot, TreeMap::new, Collectors.counting()));
        return offsets.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .filter(offset -> offset > 0 && asked.byHand().isEmpty())
                .map(offset -> problem.with(
                        new Slots(problem.start().plusMinutes(offset), slot, problem.restMinutes(), problem.closes())));
    }

    /** The venue's closing, or an earlier moment after which every court is closed. */
    private Optional<LocalTime> closes() {
        Optional<LocalTime> venue =
                asked.closes().or(() -> event.about().flatMap(SetUpFact.EventDescribed::venueCloses));
        if (courts.isEmpty() || courts.stream().anyMatch(court -> court.until().isEmpty())) {
            return venue;
        }
        Optional<LocalTime> last =
                courts.stream().flatMap(court -> court.until().stream()).max(Comparator.naturalOrder());
        return Stream.of(venue, last).flatMap(Optional::stream).min(Comparator.naturalOrder());
    }

    private PlanProblem wide(PlanProblem free) {
        if (asked.courtsPerTie().isEmpty() || free.play() == TiePlay.RUBBER_BY_RUBBER) {
            return widest(free, event.conditions().rubbers());
        }
        int most = Math.max(1, Math.min(courts.size(), event.conditions().rubbers()));
        return free.withCourtsPerTie(
                Math.max(1, Math.min(most, asked.courtsPerTie().get())));
    }

    /** With as many courts for each tie as make a first plan shortest; of equal ones the most, so that a tie is over soonest. */
    static PlanProblem widest(PlanProblem free, int rubbers) {
        if (free.play() == TiePlay.RUBBER_BY_RUBBER
                || free.courts().isEmpty()
                || free.ties().isEmpty()) {
            return free.withCourtsPerTie(1);
        }
        PlanProblem best = free.withCourtsPerTie(Math.min(free.courts().size(), rubbers));
        for (int count = best.courtsPerTie() - 1; count >= 1; count--) {
            PlanProblem other = free.withCourtsPerTie(count);
            best = length(other) < length(best) ? other : best;
        }
        return best;
    }

    private static int length(PlanProblem problem) {
        return Starts.plain(new Board(problem)).stream()
                .flatMap(Arrays::stream)
                .mapToInt(Spot::end)
                .max()
                .orElse(Board.NEVER);
    }

    private List<RubberNo> left(Tie tie) {
        return event.progress(tie).left();
    }

    private PlanTie tie(Tie tie) {
        return new PlanTie(
                tie.id(),
                tie.stage(),
                tie.pool(),
                tie.round(),
                tie.club(Side.HOME),
                tie.club(Side.AWAY),
                left(tie),
                oneAtATime(tie),
                sources(tie));
    }

    private boolean oneAtATime(Tie tie) {
        if (!tie.isOpened()) {
            return event.conditions().maxRubbersPerPlayer() > 1;
        }
        Set<PlayerId> seen = new HashSet<>();
        return left(tie).stream()
                .flatMap(rubber -> Optional.ofNullable(tie.opened().get(rubber)).stream())
                .flatMap(opened -> Stream.of(Side.values()).flatMap(side -> opened.pair(side).stream()))
                .flatMap((Pair pair) -> pair.players().stream())
                .anyMatch(player -> !seen.add(player));
    }

    /** The open ties that must be over before the clubs of this one are known. */
    private Set<TieId> sources(Tie tie) {
        Set<TieId> sources = new LinkedHashSet<>();
        for (Side side : Side.values()) {
            Slot slot = tie.slot(side);
            Optional<ClubId> known = slot.club();
            slot.from()
                    .filter(from -> known.isEmpty())
                    .ifPresent(from -> open.stream()
                            .filter(other -> feeds(other, from))
                            .map(Tie::id)
                            .forEach(sources::add));
        }
        return sources;
    }

    private static boolean feeds(Tie other, SlotSource from) {
        return from.kind() == SlotSource.Kind.POOL_PLACE
                ? other.pool().filter(from.of()::equals).isPresent()
                : other.id().code().equals(from.of());
    }
}
