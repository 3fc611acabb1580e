package tiewright.lineup;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * What the captain wants of a tie, as the worth of each way in which it can end.
 *
 * @param worths of each end, where it is {@link Kind#QUALIFY}; empty otherwise
 */
public record Aim(Kind kind, Map<Ended, Double> worths) {
    /** The tie itself, in the first place. */
    public static final Aim WIN = new Aim(Kind.WIN, Map.of());

    /** Rubbers for the count-back: rubbers won less rubbers lost, the decider among them. */
    public static final Aim RUBBERS = new Aim(Kind.RUBBERS, Map.of());

    /** What can be wanted. */
    public enum Kind {
        /** Chance to win the tie. */
        WIN("win"),
        /** Rubbers ahead, on average. */
        RUBBERS("rubbers"),
        /** Chance to go through. */
        QUALIFY("qualify");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }

        public static Optional<Kind> parse(String code) {
            return Arrays.stream(values())
                    .filter(kind -> kind.code.equals(code))
                    .findFirst();
        }
    }

    /**
     * An end of the tie in rubbers of ours and theirs, the decider among them.
     *
     * @param lead by how much ours weigh more
     */
    public record Ended(int ours, int theirs, int lead) {
        /** Of rubbers that weigh the same. */
        public Ended(int ours, int theirs) {
            this(ours, theirs, ours - theirs);
        }

        int ahead() {
            return ours - theirs;
        }

        /** With the decider, which weighs 1. */
        public Ended and(int oursMore, int theirsMore) {
            return new Ended(ours + oursMore, theirs + theirsMore, lead + oursMore - theirsMore);
        }
    }

    public Aim {
        worths = Map.copyOf(worths);
        if ((kind == Kind.QUALIFY) == worths.isEmpty()) {
            throw new IllegalArgumentException("only the chance to go through has a worth for each end");
        }
        if (worths.values().stream().anyMatch(worth -> !(worth >= 0 && worth <= 1))) {
            throw new IllegalArgumentException("the worth of an end is a chance, 0 to 1");
        }
    }

    /** @param worths chance to go through after each end; ends that are missing count as the one nearest in weight ahead */
    public static Aim qualify(Map<Ended, Double> worths) {
        return new Aim(Kind.QUALIFY, worths);
    }

    /** Every end is worth the same to within a thousandth: nothing hangs on this tie. */
    public boolean isSettled() {
        double most = worths.values().stream().mapToDouble(worth -> worth).max().orElse(1);
        double least =
                worths.values().stream().mapToDouble(worth -> worth).min().orElse(0);
        return most - least <= 0.001;
    }

    /** @param drawWorth what a drawn tie is worth as a share of a win */
    public double worth(Ended end, double drawWorth) {
        return switch (kind) {
            case WIN -> end.lead() > 0 ? 1 : end.lead() < 0 ? 0 : drawWorth;
            case RUBBERS -> end.ahead();
            case QUALIFY -> worths.get(nearest(end));
        };
    }

    private Ended nearest(Ended end) {
        Comparator<Ended> near = Comparator.<Ended>comparingInt(known -> Math.abs(known.lead() - end.lead()))
                .thenComparingInt(known -> Math.abs(known.ahead() - end.ahead()))
                .thenComparingInt(known -> Math.abs(known.ours() - end.ours()))
                .thenComparing(Comparator.comparingInt(Ended::ours).reversed());
        return worths.containsKey(end)
                ? end
                : worths.keySet().stream().min(near).orElseThrow();
    }
}
