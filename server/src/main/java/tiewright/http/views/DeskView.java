package tiewright.http.views;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.State;
import tiewright.picture.DayPicture;

/**
 * The desk: every court with its one press, what to do next, which sheets are in, how the day runs, how phones join.
 *
 * @param late clocks that run: since when a side that is not there may be claimed against
 */
public record DeskView(
        List<Spot> courts,
        DoNext doNext,
        List<Sheets> sheets,
        Run run,
        List<String> late,
        Here here,
        String banner,
        List<String> cautions) {
    public DeskView {
        courts = List.copyOf(courts);
        sheets = List.copyOf(sheets);
        late = List.copyOf(late);
        cautions = List.copyOf(cautions);
    }

    /**
     * This desk.
     *
     * @param address where phones reach the service
     * @param sitting who sits here now, as said at the last hand-over; may be empty
     * @param copies how old the newest copy is
     */
    public record Here(String address, String sitting, State copies) {}

    /** How a court looks: dashed while free, yellow while it needs a person. */
    public enum Look {
        FREE("free"),
        ON("on"),
        HELD("held"),
        OUT("out");

        private final String code;

        Look(String code) {
            this.code = code;
        }

        /** The name used in the stylesheet. */
        public String code() {
            return code;
        }
    }

    /**
     * One court.
     *
     * @param href where everything else is done that can be done with this court
     * @param since since when it stands so, where that is counted in minutes
     */
    public record Spot(
            String court,
            String href,
            Look look,
            String state,
            Optional<Instant> since,
            Said said,
            List<Press> presses) {
        public Spot {
            presses = List.copyOf(presses);
        }
    }

    /**
     * What is on a court, in words.
     *
     * @param what the tie and rubber
     * @param who the pairs, or what is waited for
     * @param sides the clubs whose pairs are waited for
     */
    public record Said(String what, List<String> who, List<SideIn> sides) {
        public Said {
            who = List.copyOf(who);
            sides = List.copyOf(sides);
        }
    }

    public record SideIn(String club, State state) {}

    /**
     * What can be pressed: a way to a page, or a form that does it at once.
     *
     * @param whole the words for somebody who does not see beside what they stand
     * @param sent what the form sends beside its key
     */
    public record Press(String words, String whole, String path, boolean isWay, List<HiddenField> sent) {
        public Press {
            sent = List.copyOf(sent);
        }

        public static Press way(String words, String whole, String path) {
            return new Press(words, whole, path, true, List.of());
        }

        public static Press form(String words, String whole, String path, List<HiddenField> sent) {
            return new Press(words, whole, path, false, sent);
        }
    }

    /** The sheets that open at one time. */
    public record Sheets(String id, String heading, List<Line> lines) {
        public Sheets {
            lines = List.copyOf(lines);
        }
    }

    /** One exchange; the same words for both clubs. */
    public record Line(String court, String href, String tie, SideIn home, SideIn away) {}

    /**
     * How the day runs.
     *
     * @param words in a sentence
     * @param goesOn ends a stop of all play
     */
    public record Run(String words, DayPicture picture, Optional<Press> goesOn) {}
}
