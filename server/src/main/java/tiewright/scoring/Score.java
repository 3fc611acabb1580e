package tiewright.scoring;

/** The points of one game, home side first, 0 or more. */
public record Score(int home, int away) {
    public Score {
        if (home < 0 || away < 0) {
            throw new IllegalArgumentException("points are 0 or more, got " + home + "-" + away);
        }
    }

    public static Score of(int home, int away) {
        return new Score(home, away);
    }

    public Score swapped() {
        return new Score(away, home);
    }

    @Override
    public String toString() {
        return home + "-" + away;
    }
}
