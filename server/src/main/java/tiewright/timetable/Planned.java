package tiewright.timetable;

/** What a search for a plan gives. */
public sealed interface Planned {
    Kind kind();

    enum Kind {
        /** a plan that keeps everything that must hold and ends in time */
        FOUND,
        /** the best plan found, which breaks something or ends too late; whether there is a better one is not proven */
        BROKEN,
        /** no plan can be */
        IMPOSSIBLE
    }

    record Found(Plan plan) implements Planned {
        @Override
        public Kind kind() {
            return Kind.FOUND;
        }
    }

    record Broken(Plan plan) implements Planned {
        @Override
        public Kind kind() {
            return Kind.BROKEN;
        }
    }

    /**
     * @param asIs how the day would go with the hours left open; empty where the input contradicts itself
     */
    record Impossible(Infeasible why, java.util.Optional<Plan> asIs) implements Planned {
        @Override
        public Kind kind() {
            return Kind.IMPOSSIBLE;
        }
    }
}
