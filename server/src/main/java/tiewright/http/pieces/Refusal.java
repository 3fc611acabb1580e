package tiewright.http.pieces;

import java.util.List;

/** Why something was not done, all reasons at once; it takes the focus and links to the fields. */
public record Refusal(String title, List<Problem> problems) {

    /** Nothing was refused: nothing is shown. */
    public static final Refusal NONE = new Refusal("", List.of());

    public Refusal {
        problems = List.copyOf(problems);
    }

    /**
     * One thing that is wrong and what to do.
     *
     * @param fieldId id of the field to go to, empty if there is none
     */
    public record Problem(String sentence, String fieldId) {}
}
