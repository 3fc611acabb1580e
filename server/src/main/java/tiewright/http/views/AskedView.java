package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;

/**
 * A page that answers a question and keeps nothing.
 *
 * @param intro sentences before the question
 * @param ask what can be asked; empty where the answer is always the same
 * @param covers the club alone reads it, so that one press covers the answer from neighbours
 */
public record AskedView(
        Refusal refusal,
        NavLink back,
        List<String> intro,
        Optional<Ask> ask,
        boolean covers,
        List<WorkView.Section> answer) {
    public AskedView {
        intro = List.copyOf(intro);
        answer = List.copyOf(answer);
    }

    /** @param path to which the fields are added */
    public record Ask(String path, List<FormField> fields, Button button) {
        public Ask {
            fields = List.copyOf(fields);
        }
    }
}
