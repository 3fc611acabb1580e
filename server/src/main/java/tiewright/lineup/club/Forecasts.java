package tiewright.lineup.club;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.Ranking;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Rating;
import tiewright.rating.Strengths;

/**
 * What the advice to one club expects at an opening: of the tie with the sheet that was named, against any order of theirs; and
 * of each rubber, both pairs known. To be made as the sheets open, before any card.
 */
public final class Forecasts {
    private final LineupInputs inputs;
    private final Tie tie;
    private final ClubId club;
    private final Strengths ownRatings;

    private Forecasts(LineupInputs inputs, Tie tie, ClubId club, Strengths ownRatings) {
        this.inputs = inputs;
        this.tie = tie;
        this.club = club;
        this.ownRatings = ownRatings;
    }

    /**
     * For the rubbers of the tie, or once it is open, the decider.
     *
     * @return nothing where the club named nobody, or a player who is no longer in the squad
     */
    public static List<Forecast> of(Event event, Tie tie, ClubKnows knows, boolean decider) {
        LineupInputs inputs = LineupInputs.of(event, tie.id(), knows, LineupProblem.Against.UNKNOWN, 1);
        Strengths ratings = Rating.fit(Prior.of(knows.notes()), Evidence.of(List.of()));
        Forecasts forecasts = new Forecasts(inputs, tie, knows.club(), ratings);
        return decider ? forecasts.rubbers(true) : forecasts.all();
    }

    private List<Forecast> all() {
        List<Forecast> forecasts = new ArrayList<>();
        inputs.ourSheet().flatMap(this::whole).ifPresent(forecasts::add);
        forecasts.addAll(rubbers(false));
        return forecasts;
    }

    private Optional<Forecast> whole(Sheet sheet) {
        boolean all = sheet.players().stream().allMatch(inputs.problem().ours()::isPresent);
        if (!all || sheet.players().isEmpty()) {
            return Optional.empty();
        }
        Board board = new Board(inputs.problem().promising(PlayingTime.NOTHING_PROMISED));
        double worth = board.worth().of(board.line(sheet));
        double best = Ranking.of(board, board.orderMatters(), 1).best().stream()
                .mapToDouble(one -> board.worth().of(one.line()))
                .max()
                .orElse(worth);
        double edge = LineupInputs.meanForm(ownRatings, inputs.problem().ours())
                - LineupInputs.meanForm(ownRatings, inputs.problem().theirs());
        return Optional.of(new Forecast(
                tie.id(), club, Optional.empty(), worth, (int) Math.signum(edge), Math.max(0, best - worth)));
    }

    private List<Forecast> rubbers(boolean decider) {
        Side side = tie.sideOf(club).orElseThrow();
        List<Forecast> forecasts = new ArrayList<>();
        tie.opened().forEach((rubber, opened) -> {
            Optional<Pair> our = opened.pair(side);
            Optional<Pair> their = opened.pair(side.other());
            if (rubber.isDecider() == decider && our.isPresent() && their.isPresent()) {
                forecasts.add(rubber(rubber, our.get(), their.get()));
            }
        });
        return forecasts;
    }

    private Forecast rubber(RubberNo rubber, Pair our, Pair their) {
        Meetings meetings = new Meetings(inputs.problem(), List.of(our, their));
        DrawnChance chance = rubber.isDecider() ? meetings.decider(our, their) : meetings.rubber(our, their);
        return new Forecast(
                tie.id(),
                club,
                Optional.of(rubber),
                chance.mean(),
                (int) Math.signum(ownRatings.edge(our, their).mean()),
                0);
    }
}
