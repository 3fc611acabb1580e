package tiewright.lineup.club;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.Belief;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.Squad;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.TieRules;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.rating.Basis;
import tiewright.rating.Evidence;
import tiewright.rating.Strengths;
import tiewright.sheet.Eligibility;

/**
 * What the advice to one captain about one tie is made from: what is public in the event, and the notes of that captain's own
 * club.
 *
 * <p>Nothing of a sealed sheet can come in, for the event holds none; of the notes only those about the own squad's pairs and
 * wishes are used, so that chemistry and wishes of another club change nothing even if they were handed over.
 *
 * @param ourSheet our sheet of this tie, once it is opened
 * @param theirSheet theirs, once it is opened
 * @param theirEarlier what they named in ties that are open, this one apart
 * @param hurt our players who retired in a rubber today: ask before naming, nobody is barred
 * @param basis what the strengths rest on besides the notes
 */
public record LineupInputs(
        LineupProblem problem,
        Optional<Sheet> ourSheet,
        Optional<Sheet> theirSheet,
        List<Sheet> theirEarlier,
        Set<PlayerId> hurt,
        Basis basis) {
    public LineupInputs {
        theirEarlier = List.copyOf(theirEarlier);
        hurt = Set.copyOf(hurt);
    }

    /**
     * Gathers them.
     *
     * @param knows the club that asks, and what it knows
     * @param against what to expect of the other club's sheet before it is open
     * @param seed for drawing orders where there are too many to go through
     * @throws IllegalArgumentException if there is no such tie, or the club does not play in it
     */
    public static LineupInputs of(Event event, TieId id, ClubKnows knows, LineupProblem.Against against, long seed) {
        ClubId club = knows.club();
        Tie tie = event.tie(id).orElseThrow(() -> new IllegalArgumentException("there is no tie " + id));
        Side side = tie.sideOf(club).orElseThrow(() -> new IllegalArgumentException(club + " does not play in " + id));
        Squad ours = squad(event, tie, club);
        Squad theirs = rival(event, tie, side);
        OwnNotes notes = new OwnNotes(event, tie, club, knows.notes());
        Evidence evidence = Evidence.of(event, knows.earlier(), notes.ageing());
        LineupProblem problem = LineupProblem.of(
                        TieRules.of(event.conditions()),
                        ours,
                        theirs,
                        knows.fitting().fit(notes.prior(), evidence),
                        against,
                        seed)
                .withWishes(notes.wishes())
                .after(DayLoads.of(event, tie, Optional.empty(), Freshness.Cost.USUAL))
                .promising(promised(event, tie, club, knows.notes()));
        return new LineupInputs(
                knows.stated(problem, against, seed),
                opened(tie, side),
                opened(tie, side.other()),
                earlier(event, tie, side.other()),
                hurt(event, club),
                evidence.basis());
    }

    /** The other club, empty while nobody knows which. */
    private static Squad rival(Event event, Tie tie, Side side) {
        return tie.club(side.other()).map(other -> squad(event, tie, other)).orElse(new Squad(List.of()));
    }

    private static PlayingTime promised(Event event, Tie tie, ClubId club, List<PrivateNote> own) {
        ClubDay day = new ClubDay(event, club, own);
        ClubDay.Had had = day.had(Optional.of(tie.id()));
        Map<PlayerId, Integer> rubbers = new HashMap<>();
        event.squad(club).forEach(player -> rubbers.put(player.id(), had.all(player.id())));
        List<TiePlaces> others = day.ahead().stream()
                .filter(other -> !other.id().equals(tie.id()))
                .map(day::granted)
                .toList();
        return new PlayingTime(0, OwnNotes.promised(event, club, own), rubbers, others);
    }

    /** With so many rubbers for everybody by the end of this tie, counting those of today, beside what single players are promised. */
    public LineupInputs promising(int floor) {
        return asking(asked -> asked.promising(asked.purpose().playingTime().withFloor(floor)));
    }

    /** With those of our squad who are marked as hurt or ill, besides who retired. */
    public LineupInputs marking(Set<PlayerId> marked) {
        Set<PlayerId> all = new LinkedHashSet<>(hurt);
        marked.stream()
                .filter(player -> problem.ours().member(player).isPresent())
                .forEach(all::add);
        return new LineupInputs(problem, ourSheet, theirSheet, theirEarlier, all, basis);
    }

    /** The same question put otherwise: for another aim, with other promises, with everybody as tired as is known elsewhere. */
    public LineupInputs asking(UnaryOperator<LineupProblem> otherwise) {
        return new LineupInputs(otherwise.apply(problem), ourSheet, theirSheet, theirEarlier, hurt, basis);
    }

    /** The tie as it lies after the opening: against the sheet that the other club named. */
    public Optional<LineupProblem> afterOpening() {
        return theirSheet.map(sheet -> problem.expecting(Belief.surely(sheet)));
    }

    /** Who should play the decider of this tie? Made with the opened sheets where there are any. */
    public DeciderAdvice decider() {
        return DeciderAdvice.of(problem, ourSheet, theirSheet, hurt);
    }

    static double meanForm(Strengths strengths, Squad squad) {
        return squad.present().stream()
                .mapToDouble(member -> strengths.meanForm(member.id()))
                .average()
                .orElse(0);
    }

    private static Squad squad(Event event, Tie tie, ClubId club) {
        return new Squad(event.squad(club).stream()
                .map(player -> new Squad.Member(
                        player.id(),
                        player.rank(),
                        isHere(player, tie) && Eligibility.mayPlay(event, tie, player.id())))
                .toList());
    }

    /** Not marked absent by the desk, and not away by the squad list at the published start. */
    static boolean isHere(Player player, Tie tie) {
        boolean late = tie.start().isPresent()
                && player.from().filter(tie.start().get()::isBefore).isPresent();
        boolean gone = tie.start().isPresent()
                && player.until()
                        .filter(until -> !tie.start().get().isBefore(until))
                        .isPresent();
        return !player.absent() && !late && !gone;
    }

    private static Optional<Sheet> opened(Tie tie, Side side) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        tie.opened().forEach((rubber, opened) -> {
            if (!rubber.isDecider()) {
                pairs.put(rubber, opened.pair(side));
            }
        });
        return pairs.isEmpty() ? Optional.empty() : Optional.of(new Sheet(pairs));
    }

    private static List<Sheet> earlier(Event event, Tie asked, Side side) {
        return asked.club(side).stream()
                .flatMap(club -> event.ties().values().stream()
                        .filter(tie -> !tie.id().equals(asked.id()))
                        .flatMap(tie -> tie.sideOf(club).flatMap(own -> opened(tie, own)).stream()))
                .toList();
    }

    private static Set<PlayerId> hurt(Event event, ClubId club) {
        List<PlayerId> retired = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            tie.sideOf(club)
                    .ifPresent(side -> tie.opened().forEach((rubber, opened) -> {
                        How stopped = side == Side.HOME ? How.RETIRED_HOME : How.RETIRED_AWAY;
                        if (tie.card(rubber)
                                .score(rubber)
                                .filter(score -> score.how() == stopped)
                                .isPresent()) {
                            opened.pair(side).ifPresent(pair -> retired.addAll(pair.players()));
                        }
                    }));
        }
        return new LinkedHashSet<>(retired);
    }
}
