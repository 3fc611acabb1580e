package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.TiePlay;
import tiewright.event.RubberNo;

/** What a problem has to place: whole ties where their rubbers are played side by side or where they are pinned, else rubbers. */
final class Pieces {
    private final PlanProblem problem;
    private final List<Piece> pieces = new ArrayList<>();

    private Pieces(PlanProblem problem) {
        this.problem = problem;
    }

    /** In the order of the ties; each has its place in the list as its number. */
    static List<Piece> of(PlanProblem problem) {
        Pieces all = new Pieces(problem);
        for (int tie = 0; tie < problem.ties().size(); tie++) {
            all.addPieces(tie);
        }
        return all.pieces;
    }

    private void addPieces(int number) {
        PlanTie tie = problem.ties().get(number);
        List<Pin> pins = problem.pins().stream()
                .filter(pin -> pin.tie().equals(tie.id()))
                .toList();
        Optional<Pin> whole =
                pins.stream().filter(pin -> pin.rubber().isEmpty()).findFirst();
        if (whole.isPresent()) {
            add(number, tie.rubbers(), whole.get().courts().size(), whole);
        } else if (problem.play() == TiePlay.SIDE_BY_SIDE) {
            add(number, tie.rubbers(), width(tie), Optional.empty());
        } else {
            for (RubberNo rubber : tie.rubbers()) {
                add(
                        number,
                        List.of(rubber),
                        1,
                        pins.stream()
                                .filter(pin -> pin.rubber().get().equals(rubber))
                                .findFirst());
            }
        }
    }

    /** Courts that it takes at once. */
    private int width(PlanTie tie) {
        return tie.oneAtATime()
                ? 1
                : Math.min(problem.courtsPerTie(), tie.rubbers().size());
    }

    private void add(int tie, List<RubberNo> rubbers, int width, Optional<Pin> pin) {
        int minutes = pin.map(Pin::minutes).orElse(Clock.roundedUp(rubbers.size(), width) * problem.slotMinutes());
        pieces.add(new Piece(pieces.size(), tie, rubbers, width, minutes, pin));
    }
}
