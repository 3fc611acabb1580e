package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.State;

/**
 * The desk: what to do next, which sheets are in, who can be called, how phones join.
 *
 * @param running what is on court, with the one press that stops it
 * @param late clocks that run: since when a side that is not there may be claimed against
 */
public record DeskView(
        DoNext doNext,
        List<Sheets> sheets,
        List<Callable> calls,
        List<Callable> running,
        List<String> late,
        String address,
        String banner,
        List<String> cautions) {

    /** Sheets in or not in for one exchange; the same words for both clubs. */
    public record Sheets(
            String tie, String href, String deadline, String home, State homeState, String away, State awayState) {}

    /** A tie whose sheets are open and that can go to court. */
    public record Callable(String tie, String when, ActionForm form) {}
}
