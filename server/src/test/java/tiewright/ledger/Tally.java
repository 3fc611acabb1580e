package tiewright.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import tiewright.event.Recorded;

/** What was found after a process was cut off, beside what it had acknowledged; counted over many of one kind. */
final class Tally {
    private int cuts;
    private int acknowledged;
    private int lost;
    private int doubled;
    private int cutsWithLoss;
    private final List<String> wrong = new ArrayList<>();

    int acknowledged() {
        return acknowledged;
    }

    List<String> wrong() {
        return wrong;
    }

    boolean isClean() {
        return lost == 0 && doubled == 0 && wrong.isEmpty();
    }

    /** Looks for all that was acknowledged, for steps that count twice, and for pairs of sheets and notes by half. */
    void look(Ledger ledger, List<Appender.Acknowledged> answers) {
        cuts++;
        acknowledged += answers.size();
        List<Integer> steps = Steps.in(ledger);
        int missing =
                (int) answers.stream().filter(answer -> !isKept(ledger, answer)).count();
        lost += missing;
        cutsWithLoss += missing == 0 ? 0 : 1;
        doubled += steps.size() - (int) steps.stream().distinct().count();
        if (!steps.equals(IntStream.range(0, steps.size()).boxed().toList())) {
            wrong.add("steps are missing in the middle");
        }
        if (!againIsTheSame(ledger, steps.size() - 1)) {
            doubled++;
        }
        wrong.addAll(Steps.wrong(ledger, steps.size()));
    }

    private static boolean isKept(Ledger ledger, Appender.Acknowledged answer) {
        List<Recorded> facts = ledger.facts(answer.first() - 1);
        int count = (int) (answer.last() - answer.first() + 1);
        return facts.size() >= count && facts.subList(0, count).toString().hashCode() == answer.hash();
    }

    /** The same form sent again after the start, as a phone does that heard no answer, counts once. */
    private static boolean againIsTheSame(Ledger ledger, int number) {
        long before = ledger.event().seq();
        return ledger.decide(Steps.request(number), Steps.step(number)) instanceof Answer.Done done
                && done.again()
                && ledger.event().seq() == before;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%4d cut off, %6d steps acknowledged, %d lost in %d of them, %d doubled, %d other faults",
                cuts,
                acknowledged,
                lost,
                cutsWithLoss,
                doubled,
                wrong.size());
    }
}
