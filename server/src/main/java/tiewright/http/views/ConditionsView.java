package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Refusal;

/**
 * The conditions of play on one A4 page.
 *
 * @param standing version, preset and whether they are frozen, in a sentence
 * @param opening who opens sheets when an organiser plays, empty while nothing was chosen
 * @param tick what the captain is asked to tick; empty for everybody else, and once it is done
 * @param ticked what the captain or the officials know about who has read what
 */
public record ConditionsView(
        Refusal refusal,
        String standing,
        String opening,
        List<Group> groups,
        Optional<Tick> tick,
        List<String> ticked) {
    public ConditionsView {
        groups = List.copyOf(groups);
        ticked = List.copyOf(ticked);
    }

    public record Group(String heading, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param differs it is not what the preset says
     * @param noted an official applies it, not the software
     */
    public record Line(String name, String value, boolean differs, boolean noted) {}

    public record Tick(int version, String words) {}
}
