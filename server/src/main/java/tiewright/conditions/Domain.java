package tiewright.conditions;

import java.util.List;
import java.util.Optional;
import tiewright.scoring.Format;

/** What a setting may be set to. */
public sealed interface Domain {
    boolean allows(String value);

    /** The values to choose from, empty when they are not a list. */
    default List<String> choices() {
        return List.of();
    }

    record Choice(List<String> choices) implements Domain {
        public Choice {
            choices = List.copyOf(choices);
        }

        @Override
        public boolean allows(String value) {
            return choices.contains(value);
        }
    }

    /** Whole numbers from least to most. */
    record Whole(int least, int most) implements Domain {
        @Override
        public boolean allows(String value) {
            if (!value.matches("\\d{1,4}")) {
                return false;
            }
            int number = Integer.parseInt(value);
            return number >= least && number <= most && value.equals(Integer.toString(number));
        }
    }

    /** A scoring format such as {@code side-out-11}. */
    record Scoring() implements Domain {
        @Override
        public boolean allows(String value) {
            return Format.parse(value).isPresent();
        }
    }

    /** Points of a tie that was not played such as {@code 2/0}, or {@code as-rubbers}. */
    record Unplayed() implements Domain {
        @Override
        public boolean allows(String value) {
            return value.equals(UnplayedTie.AS_RUBBERS)
                    || UnplayedTie.parse(value).isPresent();
        }
    }

    /** What each rubber weighs such as {@code 6/4/3}, or {@code equal}. */
    record Weights() implements Domain {
        @Override
        public boolean allows(String value) {
            return RubberWeights.parse(value).isPresent();
        }
    }

    /** Who may stand in each rubber such as {@code women;mixed;open}, or {@code open}. */
    record Kinds() implements Domain {
        @Override
        public boolean allows(String value) {
            return RubberKinds.parse(value).isPresent();
        }
    }

    /** Points for a tie such as {@code 2/1/0}, {@code rubbers} or {@code games+2/1/0}. */
    record Points() implements Domain {
        @Override
        public boolean allows(String value) {
            return TiePoints.parse(value).isPresent();
        }
    }

    /** A level-teams procedure. */
    record Level() implements Domain {
        @Override
        public boolean allows(String value) {
            return LevelSteps.isLegal(value);
        }
    }

    /** Temperatures in whole or half degrees Celsius. */
    record Degrees(double least, double most) implements Domain {
        @Override
        public boolean allows(String value) {
            return Optional.of(value)
                    .filter(text -> text.matches("\\d{1,2}(\\.\\d)?"))
                    .map(Double::parseDouble)
                    .filter(degrees -> degrees >= least && degrees <= most)
                    .isPresent();
        }
    }
}
