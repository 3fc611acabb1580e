package tiewright.film;

import tiewright.event.PlayerId;
import tiewright.scoring.Court;
import tiewright.scoring.GameState;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** The court before a rally: the score, who serves to whom, who stands where. */
public record Situation(Start start, GameState state) {
    public PlayerId server() {
        return start.at(state.serving(), state.server());
    }

    public PlayerId receiver() {
        return start.at(state.serving().other(), state.receiver());
    }

    public SideNo serving() {
        return state.serving();
    }

    /** 1 or 2 in side-out, always 1 in rally scoring. */
    public int serverNumber() {
        return state.serverNumber();
    }

    /** Side one first. */
    public Score score() {
        return state.score();
    }

    /** The score as it is called before the serve. */
    public String call() {
        return state.call();
    }

    /** The half from which the serve comes, as the server sees it; it goes to the same half of the other side. */
    public Court servesFrom() {
        return state.servesFrom();
    }

    /** Who of a side stands in a half, as the side sees it facing the net. */
    public PlayerId at(SideNo side, Court half) {
        boolean crossed = side == SideNo.ONE ? state.crossedOne() : state.crossedTwo();
        return start.at(side, crossed ? half.other() : half);
    }
}
