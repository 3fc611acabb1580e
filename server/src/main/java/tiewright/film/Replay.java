package tiewright.film;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.scoring.GameState;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * A filmed game rally by rally: the server, the receiver, the halves and the score follow from the start and from who won each
 * rally.
 *
 * <p>A rally that is played again changes nothing. Who won an unsure rally is never guessed: side one or side two may have won it,
 * or it was played again, and every such course of the game is followed. A noted server, a rally that follows and the score on the card
 * rule courses out. What is the same on all courses left is known.
 *
 * <p>A noted server who cannot have served on any course, and a rally after the end of the game, are impossible. The points
 * go on by who won the rallies; after the end nothing counts.
 */
public final class Replay {
    private final Start start;
    private final List<Set<GameState>> states = new ArrayList<>();
    private final List<RallyNote> notes = new ArrayList<>();
    private final List<Boolean> played = new ArrayList<>();
    private final List<GameState> seenBefore = new ArrayList<>();
    private Optional<Impossible> impossible = Optional.empty();
    private GameState seen;

    private Replay(Start start) {
        this.start = start;
        this.seen = start.state();
        states.add(Set.of(seen));
    }

    /** The game as far as it is noted. */
    public static Replay of(Start start, List<RallyNote> rallies) {
        Replay replay = new Replay(start);
        rallies.forEach(replay::add);
        return replay;
    }

    /** The same when it is known how it ended; a score to which no course leads changes nothing. */
    public static Replay of(Start start, List<RallyNote> rallies, Score end) {
        return of(start, rallies, end::equals);
    }

    static Replay of(Start start, List<RallyNote> rallies, Predicate<Score> end) {
        Replay replay = of(start, rallies);
        replay.endedAt(end);
        return replay;
    }

    private void add(RallyNote note) {
        Set<GameState> open = open();
        played.add(!open.isEmpty());
        notes.add(note);
        if (open.isEmpty()) {
            fault(Impossible.Kind.AFTER_END, note);
            seenBefore.add(seen);
            states.add(now());
            return;
        }
        Set<GameState> fitting = fitting(open, note);
        if (fitting.isEmpty()) {
            fault(Impossible.Kind.OTHER_SERVER, note);
        }
        Set<GameState> before = fitting.isEmpty() ? open : fitting;
        states.set(states.size() - 1, before);
        seen = before.contains(seen) ? seen : before.iterator().next();
        seenBefore.add(seen);
        seen = winner(note).map(seen::after).orElse(seen);
        states.add(before.stream()
                .flatMap(state -> after(state, note))
                .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    /** The states of those open in which the noted server serves; all where none was noted. */
    private Set<GameState> fitting(Set<GameState> open, RallyNote note) {
        return note.server().isEmpty()
                ? open
                : open.stream()
                        .filter(state -> note.server().get().equals(new Situation(start, state).server()))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Set<GameState> open() {
        return now().stream().filter(state -> !state.isOver()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Set<GameState> now() {
        return states.get(states.size() - 1);
    }

    private Stream<GameState> after(GameState state, RallyNote note) {
        if (note.ending() == Ending.UNSURE) {
            return Stream.of(state, state.after(SideNo.ONE), state.after(SideNo.TWO));
        }
        return Stream.of(winner(note).map(state::after).orElse(state));
    }

    private Optional<SideNo> winner(RallyNote note) {
        return note.player().flatMap(player -> note.ending().winner(start.side(player)));
    }

    private void fault(Impossible.Kind kind, RallyNote note) {
        if (impossible.isEmpty()) {
            Optional<GameState> only = now().size() == 1 ? now().stream().findFirst() : Optional.empty();
            boolean isServer = kind == Impossible.Kind.OTHER_SERVER;
            impossible = Optional.of(new Impossible(
                    kind,
                    note.number(),
                    seen.score(),
                    isServer ? note.server() : Optional.empty(),
                    isServer ? only.map(state -> new Situation(start, state).server()) : Optional.empty()));
        }
    }

    /** Keeps the courses that lead there, if any does. */
    private void endedAt(Predicate<Score> end) {
        Set<GameState> left = now().stream()
                .filter(state -> end.test(state.score()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (left.isEmpty()) {
            return;
        }
        states.set(states.size() - 1, left);
        for (int i = notes.size() - 1; i >= 0; i--) {
            if (played.get(i)) {
                RallyNote note = notes.get(i);
                Set<GameState> next = left;
                left = states.get(i).stream()
                        .filter(state -> after(state, note).anyMatch(next::contains))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
                states.set(i, left);
            }
        }
        seen = now().contains(seen) ? seen : now().iterator().next();
    }

    /** The rallies in the order in which they were played. */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            Set<Situation> before = played.get(i) ? situations(states.get(i)) : Set.of();
            steps.add(new Step(
                    notes.get(i), start, before, new Situation(start, seenBefore.get(i)), winner(notes.get(i))));
        }
        return List.copyOf(steps);
    }

    private Set<Situation> situations(Set<GameState> of) {
        return of.stream().map(state -> new Situation(start, state)).collect(Collectors.toSet());
    }

    /** How the court can stand now: one way unless a rally was unsure. The game may be over. */
    public Set<Situation> situations() {
        return situations(now());
    }

    /** How the court stands before the next rally; empty if the game is over, or if that is not known after an unsure rally. */
    public Optional<Situation> next() {
        return now().size() == 1 ? situations(open()).stream().findFirst() : Optional.empty();
    }

    /** The points that the rallies give. After unsure rallies those that somebody was seen to win, if no more is known. */
    public Score score() {
        Set<Score> scores = scores();
        return scores.size() == 1 ? scores.iterator().next() : seen.score();
    }

    /** Every score to which the rallies can lead. */
    public Set<Score> scores() {
        return now().stream().map(GameState::score).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The game is over on every course. */
    public boolean isOver() {
        return open().isEmpty();
    }

    public Optional<Impossible> firstImpossible() {
        return impossible;
    }
}
