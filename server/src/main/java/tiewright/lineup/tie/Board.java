package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.Squad;
import tiewright.lineup.TieRules;
import tiewright.lineup.decider.LevelWorth;

/**
 * A problem laid out in numbers for fast counting: players who are present, their pairs, and the chance of each pair against
 * each pair that the other club may send. A line is a sheet as pair numbers, rubber 1 first, {@link #EMPTY} where nobody
 * stands.
 */
public final class Board {
    public static final int EMPTY = -1;

    private final LineupProblem problem;
    private final List<PlayerId> players;
    private final Seating seating;
    private final List<Pair> pairs = new ArrayList<>();
    private final Map<Pair, Integer> pairNumbers = new HashMap<>();
    private final int[][] pairTable;
    private final Meetings known;
    private final BoardTables tables;
    private final LevelWorth levelWorth;
    private final TieWorth worth;
    private final Owed owed;

    public Board(LineupProblem problem) {
        this(problem, new Meetings(problem), Optional.empty());
    }

    /** @param whole where more of our players are here, and everything that does not hang on who is */
    private Board(LineupProblem problem, Meetings known, Optional<Board> whole) {
        this.problem = problem;
        this.known = known;
        this.players = problem.ours().present().stream().map(Squad.Member::id).toList();
        this.seating = new Seating(problem);
        this.pairTable = new int[players.size()][players.size()];
        for (int i = 0; i < players.size(); i++) {
            for (int j = i + 1; j < players.size(); j++) {
                pairTable[i][j] = pairTable[j][i] = pairs.size();
                pairNumbers.put(Pair.of(players.get(i), players.get(j)), pairs.size());
                pairs.add(Pair.of(players.get(i), players.get(j)));
            }
        }
        this.tables = whole.map(more -> more.tables.rows(
                        pairs.stream().mapToInt(more.pairNumbers::get).toArray()))
                .orElseGet(() -> BoardTables.of(problem, pairs, known));
        this.levelWorth = whole.map(more -> more.levelWorth.where(problem, pairs))
                .orElseGet(() -> new LevelWorth(problem, known, pairs));
        this.worth = new TieWorth(this);
        this.owed = new Owed(
                problem.purpose().playingTime(), players, pairs, Math.min(rules().mostPerPlayer(), seating.count()));
    }

    /** The same tie where of our players only these are here: pairs that can still meet do so with the same chances. */
    Board withOnly(Predicate<PlayerId> here) {
        return new Board(problem.withOnly(here), known, Optional.of(this));
    }

    /** What these pairs would teach, in bits, mean over what the other club may send; 0 unless that is wanted. */
    public double learnt(int[] line) {
        double sum = 0;
        double[][] bits = tables.bits();
        int[][] expected = tables.expected();
        for (int i = 0; bits.length > 0 && i < expected.length; i++) {
            for (int rubber = 0; rubber < line.length; rubber++) {
                boolean played = line[rubber] != EMPTY && expected[i][rubber] != EMPTY;
                sum += played ? weights()[i] * bits[line[rubber]][expected[i][rubber]] : 0;
            }
        }
        return sum;
    }

    /** Our chance in each rubber: one with a pair on one side only is given away, one with none is void. */
    public static double[] rubbers(int[] ours, int[] theirs, double[][] table) {
        double[] rubbers = new double[ours.length];
        for (int rubber = 0; rubber < ours.length; rubber++) {
            boolean missing = theirs[rubber] == EMPTY;
            if (ours[rubber] != EMPTY) {
                rubbers[rubber] = missing ? 1 : table[ours[rubber]][theirs[rubber]];
            } else {
                rubbers[rubber] = missing ? EndWorths.VOID : 0;
            }
        }
        return rubbers;
    }

    /** The same with their doubt. */
    DrawnChance[] rubbers(int[] ours, int[] theirs) {
        return TieMean.rubbers(ours, theirs, tables.meetings());
    }

    /** By how much our chance in a rubber grows for each rally in 100 that our pair is stronger. */
    public double rise(int pair, int opponent) {
        return known.rise(pairs.get(pair), opponents().get(opponent));
    }

    DrawnChance chance(int pair, int opponent) {
        return tables.meetings()[pair][opponent];
    }

    /** Our mean chance in one rubber; empty if it may not be played. */
    Optional<Double> rubberChance(int[] line, int rubber) {
        double sum = 0;
        int[][] expected = tables.expected();
        for (int i = 0; i < expected.length; i++) {
            if (line[rubber] == EMPTY && expected[i][rubber] == EMPTY) {
                return Optional.empty();
            }
            if (line[rubber] != EMPTY) {
                sum += weights()[i] * (expected[i][rubber] == EMPTY ? 1 : chances()[line[rubber]][expected[i][rubber]]);
            }
        }
        return Optional.of(Math.min(1, sum));
    }

    /** What is left of the promises of playing time after a sheet. */
    Owed owed() {
        return owed;
    }

    /** Aims that are equal to a tenth of a point count as equal, so that what ranks below them can decide. */
    boolean isCoarse() {
        return owed.binds() || problem.purpose().learning();
    }

    public Sheet sheet(int[] line) {
        return Sheet.of(Arrays.stream(line)
                .mapToObj(pair -> pair == EMPTY ? Optional.<Pair>empty() : Optional.of(pairs.get(pair)))
                .toList());
    }

    /** The numbers of a legal sheet. */
    public int[] line(Sheet sheet) {
        int[] line = new int[rules().rubbers()];
        if (sheet.pairs().keySet().stream().anyMatch(rubber -> rubber.isDecider() || rubber.number() > line.length)) {
            throw new IllegalArgumentException("the tie has " + line.length + " rubbers, not "
                    + sheet.pairs().keySet());
        }
        Arrays.setAll(
                line,
                rubber -> sheet.pair(RubberNo.of(rubber + 1)).map(this::number).orElse(EMPTY));
        return line;
    }

    private int number(Pair pair) {
        Integer number = pairNumbers.get(pair);
        if (number == null) {
            throw new IllegalArgumentException("these two cannot play as a pair: " + pair);
        }
        return number;
    }

    public LineupProblem problem() {
        return problem;
    }

    TieRules rules() {
        return problem.rules();
    }

    public List<PlayerId> players() {
        return players;
    }

    public List<Pair> pairs() {
        return pairs;
    }

    /** The number of a pair, from the numbers of two different players. */
    int pairNumber(int one, int other) {
        return pairTable[one][other];
    }

    public List<Pair> opponents() {
        return tables.opponents();
    }

    public int[][] expectedLines() {
        return tables.expected();
    }

    public double[] weights() {
        return tables.weights();
    }

    double[][] chances() {
        return tables.chances();
    }

    LevelWorth levelWorth() {
        return levelWorth;
    }

    public TieWorth worth() {
        return worth;
    }

    /** False: against an unknown order every order of the same pairs is worth the same. */
    public boolean orderMatters() {
        return !problem.belief().anyOrder() || !rules().isOrderFree();
    }

    /** Which rubbers a sheet fills, and who may stand where. */
    public Seating seating() {
        return seating;
    }
}
