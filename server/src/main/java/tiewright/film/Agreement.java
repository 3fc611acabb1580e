package tiewright.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * How far two who noted the same game agree, by what they noted. The first rally of one is held against the first of the other, and so on.
 *
 * @param rallies how many both have
 * @param onlyOne how many rallies one has more than the other
 */
public record Agreement(int rallies, int onlyOne, List<Field> fields) {
    /** From this kappa on a field is called one to count on; an assumption of ours. */
    public static final double ENOUGH = 0.6;

    /** What two may agree on. */
    public enum What {
        /** By the pair, for the other watcher may have named the sides the other way round. */
        WINNER(step -> step.winner().map(side -> step.start().pair(side).toString())),
        ENDING(step -> Optional.of(step.note().ending().code())),
        PLAYER(step -> step.note().player().map(Object::toString)),
        WHERE(step -> step.note().detail().where()),
        SERVE(step -> step.note().detail().serve()),
        RETURN(step -> step.note().detail().returned()),
        THIRD(step -> step.note().detail().third()),
        THIRD_TO(step -> step.note().detail().thirdTo().map(Object::toString)),
        SIGNAL(step -> step.note().detail().signal());

        private final Function<Step, Optional<String>> noted;

        What(Function<Step, Optional<String>> noted) {
            this.noted = noted;
        }

        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * @param kappa over the rallies of which both noted it
     * @param onlyOne of how many rallies only one did
     */
    public record Field(What what, Kappa kappa, int onlyOne) {
        /** Empty where it cannot be said. */
        public Optional<Boolean> isEnough() {
            return kappa.value().isPresent() ? Optional.of(kappa.value().getAsDouble() >= ENOUGH) : Optional.empty();
        }
    }

    public Agreement {
        fields = List.copyOf(fields);
    }

    /** Fields that neither noted are left out. */
    public static Agreement of(FilmGame one, FilmGame other) {
        List<Step> first = one.replay().steps();
        List<Step> second = other.replay().steps();
        int both = Math.min(first.size(), second.size());
        List<Field> fields = new ArrayList<>();
        for (What what : What.values()) {
            List<String> said = new ArrayList<>();
            List<String> saidToo = new ArrayList<>();
            int alone = 0;
            for (int i = 0; i < both; i++) {
                Optional<String> a = what.noted.apply(first.get(i));
                Optional<String> b = what.noted.apply(second.get(i));
                if (a.isPresent() && b.isPresent()) {
                    said.add(a.get());
                    saidToo.add(b.get());
                } else if (a.isPresent() || b.isPresent()) {
                    alone++;
                }
            }
            if (!said.isEmpty() || alone > 0) {
                fields.add(new Field(what, Kappa.of(said, saidToo), alone));
            }
        }
        return new Agreement(both, Math.abs(first.size() - second.size()), fields);
    }
}
