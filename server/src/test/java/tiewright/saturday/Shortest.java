package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a failing day short: leaves out steps, first half of them at a time, while the same promise breaks. */
final class Shortest {
    private final Saturday day;
    private final int tries;

    /**
     * @param tries how many shorter days may be played
     */
    Shortest(Saturday day, int tries) {
        this.day = day;
        this.tries = tries;
    }

    Saturday.Failure of(Saturday.Failure failure) {
        Saturday.Failure best = upTo(failure);
        int left = tries;
        int part = Math.max(1, best.steps().size() / 2);
        while (left > 0) {
            boolean shorter = false;
            for (int from = 0; from < best.steps().size() && left > 0; from += part, left--) {
                List<Integer> steps = without(best.steps(), from, part);
                Optional<Saturday.Failure> again = steps.isEmpty() ? Optional.empty() : day.play(steps);
                if (again.isPresent() && again.get().promises().containsAll(failure.promises())) {
                    best = upTo(again.get());
                    shorter = true;
                }
            }
            if (!shorter && part == 1) {
                return best;
            }
            part = shorter ? part : Math.max(1, part / 2);
        }
        return best;
    }

    private static Saturday.Failure upTo(Saturday.Failure failure) {
        List<Integer> steps = failure.steps().subList(0, failure.steps().indexOf(failure.step()) + 1);
        return new Saturday.Failure(
                failure.seed(), failure.clubs(), List.copyOf(steps), failure.step(), failure.broken(), failure.story());
    }

    private static List<Integer> without(List<Integer> steps, int from, int count) {
        List<Integer> fewer = new ArrayList<>(steps);
        fewer.subList(from, Math.min(from + count, fewer.size())).clear();
        return fewer;
    }
}
