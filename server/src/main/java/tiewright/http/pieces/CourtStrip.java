package tiewright.http.pieces;

import java.util.List;

/** What is on each court now and what comes next. */
public record CourtStrip(List<Court> courts) {

    public CourtStrip {
        courts = List.copyOf(courts);
    }

    /**
     * @param label the word before the number for a screen reader ("Court")
     * @param since when it began or was called, worded
     */
    public record Court(String label, String number, State state, String now, String since, String next) {}
}
