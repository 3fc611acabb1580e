package tiewright.scoring;

import java.util.Optional;

/**
 * A doubles game before a rally: the points, who serves, from where, to whom.
 *
 * <p>A player is named by side and by the half of the court where he or she stood when the game began. Players of a side
 * change courts when they win a point on their own serve and at no other time. So in side-out the one who began on the
 * right stands right while the own points are even (USA Pickleball rule summary); in rally scoring the server stands right
 * on even and left on odd own points, and whoever of the side stands there when it wins the serve is the server (as in BWF
 * Law 11, from memory).
 *
 * @param serverNumber 1 or 2 in side-out, where both players of a side serve in turn; always 1 in rally scoring
 * @param server the half where the serving player stood when the game began
 * @param crossedOne side one's players stand in the other halves than at the beginning
 */
public record GameState(
        Format format,
        Score score,
        SideNo serving,
        int serverNumber,
        Court server,
        boolean crossedOne,
        boolean crossedTwo) {

    public GameState {
        int servers = ServeOrder.doubles(format).turns() / 2;
        if (serverNumber < 1 || serverNumber > servers) {
            throw new IllegalArgumentException(
                    "a server of " + format.code() + " is 1 to " + servers + ", not " + serverNumber);
        }
    }

    /** The game before its first rally. In side-out the first side has one server only, called 0-0-2. */
    public static GameState start(Format format, SideNo first) {
        ServeOrder order = ServeOrder.doubles(format);
        return new GameState(
                format, new Score(0, 0), first, order.server(order.start(first)), Court.RIGHT, false, false);
    }

    /**
     * The game after one more rally.
     *
     * @throws IllegalStateException if the game is over
     */
    public GameState after(SideNo rallyWinner) {
        if (isOver()) {
            throw new IllegalStateException("the game is over at " + score + ", no rally can follow");
        }
        return rallyWinner == serving ? serverWins() : receiverWins();
    }

    private GameState serverWins() {
        boolean one = serving == SideNo.ONE;
        return new GameState(
                format, plusOne(serving), serving, serverNumber, server, crossedOne ^ one, crossedTwo ^ !one);
    }

    private GameState receiverWins() {
        ServeOrder order = ServeOrder.doubles(format);
        int turn = order.turn(serving, serverNumber);
        int next = order.next(turn);
        SideNo nextSide = order.side(next);
        boolean scores = order.receiverScores(score.home(), score.away(), turn);
        Score points = scores ? plusOne(serving.other()) : score;
        Court nextServer = nextSide == serving ? server.other() : opener(nextSide, points);
        return new GameState(format, points, nextSide, order.server(next), nextServer, crossedOne, crossedTwo);
    }

    /** The player who serves first when a side gets the serve. */
    private Court opener(SideNo side, Score points) {
        Court from = format.kind() == Format.Kind.SIDE_OUT ? Court.RIGHT : Court.ofParity(side.pointsIn(points));
        return crossed(side) ? from.other() : from;
    }

    private Score plusOne(SideNo side) {
        return side.score(side.pointsIn(score) + 1, side.other().pointsIn(score));
    }

    private boolean crossed(SideNo side) {
        return side == SideNo.ONE ? crossedOne : crossedTwo;
    }

    /** The half from which the next serve comes; it goes to the same half of the receiving side, across the court. */
    public Court servesFrom() {
        return crossed(serving) ? server.other() : server;
    }

    /** The half where the receiving player stood when the game began. */
    public Court receiver() {
        return crossed(serving.other()) ? servesFrom().other() : servesFrom();
    }

    public boolean isOver() {
        return format.isOver(score);
    }

    public Optional<SideNo> winner() {
        return format.winner(score);
    }

    /** The score as it is called: the server's points, the other side's, and in side-out the server number. */
    public String call() {
        String points = serving.pointsIn(score) + "-" + serving.other().pointsIn(score);
        return format.kind() == Format.Kind.SIDE_OUT ? points + "-" + serverNumber : points;
    }
}
